import {
  type Arc,
  type Condition,
  readSinkages,
  rollerOnTurf,
  type SinkageTable,
  sinkageTable,
} from '../contact/index.ts'
import type { Roller } from '../roller/index.ts'
import { curveOf, softnessOf, type Turf } from '../turf/index.ts'
import { likenessOf } from './likeness.ts'

type Question = {
  readonly roller: Roller
  readonly condition: Condition
  readonly arc?: Arc
}

/** Fills what it can of a row of sinkages and leaves the rest; gives the ln load past which the turf bears nothing more. */
export type LikeRow = (turf: Turf, sinkages: Float64Array) => number

/** One table costs as much as so many cells. */
const WORTH_A_TABLE = 2000
/** Room at either end, so that rounding takes no cell out of the table. */
const ROOM = 1e-9
const NOWHERE = Number.POSITIVE_INFINITY

function firstTurf(softnesses: Iterable<number>, turfAt: (softness: number) => Turf | undefined) {
  for (const softness of softnesses) {
    const turf = turfAt(softness)
    if (turf) return turf
  }
  return undefined
}

/**
 * All rows of a lone roller off one table: over softness they are one curve at another argument wherever the turfs are
 * alike (see likenessOf). Undefined where they are not, or where there are too few cells to be worth it.
 */
export function likeRows(
  question: Question,
  lnLoads: Float64Array,
  softnesses: Float64Array,
  turfAt: (softness: number) => Turf | undefined,
): LikeRow | undefined {
  if (lnLoads.length * softnesses.length < WORTH_A_TABLE) return undefined
  const like = { surface: question.roller.surface, ...(question.arc ? { arc: question.arc } : {}) }
  const sorted = softnesses.slice().sort()
  const base = firstTurf(sorted, turfAt)
  const last = base && firstTurf(sorted.slice().reverse(), turfAt)
  const shift = last && likenessOf(last, base, like)?.lnLoad
  if (!base || shift === undefined) return undefined
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (const lnLoad of lnLoads) {
    if (lnLoad === Number.NEGATIVE_INFINITY) continue
    low = Math.min(low, lnLoad)
    high = Math.max(high, lnLoad)
  }
  const on = rollerOnTurf({ ...question, turf: base })
  const table: SinkageTable | undefined = sinkageTable(
    on,
    low - Math.max(shift, 0) - ROOM,
    high - Math.min(shift, 0) + ROOM,
    Math.log(softnessOf(base.law)),
  )
  if (!table) return undefined
  // an arc may end before the law does
  const atLimit = on.limit === curveOf(base.law).limit
  return (turf, sinkages) => {
    const likeness = likenessOf(turf, base, like)
    if (!likeness) return NOWHERE
    readSinkages(table, lnLoads, likeness.lnLoad, likeness.depth, sinkages)
    return atLimit ? table.limitLnLoad + likeness.lnLoad + ROOM : NOWHERE
  }
}
