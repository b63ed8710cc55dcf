import { css, html, LitElement, nothing } from 'lit'
import type { Book } from '../book/index.ts'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import { type AskedEntry, askedEntries, lookAtAsked } from './askedEntries.ts'
import type { BookDesk } from './bookDesk.ts'
import { sheetBar } from './sheetBar.ts'
import { sheetStyles } from './sheetStyles.ts'

/** Predictions, answers and signed errors of a book on one page, to be handed in. */
export class HandIn extends LitElement {
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
      .scrolls {
        margin-top: var(--s-4);
        overflow-x: auto;
      }
      table {
        width: 100%;
      }
      th,
      td {
        height: auto;
        padding: var(--s-2);
        vertical-align: top;
      }
      td.text,
      th.text {
        text-align: left;
        color: var(--ink);
        border-bottom: 1px solid var(--rule);
        min-width: 12rem;
      }
      .number {
        padding-left: 0;
      }
      .why {
        display: block;
        color: var(--ink-2);
      }
      .learned {
        margin-top: var(--s-6);
        min-height: 8rem;
        border-bottom: 1px solid var(--ink-3);
        font-size: var(--t-note);
        color: var(--ink-2);
      }
      @media print {
        th,
        td {
          padding: 1mm 1.5mm;
          break-inside: avoid;
        }
        .scrolls {
          overflow: visible;
        }
        .learned {
          min-height: 22mm;
        }
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
    const { book, reader, desk } = this
    const { sheets, page } = reader.words
    const { handIn: said } = sheets
    const asked = askedEntries(desk, reader)
    return html`${sheetBar(this, { page: this.page, reader })}
      <main>
        <header class="title">
          <div class="name">
            <p>${said.name}</p>
            <h1 tabindex="-1">${book.title || page.untitledBook}</h1>
          </div>
          <div class="write">${said.by}</div>
          <div class="write">${said.group}</div>
          <div class="write">${sheets.date}</div>
        </header>
        ${asked.length === 0 ? html`<p class="small">${said.none}</p>` : this.table(asked)}
        <p class="learned">${said.learned}</p>
        <footer class="last"><p>${said.note} ${page.trustText}</p></footer>
      </main>`
  }

  private table(asked: readonly AskedEntry[]) {
    const { handIn: said } = this.reader.words.sheets
    return html`<div class="scrolls" role="region" tabindex="0" aria-label=${said.name}><table>
      <thead><tr>
        <th scope="col" class="text" colspan="2">${said.question}</th>
        <th scope="col">${said.said}</th>
        <th scope="col">${said.found}</th>
        <th scope="col">${said.error}</th>
      </tr></thead>
      <tbody>${asked.map((one, at) => this.row(one, at + 1))}</tbody>
    </table></div>`
  }

  private row({ asked }: AskedEntry, number: number) {
    const { sheets, entry } = this.reader.words
    const { handIn: said } = sheets
    return html`<tr>
      <td class="number">${number}</td>
      <th scope="row" class="text">${asked?.question ?? entry.fetching}${asked?.why ? html`<span class="why">${asked.why}</span>` : nothing}</th>
      <td>${asked?.said ?? said.notYet}</td>
      <td>${asked?.found ?? said.notRevealed}</td>
      <td>${asked?.error ?? nothing}</td>
    </tr>`
  }
}

customElements.define('hand-in', HandIn)
