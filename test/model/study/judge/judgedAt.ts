import type { Judged, JudgedRow } from '../../../../packages/model/src/study/fit/judge/judged.ts'

type Parameter = { readonly name: string; readonly set?: string; readonly value: number }
type Question = {
  readonly parameters: readonly Parameter[]
  readonly rows: readonly (Partial<JudgedRow> & { readonly along: number })[]
  readonly predict: (values: readonly number[], row: JudgedRow) => number
  readonly scatter: number
}

const STEP = 1e-5

/** A fit as it would stand at these values with this scatter, its derivatives by differences: no solver in it. */
export function judgedAt({ parameters, rows: some, predict, scatter }: Question): Judged {
  const rows = some.map((row, i) => ({ row: i + 1, set: '', foot: 'plate', kind: 'sinkage', ...row }))
  const values = parameters.map(({ value }) => value)
  const derivatives = rows.map(row =>
    values.map((value, j) => {
      const step = STEP * (Math.abs(value) || 1)
      const moved = (by: number) =>
        predict(
          values.map((v, k) => (k === j ? v + by : v)),
          row,
        )
      return (moved(step) - moved(-step)) / (2 * step)
    }),
  )
  const measured = rows.map(row => predict(values, row))
  return {
    rows,
    scatter,
    alongWord: 'load',
    measured,
    derivatives,
    fit: {
      outcome: 'converged',
      why: '',
      parameters: parameters.map(parameter => ({
        ...parameter,
        standardError: null,
        interval: { kind: 'undetermined', why: 'not asked' },
        state: 'free',
      })),
      covariance: null,
      correlation: null,
      residuals: rows.map(() => 0),
      weights: rows.map(() => 1),
      leverage: rows.map(() => 0),
      noise: 'estimated',
      residualStandardDeviation: scatter,
      sumOfSquares: scatter ** 2,
      degreesOfFreedom: rows.length - parameters.length,
      r2: null,
      aicc: null,
      iterations: 1,
      evaluations: 1,
      cautions: [],
    },
  }
}
