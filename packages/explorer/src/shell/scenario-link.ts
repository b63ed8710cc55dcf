import { type Scenario, writeScenario } from '@swardsink/model'
import { css, html, LitElement, nothing, type PropertyValues } from 'lit'
import { packScenario, writeAddress } from '../book/index.ts'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import { type LinkCode, linkCode } from './linkCode.ts'

/**
 * A link to the present values as text to copy, and as a code for a camera. A page opened from disk has no address
 * that another could open: it gives the values themselves.
 */
export class ScenarioLink extends LitElement {
  static override properties = {
    scenario: { attribute: false },
    book: {},
    page: { type: Number },
    reader: { attribute: false },
    text: { state: true },
    code: { state: true },
    said: { state: true },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
      }
      .panel {
        margin-top: var(--s-2);
      }
      label {
        font-size: var(--t-note);
        color: var(--ink-2);
      }
      textarea.field {
        display: block;
        width: 100%;
        text-align: left;
        font-size: var(--t-axis);
        line-height: 1.4;
        padding: var(--s-2);
        height: 5.5rem;
        overflow-wrap: anywhere;
        resize: vertical;
      }
      svg {
        display: block;
        width: min(100%, 15rem);
        margin-top: var(--s-3);
      }
      @media print {
        svg {
          width: 22mm;
        }
      }
    `,
  ]

  declare scenario: Scenario
  /** The book's name in the address; null for the one an address without a name means. */
  declare book: string | null
  declare page: number
  declare reader: Reader
  declare text: string
  declare code: LinkCode | null
  declare said: string

  constructor() {
    super()
    this.text = ''
    this.code = null
    this.said = ''
  }

  private get fromDisk(): boolean {
    return location.protocol === 'file:'
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('scenario') || changed.has('page') || changed.has('book')) void this.make()
  }

  private async make(): Promise<void> {
    const { scenario } = this
    if (this.fromDisk) {
      this.text = JSON.stringify(writeScenario(scenario, { units: 'SI' }), null, 2)
      return
    }
    const packed = await packScenario(scenario)
    const address = writeAddress({ book: this.book, page: this.page, scenario: packed })
    const text = `${location.href.split('#', 1)[0]}${address}`
    const code = await linkCode(text)
    // A value that was set meanwhile has asked for a link of its own.
    if (scenario !== this.scenario) return
    this.text = text
    this.code = code
  }

  override render() {
    const { files } = this.reader.words
    const select = (event: Event) => (event.currentTarget as HTMLTextAreaElement).select()
    return html`<div class="panel">
      <label for="text">${this.fromDisk ? files.textLabel : files.linkLabel}</label>
      <textarea class="field" id="text" readonly spellcheck="false" .value=${this.text} @focus=${select}></textarea>
      <button class="word" @click=${this.copy}>${files.copy}</button>
      <span class="note" role="status">${this.said}</span>
      <p class="note">${this.fromDisk ? files.textNote : files.linkNote}</p>
      ${this.fromDisk ? nothing : this.drawnCode()}
    </div>`
  }

  private drawnCode() {
    const { code, reader } = this
    const { files } = reader.words
    if (!code) return nothing
    if (code.kind === 'too long') return html`<p class="note">${files.tooLong}</p>`
    if (code.kind === 'unfetched') return html`<p class="note">${files.codeUnfetched}</p>`
    // Black on white on every paper: a camera looks for dark on light, with a quiet margin.
    return html`<svg role="img" aria-label=${files.code} viewBox="0 0 ${code.size} ${code.size}" shape-rendering="crispEdges">
      <rect width=${code.size} height=${code.size} fill="#fff" />
      <path d=${code.path} fill="#000" />
    </svg>`
  }

  private async copy(): Promise<void> {
    const { files } = this.reader.words
    try {
      await navigator.clipboard.writeText(this.text)
      this.said = files.copied
    } catch {
      this.renderRoot.querySelector('textarea')?.select()
      this.said = files.notCopied
    }
  }
}

customElements.define('scenario-link', ScenarioLink)
