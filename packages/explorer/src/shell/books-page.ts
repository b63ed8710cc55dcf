import { css, html, LitElement, nothing } from 'lit'
import { type Listed, writeAddress } from '../book/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import './book-list.ts'

/** Every book that ships, with the sentence that says whom it is for, and those of this browser. */
export class BooksPage extends LitElement {
  static override properties = {
    shipped: { attribute: false },
    own: { attribute: false },
    present: {},
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      h1 {
        margin: var(--s-6) 0 var(--s-8);
      }
      h1:focus-visible {
        outline-offset: 6px;
      }
      ul {
        list-style: none;
        display: grid;
        gap: var(--s-6);
        margin-bottom: var(--s-8);
      }
      h2 {
        font-size: var(--t-title);
      }
      a {
        display: inline-block;
        min-height: var(--target);
        line-height: var(--target);
      }
    `,
  ]

  declare shipped: readonly { readonly name: string; readonly title: string; readonly about: string }[]
  declare own: readonly Listed[]
  declare present: string
  declare reader: Reader

  /** Where reading begins when the list has come. */
  async focusHeading(): Promise<void> {
    await this.updateComplete
    this.renderRoot.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true })
  }

  override render() {
    const { shipped, own, present, reader } = this
    const { files } = reader.words
    return html`<h1 tabindex="-1">${files.booksLead}</h1>
      <ul>${shipped.map(
        ({ name, title, about }) => html`<li>
          <h2><a href=${writeAddress({ book: name, page: 1 })} aria-current=${name === present ? 'true' : nothing}>${title}</a></h2>
          <p>${about}</p>
        </li>`,
      )}</ul>
      <book-list .shipped=${[]} .own=${own} .present=${present} .reader=${reader}></book-list>`
  }
}

customElements.define('books-page', BooksPage)
