import type { Scenario } from '@swardsink/model'
import { withEntry } from './arrange.ts'
import type { Book } from './book.ts'
import { endGesture, type History, record, redo, startHistory, undo } from './history.ts'
import type { Refusal } from './settable.ts'
import { setQuantity, settable } from './settables.ts'

/** What a reader typed that could not be taken: kept as typed, with the reason. */
export type Held = {
  readonly text: string
  /** SI; null when the text is no number. */
  readonly value: number | null
  readonly refusal: Refusal
}

/** One reader with one book open: its history, and what stands in fields that could not be taken. */
export type Session = {
  readonly history: History<Book>
  readonly held: Readonly<Record<string, Held>>
}

export function openSession(book: Book): Session {
  return { history: startHistory(book), held: {} }
}

export function bookOf(session: Session): Book {
  return session.history.present
}

function withScenario(
  session: Session,
  { scenario, gesture = null }: { readonly scenario: Scenario; readonly gesture?: string | null },
): Session {
  const book = { ...bookOf(session), scenario }
  return retryHeld({ ...session, history: record(session.history, { present: book, gesture }) })
}

/** A value refused against its neighbours is tried again whenever they change. */
function retryHeld(session: Session): Session {
  for (const [name, held] of Object.entries(session.held)) {
    const of = settable(name)
    if (held.value === null || of?.kind !== 'quantity') continue
    const set = setQuantity(bookOf(session).scenario, { of, value: held.value })
    const { [name]: _, ...others } = session.held
    if (set.ok) {
      const book = { ...bookOf(session), scenario: set.scenario }
      return retryHeld({ history: { ...session.history, present: book }, held: others })
    }
    if (JSON.stringify(set.refusal) !== JSON.stringify(held.refusal))
      session = { ...session, held: { ...session.held, [name]: { ...held, refusal: set.refusal } } }
  }
  return session
}

/** A reader set a quantity: `text` as typed, `value` what it says in SI, or null when it is no number. */
export function enter(
  session: Session,
  q: {
    readonly name: string
    readonly value: number | null
    readonly text: string
    readonly gesture?: string
  },
): Session {
  const of = settable(q.name)
  if (of?.kind !== 'quantity') return session
  const { [q.name]: _, ...others } = session.held
  const hold = (refusal: Refusal): Session => ({
    ...session,
    held: { ...session.held, [q.name]: { text: q.text, value: q.value, refusal } },
  })
  if (q.value === null) return hold({ reason: 'not a number', text: q.text })
  const { scenario } = bookOf(session)
  const set = setQuantity(scenario, { of, value: q.value })
  if (!set.ok) return hold(set.refusal)
  return withScenario({ ...session, held: others }, { scenario: set.scenario, gesture: q.gesture ?? null })
}

/** A reader chose one of a few. Fields that no longer exist hold nothing. */
export function choose(
  session: Session,
  { name, option }: { readonly name: string; readonly option: string },
): Session {
  const of = settable(name)
  if (of?.kind !== 'choice') return session
  const scenario = of.set(bookOf(session).scenario, option)
  const held = Object.fromEntries(
    Object.entries(session.held).filter(([field]) => {
      const other = settable(field)
      return other?.kind === 'quantity' && other.value(scenario) !== null
    }),
  )
  return withScenario({ ...session, held }, { scenario })
}

/** Other values altogether: a link, or the book's own again. */
export function replaceScenario(session: Session, scenario: Scenario, gesture?: string): Session {
  return withScenario({ ...session, held: {} }, { scenario, gesture: gesture ?? null })
}

/** Another book in place of this one; undo brings this one back. */
export function replaceBook(session: Session, book: Book): Session {
  return { history: record(session.history, { present: book }), held: {} }
}

export function endGestureOf(session: Session): Session {
  return { ...session, history: endGesture(session.history) }
}

export function stepBack(session: Session): Session {
  return { history: undo(session.history), held: {} }
}

export function stepForward(session: Session): Session {
  return { history: redo(session.history), held: {} }
}

/** A book changed as a document: entries, pages, titles. Changes under one gesture are one step back. */
export function changeBook(
  session: Session,
  { book, gesture = null }: { readonly book: Book; readonly gesture?: string | null },
): Session {
  if (book === bookOf(session)) return session
  return { ...session, history: record(session.history, { present: book, gesture }) }
}

/** A changed entry of a page: its own settings, such as the sort order of a table. */
export function changeEntry(
  session: Session,
  q: { readonly id: string; readonly settings: object; readonly gesture?: string },
): Session {
  const book = withEntry(bookOf(session), q.id, entry => ({
    ...entry,
    settings: { ...entry.settings, ...q.settings },
  }))
  return changeBook(session, { book, ...(q.gesture ? { gesture: q.gesture } : {}) })
}

/** The same book and all its past, with entries completed whose kind has come since. */
export function completed(session: Session, complete: (book: Book) => Book): Session {
  const { past, present, future } = session.history
  const history = {
    ...session.history,
    past: past.map(complete),
    present: complete(present),
    future: future.map(complete),
  }
  return { ...session, history }
}
