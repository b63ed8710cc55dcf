import type { OutcomeName } from '../contact/index.ts'
import type { Turf } from '../turf/index.ts'
import { type Anchors, evenly, lagrange, placeAmong, STENCIL } from './interpolation.ts'
import { type CellAnswer, type CellSolver, keep, type MapRow, mark, type RowSolver } from './mapRow.ts'

/** Anchors lie this far apart in ln softness; over the masses six are enough, whose loads differ by less than twofold. */
const SOFTNESS_STEP = 0.12
const MASS_ANCHORS = 7

type Grid = { readonly softness: Anchors; readonly mass: Anchors; readonly answers: readonly CellAnswer[] }

const answerAt = ({ mass, answers }: Grid, row: number, column: number): CellAnswer =>
  answers[row * mass.values.length + column]!

/** A stencil that holds `below` and `below + 1` and only rows that are settled; undefined when there is none. */
function settledRows(grid: Grid, columns: number, below: number): number | undefined {
  const last = grid.softness.values.length - STENCIL
  const isSettled = (row: number) => {
    for (let i = 0; i < STENCIL; i++) if (answerAt(grid, row, columns + i).outcome !== 'settled') return false
    return true
  }
  const whole = (first: number) => Array.from({ length: STENCIL }, (_, i) => first + i).every(isSettled)
  const middle = below - (STENCIL / 2 - 1)
  const tries = [0, -1, 1, -2, 2, -3].map(shift => middle + shift)
  return tries.find(
    first => first >= 0 && first <= last && first <= below && first + STENCIL > below + 1 && whole(first),
  )
}

/** All four anchors about a cell end alike, without an answer. */
function sharedFailure(grid: Grid, row: number, column: number): Exclude<OutcomeName, 'settled'> | undefined {
  const { outcome } = answerAt(grid, row, column)
  if (outcome === 'settled') return undefined
  const corners = [
    answerAt(grid, row, column + 1),
    answerAt(grid, row + 1, column),
    answerAt(grid, row + 1, column + 1),
  ]
  return corners.every(corner => corner.outcome === outcome) ? outcome : undefined
}

/**
 * Rows of a unit whose rollers hang together in more ways than the lean (a track, a pull, a roll): cells are solved at
 * anchors over mass and softness and read between them through six by six; where the anchors end, one by one.
 *
 * Holds   to about 1e-6 where the answer is smooth; across the first touching of a groove floor to about 1e-4
 */
export function coupledRows(solve: CellSolver, masses: Float64Array, softnesses: Float64Array): RowSolver {
  const softness = evenly(Math.log(Math.min(...softnesses)), Math.log(Math.max(...softnesses)), SOFTNESS_STEP)
  const lightest = Math.min(...masses)
  const heaviest = Math.max(...masses)
  const mass = evenly(lightest, heaviest, (heaviest - lightest) / (MASS_ANCHORS - 1), MASS_ANCHORS)
  const fewer = softness.values.length * mass.values.length < masses.length * softnesses.length
  const one = (cells: MapRow, i: number, at: number) => keep(cells, i, solve(masses[i]!, at))
  if (!fewer)
    return (at, _turf: Turf, cells) => {
      for (let i = 0; i < masses.length; i++) one(cells, i, at)
    }
  const answers = Array.from(softness.values).flatMap(ln =>
    Array.from(mass.values, m => solve(m, Math.exp(ln))),
  )
  const grid: Grid = { softness, mass, answers }
  const columnsOf = Array.from(masses, m => {
    const place = placeAmong(mass, m)
    return { ...place, weights: lagrange(place.t) }
  })
  return (at, _turf: Turf, cells) => {
    const { below } = placeAmong(softness, Math.log(at))
    const place = (Math.log(at) - softness.low) / (softness.step || 1)
    for (let i = 0; i < masses.length; i++) {
      const column = columnsOf[i]!
      const failure = sharedFailure(grid, below, column.below)
      const first = failure ? undefined : settledRows(grid, column.first, below)
      if (failure) mark(cells, i, failure)
      else if (first === undefined) one(cells, i, at)
      else cells.values[i] = mixed(grid, first, lagrange(place - first), column)
    }
  }
}

function mixed(
  grid: Grid,
  first: number,
  rows: readonly number[],
  column: { first: number; weights: readonly number[] },
) {
  let value = 0
  for (let r = 0; r < STENCIL; r++)
    for (let c = 0; c < STENCIL; c++) {
      const answer = answerAt(grid, first + r, column.first + c)
      if (answer.outcome === 'settled') value += rows[r]! * column.weights[c]! * answer.value
    }
  return value
}
