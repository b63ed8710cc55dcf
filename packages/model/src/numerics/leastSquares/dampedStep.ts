import { backSubstitute, type PivotedQr } from './pivotedQr.ts'

/** Room for one damped step of at most `size` parameters; `step` holds the answer, in the order of the columns. */
export type StepRoom = {
  readonly step: Float64Array
  readonly turned: Float64Array
  readonly s: Float64Array
  readonly row: Float64Array
  readonly solved: Float64Array
}

export const stepRoom = (size: number): StepRoom => ({
  step: new Float64Array(size),
  turned: new Float64Array(size),
  s: new Float64Array(size * size),
  row: new Float64Array(size),
  solved: new Float64Array(size),
})

/** A step is as long as it may be within this share of the radius. */
const NEAR = 0.1
/** Newton's method for the damping needs two or three turns; this many are never seen. */
const TURNS = 12
/** Damping to begin with where the undamped step says nothing, as a share of the most that can be needed. */
const LEAST = 1e-3

/** Rotates the rows √λ E into R and solves for the damped step, both in the order of the pivots. */
function solveDamped(
  qr: PivotedQr,
  columns: number,
  room: StepRoom,
  turned: Float64Array,
  extent: Float64Array,
  damping: number,
): void {
  const { rows, a, diagonal, pivot } = qr
  const { s, row, solved } = room
  const root = Math.sqrt(damping)
  for (let i = 0; i < columns; i++) {
    for (let j = i; j < columns; j++) s[i * columns + j] = i === j ? diagonal[i]! : a[j * rows + i]!
    solved[i] = -turned[i]!
  }
  for (let k = 0; k < columns; k++) {
    row.fill(0, k, columns)
    row[k] = root * extent[pivot[k]!]!
    let below = 0
    for (let i = k; i < columns; i++) {
      const lower = row[i]!
      if (lower === 0) continue
      const upper = s[i * columns + i]!
      const both = Math.hypot(upper, lower)
      const cos = upper / both
      const sin = lower / both
      s[i * columns + i] = both
      for (let j = i + 1; j < columns; j++) {
        const here = s[i * columns + j]!
        s[i * columns + j] = cos * here + sin * row[j]!
        row[j] = cos * row[j]! - sin * here
      }
      const here = solved[i]!
      solved[i] = cos * here + sin * below
      below = cos * below - sin * here
    }
  }
  for (let i = columns - 1; i >= 0; i--) {
    let sum = solved[i]!
    for (let j = i + 1; j < columns; j++) sum -= s[i * columns + j]! * solved[j]!
    solved[i] = sum / s[i * columns + i]!
  }
}

/** Moves `solved` into `step`, out of the order of the pivots; gives the length of E step. */
function unpivot(qr: PivotedQr, columns: number, room: StepRoom, extent: Float64Array): number {
  let sum = 0
  for (let k = 0; k < columns; k++) {
    const column = qr.pivot[k]!
    room.step[column] = room.solved[k]!
    sum += (extent[column]! * room.solved[k]!) ** 2
  }
  return Math.sqrt(sum)
}

/**
 * The step z that makes |r + A z| least with |E z| no longer than the radius, from A P = Q R and Qᵀr in
 * `room.turned`. Gives the damping λ it took, 0 where the undamped step is short enough.
 *
 *   (AᵀA + λ E²) z = −Aᵀ r,  |E z| = radius ± a tenth
 *
 * Source  Moré 1978, in Lecture Notes in Mathematics 630:105-116, after Hebden.
 */
export function dampedStep(
  qr: PivotedQr,
  columns: number,
  rank: number,
  room: StepRoom,
  extent: Float64Array,
  radius: number,
  before: number,
): number {
  const { rows, a, diagonal, pivot } = qr
  const { solved, turned, s, row } = room
  for (let k = 0; k < columns; k++) solved[k] = -turned[k]!
  backSubstitute(qr, columns, rank, solved)
  let length = unpivot(qr, columns, room, extent)
  if (length <= (1 + NEAR) * radius) return 0
  let last = length - radius

  let low = 0
  if (rank === columns) {
    for (let k = 0; k < columns; k++) {
      let sum = (extent[pivot[k]!]! ** 2 * solved[k]!) / length
      for (let i = 0; i < k; i++) sum -= a[k * rows + i]! * row[i]!
      row[k] = sum / diagonal[k]!
    }
    let sum = 0
    for (let k = 0; k < columns; k++) sum += row[k]! ** 2
    low = (length - radius) / (radius * sum)
  }
  let steepest = 0
  for (let k = 0; k < columns; k++) {
    let sum = diagonal[k]! * turned[k]!
    for (let i = 0; i < k; i++) sum += a[k * rows + i]! * turned[i]!
    steepest += (sum / extent[pivot[k]!]!) ** 2
  }
  let high = Math.sqrt(steepest) / radius
  if (high === 0) high = Number.MIN_VALUE / Math.min(radius, NEAR)
  let damping = Math.min(Math.max(before, low), high)
  if (damping === 0) damping = Math.sqrt(steepest) / length

  for (let turns = 0; turns < TURNS; turns++) {
    if (damping === 0) damping = Math.max(Number.MIN_VALUE, LEAST * high)
    solveDamped(qr, columns, room, turned, extent, damping)
    length = unpivot(qr, columns, room, extent)
    const excess = length - radius
    // without full rank the length may stay below the radius however small the damping
    if (Math.abs(excess) <= NEAR * radius || (low === 0 && excess <= last && last < 0)) break
    last = excess
    let sum = 0
    for (let i = 0; i < columns; i++) {
      let value = (extent[pivot[i]!]! ** 2 * solved[i]!) / length
      for (let j = 0; j < i; j++) value -= s[j * columns + i]! * row[j]!
      row[i] = value / s[i * columns + i]!
      sum += row[i]! ** 2
    }
    if (excess > 0) low = Math.max(low, damping)
    else high = Math.min(high, damping)
    damping = Math.max(low, damping + (excess * length) / (radius * length * sum))
    if (damping > high) damping = Math.sqrt(Math.max(low, LEAST * high) * high)
  }
  return damping
}

/**
 * The step that answers other residuals with the same damping as the step before: fills `room.step` and gives |E z|.
 * `turned` is Qᵀ of those residuals.
 */
export function sameDamping(
  qr: PivotedQr,
  columns: number,
  room: StepRoom,
  turned: Float64Array,
  extent: Float64Array,
  damping: number,
): number {
  solveDamped(qr, columns, room, turned, extent, damping)
  return unpivot(qr, columns, room, extent)
}
