import type { QuantityName } from '@swardsink/model'
import type { Reader } from './reader.ts'

/** A number of a quantity of the catalogue, or of a unit that somebody wrote; null where there is none. */
export type Amount = { readonly value: number | null } & (
  | { readonly quantity: QuantityName }
  | { readonly unit: string }
)

/** Digits of a value that no catalogue gives decimals for. */
const DIGITS = 4

const written = (unit: string): string =>
  unit.replaceAll('^2', '²').replaceAll('^3', '³').replaceAll('*', '·')

const formatters = new Map<string, Intl.NumberFormat>()

function formatterOf(locale: string): Intl.NumberFormat {
  const known = formatters.get(locale) ?? new Intl.NumberFormat(locale, { maximumSignificantDigits: DIGITS })
  formatters.set(locale, known)
  return known
}

/** An amount as it is read: in the reader's units where the catalogue knows it, else in the unit it was written in. */
export function amountText(amount: Amount, { words, format, locale }: Reader): string {
  const { value } = amount
  if (value === null) return words.text.unknown
  if ('quantity' in amount) return format(value, amount.quantity)
  const number = formatterOf(locale).format(value)
  const shown = number.replace('-', '\u2212')
  return amount.unit === '' ? shown : `${shown}\u202f${written(amount.unit)}`
}
