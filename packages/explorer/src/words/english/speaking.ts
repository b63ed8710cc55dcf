/** Values that come into a sentence, formatted. */
export type Values<Name extends string> = { readonly [Key in Name]: string }

const shares = new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0 })
const factors = new Intl.NumberFormat('en', { maximumSignificantDigits: 2 })
const counts = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine']
const joined = new Intl.ListFormat('en', { type: 'conjunction' })

export const percent = (share: number): string => shares.format(share).replace('%', '\u202f%')
export const times = (value: number): string => factors.format(value)
export const list = (items: readonly string[]): string => joined.format(items)
/** A small number as a word at the head of a sentence. */
export const counted = (count: number): string => counts[count] ?? String(count)
