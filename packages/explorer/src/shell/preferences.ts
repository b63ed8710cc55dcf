import type { UnitSystem } from '@swardsink/model'
import type { Store } from '../book/index.ts'
import { LANGUAGE_NAMES, type Language } from '../words/index.ts'

export const PAPERS = ['system', 'light', 'dark', 'projector'] as const
export type Paper = (typeof PAPERS)[number]
export const UNIT_SYSTEMS: readonly UnitSystem[] = ['metric', 'US']

/** What a reader chose for themselves: it belongs to them, not to the book. */
export type Preferences = {
  readonly language: Language
  readonly units: UnitSystem
  readonly paper: Paper
  /** Large targets and digits, for a gloved finger beside a machine. */
  readonly workshop: boolean
}

const KEY = 'swardsink/reader'
const FIRST = { units: 'metric', paper: 'system', workshop: false } as const

const languageOf = (tag: unknown): Language | undefined =>
  typeof tag === 'string' ? LANGUAGE_NAMES.find(name => name === tag.split('-')[0]) : undefined

/** The first language of the browser that there is. */
const firstSpoken = (spoken: readonly string[]): Language =>
  spoken.map(languageOf).find(name => name !== undefined) ?? 'en'

/** What was kept, else the usual; `spoken` are the languages of whoever has chosen none here. */
export function readPreferences(
  store: Store,
  spoken: readonly string[] = globalThis.navigator?.languages ?? [],
): Preferences {
  const first = { language: firstSpoken(spoken), ...FIRST }
  try {
    const saved: unknown = JSON.parse(store.getItem(KEY) ?? 'null')
    if (typeof saved !== 'object' || saved === null) return first
    const { language, units, paper, workshop } = saved as Record<string, unknown>
    return {
      language: languageOf(language) ?? first.language,
      units: UNIT_SYSTEMS.find(system => system === units) ?? FIRST.units,
      paper: PAPERS.find(name => name === paper) ?? FIRST.paper,
      workshop: workshop === true,
    }
  } catch {
    return first
  }
}

export function keepPreferences(store: Store, preferences: Preferences): void {
  try {
    store.setItem(KEY, JSON.stringify(preferences))
  } catch {
    // Not kept for the next visit; for this one it holds all the same.
  }
}

/** Language and paper of the whole document, the system's own when none is chosen, and how large what is on it stands. */
export function layPaper(
  root: HTMLElement,
  { language, paper, workshop }: Pick<Preferences, 'language' | 'paper' | 'workshop'>,
): void {
  root.lang = language
  root.toggleAttribute('data-reach', workshop)
  if (workshop) root.setAttribute('data-reach', 'workshop')
  if (paper === 'system') root.removeAttribute('data-theme')
  else root.setAttribute('data-theme', paper)
}
