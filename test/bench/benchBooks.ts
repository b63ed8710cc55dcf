import { heavierRoller } from '../../packages/explorer/src/books/heavierRoller.ts'
import { kindShelf } from '../../packages/explorer/src/entries/kinds.ts'

type Entry = Readonly<Record<string, unknown>> & { readonly kind: string }
export type BenchBook = {
  readonly title: string
  readonly text: string
  readonly entries: number
  readonly says: string
}

const names = kindShelf().names
const PROSE =
  'At {frontRoller.mass} the front roller presses with {front.load} and sinks {front.sinkage}; the edge goes down {drop}. Softer by half, it would be {twiceAsSoft.drop} more.'

/** Entries that all hang on the roller's mass, dearest first. The patch is left out: it has its worker. */
const live: readonly Entry[] = [
  { kind: 'sideView' },
  { kind: 'map', quantity: 'sinkage' },
  { kind: 'rack' },
  { kind: 'curves' },
  { kind: 'section' },
  { kind: 'headland' },
  { kind: 'formula', name: 'linePressure', from: 'front.load / frontRoller.diameter', in: 'N/mm' },
  { kind: 'text', text: PROSE },
  { kind: 'setting', of: ['frontRoller.diameter', 'frontRoller.surface', 'unit.benchHeight'] },
  { kind: 'setting', of: ['scales.total', 'scales.front'] },
  { kind: 'map', quantity: 'effectiveHeight' },
  { kind: 'text', text: PROSE.replace('Softer', 'On turf softer') },
].filter(({ kind }) => names.includes(kind))

const bookOf = (title: string, entries: readonly object[], says: string): BenchBook => ({
  title,
  says,
  entries: entries.length,
  text: JSON.stringify({ ...heavierRoller, title, pages: [{ title: 'all', lead: title, entries }] }),
})

const LIVE = 10

export function tenLiveEntries(): BenchBook {
  const entries = live.slice(0, LIVE)
  return bookOf('Ten live entries', entries, entries.map(({ kind }) => kind).join(', '))
}

const MANY = 200
const READINGS = 5000

/** Readings of nobody: loads in even steps on a power law, with a little of a wave for noise. */
function readingsText(): string {
  const rows = Array.from({ length: READINGS }, (_, i) => {
    const load = 40 + (180 * (i % 250)) / 250
    const sinkage = 0.31 * (load / 100) ** 0.7 + 0.02 * Math.sin(12.9898 * i)
    return `green ${1 + (i % 6)},${load.toFixed(1)},${sinkage.toFixed(3)}`
  })
  return ['set,load_N,sinkage_mm', ...rows].join('\n')
}

/** Two hundred entries on one page, and near its head as many readings as a season gives. */
export function twoHundredEntries(): BenchBook {
  const readings = { kind: 'readings', table: readingsText() }
  const others = Array.from({ length: MANY - 1 }, (_, at) => live[at % live.length])
  const [first, ...rest] = others.filter(entry => entry !== undefined)
  return bookOf('Two hundred entries', [first ?? readings, readings, ...rest], `${READINGS} readings`)
}
