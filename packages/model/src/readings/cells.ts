import { describe } from '../quantities/index.ts'
import { type ColumnName, columns, type NumberColumn, type NumberName, type TextColumn } from './columns.ts'
import type { Column } from './header.ts'
import { type DecimalMark, readInches, readNumber, type Written } from './numberCell.ts'
import { placed, type TableProblem } from './reading.ts'
import { unlikely } from './unlikely.ts'

/** A number of a row in SI, the column it was taken from, and how it stood there. */
export type Given = Written & { readonly header: string; readonly cell: string }

export type Values = {
  readonly numbers: Partial<Record<NumberName, Given>>
  readonly texts: Partial<Record<ColumnName, string>>
  readonly problems: readonly TableProblem[]
  readonly notes: readonly TableProblem[]
}

const MISSING = /^(?:na|n\/a|-|–|—|−)?$/i
export const isMissing = (cell: string): boolean => cell === '' || MISSING.test(cell.trim())

/** A day of the calendar, and if need be a time of it: 2025-04-01, 2025-04-01T09:30, with seconds and zone. */
const DATE =
  /^(\d{4})-(\d{2})-(\d{2})(?:[T ]([01]\d|2[0-3]):[0-5]\d(?::[0-5]\d(?:[.,]\d+)?)?(?:Z|[+-][01]\d:?[0-5]\d)?)?$/

function isDate(text: string): boolean {
  const found = DATE.exec(text)
  if (!found) return false
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])]
  const read = new Date(Date.UTC(year, month - 1, day))
  return read.getUTCMonth() === month - 1 && read.getUTCDate() === day
}

/** No size of anything in SI lies beyond these: such a number is a slip, and would come back as infinite or as nothing. */
const SMALLEST = 1e-30
const GREATEST = 1e30

/** What a number cannot be. */
function impossible(value: number, { can }: NumberColumn): string | undefined {
  const { above, atLeast, atMost, whole } = can
  if (!(Math.abs(value) <= GREATEST) || (above === 0 && value > 0 && value < SMALLEST))
    return 'a number of a size that can be calculated with'
  if (above !== undefined && !(value > above)) return `more than ${above}`
  if (atLeast !== undefined && !(value >= atLeast))
    return atMost === undefined ? `at least ${atLeast}` : `${atLeast} to ${atMost}`
  if (atMost !== undefined && !(value <= atMost)) return `${atLeast ?? ''} to ${atMost}`.trim()
  return whole && !Number.isInteger(value) ? 'a whole number' : undefined
}

/** Two spellings of one quantity agree when their last digits allow it. */
const agree = (a: Written, b: Written): boolean =>
  Math.abs(a.value - b.value) <= (a.half + b.half) * (1 + ROUNDING) + ROUNDING * Math.abs(a.value)
const ROUNDING = 1e-9

type Reader = {
  readonly row: number
  readonly mark: DecimalMark
  readonly problems: TableProblem[]
  readonly notes: TableProblem[]
}

function numberOf(cell: string, column: Column, name: NumberName, reader: Reader): Given | undefined {
  const { row, mark, problems, notes } = reader
  const { header, factor, unit } = column
  const read = unit === 'in' ? readInches(cell, mark) : readNumber(cell, mark)
  if (typeof read === 'string') {
    problems.push(placed(row, header, { expected: read, received: describe(cell.trim()) }))
    return undefined
  }
  const value = read.value * factor
  const expected = impossible(value, columns[name])
  if (expected !== undefined) {
    problems.push(placed(row, header, { expected, received: cell.trim() }))
    return undefined
  }
  const doubt = unlikely(read.value, name, factor)
  if (doubt) notes.push(placed(row, header, { expected: doubt, received: cell.trim() }))
  return { value, half: read.half * factor, header, cell }
}

const textOf = (cell: string, name: ColumnName): string =>
  // A space that does not break is a space all the same where names are compared.
  name === 'note' ? cell.trim() : cell.replace(/[^\S\n]/g, ' ').trim()

/** The cells of a row by what they mean; with every problem among them. */
export function readCells(
  cells: readonly string[],
  found: readonly Column[],
  { row, mark }: { readonly row: number; readonly mark: DecimalMark },
): Values {
  const numbers: Partial<Record<NumberName, Given>> = {}
  const texts: Partial<Record<ColumnName, string>> = {}
  const reader: Reader = { row, mark, problems: [], notes: [] }
  for (const column of found) {
    const { name, header, index } = column
    const cell = cells[index] ?? ''
    if (name === null || isMissing(cell)) continue
    const { kind }: NumberColumn | TextColumn = columns[name]
    if (kind === 'number') {
      const given = numberOf(cell, column, name as NumberName, reader)
      if (!given) continue
      const before = numbers[name as NumberName]
      if (!before) numbers[name as NumberName] = given
      else if (!agree(before, given)) {
        const received = `${cell.trim()} beside ${before.cell.trim()}`
        reader.problems.push(placed(row, header, { expected: `the same as in ${before.header}`, received }))
      }
      continue
    }
    const text = textOf(cell, name)
    const before = texts[name]
    if (kind === 'date' && !isDate(text))
      reader.problems.push(
        placed(row, header, { expected: 'a date such as 2025-04-01', received: describe(text) }),
      )
    else if (before === undefined) texts[name] = text
    else if (before !== text)
      reader.problems.push(
        placed(row, header, {
          expected: `the same as before, ${describe(before)}`,
          received: describe(text),
        }),
      )
  }
  return { numbers, texts, problems: reader.problems, notes: reader.notes }
}
