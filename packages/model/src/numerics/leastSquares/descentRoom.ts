import { type StepRoom, stepRoom } from './dampedStep.ts'
import { type DifferenceRoom, differenceRoom } from './differences.ts'
import { type PivotedQr, pivotedQr } from './pivotedQr.ts'
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

/** Arrays that every search of one question works in, so that none is made on the way. */
export type DescentRoom = {
  readonly qr: PivotedQr
  readonly step: StepRoom
  readonly differences: DifferenceRoom
  readonly turned: Float64Array
  readonly trial: Float64Array
  readonly trialResiduals: Float64Array
  readonly move: Float64Array
  readonly sizes: Float64Array
  /** Of the Jacobian's columns, now. */
  readonly lengths: Float64Array
  /** Of the same, the longest so far: what a parameter is measured by. */
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

/** Where a search stands: the residuals and their slopes belong to p. */
export type Place = {
  readonly p: Float64Array
  readonly residuals: Float64Array
  readonly jacobian: Float64Array
  readonly atBound: Uint8Array
}

export const squares = (v: Float64Array): number => {
  let sum = 0
  for (let i = 0; i < v.length; i++) sum += v[i]! * v[i]!
  return sum
}
