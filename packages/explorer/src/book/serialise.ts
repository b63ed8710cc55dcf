import { writeScenario } from '@swardsink/model'
import type { Book, Entry, Page } from './book.ts'

/** An entry of an unknown kind goes back as it came, but for what a reader has changed: its place, title or name. */
function asItCame(entry: Entry, raw: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { id, kind, beside, title, after, notes, minutes } = entry
  const changed = {
    ...(id === (raw.id ?? kind) ? {} : { id }),
    ...(beside === (raw.beside ?? false) ? {} : { beside }),
    ...(title === raw.title ? {} : { title: title ?? '' }),
    ...(after === undefined || after === raw.after ? {} : { after }),
    ...(notes === undefined || notes === raw.notes ? {} : { notes }),
    ...(minutes === undefined || minutes === raw.minutes ? {} : { minutes }),
  }
  return { ...raw, ...changed }
}

function lectureToFile({ notes, minutes }: Pick<Page, 'notes' | 'minutes'>): Pick<Page, 'notes' | 'minutes'> {
  return { ...(notes ? { notes } : {}), ...(minutes ? { minutes } : {}) }
}

function entryToFile(entry: Entry): Readonly<Record<string, unknown>> {
  const { kind, id, beside, title, after, settings, asWritten } = entry
  if (asWritten) return asItCame(entry, asWritten)
  return {
    kind,
    id,
    ...(beside ? { beside } : {}),
    ...(title ? { title } : {}),
    ...(after ? { after } : {}),
    ...lectureToFile(entry),
    ...settings,
  }
}

/** As a person would write it: without what a division leaves behind the last digit. */
const millimetres = (length: number): number => Number((length * 1000).toPrecision(12))

/** The book in the plain words of a file; reading it back gives the same book. */
export function bookToFile(book: Book): Record<string, unknown> {
  return {
    swardsink: book.swardsink,
    title: book.title,
    scenario: writeScenario(book.scenario, { units: 'SI' }),
    ...(book.adjuster === undefined ? {} : { adjuster_mm: millimetres(book.adjuster) }),
    pages: book.pages.map(page => ({
      title: page.title,
      lead: page.lead,
      ...lectureToFile(page),
      entries: page.entries.map(entryToFile),
    })),
  }
}

export function serialiseBook(book: Book): string {
  return `${JSON.stringify(bookToFile(book), null, 2)}\n`
}
