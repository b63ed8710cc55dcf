import { catalogue, fromDisplay, type QuantityName, toDisplay, type UnitSystem } from '@swardsink/model'
import type { Line } from '../book/index.ts'

const PAGE = 10

/** One printed digit, in the units shown. */
function digit(quantity: QuantityName, units: UnitSystem): number {
  return 10 ** -catalogue[quantity][units].decimals
}

/** A value rounded to the digits a reader sees, so that what is computed is what is printed. */
export function printed(
  value: number,
  { quantity, units }: { readonly quantity: QuantityName; readonly units: UnitSystem },
): number {
  const { decimals } = catalogue[quantity][units]
  return fromDisplay(Number(toDisplay(value, quantity, units).toFixed(decimals)), quantity, units)
}

/** A value so many printed digits further on, within the ends of its line unless it lies outside already. */
export function steppedBy(
  value: number,
  q: {
    readonly digits: number
    readonly quantity: QuantityName
    readonly units: UnitSystem
    readonly line: Line
  },
): number {
  const { digits, quantity, units, line } = q
  const next = printed(
    fromDisplay(toDisplay(value, quantity, units) + digits * digit(quantity, units), quantity, units),
    q,
  )
  return digits > 0 ? Math.min(next, Math.max(line.high, value)) : Math.max(next, Math.min(line.low, value))
}

/** Where a key takes a value: an arrow one printed digit, Page ten; null for any other key. */
export function stepped(
  q: {
    readonly key: string
    readonly value: number
    readonly quantity: QuantityName
    readonly units: UnitSystem
    readonly line: Line
  },
  { ends }: { readonly ends: boolean },
): number | null {
  const { key, value, quantity, units, line } = q
  const step = digit(quantity, units)
  const by = (digits: number): number =>
    printed(fromDisplay(toDisplay(value, quantity, units) + digits * step, quantity, units), {
      quantity,
      units,
    })
  if (key === 'ArrowUp' || (ends && key === 'ArrowRight')) return by(1)
  if (key === 'ArrowDown' || (ends && key === 'ArrowLeft')) return by(-1)
  if (key === 'PageUp') return by(PAGE)
  if (key === 'PageDown') return by(-PAGE)
  if (ends && key === 'Home') return line.low
  if (ends && key === 'End') return line.high
  return null
}
