import { css, html, LitElement, nothing } from 'lit'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import { kindName } from './kindName.ts'
import { announceReader } from './readerEvents.ts'

/** "add an entry": opens a list in words, each kind with one sentence. */
export class AddEntry extends LitElement {
  static override properties = {
    kinds: { attribute: false },
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
      ul {
        list-style: none;
        margin-top: var(--s-3);
        display: grid;
        gap: var(--s-2) var(--gap);
      }
      li {
        font-size: var(--t-note);
        line-height: 1.4;
      }
      li .word {
        display: block;
        color: var(--ink);
        font-size: var(--t-text);
        text-align: left;
      }
      li span {
        color: var(--ink-2);
      }
      @media (min-width: 44rem) {
        ul {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
      }
      @media (min-width: 72rem) {
        ul {
          grid-template-columns: repeat(3, minmax(0, 1fr));
        }
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ]

  /** Names of every kind, in the order they are offered. */
  declare kinds: readonly string[]
  declare reader: Reader
  declare open: boolean

  constructor() {
    super()
    this.open = false
  }

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>('.opener')?.focus()
  }

  override render() {
    const { editing, kinds } = this.reader.words
    return html`<button
        class="word opener"
        aria-expanded=${this.open ? 'true' : 'false'}
        @click=${() => {
          this.open = !this.open
        }}
      >${editing.add}</button>
      ${
        this.open
          ? html`<ul aria-label=${editing.addList} @keydown=${this.key}>${this.kinds.map(
              name => html`<li>
                <button class="word" aria-describedby=${`about-${name}`} @click=${() => this.add(name)}>${kindName(name, this.reader)}</button>
                <span id=${`about-${name}`}>${kinds[name]?.about ?? nothing}</span>
              </li>`,
            )}</ul>`
          : nothing
      }`
  }

  private add(kind: string): void {
    this.open = false
    announceReader(this, 'add', { kind })
  }

  private key(event: KeyboardEvent): void {
    if (event.key !== 'Escape') return
    this.open = false
    void this.updateComplete.then(() => this.focus())
  }
}

customElements.define('add-entry', AddEntry)
