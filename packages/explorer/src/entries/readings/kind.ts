import { type ColumnRead, type Reading, readTable, type TableProblem, type TableRead } from '@swardsink/model'
import type { Answer, Kind } from '../../book/index.ts'
import { type Cells, type ReadingsSettings, readColumns, rowsOf, textOf } from './columns.ts'

export type { ReadingsSettings } from './columns.ts'

/** Rows as one list that stays the same while the table does: a long one is known by that. */
export type ReadingsInput = { readonly heads: readonly string[]; readonly rows: Cells }
type Span = { readonly low: number; readonly high: number }

/** What was read; rows are counted as the editor counts them, from 1. */
export type ReadingsResult = {
  /** Sound ones: a row with a problem gives none. */
  readonly readings: readonly Reading[]
  readonly problems: readonly TableProblem[]
  readonly notes: readonly TableProblem[]
  readonly leftOut: TableRead['leftOut']
  readonly missing: TableRead['missing']
  readonly columns: readonly ColumnRead[]
  readonly sets: readonly string[]
  /** Of the readings that say one; null where none does. */
  readonly loads: Span | null
  readonly pressures: Span | null
}

/** So many rows are read within a frame. */
const AT_ONCE = 120

function spanOf(values: readonly (number | undefined)[]): Span | null {
  const known = values.filter(value => value !== undefined)
  return known.length === 0
    ? null
    : {
        low: known.reduce((a, b) => Math.min(a, b)),
        high: known.reduce((a, b) => Math.max(a, b)),
      }
}

const nothing: ReadingsResult = {
  readings: [],
  problems: [],
  notes: [],
  leftOut: [],
  missing: [],
  columns: [],
  sets: [],
  loads: null,
  pressures: null,
}

/** A table that a reader has only begun, with names and rows but nothing measured yet, is not wrong. */
const isBegun = ({ leftOut }: TableRead, { rows }: ReadingsInput): boolean =>
  leftOut.length === rows.filter(row => row.some(cell => cell.trim() !== '')).length &&
  leftOut.every(({ why }) => why === 'nothing measured')

function read(input: ReadingsInput): ReadingsResult {
  if (input.heads.length === 0) return nothing
  const found = readTable(textOf(input, '\t'), { delimiter: '\t', firstLine: 0 })
  const { readings, notes, leftOut, missing, columns: named } = found
  if (isBegun(found, input)) return { ...nothing, notes, columns: named }
  return {
    readings,
    problems: found.ok ? [] : found.problems,
    notes,
    leftOut,
    missing,
    columns: named,
    sets: [...new Set(readings.map(({ set }) => set))],
    loads: spanOf(readings.map(({ load }) => load)),
    pressures: spanOf(readings.map(({ pressure }) => pressure)),
  }
}

const answered = (input: ReadingsInput): Answer<ReadingsResult> => ({
  outcome: 'answered',
  result: read(input),
  cautions: [],
  whole: true,
})

/** What a gauge said: typed, pasted or opened. Other entries read it by this one's id. */
export const readings: Kind<'readings', ReadingsSettings, ReadingsInput, ReadingsResult> = {
  kind: 'readings',
  read: readColumns,
  problems: () => [],
  needs: () => [],
  input: ({ settings: { columns } }) => ({ heads: columns.map(({ head }) => head), rows: rowsOf(columns) }),
  compute: input => (input.rows.length <= AT_ONCE ? answered(input) : { outcome: 'later' }),
  refine: answered,
  offers: ({ readings: list, sets }) => ({
    count: { quantity: 'count', value: list.length },
    sets: { quantity: 'count', value: sets.length },
  }),
  section: '§7',
  check: 'test/explorer/entries/readings.test.ts',
}
