import { covarianceOf, endings, leverageOf, type Solved, twoSided } from '../../numerics/index.ts'
import { refuse } from '../../quantities/index.ts'
import type { Fit, FittedParameter, Interval, Noise } from './fit.ts'
import { aiccOf, rSquared } from './measures.ts'
import { robustVariance } from './robustVariance.ts'

export type StatementQuestion = {
  readonly solved: Solved
  /** Of the parameters that were searched, in their order. */
  readonly names: readonly { readonly name: string; readonly set?: string }[]
  /** Those that were not. */
  readonly held: readonly FittedParameter[]
  readonly noise: Noise
  readonly level?: number
  readonly measured: Float64Array
  /** 1/variance of each reading; relative when the noise is estimated. */
  readonly weights: Float64Array
  /** How each parameter was searched: as itself, or as its logarithm. */
  readonly transforms?: readonly ('itself' | 'ln')[]
}

const LEVEL = 0.95

/** Why nothing can be said of how sure the parameters are; null when it can. */
function doubt({ solved, noise, names }: StatementQuestion, covariance: Float64Array | null): string | null {
  if (solved.outcome !== 'converged') return 'the search did not end at a minimum'
  if (covariance === null) return 'the readings do not determine it'
  if (noise.kind === 'estimated' && solved.residuals.length <= names.length)
    return 'as many parameters as readings leave no scatter to judge by'
  return null
}

/** The variance of a reading of weight one; null when nothing is left to take it from. */
function varianceOf({ solved, noise, names }: StatementQuestion): number | null {
  const freedom = solved.residuals.length - names.length
  if (solved.robust && freedom > 0) return robustVariance(solved, names.length)
  if (noise.kind === 'known') return noise.standardDeviation ** 2
  return freedom > 0 ? solved.sumOfSquares / freedom : null
}

/**
 * What a solved fit says of its parameters and of itself.
 *
 *   C = s² (JᵀJ)⁻¹,  p ± t s_p;  s² = Σ w r²/(n − p), or the known variance with the normal in place of t
 *
 * A parameter searched as a logarithm has its interval from there, and its standard error by the slope.
 * At a bound a parameter has neither. After a robust loss the scatter is that of the weighed-down residuals.
 *
 * Holds   where the model is nearly straight over the intervals; profileInterval does not ask for that
 * Throws  InputError when the search failed: it has no residuals to speak of.
 */
export function fitFrom(question: StatementQuestion): Fit {
  const { solved, names, held, noise, level = LEVEL, measured, weights, transforms } = question
  if (solved.outcome === 'failed')
    refuse([
      { path: 'solved', expected: 'a search that found the model to have an answer', received: solved.why },
    ])
  const size = names.length
  const freedom = solved.residuals.length - size
  const unscaled = covarianceOf(solved)
  const variance = varianceOf(question)
  const why = doubt(question, unscaled)
  const reach =
    why === null ? twoSided(level, noise.kind === 'known' ? Number.POSITIVE_INFINITY : freedom) : null

  /** A parameter's value in its own unit, and how that grows with what was searched. */
  const value = (k: number): number => (transforms?.[k] === 'ln' ? Math.exp(solved.p[k]!) : solved.p[k]!)
  const slope = (k: number): number => (transforms?.[k] === 'ln' ? value(k) : 1)

  const interval = (k: number, deviation: number): Interval => {
    if (reach === null) return { kind: 'undetermined', why: why ?? '' }
    const low = solved.p[k]! - reach * deviation
    const high = solved.p[k]! + reach * deviation
    return transforms?.[k] === 'ln'
      ? { kind: 'interval', low: Math.exp(low), high: Math.exp(high), level }
      : { kind: 'interval', low, high, level }
  }
  const searched = names.map((name, k): FittedParameter => {
    const own = { ...name, value: value(k) }
    if (solved.atBound[k])
      return {
        ...own,
        standardError: null,
        interval: { kind: 'undetermined', why: 'it lies at its bound' },
        state: 'at bound',
      }
    if (why !== null || unscaled === null || variance === null)
      return {
        ...own,
        standardError: null,
        interval: { kind: 'undetermined', why: why ?? '' },
        state: 'free',
      }
    const deviation = Math.sqrt(variance * unscaled[k * size + k]!)
    return { ...own, standardError: slope(k) * deviation, interval: interval(k, deviation), state: 'free' }
  })

  const free = [...names.keys()].filter(k => !solved.atBound[k])
  const known = why === null && unscaled !== null && variance !== null && free.length > 0
  const covariance = known
    ? free.map(i => free.map(j => variance * slope(i) * slope(j) * unscaled[i * size + j]!))
    : null
  const kept = weights.map((weight, i) => weight * (solved.robust?.[i] ?? 1))
  const residualVariance = solved.loss
    ? solved.loss.spread ** 2
    : freedom > 0
      ? solved.sumOfSquares / freedom
      : null

  return {
    outcome: solved.outcome,
    why: endings[solved.why].sentence,
    parameters: [...searched, ...held],
    covariance,
    correlation:
      covariance?.map((row, i) =>
        row.map((c, j) => (i === j ? 1 : c / Math.sqrt(covariance[i]![i]! * covariance[j]![j]!))),
      ) ?? null,
    residuals: Array.from(solved.residuals, (r, i) => r / Math.sqrt(weights[i]!)),
    weights: [...kept],
    leverage: [...leverageOf(solved)],
    noise: noise.kind,
    residualStandardDeviation: residualVariance === null ? null : Math.sqrt(residualVariance),
    sumOfSquares: solved.sumOfSquares,
    degreesOfFreedom: freedom,
    r2: rSquared(measured, kept, solved.sumOfSquares),
    aicc: solved.robust
      ? null
      : aiccOf({ sumOfSquares: solved.sumOfSquares, weights, parameters: size, noise }),
    iterations: solved.iterations,
    evaluations: solved.evaluations,
    cautions: [],
  }
}
