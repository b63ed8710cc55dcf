import type { Reading, TableProblem } from './reading.ts'

const mm = 1e-3
const DIGITS = 3
const told = (metres: number): string => `${Number((metres / mm).toPrecision(DIGITS))} mm`

/** Drops by set: their smallest and largest, and how many there are. */
function dropsBySet(readings: readonly Reading[]) {
  const sets = new Map<string, { low: number; high: number; count: number; row: number }>()
  for (const { set, measured, row } of readings) {
    if (measured.kind !== 'drop') continue
    const { drop } = measured
    const seen = sets.get(set)
    if (!seen) sets.set(set, { low: drop, high: drop, count: 1, row })
    else {
      seen.low = Math.min(seen.low, drop)
      seen.high = Math.max(seen.high, drop)
      seen.count++
    }
  }
  return [...sets].map(([set, range]) => ({ set, ...range }))
}

/** What drops of several sets say about their datums. A drop says nothing by itself: only what differs in its set. */
export function datumNotes(readings: readonly Reading[], header: string): TableProblem[] {
  const sets = dropsBySet(readings)
  const notes = sets
    .filter(({ count }) => count === 1)
    .map(({ set, row }) => ({
      path: `row ${row}, ${header}`,
      row,
      column: header,
      expected: `at least two drops in the set ${JSON.stringify(set)}`,
      received: 'one, which its datum takes up',
    }))
  const sorted = [...sets].sort((a, b) => a.low - b.low)
  const apart = sorted.some((one, i) => i > 0 && one.low > Math.max(...sorted.slice(0, i).map(s => s.high)))
  if (!apart) return notes
  const first = sorted[0]!
  const last = sorted.at(-1)!
  return [
    ...notes,
    {
      path: header,
      column: header,
      expected: 'one datum for all sets, or a datum of its own for each',
      received: `drops about ${told(first.low)} in ${JSON.stringify(first.set)} and ${told(last.high)} in ${JSON.stringify(last.set)}: the datums differ, or the sets do`,
    },
  ]
}

/** Names of sets that differ by case or spaces alone: probably one set. */
export function setNotes(readings: readonly Reading[]): TableProblem[] {
  const spellings = new Map<string, { set: string; row: number }>()
  const notes: TableProblem[] = []
  const seen = new Set<string>()
  for (const { set, row } of readings) {
    if (seen.has(set)) continue
    seen.add(set)
    const key = set.toLowerCase().replace(/[\s_-]+/g, '')
    const other = spellings.get(key)
    if (!other) spellings.set(key, { set, row })
    else
      notes.push({
        path: `row ${row}, set`,
        row,
        column: 'set',
        expected: `one spelling of a set: ${JSON.stringify(other.set)} in row ${other.row}`,
        received: `${JSON.stringify(set)}, taken as another set`,
      })
  }
  return notes
}
