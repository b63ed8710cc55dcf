import { isGrooved, type Roller } from '../roller/index.ts'
import type { Curve } from '../turf/index.ts'
import type { Side } from './smoothSide.ts'

/** How far a free end carries beyond the face, m, and how that grows with sinkage. */
export type FreeEnd = { readonly reach: number; readonly slope: number }

/**
 * What a free end adds to the length of a roller.
 *
 *   l_e = √(2 G Φ(z₀))/p(z₀)
 *
 * Source  derived (docs/physics.md §3.2)
 */
export function freeEnd(curve: Curve, shear: number, sinkage: number): FreeEnd {
  if (shear === 0) return { reach: 0, slope: 0 }
  const pressure = curve.pressure(sinkage)
  const work = curve.work(sinkage)
  const reach = Math.sqrt(2 * shear * work) / pressure
  return { reach, slope: reach * (pressure / (2 * work) - curve.slope(sinkage) / pressure) }
}

type Part = {
  readonly roller: Roller
  readonly leading: Side
  readonly trailing: Side
  readonly end: FreeEnd
  /** Both sides, standing, between the lands; absent for a smooth roller. */
  readonly grooves?: { readonly load: number; readonly slope: number }
}

/**
 * The whole roller from its two sides.
 *
 *   smooth   W = q (L + 2 l_e)
 *   grooved  W = q_g (L − w_l) + q_s (w_l + 2 l_e): a grooved roller ends on lands; standing to rolling as on the
 *            smooth roller, which is exact without spread
 *
 * Units   [N/m], [N], dW/dz [N/m]
 * Source  derived (docs/physics.md §3.2, §3.3)
 */
export function wholeRoller({ roller: { surface, length }, leading, trailing, end, grooves }: Part) {
  const smooth = leading.load + trailing.load
  const smoothSlope = leading.slope + trailing.slope
  const beyond = 2 * smooth * end.slope
  const sides = { leading, trailing, smoothLineLoad: smooth, beyondEnd: end.reach }
  if (!isGrooved(surface) || !grooves) {
    const whole = length + 2 * end.reach
    return { ...sides, lineLoad: smooth, load: smooth * whole, stiffness: smoothSlope * whole + beyond }
  }
  const rolling = smooth / (2 * leading.load)
  const rollingSlope = (smoothSlope - 2 * rolling * leading.slope) / (2 * leading.load)
  const line = rolling * grooves.load
  const lineSlope = rolling * grooves.slope + rollingSlope * grooves.load
  const ends = surface.land + 2 * end.reach
  return {
    ...sides,
    lineLoad: line,
    load: line * (length - surface.land) + smooth * ends,
    stiffness: lineSlope * (length - surface.land) + smoothSlope * ends + beyond,
  }
}
