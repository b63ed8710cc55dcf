import type { BookSpec } from '../entries/kinds.ts'
import { heavierRoller, heavierRollerEdition } from './heavierRoller.ts'

/** The books that ship, by the name an address gives them. */
export const books = {
  'heavier-roller': { spec: heavierRoller, edition: heavierRollerEdition },
} as const satisfies Record<string, { readonly spec: BookSpec; readonly edition: string }>
