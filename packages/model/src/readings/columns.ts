import { catalogue, type Dimension, GRAVITY, type QuantityName, units } from '../quantities/index.ts'

type Range = {
  readonly above?: number
  readonly atLeast?: number
  readonly atMost?: number
  readonly whole?: true
}
type Usual = { readonly low: number; readonly high: number }

/** A column of numbers: its units as suffixes, what cannot be, and what is usual (SI). */
export type NumberColumn = {
  readonly kind: 'number'
  /** From the suffix of the name to the SI value of one; '' where it has no unit. Read in any case. */
  readonly suffixes: Readonly<Record<string, number>>
  /** How our own tables write it. */
  readonly written: string
  readonly quantity: QuantityName | null
  readonly can: Range
  readonly usual: Usual
}
export type TextColumn = { readonly kind: 'text' | 'date' }

const suffixesOf = (dimension: Dimension, power = 1, each = 1): Record<string, number> =>
  Object.fromEntries(
    Object.entries(units)
      .filter(([, unit]) => unit.dimension === dimension)
      .map(([name, { factor }]) => [`${name}${power === 1 ? '' : power}`, factor ** power * each]),
  )

const lengths = suffixesOf('length')
const mm = units.mm.factor
const DAY = 86400

const length = (quantity: QuantityName, can: Range, usual: Usual = catalogue[quantity]): NumberColumn => ({
  kind: 'number',
  suffixes: lengths,
  written: 'mm',
  quantity,
  can,
  usual,
})
const bare = (can: Range, usual: Usual): NumberColumn => ({
  kind: 'number',
  suffixes: { '': 1 },
  written: '',
  quantity: null,
  can,
  usual,
})

/** The feet of gauges and loading frames, from a pin to a big plate: common practice, no source. */
const foot = { low: 3 * mm, high: 300 * mm }
const areaOf = (diameter: number): number => (Math.PI / 4) * diameter ** 2

/**
 * The columns a table of readings may have, by name. A number's name carries its unit, as everywhere at the doors
 * (docs/decisions/0012).
 */
export const columns = {
  set: { kind: 'text' },
  replicate: { kind: 'text' },
  roller: { kind: 'text' },
  plate_area: {
    kind: 'number',
    suffixes: suffixesOf('length', 2),
    written: 'mm2',
    quantity: null,
    can: { above: 0 },
    usual: { low: areaOf(foot.low), high: areaOf(foot.high) },
  },
  plate_diameter: length('diameter', { above: 0 }, foot),
  load: {
    kind: 'number',
    suffixes: { ...suffixesOf('force'), ...suffixesOf('mass', 1, GRAVITY) },
    written: 'N',
    quantity: 'load',
    can: { atLeast: 0 },
    usual: catalogue.load,
  },
  pressure: {
    kind: 'number',
    suffixes: suffixesOf('pressure'),
    written: 'kPa',
    quantity: 'pressure',
    can: { atLeast: 0 },
    usual: catalogue.pressure,
  },
  sinkage: length('sinkage', {}),
  /** From a datum of its own: no single one is unlikely, only their differences within a set. */
  drop: length('drop', {}, { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY }),
  height: length('height', { atLeast: 0 }),
  sd: length('sinkage', { above: 0 }),
  gauge_step: length('sinkage', { above: 0 }, { low: 0, high: 1 * mm }),
  n: bare({ atLeast: 1, whole: true }, { low: 1, high: 1000 }),
  point: bare({ atLeast: 0, atMost: 1 }, { low: 0, high: 1 }),
  time: {
    kind: 'number',
    suffixes: suffixesOf('time'),
    written: 's',
    quantity: 'time',
    can: { atLeast: 0 },
    usual: { low: 0, high: DAY },
  },
  pass: bare({ atLeast: 0, whole: true }, { low: 0, high: 1000 }),
  date: { kind: 'date' },
  moisture: {
    kind: 'number',
    suffixes: { percent: 1 / 100, fraction: 1 },
    written: 'percent',
    quantity: null,
    can: { atLeast: 0 },
    /** By mass, a thatchy sample can hold more water than solids. */
    usual: { low: 0, high: 1 },
  },
  note: { kind: 'text' },
} as const satisfies Record<string, NumberColumn | TextColumn>

export type ColumnName = keyof typeof columns
export type NumberName = {
  [Name in ColumnName]: (typeof columns)[Name]['kind'] extends 'number' ? Name : never
}[ColumnName]

/** Columns that say what was read. */
export const measures = ['sinkage', 'drop', 'height'] as const satisfies readonly NumberName[]

export const columnNames = Object.keys(columns) as readonly ColumnName[]

/** A column's name as our own tables and sentences write it. */
export function writtenName(name: ColumnName): string {
  const column: NumberColumn | TextColumn = columns[name]
  return column.kind === 'number' && column.written !== '' ? `${name}_${column.written}` : name
}

/** The suffix that is meant, whatever its case. */
export const suffixMeant = ({ suffixes }: NumberColumn, written: string): string | undefined =>
  Object.keys(suffixes).find(suffix => suffix.toLowerCase() === written.toLowerCase())
