import { css, html, LitElement } from 'lit'
import type { TrustName } from '../entries/view.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader, Words } from '../words/index.ts'

/** What the figure above it cannot be trusted with. */
export class TrustCard extends LitElement {
  static override properties = {
    names: { attribute: false },
    reader: { attribute: false },
    said: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      ul {
        list-style: none;
        display: grid;
        gap: var(--s-2);
      }
      li {
        font-size: var(--t-note);
        line-height: 1.45;
      }
      .note {
        margin-top: var(--s-3);
      }
    `,
  ]

  declare names: readonly TrustName[]
  declare reader: Reader
  /** The table of sentences, which is fetched. */
  declare said: Readonly<Record<string, string>> | null | 'unfetched'

  private fetchedIn: Words | null = null

  constructor() {
    super()
    this.said = null
  }

  override willUpdate(): void {
    const { words } = this.reader
    if (this.fetchedIn === words) return
    this.fetchedIn = words
    void this.fetchIn(words)
  }

  /** Another language has a table of its own; one that comes when its reader has gone on to another is dropped. */
  private async fetchIn(words: Words): Promise<void> {
    const coming = words.trust().catch(() => 'unfetched' as const)
    const table = await coming
    if (this.fetchedIn === words) this.said = table
  }

  override render() {
    const { said, names, reader } = this
    const { entry, page } = reader.words
    if (said === null) return html`<p class="small">${entry.fetching}</p>`
    if (said === 'unfetched') return html`<p class="small">${page.noView}</p>`
    return html`<ul>${names.map(name => html`<li>${said[name]}</li>`)}</ul>
      <p class="note">${entry.trustSection}</p>`
  }
}

customElements.define('trust-card', TrustCard)
