import { increasingRoot } from '../numerics/index.ts'
import type { Curve } from '../turf/index.ts'

/**
 * The mat around a round plate, followed inwards from where it is nearly at rest.
 *
 * G (u″ + u′/r) = p(u) outside the plate, taken along ln u instead of r: with σ = −r u′ and ρ = ln r,
 *
 *   dρ/d ln u = −u/σ,   dσ²/d ln u = 2 u r² p(u)/G
 *
 * The depth at which the walk starts lies at an unknown radius; the walk shrinks an error there (for linear turf as
 * the square of the depth), so it is stable for every law and needs neither a grid in r nor an outer edge. Small plates
 * far inside the spread cost no more than large ones: ln r is nearly straight in u there.
 *
 * Source  docs/physics.md §3.7; the change of variables is the project's own
 */
export type Mat = {
  /** −r u′ at the edge, m. */
  readonly flux: number
  /** How it grows with the sinkage of the plate. */
  readonly fluxSlope: number
}

/** The walk starts this much shallower, in ln u: what the start is off has shrunk below rounding at the plate. */
const FAR = 16
/** Steps of the classical Runge-Kutta rule, in ln u: good to 1e-10. */
const STEP = 1 / 50
/** On ln r. */
const CLOSE = 1e-12

/** ρ, σ² and how both change with the ρ of the start. */
type Walk = { rho: number; square: number; rhoTurn: number; squareTurn: number }

type Rates = [rho: number, square: number, rhoTurn: number, squareTurn: number]

/** Depths at which the walk takes a step: evenly in ln u, none across a break of the law. */
function stops(curve: Curve, sinkage: number): number[] {
  const end = Math.log(sinkage)
  const start = end - FAR
  const breaks = (curve.breaks ?? []).map(Math.log).filter(x => x > start && x < end)
  const places = [start]
  for (const to of [...breaks, end]) {
    const from = places.at(-1)!
    const count = Math.ceil((to - from) / STEP)
    for (let i = 1; i <= count; i++) places.push(from + ((to - from) * i) / count)
  }
  return places
}

/** Per area of G: 2 u p/G at the ends and the middle of every step, which no walk changes. */
function drives(curve: Curve, shear: number, places: readonly number[]): Float64Array {
  const found = new Float64Array(2 * places.length - 1)
  for (let i = 0; i < found.length; i++) {
    const x = i % 2 === 0 ? places[i / 2]! : (places[(i - 1) / 2]! + places[(i + 1) / 2]!) / 2
    const depth = Math.exp(x)
    found[i] = (2 * depth * curve.pressure(depth)) / shear
  }
  return found
}

function rates(x: number, drive: number, { rho, square, rhoTurn, squareTurn }: Walk): Rates {
  const flux = Math.sqrt(square)
  const depth = Math.exp(x)
  const gain = drive * Math.exp(2 * rho)
  return [-depth / flux, gain, (depth * squareTurn) / (2 * square * flux), 2 * gain * rhoTurn]
}

const moved = (from: Walk, by: Rates, step: number): Walk => ({
  rho: from.rho + step * by[0],
  square: from.square + step * by[1],
  rhoTurn: from.rhoTurn + step * by[2],
  squareTurn: from.squareTurn + step * by[3],
})

function walkInwards(start: Walk, places: readonly number[], drive: Float64Array): Walk {
  let here = start
  for (let i = 0; i + 1 < places.length; i++) {
    const from = places[i]!
    const step = places[i + 1]! - from
    const middle = from + step / 2
    const a = rates(from, drive[2 * i]!, here)
    const b = rates(middle, drive[2 * i + 1]!, moved(here, a, step / 2))
    const c = rates(middle, drive[2 * i + 1]!, moved(here, b, step / 2))
    const d = rates(from + step, drive[2 * i + 2]!, moved(here, c, step))
    const mean = a.map((one, k) => (one + 2 * b[k]! + 2 * c[k]! + d[k]!) / 6) as Rates
    here = moved(here, mean, step)
  }
  return here
}

/**
 * Flux into the edge of a round plate; undefined when no mat is found that meets it.
 *
 * Holds   positive shear
 */
export function matAroundPlate(
  curve: Curve,
  shear: number,
  radius: number,
  sinkage: number,
): Mat | undefined {
  const places = stops(curve, sinkage)
  const drive = drives(curve, shear, places)
  const first = Math.exp(places[0]!)
  const firstWork = curve.work(first)
  const firstPressure = curve.pressure(first)
  const exponent = (first * firstPressure) / firstWork - 1
  // nearly straight there: u′² = 2Φ/G, and a little more where the mat still curves round the plate
  const slope = Math.sqrt((2 * firstWork) / shear)
  const curl = (4 * slope * first) / (exponent + 3)
  let end: Walk = { rho: 0, square: 0, rhoTurn: 1, squareTurn: 0 }
  const target = Math.log(radius)
  const spread = Math.sqrt((shear * sinkage) / curve.pressure(sinkage))
  const root = increasingRoot({
    evaluate: rho => {
      const r = Math.exp(rho)
      const square = r * r * slope * slope + r * curl
      const squareTurn = 2 * r * r * slope * slope + r * curl
      end = walkInwards({ rho, square, rhoTurn: 1, squareTurn }, places, drive)
      return { value: end.rho - target, slope: end.rhoTurn }
    },
    start: Math.log(radius + FAR * spread),
    reach: 2,
    tolerance: CLOSE,
  })
  if (root.outcome !== 'converged') return undefined
  const flux = Math.sqrt(end.square)
  // deeper by dz at the same start: the edge moves in by dz/σ; the start is moved out to make up for it
  const direct = drive.at(-1)! * Math.exp(2 * end.rho - places.at(-1)!)
  const fluxSlope = (direct + end.squareTurn / (flux * end.rhoTurn)) / (2 * flux)
  return { flux, fluxSlope }
}
