import { type Curve, newUnderArc, type UnderArc } from '../turf/index.ts'
import type { ArcShape } from './arc.ts'
import { underArcByDepth, underArcByPressure } from './underArc.ts'

/** One side of the contact of a smooth roller, per length of roller. */
export type Side = {
  /** Load carried, N/m. */
  readonly load: number
  /** d load/d sinkage, Pa. */
  readonly slope: number
  /** How far the turf touches, m. */
  readonly reach: number
  /** Line force where the turf leaves the roller, N/m. */
  readonly edgeForce: number
}

const NOTHING: Side = { load: 0, slope: 0, reach: 0, edgeForce: 0 }
const MOST_TURNS = 60
/** A rebound this small carries nothing a double could tell, and its root would underflow. */
const NO_REBOUND = 1e-30
const CLOSE = 4 * Number.EPSILON
const under = newUnderArc()

/**
 * Sinkage at which turf that carries shear leaves the arc tangentially.
 *
 *   h′(b) = √(2 λ Φ(z_a)/G),  λ z₀ = λ z_a + h(b);  parabola: z₀ = z_a + R Φ(z_a)/G
 */
function leavingDepth(
  curve: Curve,
  G: number,
  R: number,
  arc: ArcShape,
  rebound: number,
  sinkage: number,
): number {
  let low = 0
  let high = sinkage
  // near zero the work is a power of the sinkage: its local exponent gives the start
  const whole = curve.work(sinkage)
  const exponent = (sinkage * curve.pressure(sinkage)) / whole
  let z = sinkage * (1 + (R * whole) / (G * sinkage)) ** (-1 / exponent)
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const work = curve.work(z)
    const steepening = steepeningOf(arc, (2 * rebound * work) / G)
    const rise =
      arc.name === 'parabola'
        ? (R * work) / G
        : arc.height(arc.reachOfSlope(Math.sqrt((2 * rebound * work) / G), R), R) / rebound
    const value = z + rise - sinkage
    if (value > 0) high = z
    else low = z
    let next = z - value / (1 + (R * curve.pressure(z)) / (G * steepening))
    if (!(next > low && next < high)) next = (low + high) / 2
    if (Math.abs(next - z) <= CLOSE * sinkage || high - low <= CLOSE * sinkage) return next
    z = next
  }
  return z
}

/** (1 + h′²)^(3/2) on the circle: its slope grows faster than the parabola's. */
const steepeningOf = (arc: ArcShape, squaredSlope: number): number =>
  arc.name === 'parabola' ? 1 : (1 + squaredSlope) ** 1.5

/** The trailing side on a parabola is √λ of the leading one, for any law, with spread or without (derived). */
export const trailingOnParabola = (leading: Side, rebound: number): Side => {
  const part = Math.sqrt(rebound)
  return {
    load: part * leading.load,
    slope: part * leading.slope,
    reach: part * leading.reach,
    edgeForce: part * leading.edgeForce,
  }
}

/** ∫₀ᵇ p dx and its slope: in closed form where there is one, else by a rule in the variable that suits the law. */
function underArc(
  curve: Curve,
  R: number,
  arc: ArcShape,
  rebound: number,
  sinkage: number,
  reach: number,
  leaving: number,
): UnderArc {
  if (arc.name === 'parabola' && rebound === 1 && curve.underParabola) {
    under.sinkage = sinkage
    under.reach = reach
    under.radius = R
    if (curve.underParabola(under)) return under
  }
  if (curve.pressureBreaks) underArcByPressure(curve, arc, R, rebound, sinkage, reach, leaving, under)
  else underArcByDepth(curve, arc, R, rebound, sinkage, reach, leaving > 0, under)
  return under
}

/**
 * Load on one side of a smooth roller: the leading side (rebound 1) or the side that unloads behind it.
 *
 *   E = ∫₀ᵇ p(z₀ − h(x)/λ) dx + G h′(b)
 *
 * Holds   z₀ below the law's limit and, for the circle, below R. On the trailing side turf pressed to z₀ unloads
 *         along its curve shrunk to the rebound λ.
 * Units   G [N/m], R, z₀ [m] → load [N/m]
 * Source  derived (docs/physics.md §3.1, §3.2); for the linear law without spread Bekker's rigid wheel
 */
export function smoothSide(
  curve: Curve,
  shear: number,
  radius: number,
  arc: ArcShape,
  rebound: number,
  sinkage: number,
): Side {
  if (sinkage <= 0 || rebound <= NO_REBOUND) return NOTHING
  const G = shear
  const R = radius
  const spreads = G > 0
  const leaving = spreads ? leavingDepth(curve, G, R, arc, rebound, sinkage) : 0
  const edgeSlope = spreads ? Math.sqrt((2 * rebound * curve.work(leaving)) / G) : 0
  const reach = spreads ? arc.reachOfSlope(edgeSlope, R) : arc.reach(rebound * sinkage, R)

  const { load, slope } = underArc(curve, R, arc, rebound, sinkage, reach, leaving)
  if (!spreads) return { load, slope, reach, edgeForce: 0 }

  const pressure = curve.pressure(leaving)
  const steepening = steepeningOf(arc, edgeSlope * edgeSlope)
  const slopeGain = (rebound * pressure) / (G * edgeSlope)
  const reachGain = (R / steepening) * slopeGain
  const leavingGain = 1 / (1 + (R * pressure) / (G * steepening))
  return {
    load: load + G * edgeSlope,
    slope: slope + (pressure * reachGain + G * slopeGain) * leavingGain,
    reach,
    edgeForce: G * edgeSlope,
  }
}
