import type { Arc, Condition } from '../contact/index.ts'
import type { Turf } from '../turf/index.ts'
import { freshAxle, levelLoads, meetsTrack, trackAxle, type Unit } from '../unit/index.ts'
import { evenly, lagrange, placeAmong, STENCIL } from './interpolation.ts'
import { type InverseTable, readTableAt, type TableReading } from './inverseTable.ts'
import { lnRange } from './mapRow.ts'
import { type SoftnessTables, softnessTables } from './softnessTables.ts'

/** Reads ln sinkage at a load of the axle's own and one of the front axle; false outside what is tabulated. */
export type AxleReader = (lnLoad: number, lnFrontLoad: number, out: TableReading) => boolean

/** Both axles of a unit at any softness of a map, over the loads its masses ask for. */
export type AxleTables = {
  readonly front: SoftnessTables
  readonly rear: (softness: number) => AxleReader | undefined
}

type Question = {
  readonly unit: Unit
  readonly condition: Condition
  readonly arc?: Arc
}

/** Loads of a leaning unit differ from those of a level one by less than this, in ln W; beyond it cells go one by one. */
const LEAN_MARGIN = 0.05

/** The last answer is kept: a row and its tracks ask for the same table. */
function remembering(tables: SoftnessTables): SoftnessTables {
  let last = Number.NaN
  let table: InverseTable | undefined
  return softness => {
    if (softness !== last) {
      table = tables(softness)
      last = softness
    }
    return table
  }
}

const reading: TableReading = { lnSinkage: 0, slope: 0 }

/**
 * The rear axle in the front one's track: a table for each of six front loads, read between them. What the rear roller
 * meets hangs on the front sinkage alone, and that on the front load.
 */
function trackTables(
  question: Question,
  turfAt: (softness: number) => Turf | undefined,
  front: SoftnessTables,
  ranges: { readonly front: ReturnType<typeof lnRange>; readonly rear: ReturnType<typeof lnRange> },
  softnesses: Float64Array,
): AxleTables['rear'] {
  const { lnLow, lnHigh } = ranges.front
  const knots = evenly(lnLow, lnHigh, lnHigh - lnLow, STENCIL)
  const tables = Array.from(knots.values, lnFront =>
    softnessTables({
      softnesses,
      ...ranges.rear,
      rollerAt: softness => {
        const turf = turfAt(softness)
        const table = front(softness)
        if (!turf || !table || !readTableAt(table, lnFront, reading)) return undefined
        return trackAxle({ ...question, turf }, Math.exp(reading.lnSinkage)).on
      },
    }),
  )
  return softness => {
    const found = tables.map(one => one(softness))
    const whole = found.filter(table => table !== undefined)
    if (whole.length < found.length) return undefined
    return (lnLoad, lnFrontLoad, out) => {
      const weights = lagrange(placeAmong(knots, lnFrontLoad).t)
      let lnSinkage = 0
      let slope = 0
      for (let i = 0; i < whole.length; i++) {
        if (!readTableAt(whole[i]!, lnLoad, reading)) return false
        lnSinkage += weights[i]! * reading.lnSinkage
        slope += weights[i]! * reading.slope
      }
      out.lnSinkage = lnSinkage
      out.slope = slope
      return true
    }
  }
}

/** Tables of both axles; undefined when the unit stands at no mass. */
export function axleTables(
  question: Question,
  units: readonly Unit[],
  softnesses: Float64Array,
  turfAt: (softness: number) => Turf | undefined,
): AxleTables | undefined {
  const loads = units.map(levelLoads).filter(({ front, rear }) => front > 0 && rear > 0)
  if (loads.length === 0) return undefined
  const ranges = {
    front: lnRange(
      loads.map(load => load.front),
      LEAN_MARGIN,
    ),
    rear: lnRange(
      loads.map(load => load.rear),
      LEAN_MARGIN,
    ),
  }
  const fresh = (end: 'frontRoller' | 'rearRoller', range: ReturnType<typeof lnRange>) =>
    softnessTables({
      softnesses,
      ...range,
      rollerAt: softness => {
        const turf = turfAt(softness)
        return turf && freshAxle({ ...question, turf }, end).on
      },
    })
  const front = remembering(fresh('frontRoller', ranges.front))
  const remembers = turfAt(softnesses[0]!)
  if (remembers && meetsTrack({ condition: question.condition, turf: remembers }))
    return { front, rear: trackTables(question, turfAt, front, ranges, softnesses) }
  const rear = fresh('rearRoller', ranges.rear)
  return {
    front,
    rear: softness => {
      const table = rear(softness)
      return table && ((lnLoad, _lnFrontLoad, out) => readTableAt(table, lnLoad, out))
    },
  }
}
