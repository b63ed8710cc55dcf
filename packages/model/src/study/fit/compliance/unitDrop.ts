import { type Metres, refuse } from '../../../quantities/index.ts'
import type { Roller } from '../../../roller/index.ts'
import type { Turf } from '../../../turf/index.ts'
import {
  balanceOf,
  findSettled,
  heightsOf,
  rearLoad,
  type Unit,
  unitProblems,
  withBuildUp,
} from '../../../unit/index.ts'
import { swapRoller } from '../../swapRoller.ts'
import { difference } from './difference.ts'
import { loadRates, type Neighbourhood } from './loadRates.ts'

/** A unit set down from a datum, and where along its wheelbase the drop is read. */
export type UnitDrop = {
  /** With its roller fitted, what sticks to them on, and its edge at the point read. */
  readonly unit: Unit
  /** What stands between its drop and the reading. */
  readonly offset: Metres
}

/**
 * The unit with a roller fitted in front and nothing re-set, as a gauge at a point of it sees it.
 *
 *   reading = drop of the point − ½ ΔD (1 − point) − build-up (1 − point at the front, point at the rear) + datum
 *
 * Source  docs/physics.md §4.3
 */
export function unitDrop(unit: Unit, roller: Roller | null, point: number): UnitDrop {
  const gauged = { ...unit, edge: point * unit.wheelbase }
  const fitted = roller ? swapRoller(gauged, 'front', roller) : gauged
  const built = withBuildUp(fitted)
  const lift = built.benchHeight - fitted.benchHeight
  const larger = fitted.frontRoller.diameter - unit.frontRoller.diameter
  refuse(unitProblems({ ...fitted, edge: unit.edge }, 'scenario.unit'))
  return { unit: built, offset: -lift - (larger / 2) * (1 - point) }
}

const standing = (unit: Unit, turf: Turf) => ({ unit, turf, condition: { kind: 'standing' } as const })

export type Dropped = {
  /** As read, but for the datum. */
  readonly drop: Metres
  readonly front: Metres
  readonly rear: Metres
}

/** The drop on a turf; undefined without an answer. */
export function dropOn({ unit, offset }: UnitDrop, turf: Turf): Dropped | undefined {
  const question = standing(unit, turf)
  const found = findSettled(question)
  if ('outcome' in found) return undefined
  return {
    drop: heightsOf(question, found).drop + offset,
    front: found.front.sinkage,
    rear: found.rear.sinkage,
  }
}

/** By differences of the whole balance: for a unit that leans sideways too. */
function byDifferences(asked: UnitDrop, around: Neighbourhood, out: Float64Array, at: number): boolean {
  const { moved, steps, turf, neighbour } = around
  const here = dropOn(asked, turf)
  if (!here) return false
  for (let j = 0; j < moved.length; j++) {
    const step = steps[j]!
    const rate = difference(step, by => {
      const changed = neighbour(j, by * step)
      return (changed && dropOn(asked, changed)?.drop) ?? Number.NaN
    })
    if (!Number.isFinite(rate)) return false
    out[at + j] = rate
  }
  return true
}

/**
 * How a drop changes with each parameter: the loads of both rollers and the balance of the unit at its rest are
 * differentiated together.
 *
 *   ln W_f(z_f; θ) = ln N_f(z_r − z_f),  ln W_r(z_r; θ) = ln N_r(z_r − z_f)
 *
 * Source  derived (docs/physics.md §7.2)
 */
export function dropRates(asked: UnitDrop, around: Neighbourhood, out: Float64Array, at: number): boolean {
  const { unit } = asked
  if (balanceOf(unit).sideways !== 0) return byDifferences(asked, around, out, at)
  const found = findSettled(standing(unit, around.turf))
  if ('outcome' in found) return false
  const { front, rear, balance, tilt } = found
  const sine = Math.sin(tilt)
  const cosine = Math.cos(tilt)
  const onRear = rearLoad(balance, sine, cosine)
  const onFront = balance.total - onRear.load
  // d tilt/d(z_r − z_f), and how the load goes back with it
  const lean = 1 / (balance.wheelbase * cosine + balance.rise * sine)
  const shift = onRear.slope * lean
  const size = around.moved.length
  const frontRates = new Float64Array(size)
  const rearRates = new Float64Array(size)
  for (const [pressing, roller, rates] of [
    [front, unit.frontRoller, frontRates],
    [rear, unit.rearRoller, rearRates],
  ] as const) {
    const steepness = (pressing.stiffness * pressing.sinkage) / pressing.load
    if (!loadRates({ kind: 'roller', roller }, around).fill(pressing.sinkage, steepness, rates, 0))
      return false
  }
  const a = front.stiffness / front.load - shift / onFront
  const b = shift / onFront
  const c = shift / onRear.load
  const d = rear.stiffness / rear.load - shift / onRear.load
  const determinant = a * d - b * c
  const arm = unit.edge * cosine + (unit.benchHeight - unit.frontRoller.diameter / 2) * sine
  for (let j = 0; j < size; j++) {
    const f = -frontRates[j]!
    const r = -rearRates[j]!
    const deeperFront = (f * d - b * r) / determinant
    const deeperRear = (a * r - c * f) / determinant
    out[at + j] = deeperFront + arm * lean * (deeperRear - deeperFront)
  }
  return true
}
