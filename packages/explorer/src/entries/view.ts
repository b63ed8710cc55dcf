import type { Scenario } from '@swardsink/model'
import type { TemplateResult } from 'lit'
import type { Held } from '../book/index.ts'
import type { Reader } from '../words/index.ts'

/** A figure's data, in words and numbers as they are read; the unit stands in the head. */
export type Table = {
  readonly caption: string
  readonly columns: readonly { readonly head: string; readonly unit: string }[]
  readonly rows: readonly (readonly string[])[]
}

/** What an entry is drawn from. */
export type Shown<Settings = object, Result = unknown> = {
  readonly id: string
  readonly settings: Settings
  /** The last good answer. */
  readonly result: Result
  /** The scenario that answer is for. */
  readonly scenario: Scenario
  /** The scenario as it now stands, for what is set here. */
  readonly now: Scenario
  readonly held: Readonly<Record<string, Held>>
  /** The answer is not for the values that now stand: it is drawn pale. */
  readonly stale: boolean
  readonly edition: number
  readonly reader: Reader
}

/** A few words beside or over a figure, one of them chosen: what the entry itself shows. */
export type Choices = {
  readonly label: string
  readonly options: readonly { readonly label: string; readonly chosen: boolean; readonly settings: object }[]
}

/** A question and what came of it, in plain text. */
export type Asked = {
  readonly question: string
  /** null while nothing was said. */
  readonly said: string | null
  /** null while it is not revealed. */
  readonly found: string | null
  /** Said minus found, signed; null where there is no such number. */
  readonly error: string | null
  readonly why: string
}

/** What a card of "how far to trust this" may tell (docs/physics.md §5 and §6). */
export const TRUST_NAMES = [
  'softness',
  'arc',
  'grooves',
  'mat',
  'mowing',
  'strain',
  'locking',
  'contact',
  'exponent',
  'fitted',
  'trial',
  'sliding',
  'injury',
] as const
export type TrustName = (typeof TRUST_NAMES)[number]

/** What an entry's settings are edited from, while the page is being edited; there need be no answer yet. */
export type Editing<Settings = object> = Pick<
  Shown<Settings>,
  'id' | 'settings' | 'now' | 'held' | 'reader'
> & {
  /** All entries of the book, as a reader knows them: what this one may lean on. */
  readonly entries: readonly NamedEntry[]
}

export type NamedEntry = { readonly id: string; readonly kind: string; readonly title: string }

/** The looks of a kind. Methods, so that a list of different kinds is still one type. */
export type View<Name extends string = string, Settings extends object = object, Result = unknown> = {
  readonly kind: Name
  title(shown: Shown<Settings, Result>): string
  /** One sentence with the values in it, or null when there is nothing to find. */
  finding(shown: Shown<Settings, Result>): string | null
  /** Scale, condition, source, and what is invented. */
  note(shown: Shown<Settings, Result>): string | null
  /** The figure's data; made only when it is asked for. */
  table?(shown: Shown<Settings, Result>): Table
  choices?(shown: Shown<Settings, Result>): Choices
  draw(shown: Shown<Settings, Result>): TemplateResult
  /** What it asks of the reader, for a hand-in and for the teacher's sheet. */
  asked?(shown: Shown<Settings, Result>): Asked
  /** What its figure cannot be trusted with, by the names the words table has for it. */
  readonly trust?: readonly TrustName[]
  /**
   * Fields for the entry's own settings, drawn under it while the page is edited. They change by
   * `announce(this, 'rearrange', { id, settings, gesture })`; the same gesture while a reader types is one step of undo.
   */
  edit?(editing: Editing<Settings>): TemplateResult
  /** The page invites work on a unit here: the safety cautions stand under it. */
  readonly handsOn?: boolean
  /** Stands beside another entry as part of its page, without a heading to be seen. */
  readonly untitled?: boolean
  /** Says its finding itself, beside its numbers. */
  readonly saysFinding?: boolean
}
