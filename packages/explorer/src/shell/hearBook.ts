import {
  bookOf,
  changeBook,
  changeEntry,
  choose,
  endGestureOf,
  enter,
  entryOf,
  forget,
  keptBooks,
  replaceBook,
  replaceScenario,
  type Session,
  stepBack,
  stepForward,
  writeAddress,
} from '../book/index.ts'
import { listen } from '../controls/index.ts'
import { fetchMoreWords } from '../words/index.ts'
import { adoptBook } from './openBook.ts'
import { openFile } from './openFile.ts'
import { enterView, leaveView } from './otherView.ts'
import { findSetting, focusPageEditor, reveal, turnTo } from './pageWalk.ts'
import { hearReader } from './readerEvents.ts'
import { saveFile } from './saveFile.ts'
import type { SwardBook } from './sward-book.ts'

function change(on: SwardBook, next: (session: Session) => Session): void {
  const { desk } = on
  if (desk) desk.change(next(desk.session()))
}

/** One step back or forward; a page that goes with it is left for the last one there is. */
export function step(on: SwardBook, way: 'back' | 'forward'): void {
  change(on, way === 'back' ? stepBack : stepForward)
  const last = on.book.pages.length - 1
  if (on.page > last) turnTo(on, last)
}

/** Hears what entries and shell tell of what the reader does. */
export function hearBook(on: SwardBook): void {
  listen(on, 'enter', q => change(on, session => enter(session, q)))
  listen(on, 'choose', q => change(on, session => choose(session, q)))
  listen(on, 'settled', () => change(on, endGestureOf))
  listen(on, 'rearrange', q => change(on, session => changeEntry(session, q)))
  listen(on, 'replace', q => change(on, session => replaceScenario(session, q.scenario, q.gesture)))
  listen(on, 'stop', q => {
    on.desk?.flow.stop(q.id)
    on.turn++
  })
  listen(on, 'find', q => void findSetting(on, q.name))
  hearReader(on, 'show', async ({ id }) => (await reveal(on, id))?.frame(id)?.scrollIntoView())
  hearReader(on, 'prefer', preferences => on.prefer(preferences))
  hearReader(on, 'undo', () => step(on, 'back'))
  hearReader(on, 'redo', () => step(on, 'forward'))
  hearReader(on, 'restore', () => {
    const own = on.desk?.own()
    if (own) change(on, session => replaceBook(session, own))
  })
  hearReader(on, 'save', () => saveFile(on.book))
  hearReader(on, 'open', file => void open(on, file))
  hearReader(on, 'edit', editing => void edit(on, editing))
  hearReader(on, 'adjuster', ({ adjuster }) => change(on, session => setAdjuster(session, adjuster)))
  hearReader(on, 'view', ({ view }) => void enterView(on, view))
  hearReader(on, 'leave', ({ page }) => void leaveView(on, page))
  hearReader(on, 'take-other', () => void on.desk?.takeOther())
  hearReader(on, 'dismiss', ({ kind }) => on.desk?.dismiss(kind))
  hearReader(on, 'forget-book', ({ name }) => forgetBook(on, name))
}

/** One that is not more than nothing is not known. */
function setAdjuster(session: Session, adjuster: number | null): Session {
  const { adjuster: _, ...book } = bookOf(session)
  const known = adjuster !== null && adjuster > 0 ? { adjuster } : {}
  return changeBook(session, { book: { ...book, ...known }, gesture: 'adjuster' })
}

/** Books for whose editing the page already listens. */
const edited = new WeakSet<SwardBook>()

async function edit(on: SwardBook, editing: boolean): Promise<void> {
  on.said = ''
  if (editing && !edited.has(on)) {
    try {
      // What is edited may speak of any kind there is.
      const [{ listenArranging }] = await Promise.all([import('./editing.ts'), fetchMoreWords()])
      if (!edited.has(on)) hearArranging(on, listenArranging)
    } catch {
      on.said = on.reader.words.editing.noEditing
      return
    }
  }
  on.editing = editing
}

function hearArranging(on: SwardBook, hear: typeof import('./arranging.ts').listenArranging): void {
  edited.add(on)
  hear(on, {
    book: () => on.book,
    page: () => on.page,
    reader: () => on.reader,
    titleOf(id) {
      const entry = entryOf(on.book, id)
      return entry ? on.titleOf(entry) : id
    },
    change: (book, gesture) =>
      change(on, session => changeBook(session, { book, ...(gesture ? { gesture } : {}) })),
    endGesture: () => change(on, endGestureOf),
    turnTo: page => turnTo(on, page),
    say(text) {
      on.said = text
    },
    fetch: async kind => on.desk?.fetch(kind) ?? null,
    focusEntry: async (id, at) => (await reveal(on, id))?.focusEntry(id, at),
    focusPage: act => void focusPageEditor(on, act),
    async focusAdd() {
      await on.updateComplete
      on.renderRoot.querySelector<HTMLElement>('add-entry')?.focus()
    },
  })
}

async function open(on: SwardBook, file: File): Promise<void> {
  const { desk } = on
  if (!desk) return
  const present = bookOf(desk.session())
  const { book, problems, notices } = await openFile(file, { kinds: desk.house.kinds, present })
  on.unopened = book === null
  if (!book) {
    desk.blame(problems)
    for (const notice of notices) desk.tell(notice)
    return
  }
  desk.blame([])
  const sound = problems.length === 0 && notices.length === 0
  const before = { before: desk.name(), beforeTitle: present.title }
  const told = { kind: 'opened', title: book.title, sound, ...before } as const
  const opening = adoptBook(book, { house: desk.house, language: on.preferences.language })
  history.pushState(null, '', writeAddress({ book: opening.name, page: 1 }))
  on.opening = { ...opening, problems, notices: [...notices, told] }
}

function forgetBook(on: SwardBook, name: string): void {
  const { desk } = on
  if (!desk) return
  const { store } = desk.house
  const title = keptBooks(store).find(listed => listed.name === name)?.title ?? name
  forget({ store, name, whole: true })
  on.desks.delete(name)
  on.listBooks()
  on.said = on.reader.words.files.forgotten(title)
}
