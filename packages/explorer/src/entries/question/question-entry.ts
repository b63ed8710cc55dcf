import { html, LitElement, nothing, type PropertyValues } from 'lit'
import { live } from 'lit/directives/live.js'
import { settable } from '../../book/index.ts'
import { announce, paleStyles, watchWidth, wordStyles } from '../../controls/index.ts'
import type { ValueTyped } from '../../controls/quantity-field.ts'
import { predictionRow, predictionScale } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import { amountText } from '../../words/index.ts'
import { type Piece, paragraphsOf } from '../text/prose.ts'
import type { Shown } from '../view.ts'
import './amount-field.ts'
import { frameOf, specOf } from './drawing.ts'
import { questionFinding } from './finding.ts'
import type { QuestionResult } from './kind.ts'
import { markAfter, markAt } from './movedMark.ts'
import { questionStyles } from './questionStyles.ts'
import './room-guesses.ts'
import type { Guessed } from './room-guesses.ts'
import { amount, sentenceOf } from './saying.ts'
import type { QuestionSettings } from './settings.ts'

/** The reveal takes so long, ms; nothing else moves. */
const REVEAL = 300

/** A question, what is said beforehand, and, once it stands, what the model says. */
export class QuestionEntry extends LitElement {
  static override properties = { shown: { attribute: false }, settled: { state: true } }
  static override styles = [sharedStyles, wordStyles, figureStyles, paleStyles, questionStyles]

  declare shown: Shown<QuestionSettings, QuestionResult>
  /** How far the roller has come from what was said, 0, to the model, 1. */
  declare settled: number
  private readonly width = watchWidth(this, '.drawn')
  private dragging = false
  private moving = 0
  /** Where whoever pressed a button goes on that is gone with the next drawing. */
  private goesOn: string | null = null

  constructor() {
    super()
    this.settled = 1
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('shown') as this['shown'] | undefined
    if (before?.settings.state === 'locked' && this.shown.settings.state === 'revealed') this.settle()
  }

  override updated(changed: PropertyValues<this>): void {
    const before = changed.get('shown') as this['shown'] | undefined
    if (this.goesOn === null || before?.settings.state === this.shown.settings.state) return
    this.renderRoot.querySelector<HTMLElement>(this.goesOn)?.focus()
    this.goesOn = null
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    cancelAnimationFrame(this.moving)
    this.settled = 1
  }

  private settle(): void {
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) return
    const began = performance.now()
    const step = (now: number) => {
      const part = Math.min(1, Math.max(0, (now - began) / REVEAL))
      this.settled = 1 - (1 - part) ** 3
      if (part < 1) this.moving = requestAnimationFrame(step)
    }
    this.settled = 0
    this.moving = requestAnimationFrame(step)
  }

  override render() {
    const { shown } = this
    const { settings, result, reader, stale } = shown
    return html`
      <div class="asked">${this.prose(sentenceOf(settings, result, reader))}</div>
      ${result.refused === null ? nothing : html`<p class="caution">${reader.words.failures.reasons[result.refused]?.({}) ?? result.refused}</p>`}
      <div class="sides">
        ${settings.options.length > 0 ? this.choices() : this.scale(stale)}
        <div class="saying">${this.saying()}</div>
      </div>
    `
  }

  private scale(stale: boolean) {
    const width = this.width()
    const { reader } = this.shown
    return html`<div
      class="drawn ${stale ? 'pale' : ''} ${this.shown.settings.state}"
      @pointerdown=${this.pressed}
      @pointermove=${this.moved}
      @pointerup=${this.lifted}
      @pointercancel=${this.lifted}
      @keydown=${this.stepped}
      @focusout=${this.lifted}
    >${width === 0 ? nothing : predictionScale(specOf(this.shown, this.settled), frameOf(reader, width))}</div>`
  }

  private choices() {
    const { settings, result, reader } = this.shown
    const { options, prediction, guesses, state } = settings
    const counts = options.map((_, i) => guesses.filter(guess => guess === i).length)
    const width = this.width()
    const name = (text: string, i: number) =>
      [text, ...(counts[i] ? [`${reader.words.question.roomCount(text)}: ${counts[i]}`] : [])].join(', ')
    return html`<fieldset class="drawn options">
      <legend class="unseen">${reader.words.question.yours}</legend>
      ${options.map(
        ({ text }, i) => html`<div class="option">
          <label>
            <input
              type="radio"
              name="option"
              .checked=${live(prediction === i)}
              ?disabled=${state !== 'asked'}
              @change=${() => this.set({ prediction: i })}
            >${text}
          </label>
          ${
            width === 0
              ? nothing
              : predictionRow(
                  {
                    guesses: counts[i] ?? 0,
                    most: Math.max(...counts),
                    yours: prediction === i,
                    model: state === 'revealed' && result.right === i,
                    name: name(text, i),
                  },
                  { width: Math.min(width, 280), text: reader.figureText },
                )
          }
        </div>`,
      )}
    </fieldset>`
  }

  private saying() {
    const { state } = this.shown.settings
    return [
      state === 'asked' ? this.asking() : state === 'locked' ? this.standing() : this.answered(),
      html`<div class="told" role="status">${this.told()}</div>`,
    ]
  }

  private asking() {
    const { settings, result, reader } = this.shown
    const { question } = reader.words
    const { prediction, guesses, options, room } = settings
    const said = prediction !== null || guesses.length > 0
    return html`
      ${
        options.length > 0
          ? nothing
          : html`<amount-field
              .label=${question.yours}
              .value=${prediction}
              .told=${result.told}
              .reader=${reader}
              @sward-value=${(event: CustomEvent<ValueTyped>) => this.set({ prediction: event.detail.value }, 'said')}
            ></amount-field>`
      }
      <p class="note">${options.length > 0 ? question.choose : question.drag}</p>
      <label class="why">${question.why}
        <input class="field" .value=${live(settings.why)} @input=${(event: Event) => this.set({ why: (event.currentTarget as HTMLInputElement).value }, 'why')}>
      </label>
      ${
        room
          ? html`<room-guesses
              .guesses=${guesses}
              .options=${options}
              .told=${result.told}
              .reader=${reader}
              @sward-guesses=${(event: CustomEvent<Guessed>) => this.set({ guesses: event.detail.guesses }, 'room')}
            ></room-guesses>`
          : nothing
      }
      <button class="act" ?disabled=${!said} aria-describedby=${said ? nothing : 'first'} @click=${this.lock}>${question.lock}</button>
      ${said ? nothing : html`<p class="note" id="first">${question.sayFirst}</p>`}
    `
  }

  private standing() {
    const { settings, reader } = this.shown
    const { question } = reader.words
    return html`<p class="stands">${this.saidText()}</p>
      ${settings.why ? html`<p class="note">${question.whySaid(settings.why)}</p>` : nothing}
      <button class="act" @click=${this.reveal}>${question.reveal}</button>`
  }

  /** The prediction in words: locked, it stands. */
  private saidText(): string {
    const { settings, result, reader } = this.shown
    const { question } = reader.words
    const { prediction, options, guesses } = settings
    if (prediction === null) return question.roomLocked(String(guesses.length))
    const text =
      options.length > 0 ? (options[prediction]?.text ?? '') : amount(prediction, result.told, reader)
    return question.locked(text)
  }

  private answered() {
    const { settings, reader } = this.shown
    const { question } = reader.words
    return html`
      ${settings.why ? html`<p class="note">${question.whySaid(settings.why)}</p>` : nothing}
      <button class="word" @click=${() => this.set({ state: 'asked', prediction: null, why: '', stood: null, guesses: [] })}>${question.again}</button>`
  }

  /** Announced when it comes; it stands over the words that ask again. */
  private told() {
    const { settings } = this.shown
    const finding = questionFinding(this.shown)
    if (finding === null) return nothing
    return html`<p class="finding" tabindex="-1">${finding}</p>${settings.because ? html`<div class="because">${this.prose(settings.because)}</div>` : nothing}`
  }

  private prose(text: string) {
    return paragraphsOf(text).map(pieces => html`<p>${pieces.map(piece => this.piece(piece))}</p>`)
  }

  private piece(piece: Piece) {
    if (piece.kind === 'words') return piece.text
    const { result, reader } = this.shown
    const value = result.values[piece.name]
    const text = value ? amountText(value, reader) : reader.words.text.unknown
    if (!settable(piece.name)) return html`<span class="value">${text}</span>`
    return html`<button class="settable" @click=${() => announce(this, 'find', { name: piece.name })}>${text}</button>`
  }

  private set(settings: Partial<QuestionSettings>, gesture?: string): void {
    const { id } = this.shown
    announce(this, 'rearrange', { id, settings, ...(gesture ? { gesture: `${id} ${gesture}` } : {}) })
  }

  private lock(): void {
    announce(this, 'settled', { name: this.shown.id })
    this.set({ state: 'locked', stood: this.shown.result.answer })
    this.goesOn = 'button.act'
  }

  private reveal(): void {
    this.set({ state: 'revealed' })
    this.goesOn = '.finding'
  }

  private put(event: PointerEvent): void {
    const value = markAt(this.shown, { width: this.width(), figure: this.figure, y: event.clientY })
    if (value !== null) this.set({ prediction: value }, 'said')
  }

  private get figure(): Element | null {
    return this.renderRoot.querySelector('svg.prediction-scale')
  }

  private pressed(event: PointerEvent): void {
    if (!event.isPrimary || event.button !== 0 || this.shown.settings.state !== 'asked') return
    this.dragging = true
    if (event.currentTarget instanceof Element) event.currentTarget.setPointerCapture(event.pointerId)
    this.put(event)
  }

  private moved(event: PointerEvent): void {
    if (this.dragging) this.put(event)
  }

  private lifted(): void {
    if (!this.dragging) return
    this.dragging = false
    announce(this, 'settled', { name: this.shown.id })
  }

  private stepped(event: KeyboardEvent): void {
    const value = markAfter(this.shown, event)
    if (value === null) return
    event.preventDefault()
    this.set({ prediction: value }, 'said')
  }
}

customElements.define('question-entry', QuestionEntry)
