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
  'own-gauge': {
    title: 'Fit your own gauge',
    about:
      'For researchers: from a table of readings to a softness, how sure it is, what it means for the height, and a paragraph of methods.',
    async load() {
      const { ownGauge, ownGaugeEdition } = await import('./ownGauge.ts')
      return { spec: ownGauge, edition: ownGaugeEdition }
    },
  },
  'weight-or-surface': {
    title: 'Weight or surface?',
    about:
      'For trainers: a lesson in twelve steps with a pad and three rollers, the room’s guesses and readings in it, notes and a plan of minutes.',
    async load() {
      const { weightOrSurface, weightOrSurfaceEdition } = await import('./weightOrSurface.ts')
      return { spec: weightOrSurface, edition: weightOrSurfaceEdition }
    },
  },
  'choose-fit-reset': {
    title: 'Choose, fit, re-set',
    about:
      'For technicians: from the scales to a printed set-up sheet, with the roller, the bench height and the turns of the adjuster.',
    async load() {
      const { chooseFitReset, chooseFitResetEdition } = await import('./chooseFitReset.ts')
      return { spec: chooseFitReset, edition: chooseFitResetEdition }
    },
  },
} as const satisfies Readonly<Record<string, ShippedBook>>
