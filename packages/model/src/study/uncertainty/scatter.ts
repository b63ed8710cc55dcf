import {
  describe,
  numberProblem,
  objectProblem,
  type Problem,
  type QuantityName,
} from '../../quantities/index.ts'

/**
 * How an input scatters about its nominal value, which is the median. `relative` is the standard deviation of the
 * logarithm: nearly the relative scatter while that is small.
 */
export type Scatter =
  | { readonly kind: 'normal'; readonly standardDeviation: number }
  | { readonly kind: 'log-normal'; readonly relative: number }
  | { readonly kind: 'uniform'; readonly halfWidth: number }

const kinds = ['normal', 'log-normal', 'uniform'] as const

/** A uniform variate of mean 0 and variance 1 reaches this far. */
export const UNIFORM_REACH = Math.sqrt(3)

/**
 * Values of an input at standard variates (mean 0, variance 1; normal, or uniform for the uniform kind), about a centre
 * each; in place of the centres.
 *
 *   normal x₀ + σ t;  log-normal x₀ exp(σ t);  uniform x₀ + w t/√3
 */
export function scatterAbout(centres: Float64Array, scatter: Scatter, variates: Float64Array): void {
  if (scatter.kind === 'log-normal') {
    const { relative } = scatter
    for (let i = 0; i < centres.length; i++) centres[i] = centres[i]! * Math.exp(relative * variates[i]!)
    return
  }
  const step = scatter.kind === 'normal' ? scatter.standardDeviation : scatter.halfWidth / UNIFORM_REACH
  for (let i = 0; i < centres.length; i++) centres[i] = centres[i]! + step * variates[i]!
}

/** What is wrong with a scatter; a log-normal one needs a nominal value above zero. */
export function scatterProblems(
  scatter: Scatter,
  path: string,
  quantity: QuantityName,
  nominal: number,
): Problem[] {
  const shapeless = objectProblem(scatter, path)
  if (shapeless.length > 0) return shapeless
  if (scatter.kind === 'normal')
    return numberProblem(scatter.standardDeviation, `${path}.standardDeviation`, quantity, { atLeast: 0 })
  if (scatter.kind === 'uniform')
    return numberProblem(scatter.halfWidth, `${path}.halfWidth`, quantity, { atLeast: 0 })
  if (scatter.kind === 'log-normal')
    return nominal > 0
      ? numberProblem(scatter.relative, `${path}.relative`, 'ratio', { atLeast: 0 })
      : [
          {
            path,
            expected: 'normal or uniform scatter, for its nominal value is not above zero',
            received: 'log-normal',
          },
        ]
  const { kind } = scatter as { kind: unknown }
  return [{ path: `${path}.kind`, expected: `one of ${kinds.join(', ')}`, received: describe(kind) }]
}
