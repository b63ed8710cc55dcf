import { covarianceOf, leastSquares, leverageOf } from '../../../../packages/model/src/numerics/index.ts'
import type { Fit } from '../../../../packages/model/src/study/fit/fit.ts'
import type { Judged, JudgedRow } from '../../../../packages/model/src/study/fit/judge/judged.ts'

type Question = {
  readonly rows: readonly (Partial<JudgedRow> & { readonly along: number })[]
  readonly measured: readonly number[]
  /** Functions of `along` whose sum, each times its parameter, is the fitted value. */
  readonly terms: readonly ((along: number) => number)[]
  readonly names?: readonly string[]
  readonly weights?: readonly number[]
  readonly known?: boolean
}

/** A fit that is linear in its parameters, put together from the engine's parts alone. */
export function fittedLine({ rows, measured, terms, names, weights, known = false }: Question): Judged {
  const n = measured.length
  const p = terms.length
  const w = weights ?? measured.map(() => 1)
  const design = rows.map(({ along }) => terms.map(term => term(along)))
  const modelled = (at: ArrayLike<number>) =>
    design.map(row => row.reduce((sum, x, j) => sum + x * at[j]!, 0))
  const solved = leastSquares({
    start: new Float64Array(p).fill(1),
    residuals: {
      count: n,
      size: p,
      evaluate: (at, residuals) => {
        modelled(at).forEach((value, i) => {
          residuals[i] = (measured[i]! - value) * Math.sqrt(w[i]!)
        })
        return true
      },
      jacobian: (_, jacobian) => {
        design.forEach((row, i) => {
          row.forEach((x, j) => {
            jacobian[i * p + j] = -x * Math.sqrt(w[i]!)
          })
        })
        return true
      },
    },
  })
  const dof = n - p
  const scatter = known ? 1 : dof > 0 ? Math.sqrt(solved.sumOfSquares / dof) : null
  const unscaled = covarianceOf(solved)
  const covariance = unscaled && scatter !== null ? Array.from(unscaled, c => c * scatter ** 2) : null
  const fit: Fit = {
    outcome: solved.outcome,
    why: solved.why,
    parameters: Array.from(solved.p, (value, j) => ({
      name: names?.[j] ?? `b${j}`,
      value,
      standardError: covariance ? Math.sqrt(covariance[j * p + j]!) : null,
      interval: { kind: 'undetermined', why: 'not asked' },
      state: 'free',
    })),
    covariance: covariance && terms.map((_, j) => covariance.slice(j * p, (j + 1) * p)),
    correlation: null,
    residuals: modelled(solved.p).map((value, i) => measured[i]! - value),
    weights: w,
    leverage: [...leverageOf(solved)],
    noise: known ? 'known' : 'estimated',
    residualStandardDeviation: dof > 0 ? Math.sqrt(solved.sumOfSquares / dof) : null,
    sumOfSquares: solved.sumOfSquares,
    degreesOfFreedom: dof,
    r2: null,
    aicc: null,
    iterations: solved.iterations,
    evaluations: solved.evaluations,
    cautions: [],
  }
  return {
    fit,
    scatter,
    alongWord: 'load',
    measured,
    derivatives: design,
    rows: rows.map((row, i) => ({ row: i + 1, set: '', foot: 'plate', kind: 'sinkage', ...row })),
  }
}
