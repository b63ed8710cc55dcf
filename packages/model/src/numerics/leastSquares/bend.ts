import { sameDamping } from './dampedStep.ts'
import type { Descent, Place } from './descentRoom.ts'
import { turn } from './pivotedQr.ts'

/** How far along the step its bend is felt for. */
const FELT_AT = 0.1
/** A bend of more than this part of the step says that the parabola no longer holds. */
const MOST = 0.75

/**
 * Bends a damped step along the valley: adds half the acceleration that follows from the residuals' second derivative
 * along it. Without, a search creeps through curved valleys by steps that stay short. Gives the evaluations it took.
 *
 *   (JᵀJ + λ D²) a = −Jᵀ r″,  r″ = (2/h) ((r(p + h s) − r)/h − J s),  s → s + a/2 where |D a| ≤ ¾ |D s|
 *
 * Source  Transtrum and Sethna 2012, arXiv:1201.5885.
 */
export function bend(
  descent: Descent,
  place: Place,
  columns: number,
  damping: number,
  length: number,
): number {
  const { residuals, lower, upper, room } = descent
  const { qr, step, move, turned, trial, trialResiduals, free, lengths, extent } = room
  const { p, residuals: r, jacobian } = place
  const size = p.length
  for (let k = 0; k < size; k++) trial[k] = p[k]! + FELT_AT * move[k]!
  if (!residuals.evaluate(trial, trialResiduals)) return 1
  for (let i = 0; i < r.length; i++) {
    let along = 0
    for (let k = 0; k < size; k++) along += jacobian[i * size + k]! * move[k]!
    turned[i] = (2 / FELT_AT) * ((trialResiduals[i]! - r[i]!) / FELT_AT - along)
  }
  turned.fill(0, r.length)
  turn(qr, columns, turned)
  const bent = sameDamping(qr, columns, step, turned, extent, damping)
  if (!(2 * bent <= MOST * length)) return 1
  for (let c = 0; c < columns; c++) {
    const k = free[c]!
    const to = p[k]! + move[k]! + (0.5 * step.step[c]!) / (lengths[k]! || 1)
    move[k] = Math.min(Math.max(to, lower[k]!), upper[k]!) - p[k]!
  }
  return 1
}
