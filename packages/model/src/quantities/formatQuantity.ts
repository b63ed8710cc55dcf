import { catalogue, type QuantityName, toDisplay, type UnitSystem } from './catalogue.ts'

export type FormatOptions = {
  readonly units?: UnitSystem
  readonly locale?: string
  /** Whether the unit follows the number; true unless given. */
  readonly unit?: boolean
  /** Whether a positive difference carries its sign. */
  readonly signed?: boolean
}

const NARROW_SPACE = '\u202f'
const MINUS = '\u2212'

const formatters = new Map<string, Intl.NumberFormat>()

function formatter(locale: string, decimals: number, signed: boolean): Intl.NumberFormat {
  const key = `${locale}|${decimals}|${signed}`
  let found = formatters.get(key)
  if (!found) {
    found = new Intl.NumberFormat(locale, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      signDisplay: signed ? 'exceptZero' : 'negative',
      useGrouping: false,
    })
    formatters.set(key, found)
  }
  return found
}

/**
 * A value as a reader sees it: the catalogue's decimals, a true minus, a narrow space before the unit. A value
 * that is not finite is no number to show: it comes back as words.
 *
 * Units  value SI
 */
export function formatQuantity(value: number, quantity: QuantityName, options: FormatOptions = {}): string {
  const { units = 'metric', locale = 'en', unit = true, signed = false } = options
  if (!Number.isFinite(value)) return 'not known'
  const { decimals, unit: word } = catalogue[quantity][units]
  const number = formatter(locale, decimals, signed)
    .format(toDisplay(value, quantity, units))
    .replace('-', MINUS)
  if (!unit || word === '') return number
  return word === '°' ? `${number}°` : `${number}${NARROW_SPACE}${word}`
}
