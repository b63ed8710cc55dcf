import { css, html, LitElement } from 'lit'
import { live } from 'lit/directives/live.js'
import { wordStyles } from '../../controls/index.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Reader } from '../../words/index.ts'

/** What `sward-heads` carries: the heads as they now stand, and which column each had been; null for a new one. */
export type HeadsChanged = { readonly heads: readonly string[]; readonly from: readonly (number | null)[] }

/** The names of a table's columns as fields, one under the other: renamed, taken out, added. */
export class ReadingsColumns extends LitElement {
  static override properties = {
    heads: { attribute: false },
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
        margin: var(--s-2) 0 var(--s-4);
      }
      ul {
        list-style: none;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 var(--s-4);
        padding: var(--s-1) 0;
      }
      input.field {
        width: 16rem;
        max-width: 100%;
        text-align: left;
        font-size: var(--t-note);
      }
    `,
  ]

  declare heads: readonly string[]
  declare reader: Reader

  override render() {
    const said = this.reader.words.readings
    return html`
      <p class="note">${said.columnsHow}</p>
      <datalist id="names">${said.offered.map(name => html`<option value=${name}></option>`)}</datalist>
      <ul>${this.heads.map(
        (head, at) => html`<li>
          <input
            class="field"
            list="names"
            autocomplete="off"
            autocapitalize="off"
            spellcheck="false"
            aria-label=${said.column(at + 1)}
            .value=${live(head)}
            @input=${(event: Event) => this.rename(at, (event.currentTarget as HTMLInputElement).value)}
          >
          <button class="word" @click=${() => this.takeOut(at)}>${said.takeOutColumn(head || said.column(at + 1))}</button>
        </li>`,
      )}</ul>
      <button class="word" @click=${this.add}>${said.addColumn}</button>
    `
  }

  private tell(detail: HeadsChanged): void {
    this.dispatchEvent(new CustomEvent<HeadsChanged>('sward-heads', { detail }))
  }

  private get places(): readonly number[] {
    return this.heads.map((_, at) => at)
  }

  private rename(at: number, name: string): void {
    this.tell({ heads: this.heads.map((head, i) => (i === at ? name : head)), from: this.places })
  }

  private takeOut(at: number): void {
    const from = this.places.filter(i => i !== at)
    this.tell({ heads: from.map(i => this.heads[i] ?? ''), from })
  }

  private readonly add = async (): Promise<void> => {
    this.tell({ heads: [...this.heads, ''], from: [...this.places, null] })
    await this.updateComplete
    const fields = this.renderRoot.querySelectorAll<HTMLInputElement>('input')
    fields[fields.length - 1]?.focus()
  }
}

customElements.define('readings-columns', ReadingsColumns)
