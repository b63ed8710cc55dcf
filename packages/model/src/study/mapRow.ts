import { type Arc, type Condition, findPressing, rollerOnTurf } from '../contact/index.ts'
import { GRAVITY } from '../quantities/index.ts'
import { isGrooved, type Roller } from '../roller/index.ts'
import { curveOf, type Turf } from '../turf/index.ts'
import {
  axlesOf,
  type Balance,
  balanceOf,
  findSettled,
  heightsOf,
  levelLoads,
  rearLoad,
  type Unit,
  unrecoveredAtEdge,
} from '../unit/index.ts'
import { type InverseTable, inverseTable, readTableAt, type TableReading } from './inverseTable.ts'
import type { MapQuantity } from './mapQuantity.ts'

/** The cells of one softness, one a mass. */
export type MapRow = { readonly values: Float64Array; readonly outcomes: Uint8Array }

type RowSolver = (turf: Turf, cells: MapRow) => void

const SETTLED = 0
const BOTTOMED_OUT = 1
const NOT_CONVERGED = 2

/** Loads of a leaning unit differ from those of a level one by less than this, in ln W; beyond it cells go one by one. */
const LEAN_MARGIN = 0.05

/** The start of a row's search: the last two rows drawn on. */
function extrapolator() {
  let last = Number.NaN
  let before = Number.NaN
  return {
    start: () => (Number.isNaN(last) ? Math.log(1e-3) : Number.isNaN(before) ? last : 2 * last - before),
    keep: (value: number) => {
      before = last
      last = value
    },
  }
}

const lnRange = (values: readonly number[], margin: number): [number, number] => [
  Math.log(Math.min(...values)) - margin,
  Math.log(Math.max(...values)) + margin,
]

type LoneQuestion = {
  readonly roller: Roller
  readonly carried: number
  readonly condition: Condition
  readonly arc?: Arc
  readonly quantity: MapQuantity
}

/** Rows of a lone roller. */
export function rollerRow(question: LoneQuestion, masses: Float64Array): RowSolver {
  const loads = Array.from(masses, mass => question.carried + mass * GRAVITY)
  const positive = loads.filter(load => load > 0)
  const trend = extrapolator()
  const reading: TableReading = { lnSinkage: 0, slope: 0 }
  return (turf, cells) => {
    const contact = { ...question, turf }
    const on = rollerOnTurf(contact)
    const { pressure } = curveOf(turf.law)
    const show = (sinkage: number) => (question.quantity === 'sinkage' ? sinkage : pressure(sinkage))
    const table = positive.length > 0 ? inverseTable(on, ...lnRange(positive, 0), trend.start()) : undefined
    if (table) trend.keep(table.lowLnSinkage)
    loads.forEach((load, i) => {
      if (load === 0) cells.values[i] = 0
      else if (table && readTableAt(table, Math.log(load), reading))
        cells.values[i] = show(Math.exp(reading.lnSinkage))
      else {
        const found = findPressing(contact, load, 'roller', on)
        if ('outcome' in found)
          cells.outcomes[i] = found.outcome === 'bottomed out' ? BOTTOMED_OUT : NOT_CONVERGED
        else cells.values[i] = show(found.sinkage)
      }
    })
  }
}

type UnitMapQuestion = {
  readonly unit: Unit
  readonly condition: Condition
  readonly arc?: Arc
  readonly quantity: MapQuantity
}

type Leaning = { tilt: number; front: number; rear: number }

const MOST_TURNS = 12
/** On the sinkages, relative. */
const CLOSE = 1e-11

/** Tilt at which both tables and the balance agree; false when a load leaves a table. */
function leanOnTables(balance: Balance, front: InverseTable, rear: InverseTable, state: Leaning): boolean {
  const { wheelbase, rise, total } = balance
  let { tilt } = state
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const sine = Math.sin(tilt)
    const cosine = Math.cos(tilt)
    const onRear = rearLoad(balance, sine, cosine)
    const onFront = total - onRear.load
    if (
      !(
        readTableAt(front, Math.log(onFront), frontReading) &&
        readTableAt(rear, Math.log(onRear.load), rearReading)
      )
    )
      return false
    const deepFront = Math.exp(frontReading.lnSinkage)
    const deepRear = Math.exp(rearReading.lnSinkage)
    const miss = deepRear - deepFront - wheelbase * sine - rise * (1 - cosine)
    if (Math.abs(miss) <= CLOSE * (deepFront + deepRear)) {
      state.tilt = tilt
      state.front = deepFront
      state.rear = deepRear
      return true
    }
    const slope =
      (deepRear * rearReading.slope * onRear.slope) / onRear.load +
      (deepFront * frontReading.slope * onRear.slope) / onFront -
      (wheelbase * cosine + rise * sine)
    tilt -= miss / slope
  }
  return false
}

const frontReading: TableReading = { lnSinkage: 0, slope: 0 }
const rearReading: TableReading = { lnSinkage: 0, slope: 0 }

/** Rows of a unit whose front roller changes its mass. */
export function unitRow(question: UnitMapQuestion, masses: Float64Array): RowSolver {
  const { unit, quantity } = question
  const units = Array.from(masses, mass => ({ ...unit, frontRoller: { ...unit.frontRoller, mass } }))
  const balances = units.map(balanceOf)
  const loads = units.map(levelLoads)
  const standing = loads.filter(({ front, rear }) => front > 0 && rear > 0)
  const frontRange = lnRange(
    standing.map(({ front }) => front),
    LEAN_MARGIN,
  )
  const rearRange = lnRange(
    standing.map(({ rear }) => rear),
    LEAN_MARGIN,
  )
  const frontTrend = extrapolator()
  const rearTrend = extrapolator()
  return (turf, cells) => {
    if (standing.length === 0) {
      cells.outcomes.fill(NOT_CONVERGED)
      return
    }
    const axles = axlesOf({ ...question, turf })
    const { pressure } = curveOf(turf.law)
    const front = inverseTable(axles.front.on, ...frontRange, frontTrend.start())
    const rear = inverseTable(axles.rear.on, ...rearRange, rearTrend.start())
    if (front) frontTrend.keep(front.lowLnSinkage)
    if (rear) rearTrend.keep(rear.lowLnSinkage)
    const left = quantity === 'effectiveHeight' && front ? leftBehind({ ...question, turf }, front) : () => 0
    const state: Leaning = { tilt: 0, front: 0, rear: 0 }
    const arm = unit.benchHeight - unit.frontRoller.diameter / 2
    const show = () => {
      if (quantity === 'sinkage') return state.front
      if (quantity === 'peakPressure') return pressure(state.front)
      const drop = state.front + unit.edge * Math.sin(state.tilt) + arm * (1 - Math.cos(state.tilt))
      return quantity === 'drop' ? drop : unit.benchHeight - drop + left(state.front)
    }
    for (let i = 0; i < balances.length; i++) {
      if (front && rear && leanOnTables(balances[i]!, front, rear, state)) cells.values[i] = show()
      else if (!standing.includes(loads[i]!)) cells.outcomes[i] = NOT_CONVERGED
      else oneByOne({ ...question, unit: units[i]!, turf }, axles, cells, i, pressure)
    }
  }
}

/** Knots over which the part left behind grooves is read, evenly in ln z. */
const LEFT_KNOTS = 12

/** The depression at the edge against the front sinkage; behind grooves read off a table, through four knots. */
function leftBehind(
  question: { readonly unit: Unit; readonly turf: Turf; readonly condition: Condition },
  table: InverseTable,
): (sinkage: number) => number {
  const exact = (sinkage: number) => unrecoveredAtEdge(question, sinkage)
  const from = table.lowLnSinkage
  const step = (table.highLnSinkage - from) / (LEFT_KNOTS - 1)
  if (!isGrooved(question.unit.frontRoller.surface)) return exact
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

/** A cell outside the tables, solved as `settle` would. */
function oneByOne(
  question: UnitMapQuestion & { readonly turf: Turf },
  axles: ReturnType<typeof axlesOf>,
  cells: MapRow,
  i: number,
  pressure: (sinkage: number) => number,
): void {
  const found = findSettled(question, axles)
  if ('outcome' in found) {
    cells.outcomes[i] = found.outcome === 'bottomed out' ? BOTTOMED_OUT : NOT_CONVERGED
    return
  }
  const { drop, unrecovered } = heightsOf(question, found)
  const shown: Record<MapQuantity, number> = {
    sinkage: found.front.sinkage,
    peakPressure: pressure(found.front.sinkage),
    drop,
    effectiveHeight: question.unit.benchHeight - drop + unrecovered,
  }
  cells.outcomes[i] = SETTLED
  cells.values[i] = shown[question.quantity]
}
