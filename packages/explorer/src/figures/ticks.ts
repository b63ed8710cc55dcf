import { displayUnit, fromDisplay, type QuantityName, toDisplay } from '@swardsink/model'
import { ticks as linearTicks } from 'd3'
import type { Frame } from './frame.ts'

export type Tick = {
  /** SI */
  readonly value: number
  /** Empty on a minor tick. */
  readonly text: string
}
type Reader = Pick<Frame<unknown>, 'units' | 'locale'>

const MINUS = '\u2212'
const NARROW_SPACE = '\u202f'
/** A number that a tick lands on by arithmetic carries rounding noise; nothing shown is finer than this. */
const NOISE = 1e-9
const MOST_DECIMALS = 6

/** Decimals that show every one of these numbers exactly. */
export function decimalsOf(shown: readonly number[]): number {
  const exact = (decimals: number) =>
    shown.every(
      value => Math.abs(value - Number(value.toFixed(decimals))) <= NOISE * Math.max(1, Math.abs(value)),
    )
  let decimals = 0
  while (decimals < MOST_DECIMALS && !exact(decimals)) decimals++
  return decimals
}

/** Making a formatter costs more than a hundred numbers it writes. */
const formatters = new Map<string, Intl.NumberFormat>()

function formatterOf(locale: string, decimals: number): Intl.NumberFormat {
  const key = `${locale} ${decimals}`
  let known = formatters.get(key)
  if (!known) {
    known = new Intl.NumberFormat(locale, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping: false,
    })
    formatters.set(key, known)
  }
  return known
}

/** A round number as it stands on an axis: display units already, no unit behind it. */
export function roundNumber(shown: number, decimals: number, reader: Pick<Frame<unknown>, 'locale'>): string {
  const text = formatterOf(reader.locale ?? 'en', decimals).format(Math.abs(shown))
  return shown < 0 ? MINUS + text : text
}

/** A round number with its unit, for a scale bar: "50 mm". */
export const roundQuantity = (shown: number, quantity: QuantityName, reader: Reader): string =>
  [roundNumber(shown, decimalsOf([shown]), reader), displayUnit(quantity, reader.units)].join(NARROW_SPACE)

/** Round numbers of a quantity's own display unit on a linear axis, about `count` of them. */
export function linearTicksOf(q: {
  domain: readonly [number, number]
  quantity: QuantityName
  count: number
  reader: Reader
}): readonly Tick[] {
  const [low, high] = q.domain.map(value => toDisplay(value, q.quantity, q.reader.units)) as [number, number]
  const shown = linearTicks(low, high, q.count)
  const decimals = decimalsOf(shown)
  return shown.map(value => ({
    value: fromDisplay(value, q.quantity, q.reader.units),
    text: roundNumber(value, decimals, q.reader),
  }))
}

const MANTISSAS = [[1, 2, 3, 4, 5, 6, 7, 8, 9], [1, 2, 5], [1, 3], [1]] as const

/** On a logarithmic axis: every whole mantissa is a tick, 1, 2 and 5 are named, as many of them as there is room for. */
export function logTicksOf(q: {
  domain: readonly [number, number]
  quantity: QuantityName
  /** px between the ends, and px that one name needs. */
  length: number
  needs: number
  reader: Reader
}): readonly Tick[] {
  const [low, high] = q.domain.map(value => toDisplay(value, q.quantity, q.reader.units)) as [number, number]
  const decade = q.length / Math.log10(high / low)
  const named: readonly number[] = MANTISSAS.find(mantissas => decade * narrowest(mantissas) >= q.needs) ?? [
    1,
  ]
  const ticks: Tick[] = []
  for (let power = Math.floor(Math.log10(low)) - 1; power <= Math.ceil(Math.log10(high)); power++) {
    for (let mantissa = 1; mantissa <= 9; mantissa++) {
      const shown = Number(`${mantissa}e${power}`)
      if (shown < low * (1 - NOISE) || shown > high * (1 + NOISE)) continue
      const text = named.includes(mantissa) ? roundNumber(shown, decimalsOf([shown]), q.reader) : ''
      ticks.push({ value: fromDisplay(shown, q.quantity, q.reader.units), text })
    }
  }
  // Between two neighbouring mantissas there may be none: then round numbers are taken as on any axis.
  return ticks.filter(({ text }) => text !== '').length > 1
    ? ticks
    : linearTicksOf({ ...q, count: Math.max(2, q.length / q.needs / 2) })
}

/** Least distance of neighbouring mantissas on a logarithmic decade of length 1. */
function narrowest(mantissas: readonly number[]): number {
  const places = [...mantissas, 10].map(Math.log10)
  return Math.min(...places.slice(1).map((place, i) => place - (places[i] ?? 0)))
}

/** A round length of the quantity's display unit that is drawn no longer than `room` px: 1, 2 or 5 times a power of ten. */
export function barLength(q: { room: number; perMetre: number; quantity: QuantityName; reader: Reader }) {
  const perShown = q.perMetre * fromDisplay(1, q.quantity, q.reader.units)
  const high = q.room / perShown
  const power = 10 ** Math.floor(Math.log10(high))
  const mantissa = [5, 2, 1].find(step => step * power <= high * (1 + NOISE)) ?? 1
  const shown = mantissa * power
  return { length: shown * perShown, text: roundQuantity(shown, q.quantity, q.reader) }
}
