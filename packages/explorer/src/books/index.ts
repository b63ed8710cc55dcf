import type { BookSpec } from '../entries/kinds.ts'
import type { Language } from '../words/index.ts'
import { heavierRoller, heavierRollerEdition } from './heavierRoller.ts'
import { type ToldBook, tellBook } from './told.ts'

type Loaded = { readonly spec: BookSpec; readonly edition: string }

/** A book that ships: what a list says of it, and itself when it is asked for. */
type ShippedBook = {
  readonly title: string
  /** One sentence: for whom it is, and what it does for them. */
  readonly about: string
  /** In English unless said otherwise. */
  load(language?: Language): Promise<Loaded>
}

type Told = { readonly books: Readonly<Record<string, () => Promise<ToldBook>>> }

/** Translations: a folder each. */
const translations: Readonly<Partial<Record<Language, () => Promise<Told>>>> = {
  de: () => import('./german/index.ts'),
}

/** A book in a language; what nobody has translated stays as it was written. */
async function told(book: Loaded, name: string, language: Language): Promise<Loaded> {
  const folder = await translations[language]?.()
  const sentences = await folder?.books[name]?.()
  return sentences ? { ...book, spec: tellBook(book.spec, sentences) } : book
}

/** The books that ship, by the name an address gives them. All but the first are fetched when they are opened. */
export const books = {
  'heavier-roller': {
    title: heavierRoller.title,
    about:
      'For students: six short pages from the bench to the turf and back, a prediction on each, and a sheet to hand in.',
    load: (language = 'en') =>
      told({ spec: heavierRoller, edition: heavierRollerEdition }, 'heavier-roller', language),
  },
  'own-gauge': {
    title: 'Fit your own gauge',
    about:
      'For researchers: from a table of readings to a softness, how sure it is, what it means for the height, and a paragraph of methods.',
    async load(language = 'en') {
      const { ownGauge, ownGaugeEdition } = await import('./ownGauge.ts')
      return told({ spec: ownGauge, edition: ownGaugeEdition }, 'own-gauge', language)
    },
  },
  'weight-or-surface': {
    title: 'Weight or surface?',
    about:
      'For trainers: a lesson in twelve steps with a pad and three rollers, the room’s guesses and readings in it, notes and a plan of minutes.',
    async load(language = 'en') {
      const { weightOrSurface, weightOrSurfaceEdition } = await import('./weightOrSurface.ts')
      return told({ spec: weightOrSurface, edition: weightOrSurfaceEdition }, 'weight-or-surface', language)
    },
  },
  'choose-fit-reset': {
    title: 'Choose, fit, re-set',
    about:
      'For technicians: from the scales to a printed set-up sheet, with the roller, the bench height and the turns of the adjuster.',
    async load(language = 'en') {
      const { chooseFitReset, chooseFitResetEdition } = await import('./chooseFitReset.ts')
      return told({ spec: chooseFitReset, edition: chooseFitResetEdition }, 'choose-fit-reset', language)
    },
  },
} as const satisfies Readonly<Record<string, ShippedBook>>
