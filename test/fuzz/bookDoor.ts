import fc from 'fast-check'
import { type Book, isRecord, parseBook, serialiseBook } from '../../packages/explorer/src/book/index.ts'
import { heavierRoller } from '../../packages/explorer/src/books/heavierRoller.ts'
import { books } from '../support/arbitraryBook.ts'
import { edited, edits, tears, torn } from './damage.ts'
import { door } from './door.ts'
import { must, mustBeSaid, mustBeSame } from './expectations.ts'
import { kinds, shelf, workOutBook } from './workedBook.ts'

const { book: present } = await parseBook(JSON.stringify(heavierRoller), shelf)
if (!present) throw new Error('the first book does not open')

/** How many entries a file holds, whatever they are. */
function entriesIn(raw: unknown): number {
  const pages: readonly unknown[] = isRecord(raw) && Array.isArray(raw.pages) ? raw.pages : []
  return pages.flatMap(page =>
    isRecord(page) && Array.isArray(page.entries) ? page.entries.filter(isRecord) : [],
  ).length
}

const entriesOf = (book: Book) => book.pages.flatMap(page => page.entries).length

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch {
    return undefined
  }
}

/** Files of books: those that ship and any other, changed and torn. Nothing that could be read is lost. */
export const bookDoor = door({
  name: 'book files',
  arbitrary: fc.record({
    book: fc.oneof<fc.Arbitrary<unknown>[]>(
      books(kinds).map(book => JSON.parse(serialiseBook(book))),
      fc.constant(heavierRoller),
      fc.jsonValue(),
    ),
    changes: edits(4),
    damage: fc.oneof({ weight: 3, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: tears }),
    over: fc.boolean(),
    work: fc.boolean(),
  }),
  within: 3,
  async check({ book, changes, damage, over, work }) {
    const text = torn(JSON.stringify(edited(book, changes)), damage)
    const read = await parseBook(text, shelf, over ? { present } : {})
    if (read.book === null) {
      if (read.newer === undefined) mustBeSaid(read.problems, 'a book')
      return
    }
    const raw = jsonOf(text)
    if (isRecord(raw) && read.book.pages !== present.pages)
      must(entriesOf(read.book) === entriesIn(raw) || raw.pages === undefined, 'an entry is lost')
    const written = serialiseBook(read.book)
    const again = await parseBook(written, shelf)
    must(again.book !== null, 'a book that was read cannot be read again')
    mustBeSame(serialiseBook(again.book), written, 'a book written, read and written')
    if (work) workOutBook(read.book, { refined: ['readings'] })
  },
})
