import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import { printed, stepped } from '../../controls/index.ts'
import type { ValueTyped } from '../../controls/quantity-field.ts'
import { isUnfinished, readNumber } from '../../controls/readNumber.ts'
import { isUnfinished as isUnfinishedAmount, readTyped } from '../../controls/readTyped.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Reader } from '../../words/index.ts'
import type { Told } from './kind.ts'
import { bare, unitOf } from './saying.ts'

/** A line without ends: a key steps as far as a reader likes. */
const ENDLESS = {
  low: Number.NEGATIVE_INFINITY,
  high: Number.POSITIVE_INFINITY,
  usual: [0, 0],
  scale: 'linear',
} as const

/** A number with the unit it is told in, be that one of the catalogue or one that somebody wrote. It may be empty. */
export class AmountField extends LitElement {
  static override properties = {
    label: {},
    value: { attribute: false },
    told: { attribute: false },
    reader: { attribute: false },
    typing: { state: true },
    unread: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      label {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        align-items: baseline;
        gap: 0 var(--s-3);
        font-size: var(--t-note);
        padding: var(--s-2) 0;
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
  declare value: number | null
  declare told: Told
  declare reader: Reader
  declare typing: string | null
  /** Text that is no number, kept as typed. */
  declare unread: string | null

  constructor() {
    super()
    this.typing = null
    this.unread = null
  }

  override focus(): void {
    this.renderRoot.querySelector<HTMLInputElement>('input')?.focus()
  }

  override render() {
    const { told, value, reader, label, unread } = this
    const shown = value === null ? '' : bare(value, told, reader)
    const unit = unitOf(told, reader)
    return html`<label>${label}
        <span class="value">
          <input
            class="field"
            inputmode="decimal"
            autocomplete="off"
            .value=${live(this.typing ?? unread ?? shown)}
            aria-invalid=${unread === null ? 'false' : 'true'}
            aria-describedby=${unread === null ? nothing : 'wrong'}
            @input=${this.typed}
            @blur=${this.left}
            @keydown=${this.key}
          >${unit === '' ? nothing : html`<span class="unit">${unit}</span>`}
        </span>
      </label>
      <div role="status">${unread === null ? nothing : html`<p class="caution" id="wrong">${reader.words.question.noNumber(unread)}</p>`}</div>`
  }

  private typed(event: Event): void {
    this.typing = (event.currentTarget as HTMLInputElement).value
    const { told, reader } = this
    const waits =
      'quantity' in told
        ? isUnfinishedAmount(this.typing, { quantity: told.quantity, units: reader.units })
        : isUnfinished(this.typing)
    if (this.typing.trim() === '' || !waits) this.take(this.typing)
  }

  private take(text: string): void {
    const { told, reader } = this
    const value =
      'quantity' in told
        ? readTyped(text, { quantity: told.quantity, units: reader.units })
        : readNumber(text, told.unit)
    this.unread = value === null && text.trim() !== '' ? text : null
    if (this.unread === null && value !== this.value) this.say(value)
  }

  private left(): void {
    const text = this.typing
    this.typing = null
    const kept = this.value === null ? '' : bare(this.value, this.told, this.reader)
    if (text !== null && text !== kept) this.take(text)
  }

  /** An arrow is one digit as it is read, Page ten. */
  private key(event: KeyboardEvent): void {
    const { value, told, reader } = this
    if (value === null || !('quantity' in told) || event.altKey || event.ctrlKey || event.metaKey) return
    const of = { quantity: told.quantity, units: reader.units }
    const next = stepped({ key: event.key, value, ...of, line: ENDLESS }, { ends: false })
    if (next === null) return
    event.preventDefault()
    this.typing = null
    this.unread = null
    this.say(printed(next, of))
  }

  private say(value: number | null): void {
    const detail: ValueTyped = { value, gesture: this.label }
    this.dispatchEvent(new CustomEvent('sward-value', { detail }))
  }
}

customElements.define('amount-field', AmountField)
