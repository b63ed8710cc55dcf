import { curveOf, type Turf } from '../../../turf/index.ts'
import type { FittedReading, Span } from './complianceFit.ts'
import { turfOfGroup } from './plan.ts'
import type { Row } from './rows.ts'
import type { SetUp } from './setUp.ts'
import { dropOn } from './unitDrop.ts'

/** Greatest pressure on the turf: under a plate, under the axis of a roller, under the deeper roller of a unit. */
function pressureOf({ pressing }: Row, turf: Turf, sinkage: number): number | null {
  const { pressure } = curveOf(turf.law)
  if (pressing.kind === 'foot') return pressure(sinkage)
  const dropped = dropOn(pressing.drop, turf)
  return dropped ? pressure(Math.max(dropped.front, dropped.rear)) : null
}

/** The turf of every set at what was solved for. */
export function turfsAt({ plan }: SetUp, p: Float64Array): (Turf | undefined)[] {
  const groups = Array.from({ length: plan.groups }, (_, g) => turfOfGroup(plan, g, p))
  return plan.sets.map((_, g) => groups[plan.groups === 1 ? 0 : g])
}

/** Every reading beside what the turf answers; no pressure where it bottoms out. */
export function predictionsAt(made: SetUp, p: Float64Array): FittedReading[] {
  const { rows, plan, model } = made
  const predicted = new Float64Array(rows.length)
  const answered = model.predict(p, predicted)
  const turfs = turfsAt(made, p)
  return rows.map((row, r): FittedReading => {
    const { reading, kind, measured, pressing } = row
    const set = plan.sets.indexOf(reading.set)
    const datum = (kind === 'drop' ? plan.dropDatum : plan.sinkageDatum)[set]!
    const turf = turfs[set]
    return {
      row: reading.row,
      set: reading.set,
      kind,
      foot: reading.foot,
      load: pressing.kind === 'foot' ? pressing.load : null,
      measured,
      predicted: answered ? predicted[r]! : null,
      pressure:
        answered && turf && !model.isBeyond(r)
          ? pressureOf(row, turf, predicted[r]! - (datum < 0 ? 0 : p[datum]!))
          : null,
    }
  })
}

/** From the least to the greatest of those that are known. */
export function spanOf(values: readonly (number | null)[]): Span | null {
  const known = values.filter(value => value !== null)
  return known.length === 0 ? null : { low: Math.min(...known), high: Math.max(...known) }
}
