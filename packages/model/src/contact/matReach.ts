import { gaussLegendre } from '../numerics/index.ts'
import type { Curve } from '../turf/index.ts'

/**
 * How far along the roller the mat needs to rise from the land edge, sunk by z, to its turning point, sunk by u_m:
 *
 *   T = ∫ from u_m to z of √(G/2) du/√(Φ(u) − Φ(u_m))
 *
 * taken in θ with u = u_m cosh θ, in which the linear law's integrand is constant and every law's is smooth. The
 * position of the turning point is told by y = arccosh(z/u_m), in which T is nearly straight.
 *
 * Source  derived (docs/physics.md §3.3)
 */
export type MatReach = {
  /** T, m. */
  reach: number
  /** dT/du_m at fixed z. */
  byTurning: number
  /** u_m, m. */
  turning: number
  /** Φ(z) − Φ(u_m), J/m². */
  work: number
}

export const newMatReach = (): MatReach => ({ reach: 0, byTurning: 0, turning: 0, work: 0 })

const POINTS = 12
const { nodes, weights } = gaussLegendre(POINTS)
/** Longest panel in θ: the nearest singularity of a power law lies π/2 off the axis. */
const LONGEST = 2
/** A panel may be this many times as long as its distance from the pole of a locking law. */
const BY_POLE = 2.5

/** Length of the panel that ends at θ: short near the pole of a locking law. */
export function panelBelow(theta: number, poleTheta: number): number {
  return Math.min(theta, LONGEST, BY_POLE * (poleTheta - theta))
}

/** θ at which the mat would lie at the pole of the law. */
export const thetaOfPole = (curve: Curve, turning: number): number =>
  curve.pole === Number.POSITIVE_INFINITY ? Number.POSITIVE_INFINITY : Math.acosh(curve.pole / turning)

/** Fills `out` for the turning point at y > 0. Positional and in place: runs in the innermost loop. */
export function matReach(curve: Curve, shear: number, sinkage: number, y: number, out: MatReach): void {
  const turning = sinkage / Math.cosh(y)
  const turningPressure = curve.pressure(turning) * turning
  const poleTheta = thetaOfPole(curve, turning)
  let sum = 0
  let sumByTurning = 0
  let top = y
  while (top > 0) {
    const length = panelBelow(top, poleTheta)
    const bottom = top - length
    for (let i = 0; i < POINTS; i++) {
      const theta = bottom + length * nodes[i]!
      const half = Math.sinh(theta / 2)
      const by = 2 * turning * half * half
      const depth = turning + by
      const work = curve.workBetween(turning, by)
      const term = (weights[i]! * length * Math.sinh(theta)) / Math.sqrt(work)
      sum += term
      sumByTurning += term * (1 - (0.5 * (curve.pressure(depth) * depth - turningPressure)) / work)
    }
    top = bottom > Number.EPSILON * y ? bottom : 0
  }
  const half = Math.sinh(y / 2)
  const scale = Math.sqrt(shear / 2)
  out.turning = turning
  out.work = curve.workBetween(turning, 2 * turning * half * half)
  out.reach = scale * turning * sum
  out.byTurning = scale * (sumByTurning - sinkage / (turning * Math.sqrt(out.work)))
}

/** y of a turning point that lies `by` above the sinkage: arccosh(z/(z − by)) without cancellation. */
export const yOf = (sinkage: number, by: number): number => {
  const t = by / (sinkage - by)
  return Math.log1p(t + Math.sqrt(t * (t + 2)))
}
