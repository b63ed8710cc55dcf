import { RANK_SHARE } from './boundedStep.ts'
import type { Place } from './descentRoom.ts'
import { backSubstitute, factorise, type PivotedQr, pivotedQr, rankOf, turnBack } from './pivotedQr.ts'
import type { Solved } from './question.ts'

type Columns = {
  readonly qr: PivotedQr
  readonly free: readonly number[]
  readonly lengths: readonly number[]
  readonly rank: number
}

/** The Jacobian's free columns, each row times its weight and each column made of unit length, factorised. */
function columnsOf({ jacobian, residuals, atBound }: Place, weights: Float64Array | null): Columns {
  const count = residuals.length
  const size = atBound.length
  const free = [...atBound.keys()].filter(k => !atBound[k])
  const qr = pivotedQr(count, free.length)
  const lengths = free.map((k, c) => {
    let sum = 0
    for (let i = 0; i < count; i++) {
      const value = jacobian[i * size + k]! * Math.sqrt(weights?.[i] ?? 1)
      qr.a[c * qr.rows + i] = value
      sum += value * value
    }
    const length = Math.sqrt(sum) || 1
    for (let i = 0; i < count; i++) qr.a[c * qr.rows + i] = qr.a[c * qr.rows + i]! / length
    return length
  })
  factorise(qr, free.length)
  return { qr, free, lengths, rank: rankOf(qr, free.length, RANK_SHARE) }
}

/**
 * What the residuals' scatter does to the parameters, for a variance of one: p × p, row-major. Rows and columns of
 * parameters at a bound are zero; null where the residuals do not determine the others.
 *
 *   C = (JᵀJ)⁻¹ = P R⁻¹ R⁻ᵀ Pᵀ
 */
export function covarianceOf(place: Place): Float64Array | null {
  const size = place.p.length
  const { qr, free, lengths, rank } = columnsOf(place, null)
  if (rank < free.length || free.length === 0) return null
  const m = free.length
  const inverse = new Float64Array(m * m)
  for (let c = 0; c < m; c++) {
    const column = inverse.subarray(c * m, (c + 1) * m)
    column[c] = 1
    backSubstitute(qr, m, m, column)
  }
  const covariance = new Float64Array(size * size)
  for (let i = 0; i < m; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0
      for (let c = i; c < m; c++) sum += inverse[c * m + i]! * inverse[c * m + j]!
      const one = qr.pivot[i]!
      const other = qr.pivot[j]!
      const value = sum / (lengths[one]! * lengths[other]!)
      covariance[free[one]! * size + free[other]!] = value
      covariance[free[other]! * size + free[one]!] = value
    }
  }
  return covariance
}

/**
 * How much each residual's own reading pulls the fit towards itself: the diagonal of the hat matrix, 0 to 1, with the
 * weights a robust loss left.
 *
 *   h = diag(J (JᵀJ)⁻¹ Jᵀ) = the squared rows of the first columns of Q
 */
export function leverageOf(solved: Solved): Float64Array {
  const count = solved.residuals.length
  const { qr, free, rank } = columnsOf(solved, solved.robust)
  const leverage = new Float64Array(count)
  const column = new Float64Array(qr.rows)
  for (let c = 0; c < rank; c++) {
    column.fill(0)
    column[c] = 1
    turnBack(qr, free.length, column)
    for (let i = 0; i < count; i++) leverage[i] = leverage[i]! + column[i]! ** 2
  }
  for (let i = 0; i < count; i++) leverage[i] = Math.min(1, leverage[i]!)
  return leverage
}
