import { type Newtons, numberProblem, refuse } from '../quantities/index.ts'
import { curveOf } from '../turf/index.ts'
import { type ContactQuestion, contactProblems, firstGuess } from './press.ts'
import { type RollerOnTurf, rollerOnTurf } from './rollerOnTurf.ts'
import { readSinkages, searchLn, sinkageTable } from './sinkageTable.ts'
import { isOnSprings, springColumn, springShare } from './springColumn.ts'

/** What an entry of a column or a cell of a map may hold; their `outcomes` index this list. */
export const outcomeNames = ['settled', 'bottomed out', 'not converged'] as const
export type OutcomeName = (typeof outcomeNames)[number]

/** As a map is, an exception to plain JSON: an entry without answer holds NaN and is told by `outcomes`. */
export type PressedColumn = {
  readonly sinkages: Float64Array
  readonly outcomes: Uint8Array
  readonly outcomeNames: readonly OutcomeName[]
}

type Question = ContactQuestion & { readonly loads: ArrayLike<Newtons> }

/** A table costs about as much as so many searches. */
const WORTH_A_TABLE = 2000

function loadProblems(loads: ArrayLike<Newtons>) {
  for (let i = 0; i < loads.length; i++)
    if (!(loads[i]! > 0 && loads[i]! < Number.POSITIVE_INFINITY))
      return numberProblem(loads[i], `loads.${i}`, 'load', { above: 0 })
  return []
}

/** Why a load has no answer: the law bears no more, or the arc is at its end. */
const endOf = (found: 'beyond' | undefined, on: RollerOnTurf, { turf }: ContactQuestion): number =>
  outcomeNames.indexOf(
    found === 'beyond' && on.limit === curveOf(turf.law).limit ? 'bottomed out' : 'not converged',
  )

/** Off a table where there are many loads; what it does not hold by a search from the answer before. */
function searched(question: Question, on: RollerOnTurf, start: number, pressed: PressedColumn): void {
  const { sinkages, outcomes } = pressed
  const lnLoads = new Float64Array(sinkages.length)
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (let i = 0; i < lnLoads.length; i++) {
    const lnLoad = Math.log(question.loads[i]!)
    lnLoads[i] = lnLoad
    if (lnLoad < low) low = lnLoad
    if (lnLoad > high) high = lnLoad
  }
  const table = lnLoads.length < WORTH_A_TABLE ? undefined : sinkageTable(on, low, high, start)
  if (table) readSinkages(table, lnLoads, 0, 1, sinkages)
  let x = start
  let slope = 0
  let lnBefore = Number.NaN
  for (let i = 0; i < lnLoads.length; i++) {
    if (!Number.isNaN(sinkages[i]!)) continue
    const lnLoad = lnLoads[i]!
    const found = searchLn(on, lnLoad, slope > 0 ? x + (lnLoad - lnBefore) * slope : x)
    if (found === undefined || found === 'beyond') {
      outcomes[i] = endOf(found, on, question)
      continue
    }
    sinkages[i] = Math.exp(found.lnSinkage)
    x = found.lnSinkage
    slope = found.slope
    lnBefore = lnLoad
  }
}

/**
 * Sinkages of one roller under many loads: press without what else it tells, in a column.
 *
 *   W(z) = load, each
 *
 * Holds   as press, to 1e-9 in z: some thousands of loads are read off a table laid for them, and what that misses is
 *         solved
 * Sign    sinkage positive into the turf, load positive down
 * Units   loads [N] → sinkages [m]
 * Throws  InputError when roller, turf, condition or a load make no sense
 * Source  derived (docs/physics.md §3)
 */
export function pressColumn(question: Question): PressedColumn {
  const { loads, turf, roller } = question
  refuse([...contactProblems(question), ...loadProblems(loads)])
  const pressed: PressedColumn = {
    sinkages: new Float64Array(loads.length).fill(Number.NaN),
    outcomes: new Uint8Array(loads.length),
    outcomeNames,
  }
  if (loads.length === 0) return pressed
  const on = rollerOnTurf(question)
  const curve = curveOf(turf.law)
  const start = Math.log(Math.min(firstGuess(question, loads[0]!), on.limit / 2))
  // a straight law needs no table, and few loads are not worth one
  if (!(isOnSprings(question) && (curve.straight || loads.length < WORTH_A_TABLE))) {
    searched(question, on, start, pressed)
    return pressed
  }
  const { sinkages, outcomes } = pressed
  springColumn(curve, roller.diameter / 2, springShare(question), loads, start, sinkages)
  for (let i = 0; i < sinkages.length; i++)
    if (sinkages[i] === Number.POSITIVE_INFINITY) {
      sinkages[i] = Number.NaN
      outcomes[i] = endOf('beyond', on, question)
    }
  return pressed
}
