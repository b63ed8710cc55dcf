import { css, html, LitElement, nothing } from 'lit'
import { wordStyles } from '../../controls/index.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Reader } from '../../words/index.ts'

/** Where a table comes in: pasted, from a file, or begun by hand. Tells `sward-table` its text, or `sward-begin`. */
export class ReadingsIntake extends LitElement {
  static override properties = {
    reader: { attribute: false },
    replaces: { type: Boolean },
    said: { state: true },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
        max-width: var(--measure);
      }
      label.area {
        display: block;
        margin-top: var(--s-3);
        font-size: var(--t-note);
        color: var(--ink-2);
      }
      textarea.field {
        display: block;
        width: 100%;
        min-height: 7rem;
        padding: var(--s-2);
        text-align: left;
        font-size: var(--t-note);
        line-height: 1.4;
        white-space: pre;
        overflow: auto;
        resize: vertical;
      }
      .words {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 var(--s-4);
        margin-top: var(--s-2);
      }
      label.word {
        display: inline-block;
        position: relative;
      }
      input[type='file'] {
        position: absolute;
        inset: 0;
        opacity: 0;
        cursor: pointer;
        width: 100%;
      }
      label.word:has(:focus-visible) {
        outline: 2px solid var(--ink);
        outline-offset: 2px;
      }
      .example {
        margin-top: var(--s-3);
      }
    `,
  ]

  declare reader: Reader
  /** There is a table already. */
  declare replaces: boolean
  declare said: string

  constructor() {
    super()
    this.replaces = false
    this.said = ''
  }

  override focus(): void {
    this.renderRoot.querySelector('textarea')?.focus()
  }

  override render() {
    const { words } = this.reader
    const said = words.readings
    return html`
      <p>${this.replaces ? said.replaces : said.empty}</p>
      <label class="area">${said.paste}
        <textarea class="field" spellcheck="false" autocapitalize="off" aria-describedby="example" @paste=${this.pasted}></textarea>
      </label>
      <div class="words">
        <button class="word" @click=${this.takeIn}>${said.takeIn}</button>
        <label class="word">${said.file}<input type="file" accept=".csv,.tsv,.txt,text/csv,text/plain" @change=${this.opened}></label>
        ${
          this.replaces
            ? html`<button class="word" @click=${() => this.dispatchEvent(new CustomEvent('sward-cancel'))}>${said.cancel}</button>`
            : html`<button class="word" @click=${() => this.dispatchEvent(new CustomEvent('sward-begin'))}>${said.byHand}</button>`
        }
      </div>
      <p class="note example" id="example">${said.example}</p>
      <div role="status">${this.said ? html`<p class="caution">${this.said}</p>` : nothing}</div>
    `
  }

  private tell(text: string): void {
    if (text.trim() === '') this.said = this.reader.words.readings.nothingIn
    else this.dispatchEvent(new CustomEvent<string>('sward-table', { detail: text }))
  }

  /** A whole table that is pasted needs no further word; a line may be the first of several. */
  private pasted(event: ClipboardEvent): void {
    const text = event.clipboardData?.getData('text/plain') ?? ''
    const area = event.currentTarget as HTMLTextAreaElement
    if (area.value !== '' || !text.trim().includes('\n')) return
    event.preventDefault()
    this.tell(text)
  }

  private takeIn(): void {
    this.tell(this.renderRoot.querySelector('textarea')?.value ?? '')
  }

  private async opened(event: Event): Promise<void> {
    const input = event.currentTarget as HTMLInputElement
    const file = input.files?.[0]
    if (!file) return
    try {
      this.tell(await file.text())
    } catch {
      this.said = this.reader.words.readings.notRead
    }
    input.value = ''
  }
}

customElements.define('readings-intake', ReadingsIntake)
