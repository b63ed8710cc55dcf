import { describe } from '../quantities/index.ts'
import {
  type ColumnName,
  columnNames,
  columns,
  measures,
  type NumberColumn,
  type NumberName,
  suffixMeant,
  type TextColumn,
  writtenName,
} from './columns.ts'
import { nearestName } from './nearestName.ts'
import { placed, type TableProblem } from './reading.ts'
import type { Line } from './tokens.ts'

/** A column of the table: how it is headed, what it means, and what one of its unit is in SI. */
export type Column = {
  readonly header: string
  readonly name: ColumnName | null
  /** The suffix that names its unit, '' where there is none. */
  readonly unit: string
  readonly factor: number
  readonly index: number
}

export type Header = {
  readonly columns: readonly Column[]
  readonly problems: readonly TableProblem[]
  readonly notes: readonly TableProblem[]
}

/** `Sinkage (mm)`, ` sinkage mm` and `SINKAGE_MM` are one name. */
export const normalName = (header: string): string =>
  header
    .normalize('NFKC')
    .trim()
    .toLowerCase()
    .replace(/[()[\]{}]/g, ' ')
    .replace(/%/g, ' percent ')
    .trim()
    .replace(/[\s_-]+/g, '_')

type Meaning = Pick<Column, 'name' | 'unit' | 'factor'>
const nothing: Meaning = { name: null, unit: '', factor: 1 }

const columnOf = (name: ColumnName): NumberColumn | TextColumn => columns[name]
const isName = (word: string): word is ColumnName => Object.hasOwn(columns, word)

/** What a heading means; the name alone where its unit is missing or no unit of it. */
function meaningOf(header: string): Meaning | { readonly named: NumberName } {
  const normal = normalName(header)
  for (const cut of [normal.length, normal.lastIndexOf('_')]) {
    const word = normal.slice(0, Math.max(cut, 0))
    if (!isName(word)) continue
    const column = columnOf(word)
    const unit = normal.slice(cut + 1)
    if (column.kind !== 'number') return unit === '' ? { name: word, unit, factor: 1 } : nothing
    const suffix = suffixMeant(column, unit)
    return suffix === undefined
      ? { named: word as NumberName }
      : { name: word, unit: suffix, factor: column.suffixes[suffix]! }
  }
  return nothing
}

/** How many of the cells are names that a table may have: by which the delimiter is found. */
export const namesKnown = (cells: readonly string[]): number =>
  cells.filter(cell => {
    const meaning = meaningOf(cell)
    return 'named' in meaning || meaning.name !== null
  }).length

const listed = (name: NumberName): string =>
  Object.keys(columns[name].suffixes)
    .map(suffix => `${name}_${suffix}`)
    .join(', ')

/** The columns that a first row heads. Unknown ones are noted with the nearest name, never passed over. */
export function readHeader({ row, cells }: Line): Header {
  const problems: TableProblem[] = []
  const notes: TableProblem[] = []
  const found = cells.map((cell, index): Column => {
    const header = cell.trim()
    const meaning = meaningOf(header)
    if ('named' in meaning) {
      const { suffixes } = columns[meaning.named]
      const expected =
        '' in suffixes
          ? `${meaning.named} without a unit`
          : `its unit after the name: ${listed(meaning.named)}`
      problems.push(placed(row, header, { expected, received: describe(header) }))
      return { header, index, ...nothing }
    }
    if (meaning.name === null && header !== '') {
      const near = nearestName(normalName(header))
      const expected = near
        ? `a known name, perhaps ${near}`
        : `one of ${columnNames.map(writtenName).join(', ')}`
      const received = `${describe(header)}, which is not read`
      notes.push(placed(row, header, { expected, received }))
    }
    return { header, index, ...meaning }
  })
  notes.push(...duplicates(row, found))
  if (problems.length === 0) problems.push(...missingColumns(row, found))
  return { columns: found, problems, notes }
}

function duplicates(row: number, found: readonly Column[]): TableProblem[] {
  return found
    .filter(({ name, index }) => name !== null && found.findIndex(other => other.name === name) < index)
    .map(({ name, header }) => {
      const first = found.find(other => other.name === name)!.header
      return placed(row, header, {
        expected: `${name} to be given once`,
        received: `${first} as well: where both have a value they are compared, and the first is taken`,
      })
    })
}

function missingColumns(row: number, found: readonly Column[]): TableProblem[] {
  const has = (name: ColumnName) => found.some(column => column.name === name)
  const received = describe(found.map(({ header }) => header).join(', '))
  if (!measures.some(has)) {
    const expected = `a header row with at least one of ${measures.map(writtenName).join(', ')}`
    return [{ path: `row ${row}`, row, expected, received }]
  }
  const isPlate = has('plate_area') || has('plate_diameter')
  if (isPlate && !has('load') && !has('pressure') && (has('sinkage') || has('drop')))
    return [{ path: `row ${row}`, row, expected: 'load_N, load_kg or pressure_kPa beside a plate', received }]
  return []
}
