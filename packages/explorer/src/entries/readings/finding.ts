import type { Shown } from '../view.ts'
import type { ReadingsResult, ReadingsSettings } from './kind.ts'

/** How many readings of how many sets, between which loads, and what is not among them. */
export function readingsFinding({
  settings,
  result,
  reader,
}: Shown<ReadingsSettings, ReadingsResult>): string | null {
  const { words, format } = reader
  const { found } = words.readings
  if (settings.columns.length === 0) return null
  const { readings, loads, pressures, leftOut, problems } = result
  if (readings.length + problems.length === 0) return null
  const fitted = readings.filter(({ measured }) => measured.kind !== 'height')
  const heights = readings.length - fitted.length
  const sets = new Set(fitted.flatMap(({ set }) => (set === '' ? [] : [set])))
  const between = (span: { low: number; high: number } | null, quantity: 'load' | 'pressure') =>
    span &&
    found.between({ low: format(span.low, quantity, { unit: false }), high: format(span.high, quantity) })
  const rows = new Set(problems.flatMap(({ row }) => row ?? []))
  const parts = [
    found.readings(fitted.length, sets.size),
    between(loads, 'load') ?? between(pressures, 'pressure'),
    heights > 0 ? found.heights(heights) : null,
  ].filter(part => part !== null)
  const rest = [
    leftOut.length > 0 ? found.leftOut(leftOut.length) : null,
    rows.size > 0 ? found.unread(rows.size) : problems.length > 0 ? found.faulty : null,
  ].filter(part => part !== null)
  return found.whole({ parts: parts.join(', '), rest: rest.join('; ') })
}
