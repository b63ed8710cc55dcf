import { writeScenario } from '@swardsink/model'
import type { Book, Entry } from './book.ts'

/** An entry of an unknown kind goes back as it came, but for what a reader has changed: its place, title or name. */
function asItCame(entry: Entry, raw: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { id, kind, beside, title } = entry
  const changed = {
    ...(id === (raw.id ?? kind) ? {} : { id }),
    ...(beside === (raw.beside ?? false) ? {} : { beside }),
    ...(title === raw.title ? {} : { title: title ?? '' }),
  }
  return { ...raw, ...changed }
}

function entryToFile(entry: Entry): Readonly<Record<string, unknown>> {
  const { kind, id, beside, title, settings, asWritten } = entry
  if (asWritten) return asItCame(entry, asWritten)
  return { kind, id, ...(beside ? { beside } : {}), ...(title ? { title } : {}), ...settings }
}

/** The book in the plain words of a file; reading it back gives the same book. */
export function bookToFile(book: Book): Record<string, unknown> {
  return {
    swardsink: book.swardsink,
    title: book.title,
    scenario: writeScenario(book.scenario, { units: 'SI' }),
    pages: book.pages.map(page => ({
      title: page.title,
      lead: page.lead,
      entries: page.entries.map(entryToFile),
    })),
  }
}

export function serialiseBook(book: Book): string {
  return `${JSON.stringify(bookToFile(book), null, 2)}\n`
}
