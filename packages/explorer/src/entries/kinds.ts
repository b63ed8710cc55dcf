import { type Kind, type KindShelf, openShelf } from '../book/index.ts'
import { setting } from './setting/kind.ts'
import { sideView } from './sideView/kind.ts'
import { text } from './text/kind.ts'

/** Kinds of which the first page is drawn at once: they come with it. */
const atHand = [sideView, setting, text] as const

/** Kinds that are fetched when a book first names one. */
const onDemand = {
  map: async () => (await import('./map/kind.ts')).map,
  rack: async () => (await import('./rack/kind.ts')).rack,
  headland: async () => (await import('./headland/kind.ts')).headland,
  curves: async () => (await import('./curves/kind.ts')).curves,
  formula: async () => (await import('./formula/kind.ts')).formula,
  section: async () => (await import('./section/kind.ts')).section,
  units: async () => (await import('./units/kind.ts')).units,
  rollers: async () => (await import('./rollers/kind.ts')).rollers,
  turfs: async () => (await import('./turfs/kind.ts')).turfs,
  unitFromScales: async () => (await import('./unitFromScales/kind.ts')).unitFromScales,
  question: async () => (await import('./question/kind.ts')).question,
  uncertainty: async () => (await import('./uncertainty/kind.ts')).uncertainty,
  patch: async () => (await import('./patch/kind.ts')).patch,
  check: async () => (await import('./check/kind.ts')).check,
  fit: async () => (await import('./fit/kind.ts')).fit,
  readings: async () => (await import('./readings/kind.ts')).readings,
} as const satisfies Readonly<Record<string, () => Promise<Kind>>>

/** Every kind of entry, without its looks. views.ts lists the same kinds with theirs. */
export const kindShelf = (): KindShelf => openShelf<Kind>({ atHand, onDemand })

type Listed =
  | (typeof atHand)[number]
  | Awaited<ReturnType<Extract<(typeof onDemand)[keyof typeof onDemand], (...args: never) => unknown>>>
type SettingsOf<Name> =
  Extract<Listed, { kind: Name }> extends Kind<string, infer Settings, infer _I, infer _R> ? Settings : never

/** Any entry as a book may write it: a kind that is listed, and those of its settings that are not the usual ones. */
export type EntrySpec = {
  [Name in Listed['kind']]: {
    readonly kind: Name
    readonly id?: string
    readonly beside?: boolean
    readonly title?: string
    readonly after?: string
    readonly notes?: string
    readonly minutes?: number
  } & Partial<SettingsOf<Name>>
}[Listed['kind']]

/** A book as it is written: everything in here may also stand in a file. */
export type BookSpec = {
  readonly swardsink: 1
  readonly title: string
  readonly scenario: Readonly<Record<string, unknown>>
  readonly adjuster_mm?: number
  readonly pages: readonly {
    readonly title: string
    readonly lead: string
    readonly notes?: string
    readonly minutes?: number
    readonly entries: readonly EntrySpec[]
  }[]
}
