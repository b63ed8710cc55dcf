import { gaussLegendre } from '../numerics/index.ts'
import type { Curve, UnderArc } from '../turf/index.ts'
import type { ArcShape } from './arc.ts'
import { type ArcNodes, arcNodes } from './arcNodes.ts'

/** Between two breaks a law is smooth: the graded rule is only needed where pressure vanishes. */
const { nodes, weights } = gaussLegendre(12)
const inner: ArcNodes = { places: nodes, weights }

const MOST_NODES = 160
const depths = new Float64Array(MOST_NODES)
const pressures = new Float64Array(MOST_NODES)
const slopes = new Float64Array(MOST_NODES)

/**
 * Under an arc by depth, split where the law has a break; `out.slope` is the whole slope without spread (by parts,
 * for p′ may be singular at the end of the arc) and ∫ p′ dx with it.
 */
export function underArcByDepth(
  curve: Curve,
  arc: ArcShape,
  radius: number,
  rebound: number,
  sinkage: number,
  reach: number,
  spreads: boolean,
  out: UnderArc,
): void {
  const breaks = curve.breaks ?? []
  // a power below one is felt beyond the break next to zero too
  const isSteep = (curve.powerAtZero ?? 1) < 1
  out.load = 0
  out.slope = 0
  let from = 0
  let next = breaks.length - 1
  while (from < reach) {
    let to = reach
    for (; next >= 0; next--) {
      const depth = breaks[next]!
      const x = depth < sinkage ? arc.reach(rebound * (sinkage - depth), radius) : 0
      if (x > from) {
        to = Math.min(x, reach)
        break
      }
    }
    const rule = to === reach || isSteep ? arcNodes(sinkage / curve.pole) : inner
    const { places, weights: parts } = rule
    const width = to - from
    const count = places.length
    for (let i = 0; i < count; i++) {
      const height = arc.height(from + width * places[i]!, radius)
      depths[i] = Math.max(0, sinkage - height / rebound)
    }
    if (curve.column) curve.column(depths, count, pressures, slopes)
    else
      for (let i = 0; i < count; i++) {
        pressures[i] = curve.pressure(depths[i]!)
        slopes[i] = curve.slope(depths[i]!)
      }
    for (let i = 0; i < count; i++) {
      const depth = depths[i]!
      if (depth === 0) continue
      const weight = width * parts[i]!
      out.load += weight * pressures[i]!
      out.slope +=
        weight *
        (spreads
          ? slopes[i]!
          : (pressures[i]! * arc.stretch((sinkage - depth) * rebound, radius) + depth * slopes[i]!) / sinkage)
    }
    from = to
  }
}

/**
 * Under an arc by pressure, for a law whose sinkage is explicit in it: no depth is solved for at the nodes.
 *
 *   ∫₀ᵇ p dx = b p(z_b) + ∫ from p(z_b) to p(z₀) of x(λ(z₀ − z(p))) dp;  its slope ∫ λ/h′(x) dp
 *
 * p = p_b + (p₀ − p_b)(1 − v²) takes away the root at the lowest line.
 *
 * Source  by parts from docs/physics.md §3.1
 */
export function underArcByPressure(
  curve: Curve,
  arc: ArcShape,
  radius: number,
  rebound: number,
  sinkage: number,
  reach: number,
  leaving: number,
  out: UnderArc,
): void {
  const top = curve.pressure(sinkage)
  const bottom = leaving > 0 ? curve.pressure(leaving) : 0
  const range = top - bottom
  const splits = curve.pressureBreaks ?? []
  out.load = reach * bottom
  out.slope = 0
  const { places, weights: parts } = arcNodes(curve.partOfPole ? curve.partOfPole(sinkage) : 0)
  let from = 0
  let next = splits.length - 1
  while (from < 1) {
    let to = 1
    for (; next >= 0; next--) {
      const v = splits[next]! < top ? Math.sqrt((top - splits[next]!) / range) : 0
      if (v > from) {
        to = Math.min(v, 1)
        break
      }
    }
    const rule = to === 1 ? { places, weights: parts } : inner
    for (let i = 0; i < rule.places.length; i++) {
      const v = from + (to - from) * rule.places[i]!
      const depth = curve.sinkage(top - range * v * v)
      const x = arc.reach(rebound * Math.max(0, sinkage - depth), radius)
      const weight = (to - from) * rule.weights[i]! * 2 * v * range
      out.load += weight * x
      if (x > 0) out.slope += (weight * rebound) / arc.slope(x, radius)
    }
    from = to
  }
}
