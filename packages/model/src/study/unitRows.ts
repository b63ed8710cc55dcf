import type { Arc, Condition } from '../contact/index.ts'
import { isGrooved } from '../roller/index.ts'
import { curveOf, type Turf } from '../turf/index.ts'
import {
  type Balance,
  balanceOf,
  findSettled,
  heightsOf,
  levelLoads,
  rearLoad,
  type Unit,
  unrecoveredAtEdge,
} from '../unit/index.ts'
import { type AxleReader, axleTables } from './axleTables.ts'
import { type InverseTable, readTableAt, type TableReading } from './inverseTable.ts'
import type { MapQuantity } from './mapQuantity.ts'
import { type CellAnswer, type CellSolver, keep, type RowSolver } from './mapRow.ts'

type UnitMapQuestion = {
  readonly unit: Unit
  readonly condition: Condition
  readonly arc?: Arc
  readonly quantity: MapQuantity
}

const frontReading: TableReading = { lnSinkage: 0, slope: 0 }
const rearReading: TableReading = { lnSinkage: 0, slope: 0 }

type Leaning = { tilt: number; front: number; rear: number }

const MOST_TURNS = 12
/** A miss of the sinkages this small, relative, is mended along the tangent: that leaves its square. */
const TANGENT = 1e-6

/** Tilt at which both tables and the balance agree; false when a load leaves a table. */
function leanOnTables(balance: Balance, front: InverseTable, rear: AxleReader, state: Leaning): boolean {
  const { wheelbase, rise, total } = balance
  let { tilt } = state
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const sine = Math.sin(tilt)
    const cosine = Math.cos(tilt)
    const onRear = rearLoad(balance, sine, cosine)
    const onFront = total - onRear.load
    const lnFront = Math.log(onFront)
    if (!readTableAt(front, lnFront, frontReading)) return false
    if (!rear(Math.log(onRear.load), lnFront, rearReading)) return false
    const deepFront = Math.exp(frontReading.lnSinkage)
    const deepRear = Math.exp(rearReading.lnSinkage)
    const miss = deepRear - deepFront - wheelbase * sine - rise * (1 - cosine)
    // how both sinkages go with the tilt
    const frontGain = (-deepFront * frontReading.slope * onRear.slope) / onFront
    const rearGain = (deepRear * rearReading.slope * onRear.slope) / onRear.load
    const step = -miss / (rearGain - frontGain - (wheelbase * cosine + rise * sine))
    tilt += step
    if (Math.abs(miss) <= TANGENT * (deepFront + deepRear)) {
      state.tilt = tilt
      state.front = deepFront + frontGain * step
      state.rear = deepRear + rearGain * step
      return true
    }
  }
  return false
}

/** Rows of a unit whose front roller changes its mass. */
export function unitRows(
  question: UnitMapQuestion,
  masses: Float64Array,
  softnesses: Float64Array,
  turfAt: (softness: number) => Turf | undefined,
): RowSolver {
  const { unit, quantity } = question
  const units = Array.from(masses, mass => ({ ...unit, frontRoller: { ...unit.frontRoller, mass } }))
  const balances = units.map(one => balanceOf(one))
  const tables = axleTables(question, units, softnesses, turfAt)
  const arm = unit.benchHeight - unit.frontRoller.diameter / 2
  return (softness, turf, cells) => {
    const { pressure } = curveOf(turf.law)
    const front = tables?.front(softness)
    const rear = tables?.rear(softness)
    const left = quantity === 'effectiveHeight' && front ? leftBehind({ ...question, turf }, front) : () => 0
    const state: Leaning = { tilt: 0, front: 0, rear: 0 }
    const show = () => {
      if (quantity === 'sinkage') return state.front
      if (quantity === 'peakPressure') return pressure(state.front)
      const drop = state.front + unit.edge * Math.sin(state.tilt) + arm * (1 - Math.cos(state.tilt))
      return quantity === 'drop' ? drop : unit.benchHeight - drop + left(state.front)
    }
    for (let i = 0; i < balances.length; i++) {
      if (front && rear && leanOnTables(balances[i]!, front, rear, state)) cells.values[i] = show()
      else keep(cells, i, cellOf({ ...question, unit: units[i]!, turf }))
    }
  }
}

/** Knots over which the part left behind grooves is read, evenly in ln z. */
const LEFT_KNOTS = 8

/** The depression at the edge against the front sinkage; behind grooves read off a table, through four knots. */
function leftBehind(
  question: { readonly unit: Unit; readonly turf: Turf; readonly condition: Condition },
  table: InverseTable,
): (sinkage: number) => number {
  const exact = (sinkage: number) => unrecoveredAtEdge(question, sinkage)
  const from = table.lowLnSinkage
  const step = (table.highLnSinkage - from) / (LEFT_KNOTS - 1)
  // where the floor is touched the part left behind has a corner: it is asked cell by cell
  const bent = table.stretches.some(({ origin }) => origin.rooted)
  if (bent || !isGrooved(question.unit.frontRoller.surface)) return exact
  const parts = Float64Array.from({ length: LEFT_KNOTS }, (_, i) => {
    const sinkage = Math.exp(from + i * step)
    return exact(sinkage) / sinkage
  })
  return sinkage => {
    const at = (Math.log(sinkage) - from) / step
    const first = Math.min(Math.max(Math.floor(at) - 1, 0), LEFT_KNOTS - 4)
    const t = at - first
    const [a, b, c, d] = [parts[first]!, parts[first + 1]!, parts[first + 2]!, parts[first + 3]!]
    // Lagrange's cubic through 0, 1, 2, 3
    const part =
      (-a * (t - 1) * (t - 2) * (t - 3)) / 6 +
      (b * t * (t - 2) * (t - 3)) / 2 -
      (c * t * (t - 1) * (t - 3)) / 2 +
      (d * t * (t - 1) * (t - 2)) / 6
    return part * sinkage
  }
}

/** A cell solved as `settle` would. */
function cellOf(question: UnitMapQuestion & { readonly turf: Turf }): CellAnswer {
  const { front, rear } = levelLoads(question.unit)
  if (!(front > 0 && rear > 0)) return { outcome: 'not converged' }
  const found = findSettled(question)
  if ('outcome' in found) return { outcome: found.outcome }
  const { drop, unrecovered } = heightsOf(question, found)
  const { sinkage } = found.front
  const shown: Record<MapQuantity, () => number> = {
    sinkage: () => sinkage,
    peakPressure: () => curveOf(question.turf.law).pressure(sinkage),
    drop: () => drop,
    effectiveHeight: () => question.unit.benchHeight - drop + unrecovered,
  }
  return { outcome: 'settled', value: shown[question.quantity]() }
}

/** Cells of a unit at a mass of its front roller and a softness. */
export const unitCells =
  (question: UnitMapQuestion, turfAt: (softness: number) => Turf | undefined): CellSolver =>
  (mass, softness) => {
    const turf = turfAt(softness)
    if (!turf) return { outcome: 'bottomed out' }
    const { unit } = question
    return cellOf({ ...question, unit: { ...unit, frontRoller: { ...unit.frontRoller, mass } }, turf })
  }
