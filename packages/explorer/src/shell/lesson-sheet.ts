import { css, html, LitElement, nothing } from 'lit'
import { type Book, type Entry, lecturePlan, type Page } from '../book/index.ts'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import { askedEntries, lookAtAsked } from './askedEntries.ts'
import type { BookDesk } from './bookDesk.ts'
import { sheetBar } from './sheetBar.ts'
import { sheetStyles } from './sheetStyles.ts'

/** The whole plan of a book for whoever teaches from it, to be printed: minutes, what each page says, asks and needs. */
export class LessonSheet extends LitElement {
  static override properties = {
    desk: { attribute: false },
    book: { attribute: false },
    page: { type: Number },
    reader: { attribute: false },
    turn: { type: Number },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    sheetStyles,
    css`
      ol {
        list-style: none;
      }
      li {
        display: grid;
        grid-template-columns: 2.5rem minmax(0, 1fr) 4rem;
        gap: 0 var(--s-3);
        border-bottom: 1px solid var(--rule);
        padding: var(--s-3) 0;
        max-width: none;
        font-size: var(--t-note);
        line-height: 1.4;
        break-inside: avoid;
      }
      li p {
        max-width: none;
        white-space: pre-line;
      }
      li p + p {
        margin-top: var(--s-1);
      }
      .minutes {
        text-align: right;
        white-space: nowrap;
      }
      .notes,
      .ask {
        color: var(--ink-2);
      }
      .safety {
        margin: var(--s-4) 0;
        max-width: none;
      }
    `,
  ]

  declare desk: BookDesk
  declare book: Book
  /** The page it was asked from, from 0. */
  declare page: number
  declare reader: Reader
  /** Counts answers: the flow tells of a new one by it. */
  declare turn: number

  override firstUpdated(): void {
    this.renderRoot.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true })
    window.scrollTo(0, 0)
  }

  override updated(): void {
    lookAtAsked(this.desk)
  }

  override render() {
    const { book, reader } = this
    const { sheets, page } = reader.words
    const { minutes } = lecturePlan(book)
    return html`${sheetBar(this, { page: this.page, reader })}
      <main>
        <header class="title">
          <div class="name">
            <p>${sheets.lesson.name}</p>
            <h1 tabindex="-1">${book.title || page.untitledBook}</h1>
          </div>
          <p>${minutes > 0 ? sheets.lesson.total(minutes) : sheets.lesson.unplanned}</p>
        </header>
        <p class="caution safety"><strong>${sheets.setUp.caution}</strong> ${page.safetyText}</p>
        <ol>${book.pages.map((one, at) => this.leaf(one, at))}</ol>
        <footer class="last"><p>${page.trustText}</p></footer>
      </main>`
  }

  private leaf(page: Page, at: number) {
    const { reader, desk } = this
    const { sheets, page: said } = reader.words
    const asked = askedEntries(desk, reader).filter(one => one.page === at)
    const minutes = page.minutes ?? page.entries.reduce((sum, { minutes: own = 0 }) => sum + own, 0)
    return html`<li>
      <span>${at + 1}</span>
      <div>
        <p><strong>${page.title || said.untitledPage(at + 1)}</strong></p>
        ${page.lead ? html`<p>${page.lead}</p>` : nothing}
        ${asked.map(({ asked: one }) => (one ? html`<p class="ask">${sheets.lesson.question} ${one.question}</p>` : nothing))}
        ${this.notes(page)}
        ${page.entries.map(entry => this.notes(entry))}
      </div>
      <span class="minutes">${minutes > 0 ? `${minutes} ${sheets.lesson.minutes}` : nothing}</span>
    </li>`
  }

  private notes({ notes }: Page | Entry) {
    return notes ? html`<p class="notes">${notes}</p>` : nothing
  }
}

customElements.define('lesson-sheet', LessonSheet)
