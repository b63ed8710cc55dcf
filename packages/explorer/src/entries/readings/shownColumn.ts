import {
  type ColumnRead,
  displayUnit,
  GRAVITY,
  type QuantityName,
  type UnitSystem,
  unitFactor,
  units,
} from '@swardsink/model'

/** How a column of the table is shown to a reader: in which unit, and how cells come and go. */
export type ShownColumn = {
  readonly unit: string
  /** It is shown in another unit than it has. */
  readonly isChanged: boolean
  readonly shown: (cell: string) => string
  /** What was typed over a cell, in the table's own unit. */
  readonly taken: (text: string) => string
}

/** What the numbers of a column are, as a reader has them. */
const quantities: Readonly<Record<string, QuantityName>> = {
  plate_diameter: 'diameter',
  load: 'load',
  pressure: 'pressure',
  sinkage: 'sinkage',
  drop: 'drop',
  height: 'height',
  sd: 'sinkage',
  gauge_step: 'sinkage',
}

const US_UNITS = ['in', 'ft', 'lb', 'lbf', 'psi']
const PLAIN = /^[+-]?(\d+([.,]\d+)?|[.,]\d+)$/
const FRACTION = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/
const MISSING = ['', 'na', 'n/a', '-', '\u2013']
/** A rule divided in fractions of an inch is read to about this part of one. */
const FRACTION_DECIMALS = 3
const KEPT_DIGITS = 7

const isMissing = (cell: string): boolean => MISSING.includes(cell.trim().toLowerCase())

function numberOf(cell: string): number | null {
  const text = cell.trim().replaceAll('\u2212', '-')
  if (PLAIN.test(text)) return Number(text.replace(',', '.'))
  const [, whole = '0', above, below] = FRACTION.exec(text) ?? []
  return above === undefined || Number(below) === 0 ? null : Number(whole) + Number(above) / Number(below)
}

/** Decimals of the finest cell: what its gauge was read to. */
function decimalsOf(cells: readonly string[]): number {
  let most = 0
  for (const cell of cells) {
    if (isMissing(cell)) continue
    most = Math.max(
      most,
      cell.includes('/') ? FRACTION_DECIMALS : (/[.,](\d+)$/.exec(cell.trim())?.[1]?.length ?? 0),
    )
  }
  return most
}

/** Of one of the column's unit in SI; null where it is none of the catalogue. */
function factorOf(unit: string, quantity: QuantityName): number | null {
  if (quantity === 'load' && Object.hasOwn(units, unit)) {
    const { dimension, factor } = units[unit as keyof typeof units]
    if (dimension === 'mass') return factor * GRAVITY
  }
  return unitFactor(unit, quantity)
}

const asItIs = (unit: string): ShownColumn => ({
  unit,
  isChanged: false,
  shown: cell => cell,
  taken: text => text,
})

const words: Readonly<Record<string, string>> = { mm2: 'mm²', cm2: 'cm²', m2: 'm²', in2: 'in²', percent: '%' }

/**
 * A column in the units of its reader. The table keeps what was typed: a cell that is not touched never changes. Where a
 * cell is no plain number the whole column is shown as it was typed, since half of one would be read wrong.
 */
export function shownColumn(
  { name, unit }: Pick<ColumnRead, 'name' | 'unit'>,
  cells: readonly string[],
  reader: UnitSystem,
): ShownColumn {
  const quantity = name === null ? undefined : quantities[name]
  const own = words[unit] ?? unit
  if (quantity === undefined || unit === '') return asItIs(own)
  if (US_UNITS.includes(unit) === (reader === 'US')) return asItIs(own)
  const from = factorOf(unit, quantity)
  const there = displayUnit(quantity, reader)
  const to = unitFactor(there, quantity)
  if (from === null || to === null || !cells.every(cell => isMissing(cell) || numberOf(cell) !== null))
    return asItIs(own)
  const changed = (cell: string, tell: (number: number) => string) => {
    const number = isMissing(cell) ? null : numberOf(cell)
    return number === null ? cell : tell(number)
  }
  // No rounder than it was read: the step of the last digit, in the other unit.
  const decimals = Math.max(0, Math.ceil(decimalsOf(cells) - Math.log10(from / to)))
  return {
    unit: there,
    isChanged: true,
    shown: cell => changed(cell, number => ((number * from) / to).toFixed(decimals)),
    taken: text => changed(text, number => String(Number(((number * to) / from).toPrecision(KEPT_DIGITS)))),
  }
}
