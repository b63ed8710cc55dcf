import type { ViewName, Way } from '../book/index.ts'
import type { Preferences } from './preferences.ts'

/** What can be done with an entry or a page while it is edited. */
export type Act = Way | 'copy' | 'take out'
export const ACTS: readonly Act[] = ['earlier', 'later', 'copy', 'take out']

/** Where the focus goes after something was done to an entry: the word that did it, or the tick that did. */
export type FocusOn = Act | 'beside'

/** What head, foot, page and entries tell the book. */
export type ReaderEvents = {
  prefer: Preferences
  undo: undefined
  redo: undefined
  restore: undefined
  save: undefined
  open: File
  /** Begin or end editing. */
  edit: boolean
  arrange: { readonly id: string; readonly act: Act }
  'arrange-page': { readonly act: Act | 'add' }
  add: { readonly kind: string }
  /** Titles and sentences of the book, a page or an entry. */
  write: {
    readonly what: 'book title' | 'page title' | 'lead' | 'entry title' | 'notes' | 'minutes'
    readonly text: string
    readonly id?: string
  }
  /** The hand has left a title: the next change is a step of its own. */
  written: undefined
  beside: { readonly id: string; readonly beside: boolean }
  /** Show me this entry, on whatever page. */
  show: { readonly id: string }
  /** Another tab's changes in place of these. */
  'take-other': undefined
  /** How far a whole turn of the adjuster moves its roller, m; null: not known. */
  adjuster: { readonly adjuster: number | null }
  /** Another view of the book, by its name in the address. */
  view: { readonly view: ViewName }
  /** Back to the pages, to this one. */
  leave: { readonly page: number }
  dismiss: { readonly kind: string }
  /** Forget a kept book. */
  'forget-book': { readonly name: string }
}

export function announceReader<Name extends keyof ReaderEvents>(
  from: EventTarget,
  ...[name, detail]: ReaderEvents[Name] extends undefined ? [Name] : [Name, ReaderEvents[Name]]
): void {
  from.dispatchEvent(new CustomEvent(`reader-${name}`, { detail, bubbles: true, composed: true }))
}

export function hearReader<Name extends keyof ReaderEvents>(
  on: EventTarget,
  name: Name,
  hear: (detail: ReaderEvents[Name]) => void,
): void {
  on.addEventListener(`reader-${name}`, event => {
    if (event instanceof CustomEvent) hear(event.detail)
  })
}
