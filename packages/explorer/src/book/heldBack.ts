import { entryOf } from './arrange.ts'
import type { Book, Entry } from './book.ts'
import type { Kinds } from './kind.ts'

/** The question that a reader answers before this entry is shown; null when nothing holds it back. */
export function heldBackBy(book: Book, entry: Entry, kinds: Kinds): Entry | null {
  const question = entry.after === undefined ? null : entryOf(book, entry.after)
  if (!question || question.asWritten) return null
  return kinds[question.kind]?.holdsBack?.(question.settings) === true ? question : null
}
