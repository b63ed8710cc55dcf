import { css, html, LitElement, nothing } from 'lit'
import type { Book, Listed } from '../book/index.ts'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import './book-list.ts'
import { announceReader } from './readerEvents.ts'

/** How far to trust the page, what is invented, and what a reader can do with their changes. */
export class PageFoot extends LitElement {
  static override properties = {
    book: { attribute: false },
    name: {},
    addressed: {},
    page: { type: Number },
    shipped: { attribute: false },
    kept: { attribute: false },
    keeps: { type: Boolean },
    changed: { type: Boolean },
    reader: { attribute: false },
    linking: { state: true },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
        margin-top: var(--s-12);
      }
      footer {
        border-top: 1px solid var(--ink-3);
        padding: var(--s-4) 0 var(--s-12);
        display: grid;
        gap: var(--s-4) var(--gap);
      }
      h2 {
        font-size: var(--t-note);
      }
      book-list {
        margin-top: var(--s-4);
      }
      .words {
        display: flex;
        flex-wrap: wrap;
        gap: var(--s-2) var(--s-6);
        align-items: baseline;
        margin-top: var(--s-2);
      }
      label {
        line-height: var(--target);
      }
      input[type='file'] {
        position: absolute;
        width: 1px;
        height: 1px;
        opacity: 0;
      }
      .open:has(:focus-visible) {
        outline: 2px solid var(--ink);
        outline-offset: 2px;
      }
      @media (min-width: 79rem) {
        footer {
          grid-template-columns: minmax(0, 792fr) minmax(0, 384fr);
        }
      }
      @media print {
        .changes,
        book-list {
          display: none;
        }
      }
    `,
  ]

  declare book: Book
  declare name: string
  /** The book's name in the address; null for the one an address without a name means. */
  declare addressed: string | null
  /** Counted from 1. */
  declare page: number
  declare shipped: readonly { readonly name: string; readonly title: string; readonly about: string }[]
  declare kept: readonly Listed[]
  declare keeps: boolean
  declare changed: boolean
  declare reader: Reader
  /** The link to the present values is folded out. */
  declare linking: boolean

  constructor() {
    super()
    this.linking = false
  }

  override render() {
    const { book, reader } = this
    const { page, files } = reader.words
    return html`<footer>
      <section aria-labelledby="trust">
        <h2 id="trust">${page.trust}</h2>
        <p class="small">${page.trustText}</p>
        <p class="note">${page.invented}</p>
        <book-list .shipped=${this.shipped} .own=${this.kept} .present=${this.name} .reader=${reader}></book-list>
      </section>
      <section class="changes" aria-labelledby="changes">
        <h2 id="changes">${page.changes}</h2>
        <p class="note">${this.keeps ? page.kept : page.notKept}</p>
        <div class="words">
          <button class="word" ?disabled=${!this.changed} @click=${() => announceReader(this, 'restore')}>${page.restore}</button>
          <button class="word" @click=${() => announceReader(this, 'save')}>${page.saveFile}</button>
          <label class="word open">${page.openFile}<input type="file" accept=".json" @change=${this.opened}></label>
          <button class="word" aria-expanded=${this.linking ? 'true' : 'false'} @click=${this.link}>${location.protocol === 'file:' ? files.linkAsText : files.link}</button>
        </div>
        ${
          this.linking
            ? html`<scenario-link
                .scenario=${book.scenario}
                .book=${this.addressed}
                .page=${this.page}
                .reader=${reader}
              ></scenario-link>`
            : nothing
        }
      </section>
    </footer>`
  }

  private link(): void {
    void import('./scenario-link.ts')
    this.linking = !this.linking
  }

  private opened(event: Event): void {
    const input = event.currentTarget as HTMLInputElement
    const file = input.files?.[0]
    if (file) announceReader(this, 'open', file)
    input.value = ''
  }
}

customElements.define('page-foot', PageFoot)
