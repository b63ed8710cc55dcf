import { type Arc, type Condition, findPressing, rollerOnTurf } from '../contact/index.ts'
import { GRAVITY } from '../quantities/index.ts'
import type { Roller } from '../roller/index.ts'
import { curveOf, type Turf } from '../turf/index.ts'
import { readTableAt, type TableReading } from './inverseTable.ts'
import type { MapQuantity } from './mapQuantity.ts'
import { lnRange, mark, type RowSolver } from './mapRow.ts'
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
  const loads = Array.from(masses, mass => question.carried + mass * GRAVITY)
  const positive = loads.filter(load => load > 0)
  const rollerAt = (softness: number) => {
    const turf = turfAt(softness)
    return turf && rollerOnTurf({ ...question, turf })
  }
  const tables =
    positive.length > 0 ? softnessTables({ rollerAt, softnesses, ...lnRange(positive, 0) }) : () => undefined
  const reading: TableReading = { lnSinkage: 0, slope: 0 }
  return (softness, turf, cells) => {
    const { pressure } = curveOf(turf.law)
    const show = (sinkage: number) => (question.quantity === 'sinkage' ? sinkage : pressure(sinkage))
    const table = tables(softness)
    for (let i = 0; i < loads.length; i++) {
      const load = loads[i]!
      if (load === 0) cells.values[i] = 0
      else if (table && readTableAt(table, Math.log(load), reading))
        cells.values[i] = show(Math.exp(reading.lnSinkage))
      else {
        const found = findPressing({ ...question, turf }, load)
        if ('outcome' in found) mark(cells, i, found.outcome)
        else cells.values[i] = show(found.sinkage)
      }
    }
  }
}
