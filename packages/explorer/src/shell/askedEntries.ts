import { type Book, bookOf, type Entry } from '../book/index.ts'
import type { Asked } from '../entries/view.ts'
import type { Reader } from '../words/index.ts'
import type { BookDesk } from './bookDesk.ts'
import { shownOf } from './shownOf.ts'

export type AskedEntry = {
  readonly entry: Entry
  /** From 0. */
  readonly page: number
  /** null while the book is still being worked out. */
  readonly asked: Asked | null
}

const entriesOf = ({ pages }: Book) =>
  pages.flatMap(({ entries }, page) => entries.map(entry => ({ entry, page })))

/** Every question of a book with what came of it, in the order of its pages. */
export function askedEntries(desk: BookDesk, reader: Reader): readonly AskedEntry[] {
  const session = desk.session()
  const book = bookOf(session)
  const views = desk.house.views.items
  return entriesOf(book)
    .filter(({ entry }) => views[entry.kind]?.asked)
    .map(({ entry, page }) => {
      const state = desk.flow.stateOf(entry.id)
      const shown = shownOf({ entry, state, now: book.scenario, held: session.held, reader })
      return { entry, page, asked: shown ? (views[entry.kind]?.asked?.(shown) ?? null) : null }
    })
}

/** Every entry that asks something is worked out, on whatever page it stands. */
export function lookAtAsked(desk: BookDesk): void {
  const views = desk.house.views.items
  const ids = entriesOf(bookOf(desk.session()))
    .filter(({ entry }) => views[entry.kind]?.asked)
    .map(({ entry }) => entry.id)
  if (ids.some(id => !desk.near().has(id))) desk.look(new Set(ids))
}
