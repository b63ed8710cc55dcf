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
  /** And with the logarithm of its radius: shear G is worth a radius √G smaller. */
  readonly radiusSlope: number
}

/** The walk starts this much shallower, in ln u: what the start is off has shrunk below rounding at the plate. */
const FAR = 16
/** Steps of the classical Runge-Kutta rule, in ln u: good to 1e-10. */
const STEP = 1 / 50
/** On ln r. */
const CLOSE = 1e-12

/** ρ, σ² and how both change with the ρ of the start. */
type Walk = { rho: number; square: number; rhoTurn: number; squareTurn: number }

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

/** What no walk changes: depths at the ends and the middle of every step, and 2 u p/G there. */
type Track = {
  readonly places: readonly number[]
  readonly depths: Float64Array
  readonly drives: Float64Array
}

function trackFor(curve: Curve, shear: number, sinkage: number): Track {
  const places = stops(curve, sinkage)
  const depths = new Float64Array(2 * places.length - 1)
  for (let i = 0; i < depths.length; i++)
    depths[i] = Math.exp(i % 2 === 0 ? places[i / 2]! : (places[(i - 1) / 2]! + places[(i + 1) / 2]!) / 2)
  return { places, depths, drives: depths.map(depth => (2 * depth * curve.pressure(depth)) / shear) }
}

/** Positions of the stages of a step of the classical Runge-Kutta rule, and their weights. */
const STAGES = [0, 0.5, 0.5, 1] as const
const WEIGHTS = [1, 2, 2, 1] as const
const PARTS = 6

/** Walks from the start to the plate, in place. */
function walkInwards({ places, depths, drives }: Track, walk: Walk): void {
  let { rho, square, rhoTurn, squareTurn } = walk
  for (let i = 0; i + 1 < places.length; i++) {
    const step = places[i + 1]! - places[i]!
    let dRho = 0
    let dSquare = 0
    let dRhoTurn = 0
    let dSquareTurn = 0
    let sumRho = 0
    let sumSquare = 0
    let sumRhoTurn = 0
    let sumSquareTurn = 0
    for (let stage = 0; stage < STAGES.length; stage++) {
      const part = STAGES[stage]!
      const at = 2 * (i + part)
      const by = part * step
      const here = square + by * dSquare
      const turn = squareTurn + by * dSquareTurn
      const slide = rhoTurn + by * dRhoTurn
      const flux = Math.sqrt(here)
      const gain = drives[at]! * Math.exp(2 * (rho + by * dRho))
      dRho = -depths[at]! / flux
      dSquare = gain
      dRhoTurn = (depths[at]! * turn) / (2 * here * flux)
      dSquareTurn = 2 * gain * slide
      const weight = WEIGHTS[stage]!
      sumRho += weight * dRho
      sumSquare += weight * dSquare
      sumRhoTurn += weight * dRhoTurn
      sumSquareTurn += weight * dSquareTurn
    }
    const share = step / PARTS
    rho += share * sumRho
    square += share * sumSquare
    rhoTurn += share * sumRhoTurn
    squareTurn += share * sumSquareTurn
  }
  walk.rho = rho
  walk.square = square
  walk.rhoTurn = rhoTurn
  walk.squareTurn = squareTurn
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
  const track = trackFor(curve, shear, sinkage)
  const first = track.depths[0]!
  const firstWork = curve.work(first)
  const firstPressure = curve.pressure(first)
  const exponent = (first * firstPressure) / firstWork - 1
  // nearly straight there: u′² = 2Φ/G, and a little more where the mat still curves round the plate
  const slope = Math.sqrt((2 * firstWork) / shear)
  const curl = (4 * slope * first) / (exponent + 3)
  const end: Walk = { rho: 0, square: 0, rhoTurn: 1, squareTurn: 0 }
  const target = Math.log(radius)
  const spread = Math.sqrt((shear * sinkage) / curve.pressure(sinkage))
  const root = increasingRoot({
    evaluate: rho => {
      const r = Math.exp(rho)
      end.rho = rho
      end.square = r * r * slope * slope + r * curl
      end.rhoTurn = 1
      end.squareTurn = 2 * r * r * slope * slope + r * curl
      walkInwards(track, end)
      return { value: end.rho - target, slope: end.rhoTurn }
    },
    start: Math.log(radius + FAR * spread),
    reach: 2,
    tolerance: CLOSE,
  })
  if (root.outcome !== 'converged') return undefined
  const flux = Math.sqrt(end.square)
  // deeper by dz at the same start: the edge moves in by dz/σ; the start is moved out to make up for it
  const direct = track.drives.at(-1)! * Math.exp(2 * end.rho - track.places.at(-1)!)
  const radiusSlope = end.squareTurn / (2 * flux * end.rhoTurn)
  return { flux, fluxSlope: direct / (2 * flux) + radiusSlope / flux, radiusSlope }
}
