import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import { type NameRefusal, refuseName } from '../book/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'

/** What `sward-named` carries. */
export type Renamed = { readonly name: string }

/** The name of a thing, changed when the field is left: while it is typed it may pass the names of others. */
export class NameField extends LitElement {
  static override properties = {
    label: {},
    name: {},
    taken: { attribute: false },
    reader: { attribute: false },
    refused: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        padding: var(--s-2) 0;
      }
      div.head {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        align-items: baseline;
        gap: 0 var(--s-3);
        font-size: var(--t-note);
      }
      input.field {
        text-align: left;
        flex: 0 1 16rem;
        min-width: 8rem;
      }
      .caution {
        margin-top: var(--s-1);
      }
    `,
  ]

  declare label: string
  declare name: string
  /** Names of the others. */
  declare taken: readonly string[]
  declare reader: Reader
  declare refused: { readonly text: string; readonly why: NameRefusal } | null

  constructor() {
    super()
    this.refused = null
  }

  override focus(): void {
    const field = this.renderRoot.querySelector<HTMLInputElement>('input')
    field?.focus()
    field?.select()
  }

  override render() {
    const { refused } = this
    const { naming } = this.reader.words
    const said =
      refused && (refused.why.reason === 'no name' ? naming.noName : naming.taken(refused.why.name))
    return html`<div class="head">
        <label for="name">${this.label}</label>
        <input
          class="field"
          id="name"
          autocomplete="off"
          .value=${live(refused?.text ?? this.name)}
          aria-invalid=${refused ? 'true' : 'false'}
          aria-describedby=${refused ? 'wrong' : nothing}
          @change=${this.left}
        >
      </div>
      <div role="status">${said ? html`<p class="caution" id="wrong">${said}</p>` : nothing}</div>`
  }

  private left(event: Event): void {
    const text = (event.currentTarget as HTMLInputElement).value.trim()
    const why = text === this.name ? null : refuseName(text, this.taken)
    this.refused = why ? { text, why } : null
    if (why || text === this.name) return
    this.dispatchEvent(new CustomEvent<Renamed>('sward-named', { detail: { name: text } }))
  }
}

customElements.define('name-field', NameField)
