import { cycle, leaveRest } from './cycle.ts'
import type { Level } from './hierarchy.ts'

export const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!
  return sum
}

/** direction = change + turn · direction. */
function turnTo(direction: Float64Array, change: Float64Array, turn: number): void {
  for (let k = 0; k < direction.length; k++) direction[k] = change[k]! + turn * direction[k]!
}

/** to += step · along; returns what it has become, squared. */
function move(to: Float64Array, step: number, along: Float64Array): number {
  let squared = 0
  for (let k = 0; k < to.length; k++) {
    const now = to[k]! + step * along[k]!
    to[k] = now
    squared += now * now
  }
  return squared
}

/** Room that the steps need on the finest grid. */
export type Room = {
  readonly direction: Float64Array
  readonly image: Float64Array
  readonly nothing: Float64Array
}

export const roomFor = (size: number): Room => ({
  direction: new Float64Array(size),
  image: new Float64Array(size),
  nothing: new Float64Array(size),
})

/**
 * Conjugate gradients with one V-cycle a step for (A + springs) d = rhs of the finest level, added to `answer`. Ends when
 * the rest has fallen to `enough` of what it was. Returns the cycles used.
 */
export function gradients(
  levels: readonly Level[],
  { direction, image, nothing }: Room,
  answer: Float64Array,
  enough: number,
  most: number,
): number {
  const finest = levels[0]!
  const { rhs, change } = finest
  const enoughLeft = enough * enough * dot(rhs, rhs)
  let before = 0
  for (let used = 1; used <= most; used++) {
    cycle(levels)
    const now = dot(rhs, change)
    if (!(now > 0)) return used
    if (used === 1) direction.set(change)
    else turnTo(direction, change, now / before)
    // image is minus what the operator makes of the direction
    const step = -now / leaveRest(finest, direction, nothing, image)
    move(answer, step, direction)
    const left = move(rhs, step, image)
    if (left <= enoughLeft) return used
    before = now
  }
  return most
}
