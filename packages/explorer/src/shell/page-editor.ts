import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import type { Book, Page } from '../book/index.ts'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import type { ActWords } from './act-words.ts'
import './act-words.ts'
import { editorStyles } from './editorStyles.ts'
import { lectureFields } from './lectureFields.ts'
import { type Act, announceReader, type ReaderEvents } from './readerEvents.ts'

/** At the head of a page that is edited: its title and sentence, the book's title, and what can be done with the page. */
export class PageEditor extends LitElement {
  static override properties = {
    book: { attribute: false },
    index: { type: Number },
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    editorStyles,
    css`
      :host {
        display: block;
        margin-top: var(--s-6);
        border-left: 3px solid var(--ink);
        padding-left: var(--s-3);
      }
      .words {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--s-4);
        align-items: baseline;
        font-size: var(--t-note);
        color: var(--ink-2);
      }
      @media (min-width: 48rem) {
        .titles {
          display: grid;
          grid-template-columns: repeat(2, minmax(0, 1fr));
          gap: var(--s-2) var(--gap);
        }
      }
    `,
  ]

  declare book: Book
  declare index: number
  declare reader: Reader

  async focusAct(act: Act): Promise<void> {
    await this.updateComplete
    const words = this.renderRoot.querySelector<ActWords>('act-words')
    await words?.updateComplete
    words?.focusAct(act)
  }

  async focusTitle(): Promise<void> {
    await this.updateComplete
    const title = this.renderRoot.querySelector<HTMLInputElement>('#page-title')
    title?.focus()
    title?.select()
  }

  override render() {
    const { book, index, reader } = this
    const { editing } = reader.words
    const page: Page | undefined = book.pages[index]
    const last = book.pages.length - 1
    const can = { earlier: index > 0, later: index < last, copy: true, 'take out': last > 0 }
    const arrange = ({ detail }: CustomEvent<Act>) => announceReader(this, 'arrange-page', { act: detail })
    return html`<section aria-label=${editing.pageWords}>
      <div class="words">
        <span>${editing.thisPage}</span>
        <act-words .can=${can} .what=${editing.thisPage} .reader=${reader} @act=${arrange}></act-words>
        <button class="word" @click=${() => announceReader(this, 'arrange-page', { act: 'add' })}>${editing.addPage}</button>
      </div>
      <div class="fields">
        <div class="titles">
          ${this.field('book title', { label: editing.bookTitle, id: 'book-title', text: book.title })}
          ${this.field('page title', { label: editing.pageTitle, id: 'page-title', text: page?.title ?? '' })}
        </div>
        <label>${editing.lead}
          <textarea
            class="field"
            rows="2"
            .value=${live(page?.lead ?? '')}
            @input=${(event: Event) => this.write('lead', event)}
            @change=${() => announceReader(this, 'written')}
          ></textarea>
        </label>
        ${page ? lectureFields(this, { of: page, reader }) : nothing}
      </div>
    </section>`
  }

  private field(
    what: ReaderEvents['write']['what'],
    { label, id, text }: { readonly label: string; readonly id: string; readonly text: string },
  ) {
    return html`<label>${label}
      <input
        class="field"
        id=${id}
        .value=${live(text)}
        @input=${(event: Event) => this.write(what, event)}
        @change=${() => announceReader(this, 'written')}
      >
    </label>`
  }

  private write(what: ReaderEvents['write']['what'], event: Event): void {
    const text = (event.currentTarget as HTMLInputElement | HTMLTextAreaElement).value
    announceReader(this, 'write', { what, text })
  }
}

customElements.define('page-editor', PageEditor)
