import { css, html, LitElement, nothing } from 'lit'
import { type Book, writeAddress } from '../book/index.ts'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'

/** Earlier page, later page, and all pages by their titles. They are links, so that going back works as ever. */
export class PageTurn extends LitElement {
  static override properties = {
    book: { attribute: false },
    name: {},
    index: { type: Number },
    values: {},
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
      }
      nav {
        margin-top: var(--s-12);
        border-top: 1px solid var(--ink-3);
        padding-top: var(--s-3);
        font-size: var(--t-note);
        display: grid;
        gap: var(--s-2) var(--gap);
      }
      .turn {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--s-6);
      }
      ol {
        list-style: none;
        display: grid;
        gap: 0 var(--s-6);
      }
      li {
        display: flex;
        gap: var(--s-2);
        max-width: none;
      }
      li .number {
        color: var(--ink-2);
        min-width: 1.5em;
        text-align: right;
      }
      a {
        line-height: var(--target);
        min-height: var(--target);
      }
      a[aria-current] {
        color: var(--ink);
        font-weight: var(--weight-strong);
        text-decoration: none;
      }
      @media (min-width: 60rem) {
        nav {
          grid-template-columns: minmax(0, 1fr) minmax(0, 2fr);
        }
        ol {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
      }
      @media print {
        nav {
          display: none;
        }
      }
    `,
  ]

  declare book: Book
  /** The book's name in the address; null for the one an address without a name means. */
  declare name: string | null
  declare index: number
  /** Values that the address carries, and goes on carrying. */
  declare values: string | null
  declare reader: Reader

  override render() {
    const { book, index, reader } = this
    if (book.pages.length < 2) return nothing
    const { page } = reader.words
    return html`<nav aria-label=${page.pages}>
      <div class="turn">
        ${index > 0 ? html`<a class="word" rel="prev" href=${this.to(index - 1)}>${page.earlierPage}</a>` : nothing}
        ${index < book.pages.length - 1 ? html`<a class="word" rel="next" href=${this.to(index + 1)}>${page.laterPage}</a>` : nothing}
      </div>
      <ol>${book.pages.map(
        ({ title }, at) => html`<li>
          <span class="number">${at + 1}</span>
          <a class="word" href=${this.to(at)} aria-current=${at === index ? 'page' : nothing}>${title || page.untitledPage(at + 1)}</a>
        </li>`,
      )}</ol>
    </nav>`
  }

  private to(at: number): string {
    // An address without anything after # would load the page anew.
    return writeAddress({ book: this.name, page: at + 1, scenario: this.values }) || '#page=1'
  }
}

customElements.define('page-turn', PageTurn)
