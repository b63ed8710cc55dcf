import { displayUnit, type QuantityName } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import { isUnfinished, readTyped } from './readTyped.ts'
import { refusalSentence } from './refusalSentence.ts'
import { stepped } from './stepping.ts'

/** What `sward-value` carries: SI, null where the field is empty. Changes of one gesture undo together. */
export type ValueTyped = { readonly value: number | null; readonly gesture: string }

/** A line without ends: keys step a field of its own as far as a reader likes. */
const ENDLESS = {
  low: Number.NEGATIVE_INFINITY,
  high: Number.POSITIVE_INFINITY,
  usual: [0, 0],
  scale: 'linear',
} as const

/** One quantity of an entry's own, such as a reading off the scales: a name, a field, a unit. It may be empty. */
export class QuantityField extends LitElement {
  static override properties = {
    label: {},
    note: {},
    value: { attribute: false },
    quantity: {},
    wrong: { attribute: false },
    empty: {},
    reader: { attribute: false },
    typing: { state: true },
    unread: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        padding: var(--s-2) 0;
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        align-items: baseline;
        gap: 0 var(--s-3);
        font-size: var(--t-note);
        line-height: 1.35;
      }
      .name {
        flex: 1 1 6rem;
      }
      .note {
        display: block;
      }
      .value {
        display: flex;
        align-items: baseline;
        gap: var(--s-2);
        margin-left: auto;
      }
      input.field {
        width: calc(7ch + 2 * var(--s-2));
      }
      input::placeholder {
        color: var(--ink-3);
        font-size: var(--t-axis);
        opacity: 1;
      }
      .unit {
        min-width: 2.4em;
        color: var(--ink-2);
      }
      .caution {
        margin-top: var(--s-1);
      }
    `,
  ]

  declare label: string
  declare note: string
  declare value: number | null
  declare quantity: QuantityName
  /** A sentence about this value from whoever knows what it is for. */
  declare wrong: string | null
  /** What an empty field says. */
  declare empty: string
  declare reader: Reader
  declare typing: string | null
  /** Text that is no quantity, kept as typed. */
  declare unread: string | null

  constructor() {
    super()
    this.note = ''
    this.wrong = null
    this.empty = ''
    this.typing = null
    this.unread = null
  }

  override focus(): void {
    this.renderRoot.querySelector<HTMLInputElement>('input')?.focus()
  }

  override render() {
    const { reader, quantity, value, note, unread } = this
    const shown = value === null ? '' : reader.format(value, quantity, { unit: false })
    const wrong =
      unread === null ? this.wrong : refusalSentence({ reason: 'not a number', text: unread }, reader)
    const told = ['unit', note && 'note', wrong && 'wrong'].filter(Boolean)
    return html`
      <div class="head">
        <span class="name">
          <label for="field">${this.label}</label>
          ${note ? html`<span class="note" id="note">${note}</span>` : nothing}
        </span>
        <span class="value">
          <input
            class="field"
            id="field"
            inputmode="decimal"
            autocomplete="off"
            placeholder=${this.empty || reader.words.control.empty}
            .value=${live(this.typing ?? unread ?? shown)}
            aria-invalid=${wrong ? 'true' : 'false'}
            aria-describedby=${told.join(' ')}
            @input=${this.typed}
            @change=${this.left}
            @blur=${this.left}
            @keydown=${this.key}
          >
          <span class="unit" id="unit">${displayUnit(quantity, reader.units)}</span>
        </span>
      </div>
      <div role="status">${wrong ? html`<p class="caution" id="wrong">${wrong}</p>` : nothing}</div>
    `
  }

  private get shown() {
    return { quantity: this.quantity, units: this.reader.units }
  }

  private enter(value: number | null): void {
    this.unread = null
    if (value === this.value) return
    this.value = value
    const detail: ValueTyped = { value, gesture: `field ${this.label}` }
    this.dispatchEvent(new CustomEvent('sward-value', { detail }))
  }

  private take(text: string): void {
    if (text.trim() === '') {
      this.enter(null)
      return
    }
    const value = readTyped(text, this.shown)
    if (value === null) this.unread = text
    else this.enter(value)
  }

  private typed(event: Event): void {
    this.typing = (event.currentTarget as HTMLInputElement).value
    if (!isUnfinished(this.typing, this.shown)) this.take(this.typing)
  }

  private left(): void {
    const text = this.typing
    if (text === null) return
    // what is shown is rounded: leaving a field untouched must not round what it holds
    const kept = this.value === null ? '' : this.reader.format(this.value, this.quantity, { unit: false })
    if (text !== kept) this.take(text)
    this.typing = null
  }

  private key(event: KeyboardEvent): void {
    const { value } = this
    if (value === null || event.altKey || event.ctrlKey || event.metaKey) return
    const next = stepped({ key: event.key, value, ...this.shown, line: ENDLESS }, { ends: false })
    if (next === null) return
    event.preventDefault()
    this.typing = null
    this.enter(next)
  }
}

customElements.define('quantity-field', QuantityField)
