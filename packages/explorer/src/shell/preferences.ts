import type { UnitSystem } from '@swardsink/model'
import type { Store } from '../book/index.ts'

export const PAPERS = ['system', 'light', 'dark', 'projector'] as const
export type Paper = (typeof PAPERS)[number]
export const UNIT_SYSTEMS: readonly UnitSystem[] = ['metric', 'US']

/** What a reader chose for themselves: it belongs to them, not to the book. */
export type Preferences = {
  readonly units: UnitSystem
  readonly paper: Paper
  /** Large targets and digits, for a gloved finger beside a machine. */
  readonly workshop: boolean
}

const KEY = 'swardsink/reader'
const FIRST: Preferences = { units: 'metric', paper: 'system', workshop: false }

export function readPreferences(store: Store): Preferences {
  try {
    const saved: unknown = JSON.parse(store.getItem(KEY) ?? 'null')
    if (typeof saved !== 'object' || saved === null) return FIRST
    const { units, paper, workshop } = saved as Record<string, unknown>
    return {
      units: UNIT_SYSTEMS.find(system => system === units) ?? FIRST.units,
      paper: PAPERS.find(name => name === paper) ?? FIRST.paper,
      workshop: workshop === true,
    }
  } catch {
    return FIRST
  }
}

export function keepPreferences(store: Store, preferences: Preferences): void {
  try {
    store.setItem(KEY, JSON.stringify(preferences))
  } catch {
    // Not kept for the next visit; for this one it holds all the same.
  }
}

/** The paper of the whole document, the system's own when none is chosen, and how large what is on it stands. */
export function layPaper(
  root: HTMLElement,
  { paper, workshop }: Pick<Preferences, 'paper' | 'workshop'>,
): void {
  root.toggleAttribute('data-reach', workshop)
  if (workshop) root.setAttribute('data-reach', 'workshop')
  if (paper === 'system') root.removeAttribute('data-theme')
  else root.setAttribute('data-theme', paper)
}
