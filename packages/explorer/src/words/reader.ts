import type { UnitSystem } from '@swardsink/model'
import { type Format, formatterFor } from './format.ts'
import { type Language, type Words, wordsIn } from './language.ts'

/** Who reads: their language, units and number format. Every element that says something is given one. */
export type Reader = {
  readonly words: Words
  readonly format: Format
  readonly units: UnitSystem
  readonly locale: string
  /** Size of text in figures, px: larger on a wall. */
  readonly figureText: number
  /** On a slide: the height that a figure may take, px. */
  readonly tallest?: number
  /** Beside a machine: steppers in place of lines to drag on, everything larger. */
  readonly workshop?: boolean
}

export function readerFor({
  language = 'en',
  ...q
}: {
  /** English unless said otherwise, or not fetched. */
  readonly language?: Language
  readonly units: UnitSystem
  readonly figureText: number
  readonly workshop?: boolean
}): Reader {
  const words = wordsIn(language)
  const locale = words.language
  return { words, format: formatterFor(q.units, locale, words.text.unknown), locale, ...q }
}
