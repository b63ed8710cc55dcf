import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addEntry,
  addPage,
  bookOf,
  changeBook,
  changeEntry,
  choose,
  copyEntry,
  copyPage,
  endGestureOf,
  enter,
  freshId,
  moveEntry,
  movePage,
  openSession,
  putBeside,
  replaceBook,
  replaceScenario,
  type Session,
  serialiseBook,
  stepBack,
  stepForward,
  takeOutEntry,
  takeOutPage,
  withEntry,
  withPage,
} from '../../../packages/explorer/src/book/index.ts'
import { books } from '../../support/arbitraryBook.ts'
import { allKinds, firstBook } from '../entries/firstBook.ts'

const EDITS = 500

type Edit = (session: Session) => Session

const ways = fc.constantFrom('earlier' as const, 'later' as const)
const gestures = fc.option(fc.constantFrom('slide', 'type'), { nil: null })

/** One of the session's entries or pages by a number that is always sound. */
const idAt = (session: Session, at: number): string => {
  const ids = bookOf(session).pages.flatMap(page => page.entries.map(({ id }) => id))
  return ids[at % Math.max(1, ids.length)] ?? ''
}
const pageAt = (session: Session, at: number): number => at % bookOf(session).pages.length

const on = (
  session: Session,
  change: (book: ReturnType<typeof bookOf>) => ReturnType<typeof bookOf>,
): Session => changeBook(session, { book: change(bookOf(session)) })

const at = fc.nat({ max: 40 })
const edits: fc.Arbitrary<Edit> = fc.oneof(
  fc
    .tuple(
      fc.constantFrom('frontRoller.mass', 'turf.softness', 'unit.benchHeight'),
      fc.double({ min: -1e-3, max: 9, noNaN: true }),
      gestures,
    )
    .map(
      ([name, value, gesture]): Edit =>
        session =>
          enter(session, { name, value, text: String(value), ...(gesture ? { gesture } : {}) }),
    ),
  fc.constantFrom('smooth', 'grooved').map(
    (option): Edit =>
      session =>
        choose(session, { name: 'frontRoller.surface', option }),
  ),
  fc.tuple(at, fc.string(), gestures).map(
    ([n, text, gesture]): Edit =>
      session =>
        changeEntry(session, { id: idAt(session, n), settings: { text }, ...(gesture ? { gesture } : {}) }),
  ),
  fc.tuple(at, ways).map(
    ([n, way]): Edit =>
      session =>
        on(session, book => moveEntry(book, { id: idAt(session, n), way })),
  ),
  at.map(
    (n): Edit =>
      session =>
        on(session, book => copyEntry(book, idAt(session, n))?.book ?? book),
  ),
  at.map(
    (n): Edit =>
      session =>
        on(session, book => takeOutEntry(book, idAt(session, n))),
  ),
  fc.tuple(at, fc.boolean()).map(
    ([n, beside]): Edit =>
      session =>
        on(session, book => putBeside(book, { id: idAt(session, n), beside })),
  ),
  fc.tuple(at, fc.string()).map(
    ([n, title]): Edit =>
      session =>
        on(session, book => withEntry(book, idAt(session, n), entry => ({ ...entry, title }))),
  ),
  at.map(
    (n): Edit =>
      session =>
        on(session, book =>
          addEntry(book, {
            page: pageAt(session, n),
            entry: {
              id: freshId(book, 'rack'),
              kind: 'rack',
              beside: false,
              settings: { sort: 'mass', order: 'up' },
            },
          }),
        ),
  ),
  fc.tuple(at, fc.string()).map(
    ([n, title]): Edit =>
      session =>
        on(session, book =>
          addPage(book, { after: pageAt(session, n), page: { title, lead: '', entries: [] } }),
        ),
  ),
  at.map(
    (n): Edit =>
      session =>
        on(session, book => copyPage(book, pageAt(session, n))),
  ),
  at.map(
    (n): Edit =>
      session =>
        on(session, book => takeOutPage(book, pageAt(session, n))),
  ),
  fc.tuple(at, ways).map(
    ([n, way]): Edit =>
      session =>
        on(session, book => movePage(book, { index: pageAt(session, n), way })),
  ),
  fc.tuple(at, fc.string()).map(
    ([n, lead]): Edit =>
      session =>
        on(session, book => withPage(book, pageAt(session, n), page => ({ ...page, lead }))),
  ),
  fc.constant<Edit>(endGestureOf),
  books(allKinds.items).map(
    (other): Edit =>
      session =>
        replaceScenario(session, other.scenario),
  ),
  {
    weight: 1,
    arbitrary: books(allKinds.items).map(
      (other): Edit =>
        session =>
          replaceBook(session, other),
    ),
  },
)

/** Entries and pages copied over and over would grow without bound: these few take out what is too much. */
function pruned(session: Session): Session {
  const book = bookOf(session)
  const most = 12
  if (book.pages.length <= most && book.pages.every(page => page.entries.length <= most)) return session
  const pages = book.pages.slice(0, most).map(page => ({ ...page, entries: page.entries.slice(0, most) }))
  return changeBook(session, { book: { ...book, pages } })
}

describe('undo', () => {
  it(`takes ${EDITS} edits back to the very book, and redo forward to the very last`, async () => {
    const book = await firstBook()
    const before = serialiseBook(book)
    fc.assert(
      fc.property(fc.array(edits, { minLength: EDITS, maxLength: EDITS, size: 'max' }), list => {
        let session = openSession(book)
        const seen: string[] = [before]
        for (const edit of list) {
          session = pruned(edit(session))
          seen.push(serialiseBook(bookOf(session)))
        }
        const last = bookOf(session)
        const after = serialiseBook(last)
        const steps = session.history.past.length
        expect(steps).toBeGreaterThan(EDITS / 2)
        for (let step = 0; step < steps; step++) {
          session = stepBack(session)
          expect(seen).toContain(serialiseBook(bookOf(session)))
        }
        expect(bookOf(session)).toBe(book)
        expect(serialiseBook(bookOf(session))).toBe(before)
        expect(stepBack(session).history).toBe(session.history)
        for (let step = 0; step < steps; step++) session = stepForward(session)
        expect(bookOf(session)).toBe(last)
        expect(serialiseBook(bookOf(session))).toBe(after)
      }),
      { numRuns: 3 },
    )
  }, 60_000)
})
