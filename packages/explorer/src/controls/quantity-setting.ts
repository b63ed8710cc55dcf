import { catalogue, displayUnit, type Scenario } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import type { Held, QuantitySettable } from '../book/index.ts'
import { settingParts } from '../figures/index.ts'
import { rangeStyles, sharedStyles } from '../look/index.ts'
import { briefly, type Reader, settableWords } from '../words/index.ts'
import { announce } from './announce.ts'
import { isUnfinished, readTyped } from './readTyped.ts'
import { refusalSentence } from './refusalSentence.ts'
import type { StepAsked } from './step-word.ts'
import './step-word.ts'
import { printed, stepped, steppedBy } from './stepping.ts'
import './graduated-line.ts'

/** One quantity: its name, a field, a native range on a graduated line, and what is wrong with what was typed. */
export class QuantitySetting extends LitElement {
  static override properties = {
    of: { attribute: false },
    scenario: { attribute: false },
    held: { attribute: false },
    reader: { attribute: false },
    brief: { type: Boolean },
    typing: { state: true },
  }
  static override styles = [
    sharedStyles,
    rangeStyles,
    css`
      :host {
        display: block;
        padding: var(--s-2) 0 var(--s-1);
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
        flex: 1 1 9rem;
      }
      .note {
        display: var(--setting-note, block);
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
      .line {
        margin-top: var(--s-1);
        position: relative;
      }
      .caution {
        margin-top: var(--s-1);
      }
      .steps {
        display: flex;
        align-items: end;
        gap: 4px;
        margin-left: auto;
      }
      .steps input.field {
        min-height: 60px;
        width: calc(6ch + 2 * var(--s-2));
        font-size: 1.625rem;
      }
      .steps .unit {
        min-width: 0;
        padding: 0 var(--s-2) 1.1rem 0;
      }
      .head.workshop {
        align-items: center;
        font-size: var(--t-text);
      }
      @media print {
        .line {
          display: none;
        }
      }
    `,
  ]

  declare of: QuantitySettable
  declare scenario: Scenario
  declare held: Held | undefined
  declare reader: Reader
  /** Whose number it is stands over the list. */
  declare brief: boolean
  /** What stands in the field while it has the focus; null when it shows the value. */
  declare typing: string | null

  constructor() {
    super()
    this.typing = null
  }

  override focus(): void {
    this.renderRoot.querySelector<HTMLInputElement>('input.field')?.focus()
  }

  override render() {
    const { of, reader, held } = this
    const value = of.value(this.scenario)
    if (value === null && !of.isOpen?.(this.scenario)) return nothing
    const { words, format, units } = reader
    const said = this.brief ? briefly(of.name, words) : settableWords(of.name, words)
    const shown = value === null ? '' : format(value, of.quantity, { unit: false })
    const text = this.typing ?? held?.text ?? shown
    const hasSteps = reader.workshop && value !== null
    const unlikely = held || value === null ? null : this.unlikely(value)
    const told = ['unit', said.note && 'note', held && 'wrong', unlikely && 'unlikely'].filter(Boolean)
    return html`
      <div class="head ${reader.workshop ? 'workshop' : ''}">
        <span class="name">
          <label for="field">${said.name}</label>
          ${said.note ? html`<span class="note" id="note">${said.note}</span>` : nothing}
        </span>
        <span class=${reader.workshop ? 'steps' : 'value'}>
          ${hasSteps ? this.stepper(-1, said.name) : nothing}
          <input
            class="field"
            id="field"
            inputmode="decimal"
            autocomplete="off"
            .value=${live(text)}
            aria-invalid=${held ? 'true' : 'false'}
            placeholder=${value === null ? words.control.notKnown : nothing}
            aria-describedby=${told.join(' ')}
            @input=${this.typed}
            @change=${this.left}
            @blur=${this.left}
            @keydown=${this.keyInField}
          >
          <span class="unit" id="unit">${displayUnit(of.quantity, units)}</span>
          ${hasSteps ? this.stepper(1, said.name) : nothing}
        </span>
      </div>
      ${
        value === null || reader.workshop
          ? nothing
          : html`<div class="line">
              ${this.range(value, said.name)}
              <graduated-line .line=${of.line} .quantity=${of.quantity} .reader=${reader}></graduated-line>
            </div>`
      }
      <div role="status">${held ? html`<p class="caution" id="wrong">${refusalSentence(held.refusal, reader)}</p>` : nothing}
        ${unlikely ? html`<p class="caution" id="unlikely">${unlikely}</p>` : nothing}</div>
    `
  }

  /** A value that no unit is likely to have is taken, and asked about. */
  private unlikely(value: number): string | null {
    const { of, reader } = this
    const { format, words } = reader
    const [low, high] = of.plausible ?? [catalogue[of.quantity].low, catalogue[of.quantity].high]
    if (value >= low && value <= high) return null
    const say = (one: number) => format(one, of.quantity)
    return words.control.unlikely({ value: say(value), low: say(low), high: say(high) })
  }

  private range(value: number, name: string) {
    const { of, reader } = this
    return html`<input
      type="range"
      min="0"
      max="1"
      step="any"
      .value=${live(String(this.parts().partOf(value)))}
      aria-label=${reader.words.control.line(name)}
      aria-valuetext=${reader.format(value, of.quantity)}
      @input=${this.slid}
      @change=${this.letGo}
      @blur=${this.letGo}
      @keydown=${this.keyOnLine}
    >`
  }

  /** A plus or a minus in place of the line. */
  private stepper(by: 1 | -1, name: string) {
    const { control } = this.reader.words
    return html`<step-word
      .by=${by}
      .label=${by > 0 ? control.more(name) : control.less(name)}
      @sward-step=${this.stepBy}
      @sward-let-go=${this.letGo}
    ></step-word>`
  }

  private stepBy({ detail }: CustomEvent<StepAsked>): void {
    const { of, reader } = this
    const value = this.held?.value ?? of.value(this.scenario)
    if (value === null) return
    const { quantity, line } = of
    this.move(steppedBy(value, { digits: detail.digits, quantity, units: reader.units, line }))
  }

  /** A range runs over parts of the line, so that a logarithmic one is as even under the thumb as it looks. */
  private parts() {
    const { low, high, scale } = this.of.line
    return settingParts({ domain: [low, high], kind: scale })
  }

  private enter(value: number | null, text: string): void {
    announce(this, 'enter', { name: this.of.name, value, text, gesture: this.of.name })
  }

  /** Sets a value that came from the line or a key: the field shows it as printed. */
  private move(value: number): void {
    this.typing = null
    this.enter(value, this.reader.format(value, this.of.quantity, { unit: false }))
  }

  private typed(event: Event): void {
    const text = (event.currentTarget as HTMLInputElement).value
    this.typing = text
    if (!isUnfinished(text, this.shown)) this.takeText(text)
  }

  private get shown() {
    return { quantity: this.of.quantity, units: this.reader.units }
  }

  private takeText(text: string): void {
    const { of, scenario } = this
    // an emptied field says that the number is not known, where that may be
    if (text.trim() === '' && of.unset && of.isOpen?.(scenario)) {
      if (of.value(scenario) === null && !this.held) return
      announce(this, 'replace', { scenario: of.unset(scenario), gesture: of.name })
      return
    }
    this.enter(readTyped(text, this.shown), text)
  }

  private left(): void {
    const text = this.typing
    if (text !== null && isUnfinished(text, this.shown)) this.takeText(text)
    this.typing = null
    this.letGo()
  }

  private letGo(): void {
    announce(this, 'settled', { name: this.of.name })
  }

  private slid(event: Event): void {
    const value = this.parts().valueAt((event.currentTarget as HTMLInputElement).valueAsNumber)
    this.move(printed(value, { quantity: this.of.quantity, units: this.reader.units }))
  }

  private key(event: KeyboardEvent, ends: boolean): number | null {
    if (event.altKey || event.ctrlKey || event.metaKey) return null
    const value = this.held?.value ?? this.of.value(this.scenario)
    if (value === null) return null
    const { quantity, line } = this.of
    return stepped({ key: event.key, value, quantity, units: this.reader.units, line }, { ends })
  }

  private keyInField(event: KeyboardEvent): void {
    const value = this.key(event, false)
    if (value === null) return
    event.preventDefault()
    this.move(value)
  }

  private keyOnLine(event: KeyboardEvent): void {
    const value = this.key(event, true)
    if (value === null) return
    event.preventDefault()
    const { low, high } = this.of.line
    this.move(Math.min(high, Math.max(low, value)))
  }
}

customElements.define('quantity-setting', QuantitySetting)
