import { writeScenario } from '@swardsink/model'
import type { Book, Entry } from './book.ts'

function entryToFile({ kind, id, beside, settings }: Entry): Record<string, unknown> {
  return { kind, id, ...(beside ? { beside } : {}), ...settings }
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
