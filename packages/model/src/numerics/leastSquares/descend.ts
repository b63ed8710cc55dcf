import { dampedStep, type StepRoom, stepRoom } from './dampedStep.ts'
import { coarseDifferences, type DifferenceRoom, differenceRoom, fineDifferences } from './differences.ts'
import type { Ending } from './endings.ts'
import { backSubstitute, factorise, type PivotedQr, pivotedQr, rankOf, turn } from './pivotedQr.ts'
import type { Residuals } from './question.ts'

/** What stays the same over all starts of one question. */
export type Descent = {
  readonly residuals: Residuals
  readonly lower: Float64Array
  readonly upper: Float64Array
  /** Below these sizes a parameter counts as zero. */
  readonly least: Float64Array
  readonly tolerance: number
  readonly most: number
  readonly room: DescentRoom
}

type DescentRoom = {
  readonly qr: PivotedQr
  readonly step: StepRoom
  readonly differences: DifferenceRoom
  readonly turned: Float64Array
  readonly trial: Float64Array
  readonly trialResiduals: Float64Array
  readonly move: Float64Array
  readonly sizes: Float64Array
  readonly lengths: Float64Array
  readonly scale: Float64Array
  readonly extent: Float64Array
  readonly free: Int32Array
}

export function descentRoom({ count, size }: Residuals): DescentRoom {
  const qr = pivotedQr(count, size)
  return {
    qr,
    step: stepRoom(size),
    differences: differenceRoom(count, size),
    turned: new Float64Array(qr.rows),
    trial: new Float64Array(size),
    trialResiduals: new Float64Array(count),
    move: new Float64Array(size),
    sizes: new Float64Array(size),
    lengths: new Float64Array(size),
    scale: new Float64Array(size),
    extent: new Float64Array(size),
    free: new Int32Array(size),
  }
}

/** Where one search from one start ended. */
export type Descended = {
  readonly ending: Ending
  readonly p: Float64Array
  readonly residuals: Float64Array
  readonly jacobian: Float64Array
  readonly atBound: Uint8Array
  readonly rank: number
  readonly sumOfSquares: number
  readonly iterations: number
  readonly evaluations: number
}

/** Columns of unit length that differ by less than this from what the others span add nothing but rounding. */
export const RANK_SHARE = 1e-10
/** A step must bring this part of what it promised. */
const WORTH = 1e-4
/** Below this part of the sum of squares its own rounding hides whether a step helped. */
const HIDDEN = 1e-14
/** How often a step may be taken on trust, its gain being hidden. */
const TRUSTED = 12
/** The radius to begin with, in lengths of the parameters as the columns measure them. */
const FIRST_RADIUS = 1
/** A parameter that would still change by this part of itself has not arrived, however little that gains. */
const ARRIVED = 1e-2
/** What counts as arrived when rounding forbids to come closer. */
const ROUNDED_STEP = 1e-6
const ROUNDED_GAIN = 1e-5

const squares = (v: Float64Array): number => {
  let sum = 0
  for (let i = 0; i < v.length; i++) sum += v[i]! * v[i]!
  return sum
}

/**
 * Damped least squares from one start: a trust region in scaled parameters, held inside the bounds by an active set.
 *
 *   (JᵀJ + λ D²) s = −Jᵀ r,  |D s| ≤ Δ
 *
 * Δ follows the gain ratio, what a step brought over what it promised; D grows with the longest a column has been.
 * It has converged when the undamped step is small, never because the damped one is.
 *
 * Source  Moré 1978, in Lecture Notes in Mathematics 630:105-116; Bates and Watts 1981, Technometrics 23:179-183 for
 *         the measure of convergence.
 */
export function descend(descent: Descent, start: Float64Array): Descended {
  const { residuals, lower, upper, least, tolerance, most, room } = descent
  const { count, size } = residuals
  const { qr, step, turned, trial, trialResiduals, move, sizes, lengths, scale, extent, free } = room
  const p = Float64Array.from(start, (value, k) => Math.min(Math.max(value, lower[k]!), upper[k]!))
  const r = new Float64Array(count)
  const jacobian = new Float64Array(count * size)
  const atBound = new Uint8Array(size)
  const analytic = residuals.jacobian !== undefined
  const differences = { residuals, room: room.differences, lower, upper }
  let fine = analytic
  let iterations = 0
  let evaluations = 1
  let rank = 0
  let trusted = 0
  let damping = 0
  let radius = 0
  /** The last step met a bound: the factors are those of fewer columns. */
  let clipped = false
  let sum = residuals.evaluate(p, r) ? squares(r) : Number.NaN
  const ended = (ending: Ending): Descended => ({
    ending,
    p,
    residuals: r,
    jacobian,
    atBound,
    rank,
    sumOfSquares: sum,
    iterations,
    evaluations,
  })
  if (!Number.isFinite(sum)) return ended('no answer at the start')
  scale.fill(0)

  /** Fills the factorised columns with those that are free, each of unit length, and Qᵀ r into `step.turned`. */
  const factoriseFree = (columns: number, from: Float64Array): number => {
    const { a, rows } = qr
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
    step.turned.set(turned.subarray(0, columns))
    return rankOf(qr, columns, RANK_SHARE)
  }

  const slopes = (): boolean => {
    if (residuals.jacobian) {
      if (!residuals.jacobian(p, jacobian)) return false
    } else {
      for (let k = 0; k < size; k++) sizes[k] = Math.max(Math.abs(p[k]!), least[k]!)
      const used = (fine ? fineDifferences : coarseDifferences)(differences, p, sizes, r, jacobian)
      evaluations += Math.abs(used)
      if (used < 0) return false
    }
    for (let k = 0; k < size; k++) {
      let column = 0
      for (let i = 0; i < count; i++) column += jacobian[i * size + k]! ** 2
      lengths[k] = Math.sqrt(column)
      if (!Number.isFinite(lengths[k]!)) return false
      scale[k] = Math.max(scale[k]!, lengths[k]!)
    }
    return true
  }

  /** Which parameters are free: those not at a bound that the residuals push them against. */
  const freeOnes = (): number => {
    let columns = 0
    for (let k = 0; k < size; k++) {
      const low = p[k]! <= lower[k]!
      const high = p[k]! >= upper[k]!
      atBound[k] = 0
      if (low || high) {
        let push = 0
        for (let i = 0; i < count; i++) push -= jacobian[i * size + k]! * r[i]!
        if ((low && push <= 0) || (high && push >= 0)) atBound[k] = 1
      }
      if (!atBound[k]) free[columns++] = k
    }
    return columns
  }

  /** Fills `move` with a step inside radius and bounds; gives the part of the sum of squares it promises to take. */
  const boundedStep = (columns: number): number => {
    let left = columns
    let standing = clipped ? factoriseFree(freeOnes(), r) : rank
    move.fill(0)
    clipped = false
    while (left > 0) {
      damping = dampedStep(qr, left, standing, step, extent, radius, damping)
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
      // the others answer to what the ones at their bounds leave
      trialResiduals.set(r)
      for (let c = 0; c < left; c++) move[free[c]!] = 0
      addMoved(trialResiduals)
      if (left > 0) standing = factoriseFree(left, trialResiduals)
    }
    if (clipped) {
      trialResiduals.fill(0)
      addMoved(trialResiduals)
      let gain = 0
      for (let i = 0; i < count; i++) gain -= trialResiduals[i]! * (2 * r[i]! + trialResiduals[i]!)
      return gain / sum
    }
    return unclippedGain(columns)
  }

  const addMoved = (into: Float64Array): void => {
    for (let i = 0; i < count; i++) {
      let moved = 0
      for (let k = 0; k < size; k++) moved += jacobian[i * size + k]! * move[k]!
      into[i] = into[i]! + moved
    }
  }

  /** |J s|² + 2 λ |D s|², which is free of the cancellation in a difference of sums. */
  const unclippedGain = (columns: number): number => {
    const { a, rows, diagonal, pivot } = qr
    let gain = 0
    for (let i = 0; i < columns; i++) {
      let part = diagonal[i]! * step.step[pivot[i]!]!
      for (let j = i + 1; j < columns; j++) part += a[j * rows + i]! * step.step[pivot[j]!]!
      gain += part * part
    }
    for (let c = 0; c < columns; c++) gain += 2 * damping * (extent[c]! * step.step[c]!) ** 2
    return gain / sum
  }

  const scaledLength = (v: Float64Array): number => {
    let total = 0
    for (let k = 0; k < size; k++) total += ((scale[k]! || 1) * v[k]!) ** 2
    return Math.sqrt(total)
  }

  for (;;) {
    if (sum === 0) {
      rank = slopes() ? factoriseFree(freeOnes(), r) : 0
      return ended('nothing left')
    }
    if (!slopes()) return ended('no slopes')
    if (radius === 0) radius = FIRST_RADIUS * (scaledLength(p) || Math.sqrt(sum))
    const columns = freeOnes()
    if (columns === 0) return ended('nothing free')
    rank = factoriseFree(columns, r)

    let gain = 0
    for (let c = 0; c < rank; c++) gain += step.turned[c]! ** 2
    gain = Math.sqrt(gain / sum)
    let farthest = 0
    for (let c = 0; c < columns; c++) step.solved[c] = -step.turned[c]!
    backSubstitute(qr, columns, rank, step.solved)
    for (let c = 0; c < columns; c++) {
      const k = free[qr.pivot[c]!]!
      const by = Math.abs(step.solved[c]!) / (lengths[k]! || 1)
      farthest = Math.max(farthest, by / Math.max(Math.abs(p[k]!), least[k]!))
    }
    if (farthest <= tolerance || gain <= tolerance) {
      if (rank === columns && farthest <= ARRIVED && !fine) {
        fine = true
        continue
      }
      if (rank < columns) return ended('undetermined')
      if (farthest > ARRIVED) return ended('running away')
      return ended(farthest <= tolerance ? 'small step' : 'small gain')
    }
    if (iterations >= most) return ended('too many iterations')
    iterations++

    clipped = false
    for (;;) {
      const promised = boundedStep(columns)
      const length = scaledLength(move)
      for (let k = 0; k < size; k++) trial[k] = p[k]! + move[k]!
      for (let k = 0; k < size; k++) trial[k] = Math.min(Math.max(trial[k]!, lower[k]!), upper[k]!)
      evaluations++
      const next = residuals.evaluate(trial, trialResiduals) ? squares(trialResiduals) : Number.NaN
      const brought = Number.isFinite(next) ? 1 - next / sum : -1
      const ratio = promised > 0 ? brought / promised : -1
      const trust = promised <= HIDDEN && brought > -HIDDEN * count && trusted < TRUSTED
      if (ratio <= 0.25 && !trust) {
        // the lowest point of the parabola through value and slope here and value there
        const slope = -promised
        const shrink =
          brought >= 0 ? 0.5 : Math.max(0.1, Math.min(0.5, (0.5 * slope) / (slope + 0.5 * brought)))
        radius = shrink * Math.min(radius, length / 0.1)
        damping /= shrink
      } else if (damping === 0 || ratio >= 0.75) {
        radius = length / 0.5
        damping *= 0.5
      }
      if (ratio > WORTH || trust) {
        if (trust) trusted++
        p.set(trial)
        r.set(trialResiduals)
        sum = next
        break
      }
      if (radius <= Number.EPSILON * scaledLength(p) || length === 0 || promised <= 0) {
        if (!fine) {
          fine = true
          radius = 0
          break
        }
        return ended(
          rank === columns && (farthest <= ROUNDED_STEP || gain <= ROUNDED_GAIN) && farthest <= ARRIVED
            ? 'rounding'
            : rank < columns
              ? 'undetermined'
              : 'no lower',
        )
      }
    }
  }
}
