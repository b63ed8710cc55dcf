import { css, html, LitElement } from 'lit'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import { announceReader } from './readerEvents.ts'

/** How far to trust the page, what is invented, and what a reader can do with their changes. */
export class PageFoot extends LitElement {
  static override properties = {
    link: {},
    keeps: { type: Boolean },
    changed: { type: Boolean },
    said: {},
    reader: { attribute: false },
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
      .words {
        display: flex;
        flex-wrap: wrap;
        gap: var(--s-2) var(--s-6);
        align-items: baseline;
        margin-top: var(--s-2);
      }
      a,
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
        .changes {
          display: none;
        }
      }
    `,
  ]

  declare link: string
  declare keeps: boolean
  declare changed: boolean
  /** The last thing that was done here, said once. */
  declare said: string
  declare reader: Reader

  override render() {
    const { page } = this.reader.words
    return html`<footer>
      <section aria-labelledby="trust">
        <h2 id="trust">${page.trust}</h2>
        <p class="small">${page.trustText}</p>
        <p class="note">${page.invented}</p>
      </section>
      <section class="changes" aria-labelledby="changes">
        <h2 id="changes">${page.changes}</h2>
        <p class="note">${this.keeps ? page.kept : page.notKept}</p>
        <div class="words">
          <button class="word" ?disabled=${!this.changed} @click=${() => announceReader(this, 'restore')}>${page.restore}</button>
          <a class="word" href=${this.link} @click=${this.linked}>${page.link}</a>
          <button class="word" @click=${() => announceReader(this, 'save')}>${page.saveFile}</button>
          <label class="word open">${page.openFile}<input type="file" accept=".json" @change=${this.opened}></label>
        </div>
        <p class="note" role="status">${this.said}</p>
      </section>
    </footer>`
  }

  private linked(): void {
    this.said = this.reader.words.page.linked
  }

  private opened(event: Event): void {
    const input = event.currentTarget as HTMLInputElement
    const file = input.files?.[0]
    if (file) announceReader(this, 'open', file)
    input.value = ''
  }
}

customElements.define('page-foot', PageFoot)
