/** Values that come into a sentence, formatted. */
export type Values<Name extends string> = { readonly [Key in Name]: string }

const shares = new Intl.NumberFormat('de', { style: 'percent', maximumFractionDigits: 0 })
const factors = new Intl.NumberFormat('de', { maximumSignificantDigits: 2 })
const numbers = new Intl.NumberFormat('de')
const counts = ['Keine', 'Eine', 'Zwei', 'Drei', 'Vier', 'Fünf', 'Sechs', 'Sieben', 'Acht', 'Neun']
const joined = new Intl.ListFormat('de', { type: 'conjunction' })

export const percent = (share: number): string => shares.format(share).replace(/\s*%/, '\u202f%')
export const times = (value: number): string => factors.format(value)
/** A factor in full, as it was set. */
export const inFull = (value: number): string => numbers.format(value)
export const list = (items: readonly string[]): string => joined.format(items)
/** A small number as a word at the head of a sentence, for things that German calls feminine. */
export const counted = (count: number): string => counts[count] ?? String(count)
/** `1 Messwert`, `2 Messwerte`. */
export const plural = (count: number, one: string, several: string): string =>
  `${count} ${count === 1 ? one : several}`
