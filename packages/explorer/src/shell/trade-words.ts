import { css, html, LitElement } from 'lit'
import { sharedStyles } from '../look/index.ts'
import type { Reader, Words } from '../words/index.ts'

type Glossary = Awaited<ReturnType<Words['glossary']>>

/** Words of the trade, as they are used here, with those that readers elsewhere know instead. */
export class TradeWords extends LitElement {
  static override properties = { reader: { attribute: false }, glossary: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        margin-top: var(--s-4);
      }
      dl {
        columns: 22rem;
        column-gap: var(--gap);
      }
      div {
        break-inside: avoid;
        padding: var(--s-2) 0;
        font-size: var(--t-note);
        line-height: 1.45;
      }
      dt {
        font-weight: var(--weight-strong);
      }
      .elsewhere {
        font-weight: var(--weight);
        color: var(--ink-2);
      }
    `,
  ]

  declare reader: Reader
  declare glossary: Glossary | null | 'unfetched'

  private fetchedIn: Words | null = null

  constructor() {
    super()
    this.glossary = null
  }

  override willUpdate(): void {
    const { words } = this.reader
    if (this.fetchedIn === words) return
    this.fetchedIn = words
    void this.fetchIn(words)
  }

  /** Another language has a table of its own; one that comes when its reader has gone on to another is dropped. */
  private async fetchIn(words: Words): Promise<void> {
    const coming = words.glossary().catch(() => 'unfetched' as const)
    const table = await coming
    if (this.fetchedIn === words) this.glossary = table
  }

  override render() {
    const { glossary, reader } = this
    const { entry, page } = reader.words
    if (glossary === null) return html`<p class="small">${entry.fetching}</p>`
    if (glossary === 'unfetched') return html`<p class="small">${page.noView}</p>`
    return html`<dl>${glossary.map(
      ({ word, elsewhere, means }) => html`<div>
        <dt>${word}${elsewhere ? html` <span class="elsewhere">${elsewhere}</span>` : ''}</dt>
        <dd>${means}</dd>
      </div>`,
    )}</dl>`
  }
}

customElements.define('trade-words', TradeWords)
