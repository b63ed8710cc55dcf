import { css, html, LitElement, nothing } from 'lit'
import { type Listed, writeAddress } from '../book/index.ts'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import { announceReader } from './readerEvents.ts'

/** The books that ship and those kept in this browser. */
export class BookList extends LitElement {
  static override properties = {
    shipped: { attribute: false },
    own: { attribute: false },
    present: {},
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
      }
      h2,
      h3 {
        font-size: var(--t-note);
      }
      h3 {
        margin-top: var(--s-2);
        color: var(--ink-2);
        font-weight: var(--weight);
      }
      ul {
        list-style: none;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--s-4);
        align-items: baseline;
      }
      a {
        line-height: var(--target);
      }
      a[aria-current] {
        color: var(--ink);
        font-weight: var(--weight-strong);
        text-decoration: none;
      }
    `,
  ]

  /** Those that ship, by name and title. */
  declare shipped: readonly { readonly name: string; readonly title: string; readonly about: string }[]
  declare own: readonly Listed[]
  declare present: string
  declare reader: Reader
  /** Making one costs more than a list of dates it writes. */
  private date: Intl.DateTimeFormat | null = null

  override render() {
    const { shipped, own, reader } = this
    if (shipped.length + own.length < 2) return nothing
    const { files } = reader.words
    return html`<h2 id="books">${files.books}</h2>
      <ul aria-labelledby="books">${shipped.map(book => html`<li>${this.link(book)}</li>`)}</ul>
      ${
        own.length > 0
          ? html`<h3 id="own">${files.yourBooks}</h3>
            <ul aria-labelledby="own">${own.map(book => this.kept(book))}</ul>`
          : nothing
      }`
  }

  private link({ name, title }: { readonly name: string; readonly title: string }) {
    const said = title || this.reader.words.page.untitledBook
    const current = name === this.present ? 'page' : nothing
    return html`<a class="word" href=${writeAddress({ book: name, page: 1 })} aria-current=${current}>${said}</a>`
  }

  private kept(book: Listed) {
    const { files } = this.reader.words
    const when = book.when === null ? Number.NaN : Date.parse(book.when)
    this.date ??= new Intl.DateTimeFormat(this.reader.locale, { dateStyle: 'medium', timeStyle: 'short' })
    const { date } = this
    const forget = () => announceReader(this, 'forget-book', { name: book.name })
    return html`<li>
      ${this.link(book)}
      ${Number.isFinite(when) ? html`<span class="note">${files.changedOn(date.format(when))}</span>` : nothing}
      ${
        book.name === this.present
          ? nothing
          : html`<button class="word" @click=${forget}>${files.forget}<span class="unseen">${files.forgetWhat(book.title)}</span></button>`
      }
    </li>`
  }
}

customElements.define('book-list', BookList)
