import { gaussLegendre } from '../numerics/index.ts'
import type { Metres } from '../quantities/index.ts'
import { type GroovedSurface, isGrooved, type Surface } from '../roller/index.ts'
import { type Curve, curveOf, shearOf, type Turf } from '../turf/index.ts'
import { newPeriod, period } from './gapKernel.ts'
import { panelBelow, pieceBelow, thetaOfPole } from './matReach.ts'

/** A mat at rest in mid-gap is followed down to this y: 1e-13 of the sinkage. */
const FOLLOWED = 30
const { nodes, weights } = gaussLegendre(16)

type Mat = { readonly distance: number; readonly depth: number }[]

/** The mat from the land edge to its turning point or the floor in at least so many steps, and the area under it. */
function hangingMat(
  curve: Curve,
  shear: number,
  sinkage: number,
  y: number,
  steps: number,
): { mat: Mat; area: number; work: number } {
  const turning = sinkage / Math.cosh(y)
  const poleTheta = thetaOfPole(curve, turning)
  const mat: Mat = [{ distance: 0, depth: sinkage }]
  const scale = Math.sqrt(shear / 2) * turning
  let distance = 0
  let area = 0
  let work = 0
  let top = y
  while (top > 0) {
    const length = Math.min(panelBelow(top, y - top, poleTheta), y / steps)
    const end = pieceBelow(curve, turning, top, top - length)
    const bottom = end > Number.EPSILON * y ? end : 0
    for (let i = 0; i < nodes.length; i++) {
      const theta = bottom + (top - bottom) * nodes[i]!
      const by = 2 * turning * Math.sinh(theta / 2) ** 2
      const dy =
        (weights[i]! * (top - bottom) * scale * Math.sinh(theta)) / Math.sqrt(curve.workBetween(turning, by))
      distance += dy
      area += dy * (turning + by)
      work += dy * curve.work(turning + by)
    }
    mat.push({ distance, depth: turning * Math.cosh(bottom) })
    top = bottom
  }
  return { mat, area, work }
}

type Hang = { readonly mat: Mat; readonly area: number; readonly work: number }

/** Mat over half a gap, from the land edge; the area under it and the work in the turf count the floor too. */
export function halfGap(
  curve: Curve,
  shear: number,
  surface: GroovedSurface,
  sinkage: Metres,
  steps: number,
): Hang {
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
      work: half * curve.work(lowest),
    }
  const y = lowest > 0 ? Math.min(Math.acosh(sinkage / lowest), FOLLOWED) : FOLLOWED
  const { mat, area, work } = hangingMat(curve, shear, sinkage, y, steps)
  const reached = mat.filter(({ distance }) => distance < half)
  const onFloor = touching ? Math.max(0, half - (mat.at(-1)?.distance ?? 0)) : 0
  return {
    mat: [...reached, { distance: half, depth: lowest }],
    area: area + onFloor * lowest,
    work: work + onFloor * curve.work(lowest),
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
  return (
    (surface.land * sinkage + 2 * halfGap(curveOf(turf.law), shearOf(turf), surface, sinkage, 1).area) /
    surface.pitch
  )
}

/**
 * Mean work in the turf over one pitch under the lowest line; what the mat's shear holds is not counted, for it comes
 * back whole.
 *
 *   [w_l Φ(z) + ∫ over the gap Φ(u) dy]/s_p
 *
 * Units   [J/m²]
 * Source  derived (docs/physics.md §3.3)
 */
export const meanMatWork = (curve: Curve, shear: number, surface: GroovedSurface, sinkage: Metres): number =>
  (surface.land * curve.work(sinkage) + 2 * halfGap(curve, shear, surface, sinkage, 1).work) / surface.pitch
