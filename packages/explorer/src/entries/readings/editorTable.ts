import type { ColumnRead, TableProblem } from '@swardsink/model'
import type { EditorColumn, RowRemark } from '../../controls/table-editor.ts'
import type { Reader } from '../../words/index.ts'
import type { Cells } from './columns.ts'
import type { ReadingsResult } from './kind.ts'
import { type ShownColumn, shownColumn } from './shownColumn.ts'

/** A table as its editor shows it, and the way back. */
export type EditorTable = {
  readonly columns: readonly EditorColumn[]
  readonly rows: Cells
  /** The table as typed, from what the editor gives back. */
  taken(rows: Cells): Cells
}

const TEXTS = ['set', 'replicate', 'roller', 'date', 'note']
/** Columns that may well be empty: nothing is lost with them. */
const OFTEN_EMPTY = ['note', 'n', 'replicate']
const FEWEST_LETTERS = 5
const MOST_LETTERS = 22
/** Cells that are looked at for the room a column needs. */
const LOOKED_AT = 200

function lettersOf(cells: readonly string[]): number {
  const longest = Math.max(...cells.slice(0, LOOKED_AT).map(cell => cell.length), 0)
  return Math.min(MOST_LETTERS, Math.max(FEWEST_LETTERS, longest + 1))
}

/** What the columns are, as far as the table has been read under the heads it has now. */
function readAs(heads: readonly string[], { columns }: ReadingsResult): readonly ColumnRead[] {
  return heads.map(header => columns.find(one => one.header === header) ?? { header, name: null, unit: '' })
}

export function headWords({ header, name }: ColumnRead, { words }: Reader): string {
  const { readings } = words
  return name === null ? readings.unread(header) : (readings.heads[name] ?? name)
}

type Question = {
  readonly heads: readonly string[]
  readonly rows: Cells
  readonly result: ReadingsResult
  /** Names that may stand under a column. */
  readonly options: Readonly<Record<string, readonly string[]>>
  readonly reader: Reader
}

export function editorTable({ heads, rows, result, options, reader }: Question): EditorTable {
  const read = readAs(heads, result)
  const lists = heads.map((_, along) => rows.map(row => row[along] ?? ''))
  const ways = read.map((column, along) => shownColumn(column, lists[along] ?? [], reader.units))
  const shown = ways.some(({ isChanged }) => isChanged) ? shownRows(rows, ways) : rows
  return {
    columns: read.map((column, along): EditorColumn => {
      const { header, name } = column
      const offered = name === null ? undefined : options[name]
      return {
        name: header,
        head: headWords(column, reader),
        unit: ways[along]?.unit ?? '',
        numeric: name !== null && !TEXTS.includes(name),
        letters: lettersOf(lists[along] ?? []),
        ...(offered && offered.length > 0 ? { options: offered } : {}),
      }
    }),
    rows: shown,
    taken: next => (shown === rows ? next : takenRows(next, { rows, shown, ways })),
  }
}

const shownRows = (rows: Cells, ways: readonly ShownColumn[]): Cells =>
  rows.map(row => row.map((cell, along) => ways[along]?.shown(cell) ?? cell))

/** Rows that were not touched are the same as before; of others, cells that were not. */
function takenRows(
  next: Cells,
  {
    rows,
    shown,
    ways,
  }: { readonly rows: Cells; readonly shown: Cells; readonly ways: readonly ShownColumn[] },
): Cells {
  const places = new Map(shown.map((row, at) => [row, at]))
  return next.map((row, at) => {
    const same = places.get(row)
    if (same !== undefined) return rows[same] ?? row
    return row.map((cell, along) =>
      cell === shown[at]?.[along] ? (rows[at]?.[along] ?? cell) : (ways[along]?.taken(cell) ?? cell),
    )
  })
}

/** What is said of single rows, under them. */
export function rowRemarks(
  result: ReadingsResult,
  heads: readonly string[],
  { words }: Reader,
): readonly RowRemark[] {
  const said = words.readings
  const told = (kind: 'problem' | 'note') => (problem: TableProblem) => {
    const { row, column, expected, received } = problem
    if (row === undefined || row < 1) return []
    return [
      {
        row: row - 1,
        column: column !== undefined && heads.includes(column) ? column : null,
        sentence: said.problem({ expected: words.modelSays(expected), received: words.modelSays(received) }),
        kind,
      },
    ]
  }
  return [
    ...result.problems.flatMap(told('problem')),
    ...result.notes.flatMap(told('note')),
    ...result.leftOut.map(({ row, why }) => ({
      row: row - 1,
      column: null,
      sentence: said.leftOutRow(words.modelSays(why)),
      kind: 'note' as const,
    })),
  ]
}

/** What is said of the table as a whole. */
export function tableRemarks(result: ReadingsResult, reader: Reader) {
  const { words } = reader
  const said = words.readings
  const whole = (list: readonly TableProblem[]) =>
    list.flatMap(({ row, path, column, expected, received }) => {
      if (row !== undefined && row >= 1) return []
      const sentence = said.problem({
        expected: words.modelSays(expected),
        received: words.modelSays(received),
      })
      return [
        column === undefined ? sentence : said.placed({ column: column || words.modelSays(path), sentence }),
      ]
    })
  const isUsual = (header: string) =>
    result.columns.some(column => column.header === header && OFTEN_EMPTY.includes(column.name ?? ''))
  const missing = result.missing
    .filter(({ column }) => !isUsual(column))
    .map(({ column, count }) => {
      const read = result.columns.find(({ header }) => header === column)
      return said.missing(read ? headWords(read, reader) : column, count)
    })
  return {
    problems: whole(result.problems),
    notes: [...whole(result.notes), ...(missing.length > 0 ? [said.missingIn(words.list(missing))] : [])],
  }
}
