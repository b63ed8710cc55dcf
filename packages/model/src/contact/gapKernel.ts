import type { GroovedSurface } from '../roller/index.ts'
import type { Curve } from '../turf/index.ts'
import { type MatReach, matReach, newMatReach, yOf } from './matReach.ts'
import { turningPoint } from './turningPoint.ts'

/** One period of land and gap at one sinkage. */
export type Period = {
  /** Load of one pitch per length in the rolling direction, N/m. */
  load: number
  /** d load/d sinkage, Pa. */
  slope: number
  /** d load/d depth of the groove, Pa: below zero while the floor is touched, else 0. */
  byDepth: number
  /** Mat depth in mid-gap, m. */
  lowest: number
  /** d lowest/d sinkage. */
  lowestSlope: number
  /** Line force on one edge of the land, N/m. */
  edgeForce: number
  touching: boolean
  /** Distance from the land edge to where the mat turns, or to the groove floor, m. */
  reach: number
  /** y of the turning point and what the mat's rest reach has over half the gap: the next call starts from them. */
  y: number
  surplus: number
}

export const newPeriod = (): Period => ({
  load: 0,
  slope: 0,
  byDepth: 0,
  lowest: 0,
  lowestSlope: 0,
  edgeForce: 0,
  touching: false,
  reach: 0,
  y: Number.NaN,
  surplus: Number.NaN,
})

/** The onset of floor contact is known to a little less than this. */
const JUST_BELOW = 1 - 1e-6

const scratch: MatReach = newMatReach()

function restingGap(curve: Curve, shear: number, land: number, sinkage: number, out: Period): void {
  const pressure = curve.pressure(sinkage)
  const edgeForce = Math.sqrt(2 * shear * curve.work(sinkage))
  out.load = pressure * land + 2 * edgeForce
  out.slope = curve.slope(sinkage) * land + (2 * shear * pressure) / edgeForce
  out.byDepth = 0
  out.lowest = 0
  out.lowestSlope = 0
  out.edgeForce = edgeForce
  out.touching = false
  out.reach = Number.NaN
  out.y = Number.NaN
  out.surplus = Number.NaN
}

function springs(curve: Curve, surface: GroovedSurface, depth: number, sinkage: number, out: Period): void {
  const gap = surface.pitch - surface.land
  const floor = sinkage - depth
  out.touching = floor > 0
  out.lowest = Math.max(floor, 0)
  out.lowestSlope = out.touching ? 1 : 0
  out.load = curve.pressure(sinkage) * surface.land + (out.touching ? curve.pressure(floor) * gap : 0)
  const onFloor = out.touching ? curve.slope(floor) * gap : 0
  out.slope = curve.slope(sinkage) * surface.land + onFloor
  out.byDepth = -onFloor
  out.edgeForce = 0
  out.reach = 0
  out.y = Number.NaN
  out.surplus = Number.NaN
}

/** The mat lies on the groove floor for part of the gap: true, and `out` filled, when it does. */
function floorTouched(
  curve: Curve,
  G: number,
  surface: GroovedSurface,
  depth: number,
  z: number,
  out: Period,
) {
  if (z <= depth) return false
  const gap = surface.pitch - surface.land
  matReach(curve, G, z, yOf(z, depth), scratch)
  if (scratch.reach >= gap / 2) return false
  const floor = z - depth
  const floorPressure = curve.pressure(floor)
  const free = gap - 2 * scratch.reach
  const edgeForce = Math.sqrt(2 * G * scratch.work)
  const reachSlope = G / edgeForce + scratch.byTurning
  out.load = curve.pressure(z) * surface.land + 2 * edgeForce + floorPressure * free
  out.slope =
    curve.slope(z) * surface.land +
    (2 * G * (curve.pressure(z) - floorPressure)) / edgeForce +
    curve.slope(floor) * free -
    2 * floorPressure * reachSlope
  // the floor's depth alone: T's other end stays where it is
  out.byDepth =
    (2 * G * floorPressure) / edgeForce - curve.slope(floor) * free + 2 * floorPressure * scratch.byTurning
  out.lowest = floor
  out.lowestSlope = 1
  out.edgeForce = edgeForce
  out.touching = true
  out.reach = scratch.reach
  out.y = Number.NaN
  out.surplus = Number.NaN
  return true
}

/**
 * Where to start the search for the turning point, from the period found before: near rest u_m goes as the surplus of
 * the mat's rest reach over half the gap to the power 2/(1 − n); elsewhere y hardly moves.
 */
function startFrom(before: Period, power: number, sinkage: number, surplus: number): number {
  if (power >= 1 || !(before.surplus > 0) || !(surplus > 0)) return before.y
  const turning = before.lowest * (surplus / before.surplus) ** (2 / (1 - power))
  return turning < sinkage / 2 ? Math.acosh(sinkage / turning) : before.y
}

/**
 * Load of one pitch at a sinkage, exact for any law; fills `out`.
 *
 *   free      p(z) w_l + 2 √(2G (Φ(z) − Φ(u_m))),  T(u_m, z) = g/2
 *   floor     p(z) w_l + 2 √(2G (Φ(z) − Φ(u_d))) + p(u_d)(g − 2r),  u_d = z − d, r = T(u_d, z)
 *   at rest   p(z) w_l + 2 √(2G Φ(z))
 *   springs   p(z) w_l + p(max(z − d, 0)) g
 *
 * `out` is read first: the period found before, near which this one starts. `touchFrom` is a sinkage below which the floor is known to be out of reach: the groove's depth if nothing is known.
 *
 * Source  derived (docs/physics.md §3.3)
 */
export function period(
  curve: Curve,
  shear: number,
  surface: GroovedSurface,
  depth: number,
  sinkage: number,
  touchFrom: number,
  out: Period,
): void {
  if (shear === 0) {
    springs(curve, surface, depth, sinkage, out)
    return
  }
  const gap = surface.pitch - surface.land
  const surplus = curve.restReach ? curve.restReach(sinkage, shear) - gap / 2 : Number.POSITIVE_INFINITY
  if (sinkage >= touchFrom * JUST_BELOW && floorTouched(curve, shear, surface, depth, sinkage, out)) return
  const start = startFrom(out, curve.powerAtZero ?? 1, sinkage, surplus)
  if (surplus <= 0 || !turningPoint(curve, shear, gap, sinkage, start, scratch)) {
    restingGap(curve, shear, surface.land, sinkage, out)
    return
  }
  out.surplus = surplus
  const edgeForce = Math.sqrt(2 * shear * scratch.work)
  const lowestSlope = -(shear / edgeForce) / scratch.byTurning
  out.load = curve.pressure(sinkage) * surface.land + 2 * edgeForce
  out.slope =
    curve.slope(sinkage) * surface.land +
    (2 * shear * (curve.pressure(sinkage) - curve.pressure(scratch.turning) * lowestSlope)) / edgeForce
  out.byDepth = 0
  out.lowest = scratch.turning
  out.lowestSlope = lowestSlope
  out.edgeForce = edgeForce
  out.touching = false
  out.reach = gap / 2
  out.y = Math.acosh(sinkage / scratch.turning)
}
