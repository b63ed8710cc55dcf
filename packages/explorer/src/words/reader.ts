import type { UnitSystem } from '@swardsink/model'
import { english } from './english/index.ts'
import { type Format, formatterFor } from './format.ts'

/** Every sentence of the book in one language. Another language is another file of this type. */
export type Words = typeof english

/** Who reads: their language, units and number format. Every element that says something is given one. */
export type Reader = {
  readonly words: Words
  readonly format: Format
  readonly units: UnitSystem
  readonly locale: string
  /** Size of text in figures, px: larger on a wall. */
  readonly figureText: number
}

export function readerFor(q: { readonly units: UnitSystem; readonly figureText: number }): Reader {
  const locale = english.language
  return { words: english, format: formatterFor(q.units, locale), locale, ...q }
}
