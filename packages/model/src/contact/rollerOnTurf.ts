import { isGrooved, type Roller } from '../roller/index.ts'
import { curveOf, shearOf, type Turf } from '../turf/index.ts'
import { type Arc, arcOf } from './arc.ts'
import type { Condition } from './condition.ts'
import { quickGroove } from './quickGroove.ts'
import { smoothSide, trailingOnParabola } from './smoothSide.ts'
import { grooveKinks } from './stripIntegral.ts'
import { freeEnd, type Pressing, wholeRoller } from './wholeRoller.ts'

/** One roller on one turf, its constants worked out once. */
export type RollerOnTurf<Pressed extends Pressing = Pressing> = {
  /** Sinkage at which the roller begins to carry; 0 unless given: on fresh turf at once. */
  readonly from?: number
  /** Greatest sinkage that is answered. */
  readonly limit: number
  /** Sinkage at which the groove floor is first touched: load then goes as its root; Infinity when never. */
  readonly touchFrom: number
  readonly at: (sinkage: number) => Pressed
}

type Question = {
  readonly roller: Roller
  readonly turf: Turf
  readonly condition: Condition
  readonly arc?: Arc
}

/** A circle is answered to just under its axis. */
const UNDER_AXIS = 0.999

/**
 * Load of a roller against sinkage.
 *
 *   standing q = 2E;  mowing q = (1 + √λ) E on a parabola, both sides integrated on a circle
 *   W from them as in wholeRoller
 *
 * Holds   L − w_l need not be a whole number of pitches: the number of lands is taken as it comes
 * Source  derived (docs/physics.md §3.1 to 3.3)
 */
export function rollerOnTurf({ roller, turf, condition, arc: arcName = 'parabola' }: Question): RollerOnTurf {
  const curve = curveOf(turf.law)
  const shear = shearOf(turf)
  const arc = arcOf(arcName)
  const radius = roller.diameter / 2
  const rebound = condition.kind === 'standing' ? 1 : (turf.rebound ?? 1)
  const { surface } = roller
  const kinks = isGrooved(surface) ? grooveKinks(curve, shear, surface) : undefined
  const side = (sinkage: number, part: number, G = shear) => smoothSide(curve, G, radius, arc, part, sinkage)
  const at = (sinkage: number): Pressing => {
    const leading = side(sinkage, 1)
    const trailing =
      rebound === 1
        ? leading
        : arcName === 'parabola'
          ? trailingOnParabola(leading, rebound)
          : side(sinkage, rebound)
    const end = freeEnd(curve, shear, sinkage)
    if (!isGrooved(surface) || !kinks) return wholeRoller({ sinkage, roller, leading, trailing, end })
    const springs = shear > 0 ? side(sinkage, 1, 0) : leading
    const grooves = quickGroove(curve, shear, radius, arc, surface, kinks, sinkage, {
      spreading: leading,
      springs,
    })
    return wholeRoller({ sinkage, roller, leading, trailing, end, grooves })
  }
  return {
    limit: Math.min(curve.limit, arc.tallest * radius * UNDER_AXIS),
    touchFrom: kinks?.touchFrom ?? Number.POSITIVE_INFINITY,
    at,
  }
}
