import type { Curve } from '../turf/index.ts'
import { type MatReach, matReach } from './matReach.ts'

/** Beyond this y the mid-gap mat is below 1e-25 of the sinkage: at rest as far as a double can tell. */
const REST = 60
const MOST_TURNS = 60
/** A miss this small, relative, is mended along the tangent without another integral: that leaves its square. */
const TANGENT = 1e-6
/** While |1 − n| y is below this the reach is nearly straight in y; beyond, in u_m^((1−n)/2). */
const STRAIGHT = 0.5

/** Newton's step in the variable in which the reach is nearly straight; NaN when it steps past rest. */
function stepped(found: MatReach, power: number, sinkage: number, y: number, miss: number): number {
  const { byTurning, turning } = found
  // u_m = z/cosh y, so du_m/dy = −u_m tanh y
  if (Math.abs(1 - power) * y < STRAIGHT) return y + miss / (byTurning * turning * Math.tanh(y))
  const a = (1 - power) / 2
  const factor = (1 - (a * miss) / (byTurning * turning)) ** (1 / a)
  return factor > 0 ? Math.acosh(Math.max(1, sinkage / (turning * factor))) : Number.NaN
}

/**
 * Turning point of the mat in mid-gap: T(u_m, z) = g/2, by Newton's method kept inside a bracket. Fills `found`;
 * false when the mat comes to rest before mid-gap. Counts nothing and allocates nothing: innermost loop.
 */
export function turningPoint(
  curve: Curve,
  shear: number,
  gap: number,
  sinkage: number,
  start: number,
  found: MatReach,
): boolean {
  const half = gap / 2
  const power = curve.powerAtZero ?? 1
  let low = 0
  let high = REST
  const local = half / Math.sqrt((shear * sinkage) / curve.pressure(sinkage))
  let y = start > 0 && start < REST ? start : Math.min(local, REST / 2)
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    matReach(curve, shear, sinkage, y, found)
    const miss = found.reach - half
    let next = stepped(found, power, sinkage, y, miss)
    // a shallow mat's slope is a small difference: there the turning point must be nearer before it is mended
    if (Math.abs(miss) <= TANGENT * Math.min(1, y * y) * half && next < REST) {
      const rise = Math.sinh(next / 2)
      found.turning = sinkage / Math.cosh(next)
      found.work = curve.workBetween(found.turning, 2 * found.turning * rise * rise)
      return true
    }
    if (miss > 0) high = y
    else if (y === REST) return false
    else low = y
    if (!(next > low && next < high)) next = high === REST ? REST : (low + high) / 2
    if (high - low <= Number.EPSILON * high) return true
    y = next
  }
  return high < REST
}
