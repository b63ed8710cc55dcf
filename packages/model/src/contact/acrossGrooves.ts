import {
  InputError,
  type Metres,
  type NewtonsPerMetre,
  numberProblem,
  type Pascals,
  refuse,
} from '../quantities/index.ts'
import { isGrooved, type Surface, surfaceProblems } from '../roller/index.ts'
import { curveOf, shearOf, type Turf, turfProblems } from '../turf/index.ts'
import { newPeriod, period } from './gapKernel.ts'
import { halfGap } from './hangingMat.ts'

type Point = { readonly position: Metres; readonly sinkage: Metres; readonly pressure: Pascals }

export type AcrossGrooves = {
  /** Load of a pitch over that of a flat at the same sinkage. */
  readonly bearingFraction: number
  readonly meanPressure: Pascals
  /** Mat depth in mid-gap. */
  readonly lowestSinkage: Metres
  /** How far the mat stands up into the groove. */
  readonly relief: Metres
  readonly floor: 'free' | 'touching'
  /** Line force on each land edge, in no pressure of `across`. */
  readonly edgeForce: NewtonsPerMetre
  /** The mat over one pitch, from mid-gap to mid-gap, 0 in the middle of the land. */
  readonly across: readonly Point[]
}

/** How finely the mat is told, from the land edge to its turning point. */
const PROFILE_STEPS = 24

/** A groove without depth or gap is a flat. */
const flat = (pitch: Metres, sinkage: Metres, pressure: Pascals): AcrossGrooves => ({
  bearingFraction: 1,
  meanPressure: pressure,
  lowestSinkage: sinkage,
  relief: 0,
  floor: 'free',
  edgeForce: 0,
  across: [-pitch / 2, pitch / 2].map(position => ({ position, sinkage, pressure })),
})

/**
 * The mat across the grooves under the lowest line of a roller: exact for one period and any law.
 *
 *   load of a pitch = p(z) w_l + 2 √(2G (Φ(z) − Φ(u_m)));  bearing fraction = that over p(z) s_p
 *
 * Holds   vertical flanks; the mat's slope at the land edge small (√(2(Φ(z) − Φ(u_m))/G) below ½)
 * Sign    sinkage positive into the turf
 * Units   sinkage [m] → pressure [Pa], line force [N/m]
 * Throws  InputError when surface, turf or sinkage make no sense, or at the locking depth
 * Source  derived (docs/physics.md §3.3)
 */
export function acrossGrooves(question: {
  readonly surface: Surface
  readonly turf: Turf
  readonly sinkage: Metres
}): AcrossGrooves {
  const { surface, turf, sinkage } = question
  refuse([...surfaceProblems(surface, 'surface'), ...turfProblems(turf, 'turf')])
  const curve = curveOf(turf.law)
  refuse(
    numberProblem(sinkage, 'sinkage', 'sinkage', {
      above: 0,
      ...(Number.isFinite(curve.limit) ? { atMost: curve.limit } : {}),
    }),
  )
  if (surface.kind !== 'grooved')
    throw new InputError({ path: 'surface.kind', expected: 'grooved', received: surface.kind })
  const { pitch } = surface
  const pressure = curve.pressure(sinkage)
  const halfLand = surface.land / 2
  const onLand = [-halfLand, halfLand].map(position => ({ position, sinkage, pressure }))
  if (!isGrooved(surface)) return flat(pitch, sinkage, pressure)
  const state = newPeriod()
  period(curve, shearOf(turf), surface, surface.depth, sinkage, surface.depth, state)
  const right = halfGap(curve, shearOf(turf), surface, sinkage, PROFILE_STEPS).mat.map(
    ({ distance, depth }) => ({
      position: halfLand + distance,
      sinkage: depth,
      pressure: curve.pressure(depth),
    }),
  )
  const left = right.map(point => ({ ...point, position: -point.position })).reverse()
  return {
    bearingFraction: state.load / (pressure * surface.pitch),
    meanPressure: state.load / surface.pitch,
    lowestSinkage: state.lowest,
    relief: sinkage - state.lowest,
    floor: state.touching ? 'touching' : 'free',
    edgeForce: state.edgeForce,
    across: [...left, ...onLand, ...right],
  }
}
