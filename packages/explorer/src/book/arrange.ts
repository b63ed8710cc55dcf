import type { Book, Entry } from './book.ts'
import { entriesOf, type Row, rowsOf } from './rows.ts'

/** Which way an entry or a page is moved. */
export type Way = 'earlier' | 'later'

/** Where an entry stands: its page, its row on it, its place in the row. */
export type Place = { readonly page: number; readonly row: number; readonly at: number }

export function entryOf(book: Book, id: string): Entry | null {
  for (const { entries } of book.pages) for (const entry of entries) if (entry.id === id) return entry
  return null
}

export function placeOf(book: Book, id: string): Place | null {
  for (const [page, { entries }] of book.pages.entries())
    for (const [row, members] of rowsOf(entries).entries()) {
      const at = members.findIndex(entry => entry.id === id)
      if (at >= 0) return { page, row, at }
    }
  return null
}

/** A name for one more entry of a kind: the kind's own, or with the first number that is free. */
export function freshId(book: Book, kind: string): string {
  const taken = new Set(book.pages.flatMap(page => page.entries.map(entry => entry.id)))
  let id = kind
  for (let again = 2; taken.has(id); again++) id = `${kind}-${again}`
  return id
}

function withRows(
  book: Book,
  page: number,
  change: (rows: readonly Row[]) => readonly (readonly Entry[])[],
): Book {
  const pages = book.pages.map((each, index) =>
    index === page
      ? { ...each, entries: entriesOf(change(rowsOf(each.entries)).filter(row => row.length > 0)) }
      : each,
  )
  return { ...book, pages }
}

/** Puts an entry on a page, as its last row. */
export function addEntry(
  book: Book,
  { page, entry }: { readonly page: number; readonly entry: Entry },
): Book {
  return withRows(book, page, rows => [...rows, [entry]])
}

/** Changes one entry and leaves all others as they are. */
export function withEntry(book: Book, id: string, change: (entry: Entry) => Entry): Book {
  const pages = book.pages.map(page =>
    page.entries.some(entry => entry.id === id)
      ? { ...page, entries: page.entries.map(entry => (entry.id === id ? change(entry) : entry)) }
      : page,
  )
  return { ...book, pages }
}

/** A copy with a name of its own: under its row, or beside it when it stands beside another. */
export function copyEntry(book: Book, id: string): { readonly book: Book; readonly id: string } | null {
  const place = placeOf(book, id)
  const entry = entryOf(book, id)
  if (!place || !entry) return null
  const copy = { ...entry, id: freshId(book, entry.kind) }
  const next = withRows(book, place.page, rows =>
    rows.flatMap((row, index): readonly (readonly Entry[])[] => {
      if (index !== place.row) return [row]
      return place.at === 0 ? [row, [copy]] : [row.toSpliced(place.at + 1, 0, copy)]
    }),
  )
  return { book: next, id: copy.id }
}

export function takeOutEntry(book: Book, id: string): Book {
  const place = placeOf(book, id)
  if (!place) return book
  return withRows(book, place.page, rows => rows.map(row => row.filter(entry => entry.id !== id)))
}

/** Whether there is anywhere to move it that way. */
export function canMoveEntry(book: Book, { id, way }: { readonly id: string; readonly way: Way }): boolean {
  const place = placeOf(book, id)
  if (!place) return false
  if (place.at > 0) return true
  const { page, row } = place
  if (way === 'earlier') return page > 0 || row > 0
  return page < book.pages.length - 1 || row < rowsOf(book.pages[page]?.entries ?? []).length - 1
}

/**
 * Moves an entry past its neighbour. One that stands beside another moves within its row, and at the row's end
 * out of it; a row moves with all that stands in it, and from the edge of a page to the next one.
 */
export function moveEntry(book: Book, { id, way }: { readonly id: string; readonly way: Way }): Book {
  const place = placeOf(book, id)
  if (!place || !canMoveEntry(book, { id, way })) return book
  const by = way === 'earlier' ? -1 : 1
  if (place.at > 0) return withRows(book, place.page, rows => withinRow(rows, { place, by }))
  const rows = rowsOf(book.pages[place.page]?.entries ?? [])
  if (place.row + by >= 0 && place.row + by < rows.length)
    return withRows(book, place.page, all => swapped(all, place.row, place.row + by))
  const moved = rows[place.row] ?? []
  const left = withRows(book, place.page, all => all.toSpliced(place.row, 1))
  return withRows(left, place.page + by, all => (by < 0 ? [...all, moved] : [moved, ...all]))
}

function withinRow(
  rows: readonly Row[],
  { place: { row, at }, by }: { readonly place: Place; readonly by: number },
): readonly (readonly Entry[])[] {
  const members: readonly Entry[] = rows[row] ?? []
  const next = at + by
  if (next > 0 && next < members.length) return rows.toSpliced(row, 1, swapped(members, at, next) as Row)
  const alone = members.slice(at, at + 1)
  const others = members.toSpliced(at, 1)
  return (rows as readonly (readonly Entry[])[]).toSpliced(
    row,
    1,
    ...(by < 0 ? [alone, others] : [others, alone]),
  )
}

export function swapped<Item>(list: readonly Item[], one: number, other: number): readonly Item[] {
  return list.map((item, at) =>
    at === one ? (list[other] ?? item) : at === other ? (list[one] ?? item) : item,
  )
}

/** Takes an entry into the row before it, or out into a row of its own. */
export function putBeside(
  book: Book,
  { id, beside }: { readonly id: string; readonly beside: boolean },
): Book {
  return withEntry(book, id, entry => ({ ...entry, beside }))
}
