import type { Noise } from './fit.ts'

/** The part of the readings' weighted scatter about their mean that a fit explains; null when there is none. */
export function rSquared(measured: Float64Array, weights: Float64Array, sumOfSquares: number): number | null {
  let whole = 0
  let mean = 0
  for (let i = 0; i < measured.length; i++) {
    whole += weights[i]!
    mean += weights[i]! * measured[i]!
  }
  mean /= whole
  let scatter = 0
  for (let i = 0; i < measured.length; i++) scatter += weights[i]! * (measured[i]! - mean) ** 2
  return scatter > 0 ? 1 - sumOfSquares / scatter : null
}

type Likelihood = {
  readonly sumOfSquares: number
  readonly weights: Float64Array
  /** Searched parameters of the model. */
  readonly parameters: number
  readonly noise: Noise
}

/**
 * Akaike's criterion with its correction for few readings, from the normal likelihood with all its constants.
 *
 *   −2 ln L = n ln(2πσ²) − Σ ln w + S/σ²;  σ² known, or S/n, which then counts as one more parameter
 *   AICc = −2 ln L + 2k + 2k(k + 1)/(n − k − 1)
 *
 * null when there are too few readings for the correction, or nothing is left of the residuals.
 *
 * Source  Hurvich and Tsai 1989, Biometrika 76:297-307.
 */
export function aiccOf({ sumOfSquares, weights, parameters, noise }: Likelihood): number | null {
  const n = weights.length
  const k = parameters + (noise.kind === 'estimated' ? 1 : 0)
  const variance = noise.kind === 'known' ? noise.standardDeviation ** 2 : sumOfSquares / n
  if (n - k - 1 <= 0 || variance === 0) return null
  let logWeights = 0
  for (let i = 0; i < n; i++) logWeights += Math.log(weights[i]!)
  const likelihood = n * Math.log(2 * Math.PI * variance) - logWeights + sumOfSquares / variance
  return likelihood + 2 * k + (2 * k * (k + 1)) / (n - k - 1)
}
