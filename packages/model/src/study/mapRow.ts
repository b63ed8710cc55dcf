import { type OutcomeName, outcomeNames } from '../contact/index.ts'
import type { Turf } from '../turf/index.ts'

/** The cells of one softness, one a mass. */
export type MapRow = { readonly values: Float64Array; readonly outcomes: Uint8Array }

/** Fills the row of a softness; the turf is the map's at that softness. */
export type RowSolver = (softness: number, turf: Turf, cells: MapRow) => void

/** One cell solved for itself. */
export type CellAnswer =
  | { readonly outcome: 'settled'; readonly value: number }
  | { readonly outcome: Exclude<OutcomeName, 'settled'> }

export type CellSolver = (mass: number, softness: number) => CellAnswer

/** Marks a cell that has no answer. */
export const mark = (cells: MapRow, at: number, outcome: Exclude<OutcomeName, 'settled'>): void => {
  cells.outcomes[at] = outcomeNames.indexOf(outcome)
}

/** Least and greatest logarithm of some loads, a margin either side. */
export const lnRange = (loads: readonly number[], margin: number): { lnLow: number; lnHigh: number } => ({
  lnLow: Math.log(Math.min(...loads)) - margin,
  lnHigh: Math.log(Math.max(...loads)) + margin,
})

export const keep = (cells: MapRow, at: number, answer: CellAnswer): void => {
  if (answer.outcome === 'settled') cells.values[at] = answer.value
  else mark(cells, at, answer.outcome)
}
