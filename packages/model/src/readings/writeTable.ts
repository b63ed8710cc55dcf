import { type ColumnName, columns, type NumberColumn, type NumberName, writtenName } from './columns.ts'
import type { Reading } from './reading.ts'
import type { Delimiter } from './tokens.ts'

const MOST_DIGITS = 17

/** The shortest number that a reader takes back as the value to the last bit; undefined when none does. */
function shownExactly(value: number, factor: number): number | undefined {
  for (let digits = 1; digits <= MOST_DIGITS; digits++) {
    const short = Number((value / factor).toPrecision(digits))
    if (short * factor === value) return short
  }
  return undefined
}

function numberOf({ foot, measured, ...reading }: Reading, name: NumberName): number | undefined {
  switch (name) {
    case 'plate_area':
      return foot.kind === 'plate' && 'area' in foot ? foot.area : undefined
    case 'plate_diameter':
      return foot.kind === 'plate' && 'diameter' in foot ? foot.diameter : undefined
    case 'sinkage':
      return measured.kind === 'sinkage' ? measured.sinkage : undefined
    case 'drop':
      return measured.kind === 'drop' ? measured.drop : undefined
    case 'height':
      return measured.kind === 'height' ? measured.height : undefined
    case 'point':
      return measured.kind === 'drop' ? measured.point : undefined
    case 'sd':
      return reading.standardDeviation
    case 'gauge_step':
      return reading.gaugeStep
    case 'n':
      return reading.count === 1 ? undefined : reading.count
    default:
      return reading[name]
  }
}

function textOf(reading: Reading, name: ColumnName): string | undefined {
  if (name === 'set') return reading.set
  if (name === 'roller') return reading.foot.kind === 'roller' ? (reading.foot.name ?? undefined) : undefined
  if (name === 'replicate' || name === 'date' || name === 'note') return reading[name]
  return undefined
}

type Written = { readonly header: string; readonly cells: readonly string[] }

/** Numbers in the usual unit, or where not all of them would read back exactly, in SI. */
function numbersUnder(readings: readonly Reading[], name: NumberName): Written {
  const column: NumberColumn = columns[name]
  const values = readings.map(reading => numberOf(reading, name))
  const usual = column.suffixes[column.written] ?? 1
  const shown = values.map(value => (value === undefined ? '' : shownExactly(value, usual)))
  if (shown.every(value => value !== undefined))
    return { header: writtenName(name), cells: shown.map(String) }
  const si = Object.entries(column.suffixes).find(([, factor]) => factor === 1)
  return {
    header: si ? `${name}_${si[0]}` : writtenName(name),
    cells: values.map((value, i) =>
      value === undefined ? '' : String(si ? value : (shown[i] ?? value / usual)),
    ),
  }
}

const quoted = (cell: string, delimiter: Delimiter): string =>
  /["\n\r#]/.test(cell) || cell.includes(delimiter) || cell !== cell.trim()
    ? `"${cell.replaceAll('"', '""')}"`
    : cell

export type WriteOptions = {
  /** A comma unless given. */
  readonly delimiter?: Delimiter
}

/**
 * Readings as a table that readTable takes back to the last bit: metric units, decimal points, the columns that are
 * needed. Rows are counted anew; space around a text is lost, and a text that says "missing" (NA, -) reads as none.
 */
export function writeTable(readings: readonly Reading[], options: WriteOptions = {}): string {
  const { delimiter = ',' } = options
  const written = (Object.keys(columns) as ColumnName[]).map(
    (name): Written =>
      columns[name].kind === 'number'
        ? numbersUnder(readings, name as NumberName)
        : { header: name, cells: readings.map(reading => textOf(reading, name) ?? '') },
  )
  const needed = written.filter(({ cells }) => cells.some(cell => cell !== ''))
  const rows = [
    needed.map(({ header }) => header),
    ...readings.map((_, i) => needed.map(({ cells }) => quoted(cells[i]!, delimiter))),
  ]
  return `${rows.map(row => row.join(delimiter)).join('\n')}\n`
}
