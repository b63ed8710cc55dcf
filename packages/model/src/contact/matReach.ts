import { gaussLegendre } from '../numerics/index.ts'
import type { Curve, FarMat } from '../turf/index.ts'

/**
 * How far along the roller the mat needs to rise from the land edge, sunk by z, to its turning point, sunk by u_m:
 *
 *   T = ∫ from u_m to z of √(G/2) du/√(Φ(u) − Φ(u_m))
 *
 * While u_m is a fair part of z it is taken in t, u = u_m + (z − u_m) t²; nearer to rest in θ, u = u_m cosh θ, in
 * which the linear law's integrand is constant and every law's is smooth. The turning point is told by
 * y = arccosh(z/u_m), in which T is nearly straight.
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
/** Panel in θ beside either end: the nearest singularity of a power law lies π/2 off the axis. */
const BESIDE = 2
/** Panel in θ between: there the integrand is an exponential or a constant. */
const BETWEEN = 6
/** A panel may be this many times as long as its distance from the pole of a locking law. */
const BY_POLE = 2.5

/** Length of the panel that ends at θ, `below` the top of the whole: short near the pole of a locking law. */
export function panelBelow(theta: number, below: number, poleTheta: number): number {
  const longest = below < BESIDE ? BESIDE : Math.min(BETWEEN, Math.max(theta - BESIDE, BESIDE))
  return Math.min(theta, longest, BY_POLE * (poleTheta - theta))
}

/** A break nearer than this below the top of a panel, relative, is that top. */
const SAME = 1e-12
/** Panel of a law that is not of one piece: what bends it may lie nearer the axis than what bends a power law. */
const SHORT = 1

/** Where the panel below θ ends, for a law with breaks: at the next one, or a short panel on. */
export function pieceBelow(curve: Curve, turning: number, top: number, bottom: number): number {
  const { breaks } = curve
  if (!breaks) return bottom
  let end = Math.max(bottom, top - SHORT)
  for (let i = breaks.length - 1; i >= 0 && breaks[i]! > turning; i--) {
    const theta = Math.acosh(breaks[i]! / turning)
    if (theta >= top * (1 - SAME)) continue
    end = Math.max(end, theta)
    break
  }
  return end
}

/** θ at which the mat would lie at the pole of the law. */
export const thetaOfPole = (curve: Curve, turning: number): number =>
  curve.pole === Number.POSITIVE_INFINITY ? Number.POSITIVE_INFINITY : Math.acosh(curve.pole / turning)

/** Up to this y (u_m down to a tenth of z) the integral in t is good to 1e-10 and better. */
const NEAR = 2.2
const squares = nodes.map(t => t * t)
const doubled = nodes.map((t, i) => 2 * t * weights[i]!)

function nearTurning(curve: Curve, turning: number, by: number, out: MatReach): void {
  const turningPressure = curve.pressure(turning)
  let sum = 0
  let sumByTurning = 0
  for (let i = 0; i < POINTS; i++) {
    const square = squares[i]!
    const work = curve.workBetween(turning, by * square)
    const term = doubled[i]! / Math.sqrt(work)
    sum += term
    sumByTurning += (term * (curve.pressure(turning + by * square) * (1 - square) - turningPressure)) / work
  }
  out.reach = by * sum
  out.byTurning = -sum - 0.5 * by * sumByTurning
}

/** Above this θ (u beyond 74 u_m) a law's closed form of the far mat is used. */
const FAR = 5
const coshFar = Math.cosh(FAR)
const far: FarMat = { value: 0, slope: 0 }

function farFromTurning(curve: Curve, sinkage: number, turning: number, y: number, out: MatReach): void {
  const turningPressure = curve.pressure(turning)
  const poleTheta = thetaOfPole(curve, turning)
  const closes = curve.farMat !== undefined && y > FAR
  const whole = closes ? FAR : y
  let sum = 0
  let sumByTurning = 0
  let top = whole
  while (top > 0) {
    const bottom = pieceBelow(curve, turning, top, top - panelBelow(top, whole - top, poleTheta))
    const length = top - bottom
    for (let i = 0; i < POINTS; i++) {
      const growth = Math.exp((bottom + length * nodes[i]!) / 2)
      const half = (growth - 1 / growth) / 2
      const by = 2 * turning * half * half
      const depth = turning + by
      const work = curve.workBetween(turning, by)
      const term = (weights[i]! * length * half * (growth + 1 / growth)) / Math.sqrt(work)
      sum += term
      sumByTurning += term * (1 - (0.5 * (curve.pressure(depth) * depth - turningPressure * turning)) / work)
    }
    top = bottom > Number.EPSILON * whole ? bottom : 0
  }
  out.reach = turning * sum
  if (closes) {
    const from = turning * coshFar
    curve.farMat?.(from, sinkage, turning, far)
    out.reach += far.value
    // the end of the near part moves with the turning point
    sumByTurning +=
      turningPressure * far.slope - coshFar / Math.sqrt(curve.workBetween(turning, from - turning))
    out.byTurning = sumByTurning
    return
  }
  out.byTurning = sumByTurning - sinkage / (turning * Math.sqrt(out.work))
}

/** Fills `out` for the turning point at y > 0. Positional and in place: runs in the innermost loop. */
export function matReach(curve: Curve, shear: number, sinkage: number, y: number, out: MatReach): void {
  const turning = sinkage / Math.cosh(y)
  const half = Math.sinh(y / 2)
  const by = 2 * turning * half * half
  out.turning = turning
  out.work = curve.workBetween(turning, by)
  // close to the pole of a locking law the panels in θ shrink towards it, and stop at breaks; those in t do not
  if (y < NEAR && !curve.breaks && curve.pole - sinkage > by) nearTurning(curve, turning, by, out)
  else farFromTurning(curve, sinkage, turning, y, out)
  const scale = Math.sqrt(shear / 2)
  out.reach *= scale
  out.byTurning *= scale
}

/** y of a turning point that lies `by` above the sinkage: arccosh(z/(z − by)) without cancellation. */
export const yOf = (sinkage: number, by: number): number => {
  const t = by / (sinkage - by)
  return Math.log1p(t + Math.sqrt(t * (t + 2)))
}
