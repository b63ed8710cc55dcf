import { tableCells } from '@swardsink/model'
import { type Fields, isRecord } from '../../book/index.ts'

/** A column as a book keeps it: its name with its unit, as in a file, and a line for each cell. */
export type ReadingsColumn = { readonly head: string; readonly cells: string }

export type ReadingsSettings = {
  readonly columns: readonly ReadingsColumn[]
  /** What the lines of a file said that start with #. */
  readonly remark: string
  /** A table as a file has it may stand in place of columns; it is cut into them when it is read. */
  readonly table?: string
}

/** Rows of cells, as typed. */
export type Cells = readonly (readonly string[])[]

const LINE = '\n'
/** A cell has one line: that is how cells are told apart. */
const oneLine = (cell: string): string => cell.replace(/\s+/g, ' ')

const rowsKnown = new WeakMap<readonly ReadingsColumn[], Cells>()

/** The rows of a table; the same rows for the same columns. */
export function rowsOf(columns: readonly ReadingsColumn[]): Cells {
  const known = rowsKnown.get(columns)
  if (known) return known
  const lists = columns.map(({ cells }) => cells.split(LINE).slice(0, -1))
  const count = Math.max(0, ...lists.map(list => list.length))
  const rows = Array.from({ length: count }, (_, row) => lists.map(list => list[row] ?? ''))
  rowsKnown.set(columns, rows)
  return rows
}

/** Columns under these names; whoever asks for their rows is given back these. */
export function columnsFrom(heads: readonly string[], rows: Cells): readonly ReadingsColumn[] {
  const columns = heads.map((head, along) => ({
    head: oneLine(head).trim(),
    cells: rows.map(row => `${oneLine(row[along] ?? '')}${LINE}`).join(''),
  }))
  rowsKnown.set(columns, rows)
  return columns
}

/** A text from a file or a clipboard, cut up: its first row names the columns. */
export function settingsFrom(text: string): ReadingsSettings {
  const { rows, comments } = tableCells(text)
  const [heads = [], ...body] = rows
  const width = Math.max(0, ...rows.map(row => row.length))
  const named = Array.from({ length: width }, (_, along) => heads[along] ?? '')
  return { columns: columnsFrom(named, body), remark: comments.join(LINE) }
}

const quoted = (cell: string, delimiter: string): string =>
  cell.includes('"') || cell.includes(delimiter) || cell.startsWith('#')
    ? `"${cell.replaceAll('"', '""')}"`
    : cell

/** A table as text; the model reads it with tabs, a file has commas. */
export function textOf(
  q: { readonly heads: readonly string[]; readonly rows: Cells; readonly remark?: string },
  delimiter: ',' | '\t',
): string {
  const line = (cells: readonly string[]) => cells.map(cell => quoted(cell, delimiter)).join(delimiter)
  const remarks = q.remark ? q.remark.split(LINE).map(text => `# ${text}`) : []
  return `${[...remarks, ...[q.heads, ...q.rows].map(line)].join(LINE)}${LINE}`
}

function readCells(raw: unknown): string | null {
  if (typeof raw === 'string') return raw === '' || raw.endsWith(LINE) ? raw : raw + LINE
  if (!Array.isArray(raw)) return null
  const cells = raw.map(cell =>
    typeof cell === 'string' ? cell : typeof cell === 'number' ? String(cell) : cell === null ? '' : null,
  )
  return cells.includes(null) ? null : cells.map(cell => oneLine(cell ?? '') + LINE).join('')
}

/** Columns from a book: each with its cells as one text, a line each, or as a list. */
export function readColumns(fields: Fields): ReadingsSettings {
  const raw = fields.raw('columns')
  const table = fields.text('table', '')
  const remark = fields.text('remark', '')
  if (table !== '') {
    const made = settingsFrom(table)
    return remark === '' ? made : { ...made, remark }
  }
  const columns: ReadingsColumn[] = []
  for (const one of Array.isArray(raw) ? raw : []) {
    const head = isRecord(one) ? one.head : undefined
    const cells = isRecord(one) ? readCells(one.cells) : null
    if (typeof head === 'string' && cells !== null) columns.push({ head, cells })
    else fields.problem('columns', 'columns with a head and cells, a line each')
  }
  if (raw !== undefined && !Array.isArray(raw)) fields.problem('columns', 'a list of columns')
  return { columns, remark }
}
