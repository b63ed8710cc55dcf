import { type Arc, type Condition, findPressing, rollerOnTurf } from '../contact/index.ts'
import { GRAVITY } from '../quantities/index.ts'
import type { Roller } from '../roller/index.ts'
import { curveOf, type Turf } from '../turf/index.ts'
import { readTableAt, type TableReading } from './inverseTable.ts'
import { likeRows } from './likeRows.ts'
import type { MapQuantity } from './mapQuantity.ts'
import { lnRange, type MapRow, mark, type RowSolver } from './mapRow.ts'
import { softnessTables } from './softnessTables.ts'

type LoneQuestion = {
  readonly roller: Roller
  readonly carried: number
  readonly condition: Condition
  readonly arc?: Arc
  readonly quantity: MapQuantity
}

/** Rows of a lone roller. */
export function loneRows(
  question: LoneQuestion,
  masses: Float64Array,
  softnesses: Float64Array,
  turfAt: (softness: number) => Turf | undefined,
): RowSolver {
  const loads = masses.map(mass => question.carried + mass * GRAVITY)
  const lnLoads = loads.map(Math.log)
  const positive = [...loads].filter(load => load > 0)
  const rollerAt = (softness: number) => {
    const turf = turfAt(softness)
    return turf && rollerOnTurf({ ...question, turf })
  }
  const like = positive.length > 0 ? likeRows(question, lnLoads, softnesses, turfAt) : undefined
  const tables =
    positive.length > 0 && !like
      ? softnessTables({ rollerAt, softnesses, ...lnRange(positive, 0) })
      : () => undefined
  const reading: TableReading = { lnSinkage: 0, slope: 0 }

  /** What no table holds, one by one; the turf bears nothing past `most`. */
  const rest = (turf: Turf, { values, outcomes }: MapRow, most: number) => {
    for (let i = 0; i < values.length; i++) {
      if (!Number.isNaN(values[i]!)) continue
      if (loads[i] === 0) values[i] = 0
      else if (lnLoads[i]! > most) mark({ values, outcomes }, i, 'bottomed out')
      else {
        const found = findPressing({ ...question, turf }, loads[i]!)
        if ('outcome' in found) mark({ values, outcomes }, i, found.outcome)
        else values[i] = found.sinkage
      }
    }
  }

  return (softness, turf, cells) => {
    const { values } = cells
    const most = like ? like(turf, values) : Number.POSITIVE_INFINITY
    const table = like ? undefined : tables(softness)
    if (table)
      for (let i = 0; i < values.length; i++)
        if (loads[i]! > 0 && readTableAt(table, lnLoads[i]!, reading)) values[i] = Math.exp(reading.lnSinkage)
    rest(turf, cells, most)
    if (question.quantity === 'sinkage') return
    const { pressure } = curveOf(turf.law)
    for (let i = 0; i < values.length; i++) values[i] = pressure(values[i]!)
  }
}
