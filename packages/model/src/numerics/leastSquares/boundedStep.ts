import { dampedStep } from './dampedStep.ts'
import type { Descent, Place } from './descentRoom.ts'
import { factorise, rankOf, turn } from './pivotedQr.ts'

/** Columns of unit length that differ by less than this from what the others span add nothing but rounding. */
export const RANK_SHARE = 1e-10

/** Which parameters are free, all but those at a bound that the residuals push against it; gives how many. */
export function freeParameters(descent: Descent, { p, residuals: r, jacobian, atBound }: Place): number {
  const { lower, upper, room } = descent
  const size = p.length
  let columns = 0
  for (let k = 0; k < size; k++) {
    const low = p[k]! <= lower[k]!
    const high = p[k]! >= upper[k]!
    atBound[k] = 0
    if (low || high) {
      let push = 0
      for (let i = 0; i < r.length; i++) push -= jacobian[i * size + k]! * r[i]!
      if ((low && push <= 0) || (high && push >= 0)) atBound[k] = 1
    }
    if (!atBound[k]) room.free[columns++] = k
  }
  return columns
}

/** Factorises the free columns, each of unit length, and turns the given residuals with them; gives the rank. */
export function factoriseFree(
  { room }: Descent,
  { jacobian, residuals: r }: Place,
  columns: number,
  from: Float64Array,
): number {
  const { qr, step, turned, lengths, scale, extent, free } = room
  const { a, rows } = qr
  const count = r.length
  const size = lengths.length
  for (let c = 0; c < columns; c++) {
    const k = free[c]!
    const length = lengths[k]! || 1
    for (let i = 0; i < count; i++) a[c * rows + i] = jacobian[i * size + k]! / length
    a.fill(0, c * rows + count, (c + 1) * rows)
    extent[c] = (scale[k]! || 1) / length
  }
  factorise(qr, columns)
  turned.set(from)
  turned.fill(0, count)
  turn(qr, columns, turned)
  for (let c = 0; c < columns; c++) step.turned[c] = turned[c]!
  return rankOf(qr, columns, RANK_SHARE)
}

/** Adds J · move to the residuals. */
function addMoved({ jacobian }: Place, move: Float64Array, into: Float64Array): void {
  const size = move.length
  for (let i = 0; i < into.length; i++) {
    let moved = 0
    for (let k = 0; k < size; k++) moved += jacobian[i * size + k]! * move[k]!
    into[i] = into[i]! + moved
  }
}

/** |J s|² + 2 λ |D s|²: what the step takes off the sum of squares, free of the cancellation in a difference. */
function gainInside({ room }: Descent, columns: number, damping: number): number {
  const { a, rows, diagonal, pivot } = room.qr
  const { step } = room.step
  let gain = 0
  for (let i = 0; i < columns; i++) {
    let part = diagonal[i]! * step[pivot[i]!]!
    for (let j = i + 1; j < columns; j++) part += a[j * rows + i]! * step[pivot[j]!]!
    gain += part * part
  }
  for (let c = 0; c < columns; c++) gain += 2 * damping * (room.extent[c]! * step[c]!) ** 2
  return gain
}

export type BoundedStep = {
  /** What it promises to take off the sum of squares. */
  readonly gain: number
  readonly damping: number
  /** It met a bound: the factors are now those of fewer columns. */
  readonly clipped: boolean
}

/**
 * Fills `move` with a damped step inside the radius and the bounds. Parameters that would cross a bound stop there,
 * and the others are solved again for what is then left.
 */
export function boundedStep(
  descent: Descent,
  place: Place,
  columns: number,
  rank: number,
  radius: number,
  before: number,
): BoundedStep {
  const { lower, upper, room } = descent
  const { qr, step, move, free, lengths, trialResiduals } = room
  const { p, residuals: r } = place
  let left = columns
  let standing = rank
  let damping = before
  let clipped = false
  move.fill(0)
  while (left > 0) {
    damping = dampedStep(qr, left, standing, step, room.extent, radius, damping)
    let crossed = 0
    for (let c = 0; c < left; c++) {
      const k = free[c]!
      const by = step.step[c]! / (lengths[k]! || 1)
      const to = p[k]! + by
      if (to < lower[k]! || to > upper[k]!) {
        move[k] = (to < lower[k]! ? lower[k]! : upper[k]!) - p[k]!
        crossed++
      } else {
        move[k] = by
        free[c - crossed] = k
      }
    }
    if (crossed === 0) break
    clipped = true
    left -= crossed
    for (let c = 0; c < left; c++) move[free[c]!] = 0
    trialResiduals.set(r)
    addMoved(place, move, trialResiduals)
    if (left > 0) standing = factoriseFree(descent, place, left, trialResiduals)
  }
  if (!clipped) return { gain: gainInside(descent, columns, damping), damping, clipped }
  trialResiduals.fill(0)
  addMoved(place, move, trialResiduals)
  let gain = 0
  for (let i = 0; i < r.length; i++) gain -= trialResiduals[i]! * (2 * r[i]! + trialResiduals[i]!)
  return { gain, damping, clipped }
}
