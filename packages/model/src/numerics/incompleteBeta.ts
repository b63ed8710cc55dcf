import { logGamma } from './gamma.ts'

/** From here on Stirling's series is good to the last digit with the terms below. */
const LARGE = 10
/** Bernoulli numbers over 2k (2k − 1): the terms of Stirling's series. */
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156]
const TINY = 1e-300
/** The fraction takes about √max(a, b) turns. */
const TURNS = 100_000

/** What Stirling's formula for ln Γ(x) leaves out, for large x. */
export function stirlingRest(x: number): number {
  let sum = 0
  for (let k = STIRLING.length - 1; k >= 0; k--) sum = sum / (x * x) + STIRLING[k]!
  return sum / x
}

/**
 * ln B(a, b), without the cancellation of three large logarithms.
 *
 * Holds   a, b ≥ ½
 */
export function logBeta(one: number, other: number): number {
  const a = Math.min(one, other)
  const b = Math.max(one, other)
  if (b < LARGE) return logGamma(a) + logGamma(b) - logGamma(a + b)
  const shared = stirlingRest(b) - stirlingRest(a + b)
  if (a < LARGE) return logGamma(a) + shared + a - a * Math.log(a + b) - (b - 0.5) * Math.log1p(a / b)
  return (
    0.5 * Math.log((2 * Math.PI) / b) +
    stirlingRest(a) +
    shared -
    (a - 0.5) * Math.log1p(b / a) -
    b * Math.log1p(a / b)
  )
}

/** The continued fraction, by Lentz's method; for x below (a + 1)/(a + b + 2). */
function fraction(a: number, b: number, x: number): number {
  let c = 1
  let d = 1 - ((a + b) * x) / (a + 1)
  if (Math.abs(d) < TINY) d = TINY
  d = 1 / d
  let value = d
  for (let m = 1; m < TURNS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 + even * d
    c = 1 + even / c
    if (Math.abs(d) < TINY) d = TINY
    if (Math.abs(c) < TINY) c = TINY
    d = 1 / d
    value *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 + odd * d
    c = 1 + odd / c
    if (Math.abs(d) < TINY) d = TINY
    if (Math.abs(c) < TINY) c = TINY
    d = 1 / d
    const change = d * c
    value *= change
    if (Math.abs(change - 1) < Number.EPSILON) break
  }
  return value
}

/**
 * The share I_x(a, b) of Euler's beta integral below x. The caller gives x and y = 1 − x, each to its own last digit:
 * tails hang on the smaller.
 *
 *   I = ∫₀ˣ tᵃ⁻¹ (1 − t)ᵇ⁻¹ dt / B(a, b)
 *
 * Holds   a, b ≥ ½
 * Source  Abramowitz and Stegun 26.5.8, evaluated after Lentz 1976, Applied Optics 15:668-671.
 */
export function incompleteBeta(a: number, b: number, x: number, y: number): number {
  if (x <= 0) return 0
  if (y <= 0) return 1
  const logX = x < 0.5 ? Math.log(x) : Math.log1p(-y)
  const logY = y < 0.5 ? Math.log(y) : Math.log1p(-x)
  const front = Math.exp(a * logX + b * logY - logBeta(a, b))
  if (x < (a + 1) / (a + b + 2)) return (front * fraction(a, b, x)) / a
  return 1 - (front * fraction(b, a, y)) / b
}
