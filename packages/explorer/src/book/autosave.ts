import type { Book, ReadBook } from './book.ts'
import { isRecord } from './fields.ts'
import type { KindShelf } from './kind.ts'
import { readBook } from './parse.ts'
import { bookToFile } from './serialise.ts'

/** The part of a browser's storage that is needed; handed in, so that this room needs no browser. */
export type Store = {
  getItem(key: string): string | null
  setItem(key: string, value: string): void
  removeItem(key: string): void
}

const SAVE_VERSION = 1

function keyOf(name: string): string {
  return `swardsink/book/${name}`
}

/** Keeps a reader's changes. Says whether it could: storage may be full or refused. */
export function keep(q: {
  readonly store: Store
  readonly name: string
  readonly edition: string
  readonly book: Book
}): boolean {
  const saved = { version: SAVE_VERSION, edition: q.edition, book: bookToFile(q.book) }
  try {
    q.store.setItem(keyOf(q.name), JSON.stringify(saved))
    return true
  } catch {
    return false
  }
}

/**
 * What was kept for this edition of a book, or null. Kept changes of an older edition are not poured into
 * a newer one: the book itself has changed under them.
 */
export async function kept(q: {
  readonly store: Store
  readonly name: string
  readonly edition: string
  readonly kinds: KindShelf
}): Promise<ReadBook | null> {
  let saved: unknown
  try {
    const text = q.store.getItem(keyOf(q.name))
    if (text === null) return null
    saved = JSON.parse(text)
  } catch {
    return null
  }
  if (!isRecord(saved) || saved.version !== SAVE_VERSION || saved.edition !== q.edition) return null
  return readBook(saved.book, q.kinds)
}

export function forget(q: { readonly store: Store; readonly name: string }): void {
  try {
    q.store.removeItem(keyOf(q.name))
  } catch {
    // A store that cannot be written has kept nothing to forget.
  }
}
