import { describe, InputError } from '../quantities/index.ts'
import { readCells } from './cells.ts'
import { decimalMarkOf, numberCells } from './decimalMark.ts'
import { delimited } from './delimited.ts'
import { type Column, readHeader } from './header.ts'
import { apartFromMeans, isMeanOfUnknown, isSummedUp, type LeftOut, sumsUp } from './means.ts'
import { placed, type Reading, type TableProblem } from './reading.ts'
import { readRow } from './rows.ts'
import { datumNotes, setNotes } from './setNotes.ts'
import { commentedRows, missingCells, raggedness } from './shape.ts'
import { type Delimiter, type Line, plainText, tokensOf } from './tokens.ts'
import { tinyNotes } from './unlikely.ts'

export type TableOptions = {
  /** Found from the header row unless given. */
  readonly delimiter?: Delimiter
  /** Found from the numbers unless given. */
  readonly decimal?: '.' | ','
  /** What the first line is counted as: 1 unless given, 0 where rows are counted without their header. */
  readonly firstLine?: 0 | 1
}

/** A column as the table heads it, what it was read as (null: not read), and its unit's suffix. */
export type ColumnRead = { readonly header: string; readonly name: string | null; readonly unit: string }

type Said = {
  readonly readings: readonly Reading[]
  readonly columns: readonly ColumnRead[]
  /** Known columns with cells left empty, or holding NA, n/a, - or –. */
  readonly missing: readonly { readonly column: string; readonly count: number }[]
  /** Rows that are no readings, and why. */
  readonly leftOut: readonly LeftOut[]
  /** What was read but may not be as it was meant. */
  readonly notes: readonly TableProblem[]
}
export type TableRead =
  | ({ readonly ok: true } & Said)
  /** With what could be read all the same. */
  | ({ readonly ok: false; readonly problems: readonly TableProblem[] } & Said)

const sameRow = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((cell, i) => cell.trim() === b[i]!.trim())

/**
 * Readings from a table with one header row: commas, semicolons or tabs between cells, decimal points or commas,
 * units in the names of columns. What it all may hold: docs/guides/researcher.md.
 *
 * Units   any of the table of units after the last underscore of a name → SI
 * Throws  InputError when it is not given a text; nothing else: every problem of the table comes back, with row and
 *         column, beside what could be read
 */
export function readTable(text: string, options: TableOptions = {}): TableRead {
  if (typeof text !== 'string')
    throw new InputError({ path: 'text', expected: 'a text', received: describe(text) })
  const { plain, delimiter } = delimited(plainText(text), options.delimiter)
  const { firstLine = 1 } = options
  const tokens = tokensOf(plain, delimiter, { firstLine })
  const [first, ...rest] = tokens.lines
  const problems: TableProblem[] = [...tokens.problems]
  const notes: TableProblem[] = []
  if (plain.includes('\u0000'))
    problems.push({ path: 'the table', expected: 'text in UTF-8', received: 'zeros between the letters' })
  if (plain.includes('\uFFFD'))
    notes.push({ path: 'the table', expected: 'text in UTF-8', received: 'letters that are none' })
  if (!first) {
    problems.push({ path: 'the table', expected: 'a header row and readings', received: 'nothing' })
    return { ok: false, problems, readings: [], columns: [], missing: [], leftOut: [], notes }
  }

  const header = readHeader(first)
  const found = header.columns
  problems.push(...header.problems)
  notes.push(...header.notes, ...commentedRows(plain, { cells: found.length, delimiter, first: firstLine }))
  // Rows under no known name say nothing: the header is what is wrong.
  if (found.every(({ name }) => name === null))
    return { ok: false, problems, readings: [], columns: toldOf(found), missing: [], leftOut: [], notes }
  const mark = options.decimal ?? decimalMarkOf(numberCells(rest, found), delimiter, notes)
  const summed = isSummedUp(rest, found)

  const leftOut: LeftOut[] = []
  const all: Reading[] = []
  const body: Line[] = []
  for (const line of rest) {
    const { row, cells } = line
    if (sameRow(cells, first.cells)) {
      leftOut.push({ row, why: 'the header again' })
      continue
    }
    body.push(line)
    const ragged = raggedness(line, found, delimiter)
    problems.push(...ragged)
    if (ragged.length > 0) continue
    const values = readCells(cells, found, { row, mark })
    if (sumsUp(values.texts, summed)) {
      leftOut.push({ row, why: 'a line that sums others up' })
      continue
    }
    const read = readRow(row, values, found)
    problems.push(...read.problems)
    notes.push(...read.notes)
    all.push(...read.readings)
    if (read.why !== undefined) leftOut.push({ row, why: read.why })
  }
  return concluded({ all, found, problems, notes, leftOut, missing: missingCells(body, found) })
}

const toldOf = (found: readonly Column[]): ColumnRead[] =>
  found.map(({ header, name, unit }) => ({ header, name, unit }))

type Found = {
  readonly all: readonly Reading[]
  readonly found: readonly Column[]
  readonly problems: TableProblem[]
  readonly notes: TableProblem[]
  readonly leftOut: readonly LeftOut[]
  readonly missing: Said['missing']
}

/** What only the whole table can tell. */
function concluded({ all, found, problems, notes, leftOut, missing }: Found): TableRead {
  const { readings, leftOut: means } = apartFromMeans(all)
  const headerOf = (name: Column['name'], otherwise: string) =>
    found.find(column => column.name === name)?.header ?? otherwise
  notes.push(
    ...readings.filter(isMeanOfUnknown).map(({ row }) =>
      placed(row, headerOf('replicate', 'replicate'), {
        expected: 'n, how many a mean is of',
        received: 'nothing: it is taken as one reading',
      }),
    ),
    ...setNotes(readings),
    ...datumNotes(readings, headerOf('drop', 'drop')),
    ...tinyNotes(readings, headerOf),
  )
  const said: Said = {
    readings,
    columns: toldOf(found),
    missing,
    leftOut: [...leftOut, ...means].sort((a, b) => a.row - b.row),
    notes,
  }
  if (problems.length === 0 && readings.length === 0)
    problems.push({ path: 'the table', expected: 'at least one reading', received: 'none' })
  return problems.length === 0 ? { ok: true, ...said } : { ok: false, problems, ...said }
}
