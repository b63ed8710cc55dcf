import { bend } from './bend.ts'
import { boundedStep, factoriseFree, freeParameters } from './boundedStep.ts'
import { type Descent, type Place, squares } from './descentRoom.ts'
import type { Ending } from './endings.ts'
import { backSubstitute } from './pivotedQr.ts'
import { slopesAt } from './slopes.ts'

/** Where one search from one start ended. */
export type Descended = Place & {
  readonly ending: Ending
  readonly rank: number
  readonly sumOfSquares: number
  readonly iterations: number
  readonly evaluations: number
}

/** A step must bring this part of what it promised; from a quarter on the radius stays, from three it grows. */
const WORTH = 1e-4
const POOR = 0.25
const GOOD = 0.75
/** How far one turn may shrink the radius. */
const MOST_SHRINK = 0.1
const LEAST_SHRINK = 0.5
const GROW = 2
/** Below this part of the sum of squares its own rounding hides whether a step helped. */
const HIDDEN = 1e-14
/** How often a step may be taken on trust, its gain being hidden. */
const TRUSTED = 12
/** So many iterations must bring down the sum of squares by this part: other starts are better tried than this one. */
const PATIENCE = 50
const WORTH_GOING_ON = 0.01
/** Unless the slopes promise no more than this part of the residuals: then it is arriving. */
const STILL_OFF = 0.01
/** A parameter that would still change by this part of itself has not arrived, however little that gains. */
const ARRIVED = 1e-2
/** What counts as arrived when rounding forbids to come closer. */
const ROUNDED_STEP = 1e-6
const ROUNDED_GAIN = 1e-5

type Undamped = {
  /** The part of the residuals' length that the slopes could still explain. */
  readonly share: number
  /** The furthest that a parameter would go, as a part of itself. */
  readonly farthest: number
}

/** What the step without damping would do, the measure of whether the search has arrived. */
function undamped(
  { room, least }: Descent,
  { p }: Place,
  columns: number,
  rank: number,
  sum: number,
): Undamped {
  const { qr, step, free, lengths } = room
  let explained = 0
  for (let c = 0; c < columns; c++) {
    step.solved[c] = -step.turned[c]!
    if (c < rank) explained += step.turned[c]! ** 2
  }
  backSubstitute(qr, columns, rank, step.solved)
  let farthest = 0
  for (let c = 0; c < columns; c++) {
    const k = free[qr.pivot[c]!]!
    const by = Math.abs(step.solved[c]!) / (lengths[k]! || 1)
    farthest = Math.max(farthest, by / Math.max(Math.abs(p[k]!), least[k]!))
  }
  return { share: Math.sqrt(explained / sum), farthest }
}

/** The length of v as the columns measure it. */
function measured({ room: { scale } }: Descent, v: Float64Array): number {
  let total = 0
  for (let k = 0; k < v.length; k++) total += ((scale[k]! || 1) * v[k]!) ** 2
  return Math.sqrt(total)
}

/** How much the radius shrinks: to the lowest point of the parabola through both ends and the slope at the first. */
const shrinkOf = (promised: number, brought: number): number =>
  brought >= 0
    ? LEAST_SHRINK
    : Math.max(MOST_SHRINK, Math.min(LEAST_SHRINK, (0.5 * promised) / (promised - 0.5 * brought)))

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
  const { residuals, lower, upper, tolerance, most, room } = descent
  const { count, size } = residuals
  const { trial, trialResiduals, move } = room
  const clamp = (value: number, k: number) => Math.min(Math.max(value, lower[k]!), upper[k]!)
  const place: Place = {
    p: Float64Array.from(start, clamp),
    residuals: new Float64Array(count),
    jacobian: new Float64Array(count * size),
    atBound: new Uint8Array(size),
  }
  const { p, residuals: r } = place
  let fine = residuals.jacobian !== undefined
  let iterations = 0
  let evaluations = 1
  let rank = 0
  let trusted = 0
  let damping = 0
  let radius = 0
  let sum = residuals.evaluate(p, r) ? squares(r) : Number.NaN
  const ended = (ending: Ending): Descended => ({
    ...place,
    ending,
    rank,
    sumOfSquares: sum,
    iterations,
    evaluations,
  })
  let before = Number.POSITIVE_INFINITY
  if (!Number.isFinite(sum)) return ended('no answer at the start')
  room.scale.fill(0)

  for (;;) {
    const used = slopesAt(descent, place, fine)
    evaluations += Math.abs(used)
    if (used < 0) return ended('no slopes')
    if (radius === 0) radius = measured(descent, p) || Math.sqrt(sum)
    const columns = freeParameters(descent, place)
    if (columns === 0) return ended('nothing free')
    rank = factoriseFree(descent, place, columns, r)
    if (sum === 0) return ended(rank < columns ? 'undetermined' : 'nothing left')

    const { share, farthest } = undamped(descent, place, columns, rank, sum)
    if (farthest <= tolerance || share <= tolerance) {
      if (rank < columns) return ended('undetermined')
      if (farthest > ARRIVED) return ended('running away')
      if (fine) return ended(farthest <= tolerance ? 'small step' : 'small gain')
      fine = true
      continue
    }
    if (iterations >= most) return ended('too many iterations')
    if (iterations % PATIENCE === 0) {
      if (share > STILL_OFF && sum > (1 - WORTH_GOING_ON) * before)
        return ended(rank < columns ? 'undetermined' : 'creeping')
      before = sum
    }
    iterations++

    let clipped = false
    for (;;) {
      if (clipped) factoriseFree(descent, place, freeParameters(descent, place), r)
      const step = boundedStep(descent, place, columns, rank, radius, damping)
      clipped = step.clipped
      damping = step.damping
      if (damping > 0 && !clipped)
        evaluations += bend(descent, place, columns, damping, measured(descent, move))
      for (let k = 0; k < size; k++) trial[k] = clamp(p[k]! + move[k]!, k)
      const length = measured(descent, move)
      evaluations++
      const next = residuals.evaluate(trial, trialResiduals) ? squares(trialResiduals) : Number.NaN
      const promised = step.gain / sum
      const brought = Number.isFinite(next) ? 1 - next / sum : -1
      const ratio = promised > 0 ? brought / promised : -1
      const trust = promised <= HIDDEN && brought > -HIDDEN * count && trusted < TRUSTED
      if (ratio <= POOR && !trust) {
        const shrink = shrinkOf(promised, brought)
        radius = shrink * Math.min(radius, length / MOST_SHRINK)
        damping /= shrink
      } else if (damping === 0 || ratio >= GOOD) {
        radius = GROW * length
        damping /= GROW
      }
      if (ratio > WORTH || trust) {
        if (trust) trusted++
        p.set(trial)
        r.set(trialResiduals)
        sum = next
        break
      }
      if (radius > Number.EPSILON * measured(descent, p) && length > 0 && promised > 0) continue
      if (!fine) {
        fine = true
        radius = 0
        break
      }
      if (rank < columns) return ended('undetermined')
      const near = farthest <= ROUNDED_STEP || (share <= ROUNDED_GAIN && farthest <= ARRIVED)
      return ended(near ? 'rounding' : 'no lower')
    }
  }
}
