import type { Metres } from '../quantities/index.ts'
import { isGrooved, type Roller } from '../roller/index.ts'
import { type Curve, curveOf, newUnderArc, shearOf, type Turf, type UnderParabola } from '../turf/index.ts'
import type { Arc } from './arc.ts'
import type { Condition } from './condition.ts'
import { TANGENT } from './sinkageTable.ts'

const MOST_TURNS = 60
/** Longest step of ln z: what starts far off comes near in a few. */
const REACH = 4
/** So many are searched together: their columns stay near the processor. */
const AT_ONCE = 256

const under = newUnderArc()
const lnLoads = new Float64Array(AT_ONCE)
const places = new Float64Array(AT_ONCE)
const depths = new Float64Array(AT_ONCE)
const ratios = new Float64Array(AT_ONCE)
const gives = new Float64Array(AT_ONCE)
const active = new Int32Array(AT_ONCE)

type Question = {
  readonly roller: Roller
  readonly turf: Turf
  readonly condition: Condition
  readonly arc?: Arc
}

/** Whether the roller lies on springs whose load under its arc is a closed form. */
export const isOnSprings = ({ roller, turf, arc = 'parabola' }: Question): boolean =>
  arc === 'parabola' &&
  shearOf(turf) === 0 &&
  !isGrooved(roller.surface) &&
  curveOf(turf.law).underParabola !== undefined

/** (1 + √λ) L, and so 2 L standing: the load over that of one side. */
export const springShare = ({ roller, turf, condition }: Question): Metres =>
  roller.length * (1 + Math.sqrt(condition.kind === 'standing' ? 1 : (turf.rebound ?? 1)))

/** How a column of loads was solved; counted so that a test sees what no clock tells the same twice. */
export type ColumnCounts = { readonly solved: number; readonly turns: number }

/**
 * One turn of Newton's method for those that are still searched, each step of it for all of them before the next: their
 * exponentials, roots and logarithms then do not wait for each other. Gives how many are left.
 */
function turnAll(underParabola: UnderParabola, radius: number, deepest: number, count: number): number {
  for (let k = 0; k < count; k++) depths[k] = Math.exp(places[active[k]!]!)
  for (let k = 0; k < count; k++) {
    const z = depths[k]!
    under.radius = radius
    under.sinkage = z
    under.reach = Math.sqrt(2 * radius * z)
    underParabola(under)
    ratios[k] = under.load
    gives[active[k]!] = under.load / (under.slope * z)
  }
  for (let k = 0; k < count; k++) ratios[k] = Math.log(ratios[k]!)
  let left = 0
  for (let k = 0; k < count; k++) {
    const i = active[k]!
    const x = places[i]!
    const miss = ratios[k]! - lnLoads[i]!
    const next = x + Math.min(Math.max(-miss * gives[i]!, -REACH), REACH)
    if (Math.abs(miss) <= TANGENT) places[i] = next
    else if (miss < 0 && x === deepest) places[i] = Number.POSITIVE_INFINITY
    else {
      places[i] = Math.min(next, deepest)
      active[left++] = i
    }
  }
  return left
}

/** A law with a closed form under the arc. */
type ClosedCurve = Pick<Curve, 'limit'> & { readonly underParabola: UnderParabola }

/** Newton for the first `count` places, all at once; gives the turns of all of them together. */
function search(curve: ClosedCurve, radius: number, count: number): number {
  const deepest = Math.log(curve.limit)
  for (let k = 0; k < count; k++) {
    active[k] = k
    places[k] = Math.min(places[k]!, deepest)
  }
  let turns = 0
  for (let turn = 0, left = count; turn < MOST_TURNS && left > 0; turn++) {
    turns += left
    left = turnAll(curve.underParabola, radius, deepest, left)
  }
  return turns
}

/** ln z under one load a side: the same search for one alone. At most that of the law's limit. */
export function springPlace(curve: Curve, radius: number, load: number, start: number): number {
  const { underParabola, limit } = curve
  const deepest = Math.log(limit)
  let x = Math.min(start, deepest)
  under.radius = radius
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const z = Math.exp(x)
    under.sinkage = z
    under.reach = Math.sqrt(2 * radius * z)
    underParabola?.(under)
    const miss = Math.log(under.load / load)
    x = Math.min(x - Math.max((miss * under.load) / (under.slope * z), -REACH), deepest)
    if (Math.abs(miss) <= TANGENT || (miss < 0 && z === limit)) break
  }
  return x
}

/** ln z and d ln z/d ln E at even steps of ln E: between them the searches of a column start. */
const KNOTS = 9
const knotPlaces = new Float64Array(KNOTS)
const knotGives = new Float64Array(KNOTS)
/** Fewer loads than this start from one knot along its slope. */
const WORTH_KNOTS = 32

/** Lays one knot, or all of them, over a range of ln E; gives the turns it took. */
function layKnots(
  curve: ClosedCurve,
  radius: number,
  { low, step, count }: { readonly low: number; readonly step: number; readonly count: number },
  start: number,
): number {
  const middle = count >> 1
  lnLoads[0] = low + middle * step
  places[0] = start
  let turns = search(curve, radius, 1)
  const x = Math.min(places[0], Math.log(curve.limit))
  const give = gives[0]!
  for (let k = 0; k < count; k++) {
    lnLoads[k] = low + k * step
    places[k] = x + (k - middle) * step * give
  }
  if (count > 1) turns += search(curve, radius, count)
  knotPlaces.set(places.subarray(0, count))
  knotGives.set(gives.subarray(0, count))
  return turns
}

/** ln z by the cubic through the knots about ln E, along the slope where there is one knot alone. */
function fromKnots(lnLoad: number, low: number, step: number, count: number): number {
  if (count === 1) return knotPlaces[0]! + (lnLoad - low) * knotGives[0]!
  const k = Math.min(Math.floor((lnLoad - low) / step), count - 2)
  const t = (lnLoad - low) / step - k
  const rise = knotPlaces[k + 1]! - knotPlaces[k]!
  const left = knotGives[k]! * step
  const right = knotGives[k + 1]! * step
  return knotPlaces[k]! + t * (left + t * (3 * rise - 2 * left - right + t * (left + right - 2 * rise)))
}

/**
 * Sinkages of a smooth roller on springs under many loads, for a law with a closed form under the arc.
 *
 *   ln E(z) = ln(W/share),  E = ∫₀ᵃ p dx, a = √(2Rz);  share = 2L standing, (1 + √λ)L mowing
 *
 * Newton in logarithms, in which every law is nearly straight, from where each is told to start or between a few that
 * are solved first; it ends with a step along the tangent. A power law is straight, and needs one alone.
 *
 * Fills sinkages, past the law's limit Infinity, and d ln W/d ln z if asked.
 *
 * Source  derived (docs/physics.md §3.1)
 */
export function springColumn(
  { underParabola, limit, straight }: Curve,
  radius: number,
  share: number,
  loads: ArrayLike<number>,
  start: number | Float64Array,
  sinkages: Float64Array,
  steepnesses?: Float64Array,
): ColumnCounts {
  if (!underParabola || loads.length === 0) return { solved: 0, turns: 0 }
  const curve: ClosedCurve = { limit, underParabola }
  const lnShare = Math.log(share)
  const told = typeof start === 'number' || straight ? undefined : start
  let turns = 0
  let low = 0
  let step = 1
  let count = 1
  if (!told) {
    let least = Number.POSITIVE_INFINITY
    let most = 0
    for (let i = 0; i < loads.length; i++) {
      least = Math.min(least, loads[i]!)
      most = Math.max(most, loads[i]!)
    }
    low = Math.log(least) - lnShare
    if (!straight && loads.length >= WORTH_KNOTS && most > least) {
      count = KNOTS
      step = Math.log(most / least) / (KNOTS - 1)
    }
    turns += layKnots(curve, radius, { low, step, count }, typeof start === 'number' ? start : start[0]!)
  }
  for (let from = 0; from < loads.length; from += AT_ONCE) {
    const here = Math.min(AT_ONCE, loads.length - from)
    for (let k = 0; k < here; k++) {
      lnLoads[k] = Math.log(loads[from + k]!) - lnShare
      places[k] = told ? told[from + k]! : fromKnots(lnLoads[k]!, low, step, count)
    }
    if (straight) gives.fill(knotGives[0]!)
    else turns += search(curve, radius, here)
    for (let k = 0; k < here; k++) sinkages[from + k] = Math.exp(places[k]!)
    if (steepnesses) for (let k = 0; k < here; k++) steepnesses[from + k] = 1 / gives[k]!
  }
  return { solved: loads.length, turns }
}
