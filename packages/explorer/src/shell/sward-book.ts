import { html, LitElement, nothing, type PropertyValues } from 'lit'
import { keyed } from 'lit/directives/keyed.js'
import {
  type Book,
  bookOf,
  canRedo,
  canUndo,
  type Entry,
  isBooksAddress,
  keptBooks,
  type Listed,
  type Page,
  readAddress,
  type ViewName,
  writeAddress,
} from '../book/index.ts'
import type { NamedEntry } from '../entries/view.ts'
import { figureText, sharedStyles } from '../look/index.ts'
import { type Reader, readerFor, type Words } from '../words/index.ts'
import { type BookDesk, openDesk } from './bookDesk.ts'
import './books-page.ts'
import { changeLanguage } from './changeLanguage.ts'
import { hearBook, step } from './hearBook.ts'
import { kindName } from './kindName.ts'
import './notice-list.ts'
import type { House, Opening } from './openBook.ts'
import { drawView, showAddressedView } from './otherView.ts'
import './page-foot.ts'
import './page-turn.ts'
import './page-ways.ts'
import { heardAddress, heardNear, showBooks, showPage, showWhole } from './pageWalk.ts'
import { keepPreferences, layPaper, type Preferences, readPreferences } from './preferences.ts'
import './problem-list.ts'
import './present-case.ts'
import './running-head.ts'
import './sward-page.ts'
import { swardBookStyles } from './swardBookStyles.ts'
import { listenUndoKeys } from './undoKeys.ts'

const shippedOf = ({ shipped }: House, { books }: Words) =>
  Object.entries(shipped).map(([name, { title, about }]) => ({ name, title, about, ...books[name] }))

/** The book that a reader has before them, one page at a time. */
export class SwardBook extends LitElement {
  static override properties = {
    opening: { attribute: false },
    preferences: { state: true },
    unopened: { state: true },
    page: { state: true },
    listing: { state: true },
    view: { state: true },
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
  /** All books are listed in place of a page. */
  declare listing: boolean
  /** Another view than the pages. */
  declare view: ViewName | null
  declare editing: boolean
  /** Counts what is new to show. */
  declare turn: number
  /** What was last done to the book as a document. */
  declare said: string
  desk: BookDesk | null = null
  /** Books that were open in this window before, with their pasts. */
  readonly desks = new Map<string, BookDesk>()
  /** Looked up when it may have changed: reading a store costs more than a frame. */
  private kept: readonly Listed[] = []
  /** The same reader is one object: elements can tell by it that nothing has changed. */
  private readsAs: Preferences | null = null
  private sameReader: Reader | null = null
  private laidAs: Preferences | null = null
  private chosen: Preferences | null = null
  private sameWall: Preferences | null = null
  /** What the address was last known to say of the book that is open. */
  private toldAddress: {
    readonly desk: BookDesk
    readonly name: string
    readonly carried: string | null
  } | null = null
  private namedPages: readonly Page[] | null = null
  private sameNamed: readonly NamedEntry[] = []
  private unlisten: readonly (() => void)[] = []

  constructor() {
    super()
    this.turn = 0
    this.said = ''
    this.unopened = false
    this.page = 0
    this.listing = false
    this.view = null
    this.editing = false
    hearBook(this)
  }

  get book(): Book {
    if (!this.desk) throw new Error('no book is open')
    return bookOf(this.desk.session())
  }

  get reader(): Reader {
    const { laid } = this
    if (this.readsAs !== laid || !this.sameReader) {
      this.readsAs = laid
      const { language, units, paper, workshop } = laid
      this.sameReader = readerFor({ language, units, figureText: figureText(paper, workshop), workshop })
    }
    return this.sameReader
  }

  /** What the reader chose, but for the wall: a lecture is always on its paper. */
  private get laid(): Preferences {
    return this.view === 'lecture' ? this.onWall : this.preferences
  }

  /** An entry as a reader knows it. */
  titleOf({ title, kind }: Entry): string {
    return title || kindName(kind, this.reader)
  }

  prefer(preferences: Preferences): void {
    if (preferences.language === this.preferences.language) this.take(preferences)
    else void changeLanguage(this, preferences)
  }

  take(preferences: Preferences): void {
    this.preferences = preferences
    if (this.desk) keepPreferences(this.desk.house.store, preferences)
  }

  listBooks(): void {
    const { store, shipped } = this.opening.house
    this.kept = keptBooks(store).filter(({ name }) => !Object.hasOwn(shipped, name))
    this.turn++
  }

  /** The book's name in the address; null for the one an address without a name means. */
  get bookInAddress(): string | null {
    const { desk } = this
    return !desk || desk.name() === desk.house.first ? null : desk.name()
  }

  addressOf(page: number): string {
    return writeAddress({
      book: this.bookInAddress,
      page: page + 1,
      scenario: this.desk?.carried() ?? null,
      view: this.view,
    })
  }

  override connectedCallback(): void {
    super.connectedCallback()
    const turned = () => void heardAddress(this)
    const papers = matchMedia('print')
    const printing = () => papers.matches && showWhole(this)
    window.addEventListener('hashchange', turned)
    papers.addEventListener('change', printing)
    this.unlisten = [
      listenUndoKeys({ undo: () => step(this, 'back'), redo: () => step(this, 'forward') }),
      () => window.removeEventListener('hashchange', turned),
      () => papers.removeEventListener('change', printing),
    ]
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    for (const stop of this.unlisten) stop()
  }

  private get onWall(): Preferences {
    if (this.chosen !== this.preferences || !this.sameWall) {
      this.chosen = this.preferences
      this.sameWall = { ...this.preferences, paper: 'projector', workshop: false }
    }
    return this.sameWall
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('opening')) return
    const { store } = this.opening.house
    if (!this.preferences) {
      this.preferences = { ...readPreferences(store), language: this.opening.language }
    }
    this.desk = openDesk(this.opening, () => this.turn++)
    showPage(this, (readAddress(location.hash).page ?? 1) - 1)
    void showAddressedView(this)
    if (isBooksAddress(location.hash)) showBooks(this)
  }

  override updated(): void {
    const { desk } = this
    if (!desk) return
    const { laid } = this
    if (this.laidAs !== laid) {
      this.laidAs = laid
      layPaper(document.documentElement, laid)
      document.documentElement.toggleAttribute('data-lecture', this.view === 'lecture')
    }
    if (this.desks.get(desk.name()) !== desk) {
      this.desks.set(desk.name(), desk)
      this.listBooks()
    }
    if (this.listing) {
      document.title = `${this.reader.words.files.books} \u00b7 Swardsink`
      return
    }
    const { title } = this.book
    const titled = `${title || this.reader.words.page.untitledBook} \u00b7 Swardsink`
    if (document.title !== titled) document.title = titled
    this.tidyAddress(desk)
  }

  /** Values that no longer stand, and a name that is no longer this book's, go out of the address. */
  private tidyAddress(desk: BookDesk): void {
    const was = this.toldAddress
    const [name, carried] = [desk.name(), desk.carried()]
    this.toldAddress = { desk, name, carried }
    // The address of another book may be on its way to be opened: only what this one has changed is put right.
    if (was?.desk !== desk || (was.name === name && (was.carried === null || carried !== null))) return
    history.replaceState(null, '', this.addressOf(this.page) || location.pathname + location.search)
  }

  /** The same list for the same pages, so that frames can tell by it that nothing has changed. */
  private get named(): readonly NamedEntry[] {
    const { pages } = this.book
    if (this.namedPages !== pages) {
      this.namedPages = pages
      this.sameNamed = pages.flatMap(({ entries }) =>
        entries.map(entry => ({ id: entry.id, kind: entry.kind, title: this.titleOf(entry) })),
      )
    }
    return this.sameNamed
  }

  override render() {
    const { desk } = this
    if (!desk) return nothing
    if (this.view) return drawView(this, this.view)
    const { book, reader, page: index, editing } = this
    const { history: past } = desk.session()
    const page = book.pages[index]
    return html`<div class="paper ${this.preferences.paper}">
      <running-head
        .book=${book.title || reader.words.page.untitledBook}
        .page=${this.listing ? '' : (page?.title ?? '')}
        .preferences=${this.preferences}
        .canUndo=${canUndo(past)}
        .canRedo=${canRedo(past)}
        .listing=${this.listing}
        .editing=${editing}
        .reader=${reader}
      ></running-head>
      ${this.listing ? nothing : html`<present-case .scenario=${book.scenario} .reader=${reader}></present-case>`}
      <notice-list .notices=${desk.notices()} .reader=${reader}></notice-list>
      <main>
        ${this.listing ? this.books(desk) : this.sheet(page, desk)}
        <p class="note" role="status">${this.said}</p>
      </main>
      ${this.listing ? nothing : this.under(desk)}
    </div>`
  }

  private books({ house, name }: BookDesk) {
    return html`<books-page
      .shipped=${shippedOf(house, this.reader.words)}
      .own=${this.kept}
      .present=${name()}
      .reader=${this.reader}
    ></books-page>`
  }

  private sheet(page: Page | undefined, desk: BookDesk) {
    const { book, reader, page: index, editing } = this
    return html`
        <problem-list .problems=${desk.problems()} .nothing=${this.unopened} .reader=${reader}></problem-list>
        ${editing ? html`<page-editor .book=${book} .index=${index} .reader=${reader}></page-editor>` : nothing}
        ${page ? this.leaf(page, desk) : nothing}
        ${editing ? html`<add-entry .kinds=${desk.house.kinds.names} .reader=${reader}></add-entry>` : nothing}
      `
  }

  private under(desk: BookDesk) {
    const { book, reader, page: index } = this
    return html`
      <page-turn
        .book=${book}
        .name=${this.bookInAddress}
        .index=${index}
        .values=${desk.carried()}
        .reader=${reader}
      ></page-turn>
      <page-ways
        .asks=${this.book.pages.some(({ entries }) => entries.some(({ kind }) => kind === 'question'))}
        .preferences=${this.preferences}
        .reader=${reader}
      ></page-ways>
      ${this.foot(desk)}`
  }

  private leaf(page: Page, desk: BookDesk) {
    const { kinds, views } = desk.house
    return keyed(
      `${desk.name()} ${this.page}`,
      html`<sward-page
        .page=${page}
        .index=${this.page}
        .count=${this.book.pages.length}
        .session=${desk.session()}
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

  private readonly heardNear = (near: ReadonlySet<string>): void => heardNear(this, near)

  private foot(desk: BookDesk) {
    return html`<page-foot
      .book=${this.book}
      .name=${desk.name()}
      .addressed=${this.bookInAddress}
      .page=${this.page + 1}
      .shipped=${shippedOf(desk.house, this.reader.words)}
      .kept=${this.kept}
      .keeps=${desk.keeps()}
      .changed=${this.book !== desk.own()}
      .reader=${this.reader}
    ></page-foot>`
  }
}

customElements.define('sward-book', SwardBook)
