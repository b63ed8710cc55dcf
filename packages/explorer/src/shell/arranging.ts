import {
  addEntry,
  addPage,
  type Book,
  copyEntry,
  copyPage,
  type Entry,
  entryOf,
  fieldsOf,
  freshId,
  type Kind,
  moveEntry,
  movePage,
  type Page,
  placeOf,
  putBeside,
  takeOutEntry,
  takeOutPage,
  withEntry,
  withPage,
} from '../book/index.ts'
import type { Reader } from '../words/index.ts'
import { kindName } from './kindName.ts'
import { type Act, type FocusOn, hearReader, type ReaderEvents } from './readerEvents.ts'

/** What arranging needs of the book that is open. */
export type Desk = {
  book(): Book
  /** The page that is shown, from 0. */
  page(): number
  reader(): Reader
  titleOf(id: string): string
  change(book: Book, gesture?: string): void
  endGesture(): void
  turnTo(page: number): void
  say(text: string): void
  /** The kind by its name, fetched with its view; null when it cannot be had. */
  fetch(kind: string): Promise<Kind | null>
  focusEntry(id: string, on?: FocusOn): void
  focusPage(act: Act | 'title'): void
  focusAdd(): void
}

/** An entry that a reader adds: the usual settings, and what the kind has for a beginning. */
export function newEntry(kind: Kind, book: Book): Entry {
  const entries = book.pages.flatMap(page => page.entries.filter(entry => !entry.asWritten))
  const settings = {
    ...kind.read(fieldsOf({}, '', [])),
    ...kind.whenAdded?.({ scenario: book.scenario, entries }),
  }
  return { id: freshId(book, kind.kind), kind: kind.kind, beside: false, settings }
}

function arrangeEntry(desk: Desk, { id, act }: ReaderEvents['arrange']): void {
  const { editing } = desk.reader().words
  const book = desk.book()
  const title = desk.titleOf(id)
  if (act === 'copy') {
    const copied = copyEntry(book, id)
    if (!copied) return
    desk.change(copied.book)
    desk.say(editing.copied(title))
    desk.focusEntry(copied.id)
  } else if (act === 'take out') {
    const entries = book.pages[desk.page()]?.entries ?? []
    const at = entries.findIndex(entry => entry.id === id)
    const next = entries[at + 1] ?? entries[at - 1]
    desk.change(takeOutEntry(book, id))
    desk.say(editing.takenOut(title))
    if (next) desk.focusEntry(next.id, 'take out')
    else desk.focusAdd()
  } else {
    const moved = moveEntry(book, { id, way: act })
    const page = placeOf(moved, id)?.page ?? desk.page()
    desk.change(moved)
    if (page !== desk.page()) desk.turnTo(page)
    desk.say(editing.moved({ title, page: String(page + 1) }))
    desk.focusEntry(id, act)
  }
}

function arrangePage(desk: Desk, act: Act | 'add'): void {
  const { editing } = desk.reader().words
  const book = desk.book()
  const index = desk.page()
  const title = book.pages[index]?.title ?? ''
  if (act === 'add') {
    const page = { title: editing.newPage, lead: '', entries: [] }
    desk.change(addPage(book, { after: index, page }))
    desk.turnTo(index + 1)
    desk.say(editing.added(editing.newPage))
    desk.focusPage('title')
  } else if (act === 'copy') {
    desk.change(copyPage(book, index))
    desk.turnTo(index + 1)
    desk.say(editing.copied(title))
    desk.focusPage('title')
  } else if (act === 'take out') {
    desk.change(takeOutPage(book, index))
    desk.turnTo(Math.max(0, index - (index === book.pages.length - 1 ? 1 : 0)))
    desk.say(editing.takenOut(title))
    desk.focusPage('take out')
  } else {
    const to = index + (act === 'earlier' ? -1 : 1)
    desk.change(movePage(book, { index, way: act }))
    desk.turnTo(to)
    desk.say(editing.moved({ title, page: String(to + 1) }))
    desk.focusPage(act)
  }
}

function write(desk: Desk, { what, text, id }: ReaderEvents['write']): void {
  const book = desk.book()
  if (what === 'notes' || what === 'minutes') {
    writeLecture(desk, { what, text, ...(id === undefined ? {} : { id }) })
    return
  }
  const gesture = `write ${what} ${id ?? ''}`
  if (what === 'book title') desk.change({ ...book, title: text }, gesture)
  else if (what === 'page title')
    desk.change(
      withPage(book, desk.page(), page => ({ ...page, title: text })),
      gesture,
    )
  else if (what === 'lead')
    desk.change(
      withPage(book, desk.page(), page => ({ ...page, lead: text })),
      gesture,
    )
  else if (id !== undefined && entryOf(book, id))
    desk.change(
      withEntry(book, id, ({ title: _, ...entry }) => (text === '' ? entry : { ...entry, title: text })),
      gesture,
    )
}

/** What a teacher is told of the page that is shown, or of an entry. Minutes that are no number are none. */
function writeLecture(desk: Desk, { what, text, id }: ReaderEvents['write']): void {
  const book = desk.book()
  const told = <Of extends Pick<Page, 'notes' | 'minutes'>>({ notes, minutes, ...rest }: Of) => {
    const typed = Number(text.replace(',', '.'))
    const next = {
      notes: what === 'notes' ? text : (notes ?? ''),
      minutes: what !== 'minutes' ? (minutes ?? 0) : typed > 0 && Number.isFinite(typed) ? typed : 0,
    }
    return {
      ...rest,
      ...(next.notes ? { notes: next.notes } : {}),
      ...(next.minutes ? { minutes: next.minutes } : {}),
    }
  }
  const changed = id === undefined ? withPage(book, desk.page(), told) : withEntry(book, id, told)
  desk.change(changed, `write ${what} ${id ?? ''}`)
}

async function add(desk: Desk, name: string): Promise<void> {
  const { editing } = desk.reader().words
  const title = kindName(name, desk.reader())
  const kind = await desk.fetch(name)
  if (!kind) {
    desk.say(editing.unfetched(title))
    return
  }
  const entry = newEntry(kind, desk.book())
  desk.change(addEntry(desk.book(), { page: desk.page(), entry }))
  desk.say(editing.added(title))
  desk.focusEntry(entry.id)
}

/** Hears what a reader does to the book as a document, and does it. */
export function listenArranging(on: EventTarget, desk: Desk): void {
  hearReader(on, 'arrange', q => arrangeEntry(desk, q))
  hearReader(on, 'arrange-page', ({ act }) => arrangePage(desk, act))
  hearReader(on, 'write', q => write(desk, q))
  hearReader(on, 'written', () => desk.endGesture())
  hearReader(on, 'add', ({ kind }) => void add(desk, kind))
  hearReader(on, 'beside', ({ id, beside }) => {
    desk.change(putBeside(desk.book(), { id, beside }))
    desk.focusEntry(id, 'beside')
  })
}
