import type { ToldBook } from '../told.ts'

/** The books that ship, in German, by the name an address gives them: each is fetched when it is opened. */
export const books: Readonly<Record<string, () => Promise<ToldBook>>> = {
  'heavier-roller': async () => (await import('./heavierRoller.ts')).heavierRoller,
  'own-gauge': async () => (await import('./ownGauge.ts')).ownGauge,
  'weight-or-surface': async () => (await import('./weightOrSurface.ts')).weightOrSurface,
  'choose-fit-reset': async () => (await import('./chooseFitReset.ts')).chooseFitReset,
}
