import type { UnitSystem } from '@swardsink/model'
import type { Store } from '../book/index.ts'

export const PAPERS = ['system', 'light', 'dark', 'projector'] as const
export type Paper = (typeof PAPERS)[number]
export const UNIT_SYSTEMS: readonly UnitSystem[] = ['metric', 'US']

/** What a reader chose for themselves: it belongs to them, not to the book. */
export type Preferences = { readonly units: UnitSystem; readonly paper: Paper }

const KEY = 'swardsink/reader'
const FIRST: Preferences = { units: 'metric', paper: 'system' }

export function readPreferences(store: Store): Preferences {
  try {
    const saved: unknown = JSON.parse(store.getItem(KEY) ?? 'null')
    if (typeof saved !== 'object' || saved === null) return FIRST
    const { units, paper } = saved as Record<string, unknown>
    return {
      units: UNIT_SYSTEMS.find(system => system === units) ?? FIRST.units,
      paper: PAPERS.find(name => name === paper) ?? FIRST.paper,
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

/** The paper of the whole document; the system's own when none is chosen. */
export function layPaper(root: HTMLElement, paper: Paper): void {
  if (paper === 'system') root.removeAttribute('data-theme')
  else root.setAttribute('data-theme', paper)
}
