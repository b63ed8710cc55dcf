import { html, LitElement, nothing, type PropertyValues } from 'lit'
import { keyed } from 'lit/directives/keyed.js'
import {
  bookOf,
  canRedo,
  canUndo,
  changeBook,
  changeEntry,
  choose,
  type Entry,
  endGestureOf,
  enter,
  entryOf,
  forget,
  keptBooks,
  type Listed,
  type Page,
  placeOf,
  readAddress,
  replaceBook,
  replaceScenario,
  stepBack,
  stepForward,
  writeAddress,
} from '../book/index.ts'
import { listen } from '../controls/index.ts'
import type { NamedEntry } from '../entries/view.ts'
import { figureText, sharedStyles } from '../look/index.ts'
import { type Reader, readerFor } from '../words/index.ts'
import { type BookDesk, openDesk } from './bookDesk.ts'
import { focusSetting, settingPlace } from './findSetting.ts'
import { kindName } from './kindName.ts'
import './notice-list.ts'
import { adoptBook, type Opening, openBook } from './openBook.ts'
import { openFile } from './openFile.ts'
import type { PageEditor } from './page-editor.ts'
import './page-foot.ts'
import './page-turn.ts'
import { keepPreferences, layPaper, type Preferences, readPreferences } from './preferences.ts'
import './problem-list.ts'
import { type Act, hearReader } from './readerEvents.ts'
import './running-head.ts'
import { saveFile } from './saveFile.ts'
import type { SwardPage } from './sward-page.ts'
import './sward-page.ts'
import { swardBookStyles } from './swardBookStyles.ts'
import { listenUndoKeys } from './undoKeys.ts'

/** Entries drawn before the window has said which of them are in view. */
const FIRST_DRAWN = 6

/** The book that a reader has before them, one page at a time. */
export class SwardBook extends LitElement {
  static override properties = {
    opening: { attribute: false },
    preferences: { state: true },
    unopened: { state: true },
    page: { state: true },
    editing: { state: true },
    turn: { state: true },
    said: { state: true },
  }
  static override styles = [sharedStyles, swardBookStyles]

  declare opening: Opening
  declare preferences: Preferences
  /** Nothing of the last file could be opened. */
  declare unopened: boolean
  /** The page that is shown, from 0. */
  declare page: number
  declare editing: boolean
  /** Counts what is new to show. */
  declare turn: number
  declare said: string
  private desk: BookDesk | null = null
  /** What is needed for editing has been fetched. */
  private canEdit = false
  /** Books that were open in this window before, with their pasts. */
  private readonly desks = new Map<string, BookDesk>()
  /** Looked up when it may have changed: reading a store costs more than a frame. */
  private kept: readonly Listed[] = []
  private unlisten: readonly (() => void)[] = []

  constructor() {
    super()
    this.turn = 0
    this.said = ''
    this.unopened = false
    this.page = 0
    this.editing = false
    this.hearEntries()
    this.hearShell()
  }

  private hearEntries(): void {
    const desk = () => this.desk
    listen(this, 'enter', q => desk()?.change(enter(this.session, q)))
    listen(this, 'choose', q => desk()?.change(choose(this.session, q)))
    listen(this, 'settled', () => this.endGesture())
    listen(this, 'rearrange', q => desk()?.change(changeEntry(this.session, q)))
    listen(this, 'replace', q => desk()?.change(replaceScenario(this.session, q.scenario, q.gesture)))
    listen(this, 'stop', q => {
      desk()?.flow.stop(q.id)
      this.turn++
    })
    listen(this, 'find', q => void this.findSetting(q.name))
    hearReader(this, 'show', async ({ id }) => (await this.reveal(id))?.frame(id)?.scrollIntoView())
  }

  private hearShell(): void {
    hearReader(this, 'prefer', preferences => this.prefer(preferences))
    hearReader(this, 'undo', () => this.step('back'))
    hearReader(this, 'redo', () => this.step('forward'))
    hearReader(this, 'restore', () => this.desk?.change(replaceBook(this.session, this.desk.own())))
    hearReader(this, 'save', () => saveFile(this.book))
    hearReader(this, 'open', file => void this.openFile(file))
    hearReader(this, 'edit', editing => void this.edit(editing))
    hearReader(this, 'take-other', () => void this.desk?.takeOther())
    hearReader(this, 'dismiss', ({ kind }) => this.desk?.dismiss(kind))
    hearReader(this, 'forget-book', ({ name }) => this.forgetBook(name))
  }

  private async edit(editing: boolean): Promise<void> {
    this.said = ''
    if (editing && !this.canEdit) {
      try {
        const { listenArranging } = await import('./editing.ts')
        if (!this.canEdit) this.hearArranging(listenArranging)
        this.canEdit = true
      } catch {
        this.said = this.reader.words.editing.noEditing
        return
      }
    }
    this.editing = editing
  }

  private hearArranging(hear: typeof import('./arranging.ts').listenArranging): void {
    hear(this, {
      book: () => this.book,
      page: () => this.page,
      reader: () => this.reader,
      titleOf: id => this.titleOf(id),
      change: (book, gesture) =>
        this.desk?.change(changeBook(this.session, { book, ...(gesture ? { gesture } : {}) })),
      endGesture: () => this.endGesture(),
      turnTo: page => this.turnTo(page),
      say: text => {
        this.said = text
      },
      fetch: async kind => this.desk?.fetch(kind) ?? null,
      focusEntry: async (id, on) => (await this.reveal(id))?.focusEntry(id, on),
      focusPage: act => void this.focusPageEditor(act),
      focusAdd: async () => (await this.shown()).querySelector<HTMLElement>('add-entry')?.focus(),
    })
  }

  private get session() {
    if (!this.desk) throw new Error('no book is open')
    return this.desk.session()
  }

  private get book() {
    return bookOf(this.session)
  }

  override connectedCallback(): void {
    super.connectedCallback()
    const turned = () => void this.heardAddress()
    const papers = matchMedia('print')
    const printing = () =>
      papers.matches && this.look(this.book.pages[this.page]?.entries.map(({ id }) => id))
    window.addEventListener('hashchange', turned)
    papers.addEventListener('change', printing)
    this.unlisten = [
      listenUndoKeys({ undo: () => this.step('back'), redo: () => this.step('forward') }),
      () => window.removeEventListener('hashchange', turned),
      () => papers.removeEventListener('change', printing),
    ]
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    for (const stop of this.unlisten) stop()
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('opening')) return
    const { house } = this.opening
    if (!this.preferences) {
      this.preferences = readPreferences(house.store)
      layPaper(document.documentElement, this.preferences.paper)
    }
    this.desk = openDesk(this.opening, () => this.turn++)
    this.listBooks()
    this.showPage((readAddress(location.hash).page ?? 1) - 1)
  }

  private listBooks(): void {
    const { store, shipped } = this.opening.house
    this.kept = keptBooks(store).filter(({ name }) => !Object.hasOwn(shipped, name))
  }

  override updated(): void {
    const { desk } = this
    if (!desk) return
    if (this.desks.get(desk.name()) !== desk) {
      this.desks.set(desk.name(), desk)
      this.listBooks()
    }
    const { title } = this.book
    document.title = `${title || this.reader.words.page.untitledBook} \u00b7 Swardsink`
    // Values that no longer stand, and a name that is no longer this book's, go out of the address.
    const { scenario, book } = readAddress(location.hash)
    if ((scenario !== null && desk.carried() === null) || (book ?? desk.house.first) !== desk.name())
      history.replaceState(null, '', this.addressOf(this.page) || location.pathname + location.search)
  }

  private get addressed(): string | null {
    const { desk } = this
    return !desk || desk.name() === desk.house.first ? null : desk.name()
  }

  private addressOf(page: number): string {
    return writeAddress({ book: this.addressed, page: page + 1, scenario: this.desk?.carried() ?? null })
  }

  /** The reader went elsewhere by the address: another page, another book, other values. */
  private async heardAddress(): Promise<void> {
    const { desk } = this
    if (!desk) return
    const { house } = desk
    const address = readAddress(location.hash)
    const name = address.book ?? house.first
    const before = this.desks.get(name)
    if (name !== desk.name() && before && address.scenario === null) {
      this.desk = before
      this.showPage((address.page ?? 1) - 1)
    } else if (name !== desk.name() || (address.scenario !== null && address.scenario !== desk.carried()))
      this.opening = await openBook(house, location.hash)
    else {
      for (const text of address.foreign) desk.tell({ kind: 'foreign address', text })
      if (address.foreign.length === 0) this.showPage((address.page ?? 1) - 1)
    }
    const page = (await this.shown()).querySelector<SwardPage>('sward-page')
    await page?.updateComplete
    if (address.foreign.length > 0) return
    window.scrollTo(0, 0)
    page?.focusHeading()
  }

  /** Shows a page of the book that is open, its first entries at once. */
  private showPage(asked: number): void {
    const { pages } = this.book
    this.page = Math.min(Math.max(asked, 0), pages.length - 1)
    this.look(pages[this.page]?.entries.slice(0, FIRST_DRAWN).map(({ id }) => id))
    this.turn++
  }

  private turnTo(page: number): void {
    this.showPage(page)
    history.pushState(null, '', this.addressOf(this.page) || '#page=1')
  }

  private look(ids: readonly string[] = []): void {
    this.desk?.look(new Set(ids))
  }

  private step(way: 'back' | 'forward'): void {
    if (!this.desk) return
    this.desk.change(way === 'back' ? stepBack(this.session) : stepForward(this.session))
    const last = this.book.pages.length - 1
    if (this.page > last) this.turnTo(last)
  }

  private endGesture(): void {
    this.desk?.change(endGestureOf(this.session))
  }

  private prefer(preferences: Preferences): void {
    this.preferences = preferences
    layPaper(document.documentElement, preferences.paper)
    if (this.desk) keepPreferences(this.desk.house.store, preferences)
  }

  private async shown(): Promise<ParentNode> {
    await this.updateComplete
    return this.renderRoot
  }

  /** Makes an entry's page the one that is shown, and the entry drawn. */
  private async reveal(id: string): Promise<SwardPage | null> {
    const place = placeOf(this.book, id)
    if (!place) return null
    if (place.page !== this.page) this.turnTo(place.page)
    this.desk?.look(new Set([...(this.desk?.near() ?? []), id]))
    const page = (await this.shown()).querySelector<SwardPage>('sward-page')
    await page?.updateComplete
    await page?.frame(id)?.updateComplete
    return page
  }

  private async findSetting(name: string): Promise<void> {
    const kinds = this.desk?.house.kinds.items ?? {}
    const id = settingPlace(this.book, { name, page: this.page, kinds })
    const page = id === null ? null : await this.reveal(id)
    // The list itself draws its fields one turn after the frame that holds it.
    await Promise.resolve()
    if (page) focusSetting(page.renderRoot, name)
  }

  private async focusPageEditor(act: Act | 'title'): Promise<void> {
    const editor = (await this.shown()).querySelector<PageEditor>('page-editor')
    await (act === 'title' ? editor?.focusTitle() : editor?.focusAct(act))
  }

  private async openFile(file: File): Promise<void> {
    const { desk } = this
    if (!desk) return
    const { kinds } = desk.house
    const opened = await openFile(file, { kinds, present: this.book })
    this.unopened = opened.book === null
    if (!opened.book) {
      desk.blame(opened.problems)
      for (const notice of opened.notices) desk.tell(notice)
      return
    }
    desk.blame([])
    const before = { before: desk.name(), beforeTitle: this.book.title }
    const { problems } = opened
    const sound = problems.length === 0 && opened.notices.length === 0
    const told = { kind: 'opened', title: opened.book.title, sound, ...before } as const
    const opening = adoptBook(opened.book, desk.house)
    this.opening = { ...opening, problems, notices: [...opened.notices, told] }
  }

  private forgetBook(name: string): void {
    const { desk } = this
    if (!desk) return
    const { store } = desk.house
    const title = keptBooks(store).find(listed => listed.name === name)?.title ?? name
    forget({ store, name, whole: true })
    this.desks.delete(name)
    this.listBooks()
    this.said = this.reader.words.files.forgotten(title)
    this.turn++
  }

  private get reader(): Reader {
    const { units, paper } = this.preferences
    return readerFor({ units, figureText: figureText(paper) })
  }

  private titleOf(id: string): string {
    const entry = entryOf(this.book, id)
    return entry ? this.titled(entry) : id
  }

  private titled({ title, kind }: Entry): string {
    return title || kindName(kind, this.reader)
  }

  private get named(): readonly NamedEntry[] {
    return this.book.pages.flatMap(({ entries }) =>
      entries.map(entry => ({ id: entry.id, kind: entry.kind, title: this.titled(entry) })),
    )
  }

  override render() {
    const { desk } = this
    if (!desk) return nothing
    const { book, session, reader, page: index, editing } = this
    const page = book.pages[index]
    return html`<div class="paper ${this.preferences.paper}">
      <running-head
        .book=${book.title || reader.words.page.untitledBook}
        .page=${page?.title ?? ''}
        .preferences=${this.preferences}
        .canUndo=${canUndo(session.history)}
        .canRedo=${canRedo(session.history)}
        .editing=${editing}
        .reader=${reader}
      ></running-head>
      <notice-list .notices=${desk.notices()} .reader=${reader}></notice-list>
      <main>
        <problem-list .problems=${desk.problems()} .nothing=${this.unopened} .reader=${reader}></problem-list>
        ${editing ? html`<page-editor .book=${book} .index=${index} .reader=${reader}></page-editor>` : nothing}
        ${page ? this.leaf(page, desk) : nothing}
        ${editing ? html`<add-entry .kinds=${desk.house.kinds.names} .reader=${reader}></add-entry>` : nothing}
        <p class="note said" role="status">${this.said}</p>
      </main>
      <page-turn
        .book=${book}
        .name=${this.addressed}
        .index=${index}
        .values=${desk.carried()}
        .reader=${reader}
      ></page-turn>
      <page-foot
        .book=${book}
        .name=${desk.name()}
        .addressed=${this.addressed}
        .page=${index + 1}
        .shipped=${this.shippedBooks(desk)}
        .kept=${this.kept}
        .keeps=${desk.keeps()}
        .changed=${book !== desk.own()}
        .reader=${reader}
      ></page-foot>
    </div>`
  }

  private shippedBooks({ house }: BookDesk) {
    return Object.entries(house.shipped).map(([name, { title }]) => ({ name, title }))
  }

  private leaf(page: Page, desk: BookDesk) {
    const { kinds, views } = desk.house
    return keyed(
      `${desk.name()} ${this.page}`,
      html`<sward-page
        .page=${page}
        .index=${this.page}
        .count=${this.book.pages.length}
        .session=${this.session}
        .flow=${desk.flow}
        .kinds=${kinds.items}
        .views=${views.items}
        .known=${kinds.names}
        .missing=${desk.missing()}
        .near=${desk.near()}
        .named=${this.named}
        .editing=${this.editing}
        .onNear=${this.heardNear}
        .reader=${this.reader}
        .turn=${this.turn}
      ></sward-page>`,
    )
  }

  private readonly heardNear = (near: ReadonlySet<string>): void => {
    this.desk?.look(near)
  }
}

customElements.define('sward-book', SwardBook)
