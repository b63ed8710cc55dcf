import { type Arc, type Condition, type OutcomeName, outcomeNames } from '../contact/index.ts'
import {
  describe,
  InputError,
  type Kilograms,
  type Metres,
  type Newtons,
  numberProblem,
  type Problem,
  refuse,
} from '../quantities/index.ts'
import { type Roller, rollerProblems } from '../roller/index.ts'
import { type Turf, turfProblems, withSoftness } from '../turf/index.ts'
import { isCoupled, type Unit, unitQuestionProblems, withBuildUp } from '../unit/index.ts'
import { coupledRows } from './coupledRows.ts'
import { loneRows } from './loneRows.ts'
import { type MapQuantity, mapQuantities } from './mapQuantity.ts'
import { type MapRow, mark } from './mapRow.ts'
import { unitCells, unitRows } from './unitRows.ts'

export type MapQuestion = {
  readonly turf: Turf
  /** Of the front roller, or of the lone one. */
  readonly masses: ArrayLike<Kilograms>
  readonly softnesses: ArrayLike<Metres>
  readonly condition: Condition
  readonly quantity: MapQuantity
  readonly arc?: Arc
} & (
  | { readonly unit: Unit }
  | {
      readonly roller: Roller
      /** Load on a lone roller besides its own weight. */
      readonly carried: Newtons
    }
)

/** Flat, row-major softness × mass: the exception to plain JSON. A cell without answer holds NaN. */
export type SinkageMap = {
  readonly quantity: MapQuantity
  readonly masses: Float64Array
  readonly softnesses: Float64Array
  readonly values: Float64Array
  readonly outcomes: Uint8Array
  readonly outcomeNames: readonly OutcomeName[]
}

function axisProblems(values: ArrayLike<number>, path: string, quantity: 'mass' | 'softness'): Problem[] {
  if (values.length === 0) return [{ path, expected: 'at least one value', received: 'none' }]
  const range = quantity === 'mass' ? { atLeast: 0 } : { above: 0 }
  return Array.from(values).flatMap((value, i) => numberProblem(value, `${path}.${i}`, quantity, range))
}

function questionProblems(question: MapQuestion): Problem[] {
  const { turf, masses, softnesses, condition, quantity } = question
  const known = mapQuantities.includes(quantity)
  const alone = !('unit' in question)
  return [
    ...('unit' in question
      ? unitQuestionProblems({ unit: question.unit, turf, condition })
      : [
          ...rollerProblems(question.roller, 'roller'),
          ...numberProblem(question.carried, 'carried', 'load', { atLeast: 0 }),
          ...turfProblems(turf, 'turf'),
        ]),
    ...axisProblems(masses, 'masses', 'mass'),
    ...axisProblems(softnesses, 'softnesses', 'softness'),
    ...(known && !(alone && (quantity === 'drop' || quantity === 'effectiveHeight'))
      ? []
      : [
          {
            path: 'quantity',
            expected: `one of ${alone ? 'sinkage, peakPressure' : mapQuantities.join(', ')}`,
            received: describe(quantity),
          },
        ]),
  ]
}

/**
 * A quantity over roller mass × softness of the turf.
 *
 *   every cell is settle (a unit) or press (a lone roller); each softness is tabulated once and read for every mass
 *
 * Holds   to 1e-6 of the cells solved one by one (2e-6 for grooves on an exponent below ½, 1e-5
 *         on measured turf); where a rear roller rolls in a track, to 2e-5 m of height. A softness the
 *         law cannot take has no answer
 * Units   masses [kg], softnesses [m] → SI
 * Throws  InputError when unit, turf, condition or an axis make no sense
 * Source  docs/physics.md §3, §4
 */
export function sinkageMap(asked: MapQuestion): SinkageMap {
  refuse(questionProblems(asked))
  const question = 'unit' in asked ? { ...asked, unit: withBuildUp(asked.unit) } : asked
  const { turf, quantity } = question
  const masses = Float64Array.from(question.masses)
  const softnesses = Float64Array.from(question.softnesses)
  const width = masses.length
  const values = new Float64Array(width * softnesses.length).fill(Number.NaN)
  const outcomes = new Uint8Array(width * softnesses.length)
  const turfAt = (softness: Metres) => atSoftness(turf, softness)
  const fill =
    'unit' in question
      ? isCoupled(question)
        ? coupledRows(unitCells(question, turfAt), masses, softnesses)
        : unitRows(question, masses, softnesses, turfAt)
      : loneRows(question, masses, softnesses, turfAt)
  for (let row = 0; row < softnesses.length; row++) {
    const cells: MapRow = {
      values: values.subarray(row * width, (row + 1) * width),
      outcomes: outcomes.subarray(row * width, (row + 1) * width),
    }
    const softened = turfAt(softnesses[row]!)
    if (softened) fill(softnesses[row]!, softened, cells)
    else for (let i = 0; i < width; i++) mark(cells, i, 'bottomed out')
  }
  if (quantity === 'drop' && 'unit' in asked && 'unit' in question) {
    // told from the bench as it was set: what has stuck to the rollers lifts the edge
    const lift = question.unit.benchHeight - asked.unit.benchHeight
    for (let i = 0; lift !== 0 && i < values.length; i++) values[i]! -= lift
  }
  return { quantity, masses, softnesses, values, outcomes, outcomeNames }
}

/** The turf at a softness, or nothing where the law has none: at or above its locking depth. */
function atSoftness(turf: Turf, softness: Metres): Turf | undefined {
  try {
    return withSoftness(turf, softness)
  } catch (error) {
    if (error instanceof InputError) return undefined
    throw error
  }
}

export type Cell =
  | { readonly outcome: 'settled'; readonly value: number }
  | { readonly outcome: Exclude<OutcomeName, 'settled'> }

/** One cell as a tagged outcome: the only way to read a map that may have holes. */
export function cellOf(map: SinkageMap, row: number, column: number): Cell {
  const width = map.masses.length
  refuse([
    ...numberProblem(row, 'row', 'ratio', { atLeast: 0, below: map.softnesses.length }),
    ...numberProblem(column, 'column', 'ratio', { atLeast: 0, below: width }),
  ])
  const at = row * width + column
  const outcome = map.outcomeNames[map.outcomes[at]!]!
  return outcome === 'settled' ? { outcome, value: map.values[at]! } : { outcome }
}

/** The map as plain objects, a cell a row; a cell without answer has the value null. */
export const mapToRows = (map: SinkageMap) =>
  Array.from(map.softnesses).flatMap((softness, row) =>
    Array.from(map.masses).map((mass, column) => {
      const cell = cellOf(map, row, column)
      return { softness, mass, outcome: cell.outcome, value: cell.outcome === 'settled' ? cell.value : null }
    }),
  )
