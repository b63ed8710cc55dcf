import type { Book, ReadBook } from './book.ts'
import { isRecord } from './fields.ts'
import type { KindShelf } from './kind.ts'
import { type ReadingOptions, readBook } from './parse.ts'
import { bookToFile } from './serialise.ts'

/** The part of a browser's storage that is needed; handed in, so that this room needs no browser. */
export type Store = {
  getItem(key: string): string | null
  setItem(key: string, value: string): void
  removeItem(key: string): void
  keys(): readonly string[]
}

const SAVE_VERSION = 1
const CHANGED = 'swardsink/book/'
/** What a reader's own book was when it was opened: the values it goes back to. */
const OPENED = 'swardsink/own/'

export type Named = { readonly store: Store; readonly name: string }

/** The key under which a book's changes are kept: what other tabs hear of. */
export const keptUnder = (name: string): string => `${CHANGED}${name}`

function write(store: Store, key: string, value: unknown): string | null {
  const text = JSON.stringify(value)
  try {
    store.setItem(key, text)
    return text
  } catch {
    return null
  }
}

function look(store: Store, key: string): string | null {
  try {
    return store.getItem(key)
  } catch {
    return null
  }
}

/** Keeps a reader's changes; the text that now stands in the store, or null when it is full or refused. */
export function keep(
  q: Named & { readonly edition: string; readonly book: Book; readonly when: string },
): string | null {
  const saved = { version: SAVE_VERSION, edition: q.edition, when: q.when, book: bookToFile(q.book) }
  return write(q.store, keptUnder(q.name), saved)
}

/** Keeps a book as it was opened from a file, which no program ships. */
export function keepOpened(q: Named & { readonly book: Book; readonly when: string }): boolean {
  const saved = { version: SAVE_VERSION, when: q.when, book: bookToFile(q.book) }
  return write(q.store, `${OPENED}${q.name}`, saved) !== null
}

function savedAt(store: Store, key: string): Readonly<Record<string, unknown>> | null {
  const text = look(store, key)
  try {
    const saved: unknown = JSON.parse(text ?? 'null')
    return isRecord(saved) && saved.version === SAVE_VERSION ? saved : null
  } catch {
    return null
  }
}

export type Kept = { readonly edition: string; readonly read: ReadBook }

/** What was kept of a book, and for which of its editions; null when nothing was, or nothing that makes sense. */
export async function kept(q: Named & { readonly kinds: KindShelf } & ReadingOptions): Promise<Kept | null> {
  const saved = savedAt(q.store, keptUnder(q.name))
  if (!saved) return null
  return { edition: String(saved.edition), read: await readBook(saved.book, q.kinds, q) }
}

/** A reader's own book as it was opened, or null when none of that name is kept. */
export async function keptOpened(
  q: Named & { readonly kinds: KindShelf } & ReadingOptions,
): Promise<ReadBook | null> {
  const saved = savedAt(q.store, `${OPENED}${q.name}`)
  return saved && readBook(saved.book, q.kinds, q)
}

/** What stands in the store for a book, to see whether another tab has written since. */
export function keptText({ store, name }: Named): string | null {
  return look(store, keptUnder(name))
}

/** Forgets a reader's changes; with `whole`, the book they opened as well. */
export function forget({ store, name, whole = false }: Named & { readonly whole?: boolean }): void {
  try {
    store.removeItem(keptUnder(name))
    if (whole) store.removeItem(`${OPENED}${name}`)
  } catch {
    // A store that cannot be written has kept nothing to forget.
  }
}

/** A book of which something is kept, as a list shows it. */
export type Listed = { readonly name: string; readonly title: string; readonly when: string | null }

/** Every book of which something is kept here, by name. */
export function keptBooks(store: Store): readonly Listed[] {
  const keys = keysOf(store)
  const names = new Set(
    [CHANGED, OPENED].flatMap(start =>
      keys.filter(key => key.startsWith(start)).map(key => key.slice(start.length)),
    ),
  )
  return [...names].sort().flatMap(name => {
    const saved = savedAt(store, keptUnder(name)) ?? savedAt(store, `${OPENED}${name}`)
    if (!saved || !isRecord(saved.book)) return []
    const { title } = saved.book
    const when = typeof saved.when === 'string' ? saved.when : null
    return [{ name, title: typeof title === 'string' ? title : '', when }]
  })
}

function keysOf(store: Store): readonly string[] {
  try {
    return store.keys()
  } catch {
    return []
  }
}

/** A name for one more kept book: plain letters of its title, with the first number that is free. */
export function freeName(title: string, taken: readonly string[]): string {
  const plain = title
    .normalize('NFKD')
    .replaceAll(/\p{Mark}/gu, '')
    .toLowerCase()
    .replaceAll(/[^\p{Letter}\p{Number}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
  const base = plain || 'book'
  let name = base
  for (let again = 2; taken.includes(name); again++) name = `${base}-${again}`
  return name
}
