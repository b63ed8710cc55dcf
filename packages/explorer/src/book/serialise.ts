import { writeScenario } from '@swardsink/model'
import type { Book, Entry } from './book.ts'
import type { Kinds } from './kind.ts'

function entryToFile(entry: Entry, kinds: Kinds): Record<string, unknown> {
  const kind = kinds[entry.kind]
  const settings = kind ? kind.write(entry.settings) : entry.settings
  return { kind: entry.kind, id: entry.id, ...(entry.beside ? { beside: true } : {}), ...settings }
}

/** The book in the plain words of a file; reading it back gives the same book. */
export function bookToFile(book: Book, kinds: Kinds): Record<string, unknown> {
  return {
    swardsink: book.swardsink,
    title: book.title,
    scenario: writeScenario(book.scenario, { units: 'SI' }),
    pages: book.pages.map(page => ({
      title: page.title,
      lead: page.lead,
      entries: page.entries.map(entry => entryToFile(entry, kinds)),
    })),
  }
}

export function serialiseBook(book: Book, kinds: Kinds): string {
  return `${JSON.stringify(bookToFile(book, kinds), null, 2)}\n`
}
