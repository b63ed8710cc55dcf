import { css, html, LitElement, nothing } from 'lit'
import type { ViewName } from '../book/index.ts'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import type { Preferences } from './preferences.ts'
import './offline-note.ts'
import { announceReader } from './readerEvents.ts'

/** What else can be made of the book: a lecture, sheets of paper, the view for the workshop, and its words explained. */
export class PageWays extends LitElement {
  static override properties = {
    asks: { type: Boolean },
    preferences: { attribute: false },
    reader: { attribute: false },
    open: { state: true },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
        margin-top: var(--s-8);
        border-top: 1px solid var(--rule);
        padding-top: var(--s-3);
      }
      nav {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--s-6);
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ]

  /** The book has questions to hand in. */
  declare asks: boolean
  declare preferences: Preferences
  declare reader: Reader
  /** The words of the trade are folded out. */
  declare open: boolean

  constructor() {
    super()
    this.open = false
  }

  override render() {
    const { reader, preferences, open } = this
    const { sheets, lecture } = reader.words
    const { workshop } = preferences
    return html`<nav aria-label=${sheets.ways}>
        ${this.way('lecture', lecture.lecture)}
        ${this.way('teachers-sheet', sheets.lesson.name)}
        ${this.way('set-up-sheet', sheets.setUp.name)}
        ${this.asks ? this.way('hand-in', sheets.handIn.name) : nothing}
        <button
          class="word"
          aria-pressed=${workshop ? 'true' : 'false'}
          @click=${() => announceReader(this, 'prefer', { ...preferences, workshop: !workshop })}
        >${sheets.workshop}</button>
        <button class="word" aria-expanded=${open ? 'true' : 'false'} @click=${this.fold}>${sheets.trade}</button>
      </nav>
      ${open ? html`<section aria-label=${sheets.trade}><trade-words .reader=${reader}></trade-words></section>` : nothing}
      <section aria-label=${sheets.kept}><offline-note .reader=${reader}></offline-note></section>`
  }

  private way(view: ViewName, words: string) {
    return html`<button class="word" @click=${() => announceReader(this, 'view', { view })}>${words}</button>`
  }

  private fold(): void {
    void import('./trade-words.ts')
    this.open = !this.open
  }
}

customElements.define('page-ways', PageWays)
