import { css, html, LitElement, nothing, type PropertyValues } from 'lit'
import { live } from 'lit/directives/live.js'
import { sharedStyles } from '../../look/index.ts'
import type { Reader } from '../../words/index.ts'
import { readGuesses, tallied } from './guesses.ts'
import type { Told } from './kind.ts'
import { bare, saidAs, shownAs, unitOf } from './saying.ts'
import { MOST_GUESSES, type Option } from './settings.ts'

/** What `sward-guesses` carries: SI, or which option. */
export type Guessed = { readonly guesses: readonly number[] }

/** Guesses of a room: pasted numbers or a tally, or how many chose each option. */
export class RoomGuesses extends LitElement {
  static override properties = {
    guesses: { attribute: false },
    options: { attribute: false },
    told: { attribute: false },
    reader: { attribute: false },
    typing: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        font-size: var(--t-note);
      }
      textarea.field {
        display: block;
        width: 100%;
        min-height: 4rem;
        padding: var(--s-2);
        text-align: left;
        resize: vertical;
        field-sizing: content;
      }
      .count {
        display: flex;
        justify-content: space-between;
        align-items: baseline;
        gap: var(--s-3);
        padding: var(--s-1) 0;
      }
      .count input {
        width: 5rem;
      }
    `,
  ]

  declare guesses: readonly number[]
  declare options: readonly Option[]
  declare told: Told
  declare reader: Reader
  declare typing: string | null

  constructor() {
    super()
    this.typing = null
  }

  /** Guesses that came from elsewhere, as by undo, take the place of what is typed. */
  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('guesses') || this.typing === null) return
    const typed = readGuesses(this.typing).values.map(value => saidAs(value, this.told, this.reader))
    if (JSON.stringify(typed) !== JSON.stringify(this.guesses)) this.typing = null
  }

  override render() {
    const { reader, options } = this
    const { question } = reader.words
    if (options.length > 0)
      return html`<div role="group" aria-label=${question.room}>${options.map((option, i) => this.count(option, i))}</div>`
    const { told, guesses } = this
    const shown = tallied(guesses, value => bare(shownAs(value, told, reader), { unit: '' }, reader))
    const { unread, more } = readGuesses(this.typing ?? shown)
    return html`<label for="guesses">${question.room}</label>
      <textarea
        class="field"
        id="guesses"
        rows="2"
        aria-describedby="hint"
        .value=${live(this.typing ?? shown)}
        @input=${this.typed}
        @blur=${this.left}
      ></textarea>
      <p class="note" id="hint">${question.roomHint({ unit: unitOf(told, reader), most: String(MOST_GUESSES) })}</p>
      <div role="status">
        ${unread === null || this.typing === null ? nothing : html`<p class="caution">${question.unread(unread)}</p>`}
        ${more ? html`<p class="caution">${question.tooMany(String(MOST_GUESSES))}</p>` : nothing}
      </div>`
  }

  private count({ text }: Option, place: number) {
    const { question } = this.reader.words
    const count = this.guesses.filter(guess => guess === place).length
    return html`<label class="count">${question.roomCount(text)}
      <input
        class="field"
        type="number"
        min="0"
        max=${MOST_GUESSES}
        step="1"
        .value=${live(String(count))}
        @change=${(event: Event) => this.counted(place, (event.currentTarget as HTMLInputElement).value)}
      >
    </label>`
  }

  private counted(place: number, text: string): void {
    const others = this.guesses.filter(guess => guess !== place)
    const asked = Math.round(Number(text))
    const count = Math.max(0, Math.min(MOST_GUESSES - others.length, Number.isFinite(asked) ? asked : 0))
    this.say([...others, ...new Array<number>(count).fill(place)].sort((a, b) => a - b))
  }

  private typed(event: Event): void {
    const text = (event.currentTarget as HTMLTextAreaElement).value
    this.typing = text
    this.say(readGuesses(text).values.map(value => saidAs(value, this.told, this.reader)))
  }

  /** What could not be read stays as it was typed, with its sentence: nothing moves under a finger. */
  private left(): void {
    const read = readGuesses(this.typing ?? '')
    if (read.unread === null && !read.more) this.typing = null
  }

  private say(guesses: readonly number[]): void {
    this.dispatchEvent(new CustomEvent<Guessed>('sward-guesses', { detail: { guesses } }))
  }
}

customElements.define('room-guesses', RoomGuesses)
