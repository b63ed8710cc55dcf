import type { BookSpec } from '../entries/kinds.ts'
import { heavierRoller, heavierRollerEdition } from './heavierRoller.ts'

/** A book that ships: what a list says of it, and itself when it is asked for. */
type ShippedBook = {
  readonly title: string
  /** One sentence: for whom it is, and what it does for them. */
  readonly about: string
  load(): Promise<{ readonly spec: BookSpec; readonly edition: string }>
}

/** The books that ship, by the name an address gives them. All but the first are fetched when they are opened. */
export const books = {
  'heavier-roller': {
    title: heavierRoller.title,
    about:
      'For students: six short pages from the bench to the turf and back, a prediction on each, and a sheet to hand in.',
    load: async () => ({ spec: heavierRoller, edition: heavierRollerEdition }),
  },
} as const satisfies Readonly<Record<string, ShippedBook>>
