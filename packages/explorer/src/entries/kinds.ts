import type { Kind } from '../book/index.ts'
import { map } from './map/kind.ts'
import { rack } from './rack/kind.ts'
import { setting } from './setting/kind.ts'
import { sideView } from './sideView/kind.ts'
import { text } from './text/kind.ts'

const list = [sideView, setting, map, rack, text] as const

/** Every kind of entry, without its looks. views.ts lists the same kinds with theirs. */
export const kinds: readonly Kind[] = list

type Listed = (typeof list)[number]
type SettingsOf<Name> =
  Extract<Listed, { kind: Name }> extends Kind<string, infer Settings, infer _I, infer _R> ? Settings : never

/** Any entry as a book may write it: a kind that is listed, and those of its settings that are not the usual ones. */
export type EntrySpec = {
  [Name in Listed['kind']]: {
    readonly kind: Name
    readonly id?: string
    readonly beside?: boolean
  } & Partial<SettingsOf<Name>>
}[Listed['kind']]

/** A book as it is written: everything in here may also stand in a file. */
export type BookSpec = {
  readonly swardsink: 1
  readonly title: string
  readonly scenario: Readonly<Record<string, unknown>>
  readonly pages: readonly {
    readonly title: string
    readonly lead: string
    readonly entries: readonly EntrySpec[]
  }[]
}
