import { increasingRoot } from '../numerics/index.ts'
import type { GroovedSurface } from '../roller/index.ts'
import type { Curve } from '../turf/index.ts'
import type { ArcShape } from './arc.ts'
import { arcNodes } from './arcNodes.ts'
import { newPeriod, type Period, period } from './gapKernel.ts'
import { matReach, newMatReach, yOf } from './matReach.ts'

/**
 * Sinkages at which the load of a pitch has a kink: where the mid-gap mat leaves its rest, and where it first
 * touches the groove floor. Ascending; found once for a surface on a turf.
 */
export type GrooveKinks = {
  readonly at: readonly number[]
  /** Where the floor is first touched; Infinity when never. */
  readonly touchFrom: number
}

/** A floor met within this of the groove's depth, relative, is met at once: the mat hardly carries to mid-gap. */
const AT_ONCE = 1e-9

export const grooveKinks = (curve: Curve, shear: number, surface: GroovedSurface): GrooveKinks =>
  withCorners(kinksOfPitch(curve, shear, surface), curve.corners ?? [], surface.depth)

function kinksOfPitch(curve: Curve, shear: number, surface: GroovedSurface): GrooveKinks {
  const { depth } = surface
  const half = (surface.pitch - surface.land) / 2
  if (shear === 0) return { at: depth < curve.limit ? [depth] : [], touchFrom: depth }
  // the floor is met while the mid-gap mat is still at rest
  if (curve.restReach && curve.restReach(depth, shear) <= half) return { at: [depth], touchFrom: depth }
  const leavesRest = curve.restReach ? whereReached(curve.restReach, shear, half, depth) : 0
  const rests = leavesRest > 0 ? [leavesRest] : []
  const never = { at: rests, touchFrom: Number.POSITIVE_INFINITY }
  if (depth >= curve.limit) return never
  const scratch = newMatReach()
  const closest = depth * (1 + AT_ONCE)
  matReach(curve, shear, closest, yOf(closest, depth), scratch)
  if (scratch.reach <= half) return { at: [...rests, depth], touchFrom: depth }
  const touch = increasingRoot({
    evaluate: x => {
      const by = Math.exp(x)
      const sinkage = depth + by
      matReach(curve, shear, sinkage, yOf(sinkage, depth), scratch)
      // both ends move together: dT/dz at fixed relief
      const slope = shear / Math.sqrt(2 * shear * scratch.work) + scratch.byTurning
      return { value: Math.log(half / scratch.reach), slope: (-slope * by) / scratch.reach }
    },
    start: Math.log(depth),
    low: Math.log(depth * AT_ONCE),
    tolerance: 1e-9,
    ...(Number.isFinite(curve.limit) ? { high: Math.log(curve.limit - depth) } : {}),
  })
  if (touch.outcome !== 'converged') return never
  const touchFrom = depth + Math.exp(touch.at)
  return { at: [...rests, touchFrom], touchFrom }
}

const MOST_TURNS = 40
/** On ln z. */
const CLOSE = 1e-12

/** Sinkage at which a mat's reach of rest is half the gap, by the secant in logarithms: straight for a power law. */
function whereReached(
  reach: NonNullable<Curve['restReach']>,
  shear: number,
  half: number,
  depth: number,
): number {
  let x = Math.log(depth)
  let miss = Math.log(reach(depth, shear) / half)
  let next = x - Math.LN2
  for (let turn = 0; turn < MOST_TURNS && Math.abs(next - x) > CLOSE; turn++) {
    const after = Math.log(reach(Math.exp(next), shear) / half)
    const slope = (after - miss) / (next - x)
    x = next
    miss = after
    next = x - miss / slope
  }
  return Math.exp(next)
}

/** Sinkages at which a strip is split: the kinks of the pitch, the corners of the law, and those met on the floor. */
const withCorners = (kinks: GrooveKinks, corners: readonly number[], depth: number): GrooveKinks =>
  corners.length === 0
    ? kinks
    : {
        ...kinks,
        at: [...kinks.at, ...corners, ...corners.map(corner => corner + depth)].sort((a, b) => a - b),
      }

/** How deep the groove is at x, and how that grows: constant under a parabola; two circles on one axis draw apart. */
function localDepth(
  arc: ArcShape,
  radius: number,
  depth: number,
  x: number,
): { depth: number; slope: number } {
  if (arc.name === 'parabola') return { depth, slope: 0 }
  const inner = radius - depth
  if (x >= inner) return { depth: Number.POSITIVE_INFINITY, slope: 0 }
  const outerRise = Math.sqrt(radius * radius - x * x)
  const innerRise = Math.sqrt(inner * inner - x * x)
  return { depth: outerRise - innerRise, slope: x / innerRise - x / outerRise }
}

/** Where along the arc a kink lies; on a circle the touching of a floor that draws away from the lands. */
function kinkReach(
  arc: ArcShape,
  radius: number,
  sinkage: number,
  kink: number,
  depth: number,
  touchFrom: number,
) {
  if (arc.name === 'parabola' || kink !== touchFrom) return arc.reach(sinkage - kink, radius)
  const inner = radius - depth
  const rise = radius - sinkage + kink - depth
  return Math.sqrt(Math.max(inner * inner - rise * rise, 0))
}

export type Strip = {
  /** Both sides, N/m. */
  readonly load: number
  /** d load/d sinkage, Pa. */
  readonly slope: number
}

const scratch: Period = newPeriod()

/**
 * Grooved roller as strips that do not know of each other in the rolling direction.
 *
 *   q_strip = 2 ∫₀^√(2Rz₀) (load per pitch at the local sinkage)/s_p dx
 *
 * Holds   low by about 1.5 (l/a)² where turf spreads load, because the mat bends in the rolling direction too
 * Source  derived (docs/physics.md §3.3)
 */
export function stripIntegral(
  curve: Curve,
  shear: number,
  radius: number,
  arc: ArcShape,
  surface: GroovedSurface,
  kinks: GrooveKinks,
  sinkage: number,
): Strip {
  const reach = arc.reach(sinkage, radius)
  let load = 0
  let slope = 0
  scratch.y = Number.NaN
  scratch.surplus = Number.NaN
  const { touchFrom } = kinks
  const isConstant = arc.name === 'parabola'
  const add = (x: number, weight: number) => {
    const height = arc.height(x, radius)
    const depth = sinkage - height
    if (depth <= 0) return
    const groove = localDepth(arc, radius, surface.depth, x)
    period(curve, shear, surface, groove.depth, depth, isConstant ? touchFrom : groove.depth, scratch)
    const steepness = arc.slope(x, radius)
    load += weight * scratch.load
    // by parts in the height of the arc, at fixed part of it: p′ may be singular at the rim
    slope += weight * (scratch.load * arc.stretch(height, radius) + depth * scratch.slope)
    if (groove.slope > 0) slope += (weight * scratch.byDepth * groove.slope * height) / steepness
  }
  // every panel is graded towards its outer end: a kink may lie so near the rim that the next panel inwards still
  // sees pressure vanish like a power
  const { places, weights } = arcNodes(curve.corners ? 0 : sinkage / curve.pole)
  const panel = (from: number, to: number) => {
    for (let i = 0; i < places.length; i++) add(from + (to - from) * places[i]!, (to - from) * weights[i]!)
  }
  let inside = 0
  for (let k = kinks.at.length - 1; k >= 0; k--) {
    const kink = kinks.at[k]!
    if (kink >= sinkage) continue
    const end = kinkReach(arc, radius, sinkage, kink, surface.depth, touchFrom)
    panel(inside, end)
    inside = end
  }
  panel(inside, reach)
  const { pitch } = surface
  return { load: (2 * load) / pitch, slope: (2 * slope) / (pitch * sinkage) }
}
