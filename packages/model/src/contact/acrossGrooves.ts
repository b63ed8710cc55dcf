import { gaussLegendre } from '../numerics/index.ts'
import {
  InputError,
  type Metres,
  type NewtonsPerMetre,
  numberProblem,
  type Pascals,
  refuse,
} from '../quantities/index.ts'
import { isGrooved, type Surface, surfaceProblems } from '../roller/index.ts'
import { type Curve, curveOf, shearOf, type Turf, turfProblems } from '../turf/index.ts'
import { newPeriod, period } from './gapKernel.ts'
import { panelBelow, thetaOfPole } from './matReach.ts'

type Point = { readonly position: Metres; readonly sinkage: Metres; readonly pressure: Pascals }

export type AcrossGrooves = {
  /** Load of a pitch over that of a flat at the same sinkage. */
  readonly bearingFraction: number
  readonly meanPressure: Pascals
  /** Mat depth in mid-gap. */
  readonly lowestSinkage: Metres
  /** How far the mat stands up into the groove. */
  readonly relief: Metres
  readonly floor: 'free' | 'touching' | 'none'
  /** Line force on each land edge, in no pressure of `across`. */
  readonly edgeForce: NewtonsPerMetre
  /** The mat over one pitch, from mid-gap to mid-gap, 0 in the middle of the land. */
  readonly across: readonly Point[]
}

/** A mat at rest in mid-gap is followed down to this y: 1e-13 of the sinkage. */
const FOLLOWED = 30
const STEPS = 24
const { nodes, weights } = gaussLegendre(16)

type Mat = { readonly distance: number; readonly depth: number }[]

/** The mat from the land edge to its turning point or the floor, and the area under it. */
function hangingMat(curve: Curve, shear: number, sinkage: number, y: number): { mat: Mat; area: number } {
  const turning = sinkage / Math.cosh(y)
  const poleTheta = thetaOfPole(curve, turning)
  const mat: Mat = [{ distance: 0, depth: sinkage }]
  const scale = Math.sqrt(shear / 2) * turning
  let distance = 0
  let area = 0
  let top = y
  while (top > 0) {
    const length = Math.min(panelBelow(top, y - top, poleTheta), y / STEPS)
    const bottom = top - length > Number.EPSILON * y ? top - length : 0
    for (let i = 0; i < nodes.length; i++) {
      const theta = bottom + (top - bottom) * nodes[i]!
      const by = 2 * turning * Math.sinh(theta / 2) ** 2
      const dy =
        (weights[i]! * (top - bottom) * scale * Math.sinh(theta)) / Math.sqrt(curve.workBetween(turning, by))
      distance += dy
      area += dy * (turning + by)
    }
    mat.push({ distance, depth: turning * Math.cosh(bottom) })
    top = bottom
  }
  return { mat, area }
}

type Hang = { readonly mat: Mat; readonly area: number }

/** Mat over half a gap, from the land edge; `area` under it counts the floor or the resting part. */
function halfGap(turf: Turf, surface: Extract<Surface, { kind: 'grooved' }>, sinkage: Metres): Hang {
  const curve = curveOf(turf.law)
  const shear = shearOf(turf)
  const half = (surface.pitch - surface.land) / 2
  const state = newPeriod()
  period(curve, shear, surface, surface.depth, sinkage, surface.depth, state)
  const { lowest, touching } = state
  if (shear === 0)
    return {
      mat: [
        { distance: 0, depth: lowest },
        { distance: half, depth: lowest },
      ],
      area: half * lowest,
    }
  const y = lowest > 0 ? Math.min(Math.acosh(sinkage / lowest), FOLLOWED) : FOLLOWED
  const { mat, area } = hangingMat(curve, shear, sinkage, y)
  const reached = mat.filter(({ distance }) => distance < half)
  const rest = half - (mat.at(-1)?.distance ?? 0)
  return {
    mat: [...reached, { distance: half, depth: lowest }],
    area: area + (touching && rest > 0 ? rest * lowest : 0),
  }
}

/**
 * Mean depth of the mat over one pitch under the lowest line: what a grooved roller leaves behind it.
 *
 *   linear law, floor free: bearing fraction × z
 *
 * Units   [m]
 * Source  docs/physics.md §2.3
 */
export function meanMatDepth(surface: Surface, turf: Turf, sinkage: Metres): Metres {
  if (!isGrooved(surface)) return sinkage
  return (surface.land * sinkage + 2 * halfGap(turf, surface, sinkage).area) / surface.pitch
}

/** A groove without depth or gap is a flat. */
const flat = (pitch: Metres, sinkage: Metres, pressure: Pascals): AcrossGrooves => ({
  bearingFraction: 1,
  meanPressure: pressure,
  lowestSinkage: sinkage,
  relief: 0,
  floor: 'none',
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
  const right = halfGap(turf, surface, sinkage).mat.map(({ distance, depth }) => ({
    position: halfLand + distance,
    sinkage: depth,
    pressure: curve.pressure(depth),
  }))
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
