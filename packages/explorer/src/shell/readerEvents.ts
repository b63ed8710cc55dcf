import type { Preferences } from './preferences.ts'

/** What head and foot tell the book; they say it one tree up, so these need not travel far. */
export type ReaderEvents = {
  prefer: Preferences
  undo: undefined
  redo: undefined
  restore: undefined
  save: undefined
  open: File
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
