import { describe } from '../quantities/index.ts'
import { type ColumnName, columns, type NumberColumn, type NumberName } from './columns.ts'
import type { Reading, TableProblem } from './reading.ts'

/** Units under which a written number would be usual; the bounds themselves say little. */
function likelyUnits(written: number, name: NumberName): string[] {
  const { suffixes, usual }: NumberColumn = columns[name]
  return Object.entries(suffixes)
    .filter(([suffix, factor]) => {
      const value = written * factor
      return suffix !== '' && value > usual.low && value <= usual.high && value > LIKELY * usual.high
    })
    .map(([suffix]) => `${name}_${suffix}`)
}

/** A unit in which a number is a hundredth of what is usual is not the likely one. */
const LIKELY = 1e-2
/** A whole column below a thousandth of what is usual is in another unit than it says. */
const LEAST = 1e-3

const asWritten = (value: number, { quantity, suffixes, written }: NumberColumn): string =>
  quantity
    ? describe(value, quantity)
    : `${Number((value / (suffixes[written] ?? 1)).toPrecision(3))}${written === '' ? '' : ` ${written}`}`

/** What was to be expected in place of a number that can be, but seldom is; undefined for a usual one. */
export function unlikely(written: number, name: NumberName, factor: number): string | undefined {
  const column: NumberColumn = columns[name]
  const { low, high } = column.usual
  const value = written * factor
  if (value >= low && value <= high) return undefined
  const range =
    value > high ? `at most about ${asWritten(high, column)}` : `at least about ${asWritten(low, column)}`
  const units = likelyUnits(written, name)
  return units.length > 0 ? `${range}, or another unit (likely ${units.join(' or ')})` : range
}

/** What a column would have to reach at least once, as a part of its usual range, to be in the unit it says. */
const tiny = ['sinkage', 'height', 'load', 'pressure'] as const

/** Columns whose every number is a thousandth of what is usual: written in another unit than their name says. */
export function tinyNotes(
  readings: readonly Reading[],
  headerOf: (name: ColumnName, otherwise: string) => string,
): TableProblem[] {
  return tiny.flatMap(name => {
    let most = 0
    for (const reading of readings) most = Math.max(most, Math.abs(sizeOf(reading, name) ?? 0))
    const column: NumberColumn = columns[name]
    const least = LEAST * column.usual.high
    if (most === 0 || most >= least) return []
    const header = headerOf(name, name)
    const expected = `at least about ${asWritten(least, column)} somewhere, or another unit`
    return [{ path: header, column: header, expected, received: `at most ${asWritten(most, column)}` }]
  })
}

function sizeOf({ measured, load, pressure }: Reading, name: (typeof tiny)[number]): number | undefined {
  if (name === 'load') return load
  if (name === 'pressure') return pressure
  if (name === 'sinkage') return measured.kind === 'sinkage' ? measured.sinkage : undefined
  return measured.kind === 'height' ? measured.height : undefined
}
