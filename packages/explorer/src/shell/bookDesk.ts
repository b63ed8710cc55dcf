import type { Problem } from '@swardsink/model'
import {
  type Book,
  bookOf,
  completed,
  type Kind,
  openSession,
  packScenario,
  replaceBook,
  replaceScenario,
  retelling,
  type Session,
} from '../book/index.ts'
import { type Flow, openFlow, type Refiner } from '../flow/index.ts'
import type { Language } from '../words/index.ts'
import { frameFirst, oncePerFrame } from './frameFirst.ts'
import { openKeeper } from './keeper.ts'
import { type Notice, withNotice, withoutNotice } from './notices.ts'
import { fetchRest, findShipped, type House, keepAsOwn, type Opening, openBook } from './openBook.ts'

/** One book that is open in this window: what the reader changed, what follows from it, and what there is to tell. */
export type BookDesk = {
  readonly house: House
  readonly flow: Flow
  name(): string
  session(): Session
  /** The book's own values, whatever the reader has changed. */
  own(): Book
  problems(): readonly Problem[]
  notices(): readonly Notice[]
  /** Kinds that could not be fetched. */
  missing(): readonly string[]
  /** Entries in view or near it. */
  near(): ReadonlySet<string>
  /** Values from the address, packed, for as long as they are those that stand. */
  carried(): string | null
  keeps(): boolean
  /** Every change comes through here: what depends on it and is in view is worked out before this returns. */
  change(session: Session): void
  /** These entries are in view or near it; the others keep what they have. */
  look(near: ReadonlySet<string>): void
  tell(notice: Notice): void
  dismiss(kind: string): void
  blame(problems: readonly Problem[]): void
  takeOther(): Promise<void>
  /** Fetches the book in another language, if it ships in one; what comes back tells it and all its past in that. */
  fetchIn(language: Language): Promise<() => void>
  /** A kind, fetched with its view; null when it cannot be had. */
  fetch(name: string): Promise<Kind | null>
}

/** Opens a book for a reader. `onChange` is called whenever there is something new to show. */
export function openDesk(opening: Opening, onChange: () => void): BookDesk {
  const { house, edition, linked } = opening
  let { own, language } = opening
  let session = openSession(opening.book)
  let problems = opening.problems
  let notices = opening.notices
  let missing: readonly string[] = []
  let near: ReadonlySet<string> = new Set()
  let carried: string | null = null
  /** What the reader had changed before an address brought other values: kept apart before it is written over. */
  let covered: Book | null = null

  // Entries of different books may have the same names; the worker tells its questions apart by them.
  const ours = (id: string) => `${opening.name} ${id}`
  const refiner: Refiner = {
    refine: job => house.refiner.refine({ ...job, id: ours(job.id) }),
    drop: id => house.refiner.drop(ours(id)),
  }
  const flow = openFlow({
    kinds: house.kinds.items,
    refiner: frameFirst(refiner),
    onLater: oncePerFrame(onChange),
  })
  const keeper = openKeeper({
    store: house.store,
    name: opening.name,
    edition,
    reserved: Object.keys(house.shipped),
    onOther: () => tell({ kind: 'other tab' }),
    onApart: name => tell({ kind: 'kept apart', name }),
    onTrouble(trouble) {
      notices = withoutNotice(notices, 'store full')
      if (trouble) tell({ kind: 'store full' })
      else onChange()
    },
  })

  function tell(notice: Notice): void {
    notices = withNotice(notices, notice)
    if (notice.kind === 'kept apart') notices = withoutNotice(notices, 'other tab')
    onChange()
  }

  function compute(): void {
    const book = bookOf(session)
    flow.update(
      book.pages.flatMap(page => page.entries),
      book.scenario,
      near,
    )
    onChange()
  }

  function change(next: Session): void {
    if (next === session) return
    const before = bookOf(session)
    session = next
    const book = bookOf(session)
    if (book === before) {
      onChange()
      return
    }
    if (book.scenario !== before.scenario) carried = null
    if (covered && carried === null) {
      keepAsOwn(covered, house)
      covered = null
    }
    // Kept before it is worked out: a fault in the sums must not cost the reader what they typed.
    keeper.keep(book, own)
    compute()
  }

  /** Values of an address lie over the book's as a change that can be undone. */
  async function carry(): Promise<void> {
    if (!linked) return
    const isOther = JSON.stringify(linked) !== JSON.stringify(opening.book.scenario)
    if (isOther) session = replaceScenario(session, linked)
    if (isOther && opening.book !== own) {
      covered = opening.book
      notices = withNotice(notices, { kind: 'linked' })
    }
    const { scenario } = bookOf(session)
    const packed = await packScenario(linked)
    if (bookOf(session).scenario === scenario) carried = packed
    onChange()
  }

  async function fetchMissing(books: readonly Book[]): Promise<void> {
    const rest = await fetchRest(books, house)
    missing = rest.missing
    own = rest.complete(own)
    session = completed(session, rest.complete)
    problems = [...problems, ...rest.problems]
    compute()
  }

  async function takeOther(): Promise<void> {
    // Under the name it was opened with: this desk may keep under another by now.
    const other = await openBook(house, `#book=${encodeURIComponent(opening.name)}`, language)
    keeper.accept()
    notices = withoutNotice(withoutNotice(notices, 'other tab'), 'kept apart')
    session = replaceBook(session, other.book === other.own ? own : other.book)
    compute()
    await fetchMissing([other.book])
  }

  async function fetchIn(next: Language): Promise<() => void> {
    const found = next === language ? null : await findShipped(opening.name, { house, language: next })
    const told = found && (await fetchRest([found.own], house)).complete(found.own)
    return () => {
      language = next
      if (!told) return
      session = completed(session, retelling(own, told))
      own = told
      compute()
      if (bookOf(session) !== own) keeper.keep(bookOf(session), own)
    }
  }

  void carry()
  void fetchMissing([own, bookOf(session)])

  return {
    house,
    flow,
    name: keeper.name,
    session: () => session,
    own: () => own,
    problems: () => problems,
    notices: () => notices,
    missing: () => missing,
    near: () => near,
    carried: () => carried,
    keeps: () => keeper.trouble() === null,
    change,
    look(next) {
      const isNew = [...next].some(id => !near.has(id))
      near = next
      if (isNew) compute()
    },
    tell,
    dismiss(kind) {
      notices = notices.filter(notice => notice.kind !== kind)
      onChange()
    },
    blame(found) {
      problems = found
      onChange()
    },
    takeOther,
    fetchIn,
    async fetch(name) {
      const failed = await Promise.all([house.kinds.fetch([name]), house.views.fetch([name])])
      return failed.flat().length > 0 ? null : (house.kinds.items[name] ?? null)
    },
  }
}
