import type { Metres, Newtons, Pascals, Problem, Seconds } from '../quantities/index.ts'

/** What pressed the turf. A roller without a name is the one on the unit. */
export type Foot =
  | { readonly kind: 'roller'; readonly name: string | null }
  | { readonly kind: 'plate'; readonly diameter: Metres }
  /** m² */
  | { readonly kind: 'plate'; readonly area: number }

/** What was read: how deep it went, how far the unit came down from a datum, or the height cut on a test strip. */
export type Measured =
  | { readonly kind: 'sinkage'; readonly sinkage: Metres }
  /** The datum cancels within a set. Where along the wheelbase: 0 front roller, 1 rear roller. */
  | { readonly kind: 'drop'; readonly drop: Metres; readonly point?: number }
  | { readonly kind: 'height'; readonly height: Metres }

/** One reading, in SI. */
export type Reading = {
  /** Line of the text it stood in, 1 the first. */
  readonly row: number
  /** Plot or green; '' where the table does not say. */
  readonly set: string
  readonly replicate?: string
  readonly foot: Foot
  readonly load?: Newtons
  /** Of a plate, over its area. */
  readonly pressure?: Pascals
  readonly measured: Measured
  readonly standardDeviation?: Metres
  readonly gaugeStep?: Metres
  /** How many readings it is the mean of. */
  readonly count: number
  readonly time?: Seconds
  readonly pass?: number
  /** ISO 8601 */
  readonly date?: string
  /** A fraction. */
  readonly moisture?: number
  readonly note?: string
}

/** A problem with where in the table it stands. */
export type TableProblem = Problem & { readonly row?: number; readonly column?: string }

export const placed = (
  row: number,
  column: string | undefined,
  told: { readonly expected: string; readonly received: string },
): TableProblem =>
  column === undefined
    ? { path: `row ${row}`, row, ...told }
    : { path: `row ${row}, ${column}`, row, column, ...told }
