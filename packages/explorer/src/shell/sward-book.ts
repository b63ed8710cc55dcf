import type { Problem } from '@swardsink/model'
import { css, html, LitElement, nothing, type PropertyValues } from 'lit'
import {
  type Book,
  bookOf,
  canRedo,
  canUndo,
  changeEntry,
  choose,
  endGestureOf,
  enter,
  type KindShelf,
  openSession,
  parseBook,
  replaceBook,
  replaceScenario,
  type Session,
  type Shelf,
  type Store,
  scenarioLink,
  stepBack,
  stepForward,
} from '../book/index.ts'
import { listen } from '../controls/index.ts'
import type { View } from '../entries/view.ts'
import { type Flow, openFlow, type Refiner } from '../flow/index.ts'
import { figureText, sharedStyles } from '../look/index.ts'
import { type Reader, readerFor } from '../words/index.ts'
import { type Keeper, openKeeper } from './keeper.ts'
import { fetchViews } from './openBook.ts'
import { keepPreferences, layPaper, type Preferences, readPreferences } from './preferences.ts'
import { hearReader } from './readerEvents.ts'
import { saveFile } from './saveFile.ts'
import './page-foot.ts'
import './problem-list.ts'
import './running-head.ts'
import './sward-page.ts'

/** What a book is opened with. */
export type Opening = {
  readonly book: Book
  /** The book's own values, whatever the reader has changed. */
  readonly own: Book
  readonly problems: readonly Problem[]
  readonly kinds: KindShelf
  readonly views: Shelf<View>
  readonly refiner: Refiner
  readonly store: Store
  readonly name: string
  readonly edition: string
}

/** A sward book, open: holds what the reader changes and keeps every entry in step with it. */
export class SwardBook extends LitElement {
  static override properties = {
    opening: { attribute: false },
    session: { state: true },
    preferences: { state: true },
    problems: { state: true },
    turn: { state: true },
    said: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      .paper {
        max-width: var(--page);
        margin: 0 auto;
        padding: 0 var(--s-4);
      }
      @media (min-width: 40rem) {
        .paper {
          padding: 0 var(--s-8);
          max-width: calc(var(--page) + 2 * var(--s-8));
        }
      }
      /* On a wall text is larger: the page is as much wider. */
      .paper.projector {
        max-width: 108rem;
        --measure: 60rem;
      }
      @media print {
        .paper {
          padding: 0;
        }
      }
    `,
  ]

  declare opening: Opening
  declare session: Session
  declare preferences: Preferences
  declare problems: readonly Problem[]
  declare turn: number
  declare said: string
  private flow: Flow | null = null
  private keeper: Keeper | null = null

  constructor() {
    super()
    this.turn = 0
    this.said = ''
    this.problems = []
    listen(this, 'enter', q => this.change(enter(this.session, q)))
    listen(this, 'choose', q => this.change(choose(this.session, q)))
    listen(this, 'settled', () => {
      this.session = endGestureOf(this.session)
    })
    listen(this, 'rearrange', q => this.change(changeEntry(this.session, q)))
    listen(this, 'replace', q => this.change(replaceScenario(this.session, q.scenario)))
    listen(this, 'stop', q => {
      this.flow?.stop(q.id)
      this.turn++
    })
    listen(this, 'find', q => this.find(q.name))
    hearReader(this, 'prefer', preferences => this.prefer(preferences))
    hearReader(this, 'undo', () => this.change(stepBack(this.session)))
    hearReader(this, 'redo', () => this.change(stepForward(this.session)))
    hearReader(this, 'restore', () => this.change(replaceBook(this.session, this.opening.own)))
    hearReader(this, 'save', () => saveFile(bookOf(this.session)))
    hearReader(this, 'open', file => void this.openFile(file))
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('opening')) return
    const { kinds, refiner, store, name, edition, book, problems } = this.opening
    this.flow = openFlow({ kinds: kinds.items, refiner, onLater: () => this.turn++ })
    this.keeper = openKeeper({ store, name, edition })
    this.problems = problems
    this.preferences = readPreferences(store)
    layPaper(document.documentElement, this.preferences.paper)
    this.session = openSession(book)
    this.compute()
  }

  override updated(): void {
    if (this.session) document.title = `${bookOf(this.session).title} \u00b7 Swardsink`
  }

  /** Every change comes through here: what depends on it is worked out before this returns. */
  private change(session: Session): void {
    if (session === this.session) return
    const before = bookOf(this.session)
    this.session = session
    const book = bookOf(session)
    if (book === before) return
    this.compute()
    this.keeper?.keep(book, book === this.opening.own)
  }

  private compute(): void {
    const book = bookOf(this.session)
    this.flow?.update(
      book.pages.flatMap(page => page.entries),
      book.scenario,
    )
    this.turn++
  }

  private prefer(preferences: Preferences): void {
    this.preferences = preferences
    layPaper(document.documentElement, preferences.paper)
    keepPreferences(this.opening.store, preferences)
  }

  private find(name: string): void {
    const lists = deepAll(this.renderRoot, 'setting-list')
    lists.some(list => 'find' in list && typeof list.find === 'function' && list.find(name))
  }

  private async openFile(file: File): Promise<void> {
    const read = await parseBook(await file.text(), this.opening.kinds)
    this.problems = read.problems
    if (!read.book) return
    await fetchViews(this.opening.views, [read.book])
    this.said = this.reader.words.page.opened(read.book.title)
    this.change(replaceBook(this.session, read.book))
  }

  private get reader(): Reader {
    const { units, paper } = this.preferences
    return readerFor({ units, figureText: figureText(paper) })
  }

  override render() {
    const { session, flow, opening, preferences, keeper } = this
    if (!flow || !keeper) return nothing
    const book = bookOf(session)
    const reader = this.reader
    return html`<div class="paper ${preferences.paper}">
      <running-head
        .book=${book.title}
        .page=${book.pages[0]?.title ?? ''}
        .preferences=${preferences}
        .canUndo=${canUndo(session.history)}
        .canRedo=${canRedo(session.history)}
        .reader=${reader}
      ></running-head>
      <main>
        <problem-list .problems=${this.problems} .reader=${reader}></problem-list>
        ${book.pages.map(
          (page, index) => html`<sward-page
            .page=${page}
            .index=${index}
            .count=${book.pages.length}
            .session=${session}
            .flow=${flow}
            .kinds=${opening.kinds.items}
            .views=${opening.views.items}
            .reader=${reader}
            .turn=${this.turn}
          ></sward-page>`,
        )}
      </main>
      <page-foot
        .link=${scenarioLink(book.scenario)}
        .keeps=${keeper.keeps()}
        .changed=${book !== opening.own}
        .said=${this.said}
        .reader=${reader}
      ></page-foot>
    </div>`
  }
}

/** Every element of a kind, through all the shadow trees below. */
function deepAll(root: ParentNode, name: string): Element[] {
  return [...root.querySelectorAll('*')].flatMap(element => [
    ...(element.localName === name ? [element] : []),
    ...(element.shadowRoot ? deepAll(element.shadowRoot, name) : []),
  ])
}

customElements.define('sward-book', SwardBook)
