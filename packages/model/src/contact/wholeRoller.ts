import { isGrooved, type Roller } from '../roller/index.ts'
import type { Curve } from '../turf/index.ts'
import type { QuickGroove } from './quickGroove.ts'
import type { Side } from './smoothSide.ts'

/** A roller pressed to one sinkage. */
export type Pressing = {
  readonly sinkage: number
  /** Per length, free ends left out, N/m. */
  readonly lineLoad: number
  /** Load of the whole roller, free ends included, N. */
  readonly load: number
  /** d load/d sinkage, N/m. */
  readonly stiffness: number
  readonly leading: Side
  readonly trailing: Side
  /** Line load of the smooth roller at the same sinkage, N/m. */
  readonly smoothLineLoad: number
  /** How far each free end carries beyond the face, m. */
  readonly beyondEnd: number
  readonly grooves?: QuickGroove
}

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
  readonly sinkage: number
  readonly roller: Roller
  readonly leading: Side
  readonly trailing: Side
  readonly end: FreeEnd
  /** Between the lands, standing; absent for a smooth roller. */
  readonly grooves?: QuickGroove
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
export function wholeRoller({ sinkage, roller, leading, trailing, end, grooves }: Part): Pressing {
  const { surface, length } = roller
  const smooth = leading.load + trailing.load
  const smoothSlope = leading.slope + trailing.slope
  const beyond = 2 * smooth * end.slope
  // written out, not spread: this runs at every step of every search
  if (!isGrooved(surface) || !grooves) {
    const whole = length + 2 * end.reach
    return {
      sinkage,
      lineLoad: smooth,
      load: smooth * whole,
      stiffness: smoothSlope * whole + beyond,
      leading,
      trailing,
      smoothLineLoad: smooth,
      beyondEnd: end.reach,
    }
  }
  const rolling = smooth / (2 * leading.load)
  const rollingSlope = (smoothSlope - 2 * rolling * leading.slope) / (2 * leading.load)
  const line = rolling * grooves.load
  const lineSlope = rolling * grooves.slope + rollingSlope * grooves.load
  const ends = surface.land + 2 * end.reach
  return {
    sinkage,
    lineLoad: line,
    load: line * (length - surface.land) + smooth * ends,
    stiffness: lineSlope * (length - surface.land) + smoothSlope * ends + beyond,
    leading,
    trailing,
    smoothLineLoad: smooth,
    beyondEnd: end.reach,
    grooves,
  }
}
