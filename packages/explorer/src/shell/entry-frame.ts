import type { Scenario } from '@swardsink/model'
import { html, LitElement, nothing, type PropertyValues } from 'lit'
import type { Entry, Held, Kind } from '../book/index.ts'
import { announce, paleStyles, wordStyles } from '../controls/index.ts'
import type { Shown, View } from '../entries/view.ts'
import type { EntryState } from '../flow/index.ts'
import { sharedStyles } from '../look/index.ts'
import { cautionSentence, type Reader } from '../words/index.ts'
import { entryFrameStyles } from './entryFrameStyles.ts'
import { failureSentence } from './failureSentence.ts'
import { whatChanged } from './whatChanged.ts'
import './data-table.ts'
import './worked-out.ts'

/** Work shorter than this is not spoken of. */
const SPOKEN_OF_AFTER = 150

/** What every entry shares: number and title, what it found, what it is not sure of, and what lies folded in it. */
export class EntryFrame extends LitElement {
  static override properties = {
    entry: { attribute: false },
    kind: { attribute: false },
    view: { attribute: false },
    state: { attribute: false },
    number: {},
    first: { type: Boolean },
    now: { attribute: false },
    held: { attribute: false },
    reader: { attribute: false },
    open: { state: true },
    seconds: { state: true },
  }
  static override styles = [sharedStyles, wordStyles, paleStyles, entryFrameStyles]

  declare entry: Entry
  declare kind: Kind
  declare view: View
  declare state: EntryState
  declare number: string
  /** The first entry of a page stands under the page's own heading. */
  declare first: boolean
  declare now: Scenario
  declare held: Readonly<Record<string, Held>>
  declare reader: Reader
  declare open: 'table' | 'worked out' | null
  declare seconds: number
  private clock: ReturnType<typeof setInterval> | undefined
  private since = 0

  constructor() {
    super()
    this.open = null
    this.seconds = 0
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('state')) return
    const working = this.state.status === 'working'
    if (!working) {
      clearInterval(this.clock)
      this.clock = undefined
      this.seconds = 0
    } else if (this.clock === undefined) {
      this.since = performance.now()
      this.clock = setInterval(() => {
        this.seconds = (performance.now() - this.since) / 1000
      }, SPOKEN_OF_AFTER)
    }
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    clearInterval(this.clock)
    this.clock = undefined
  }

  /** What the view draws from; null while there is no answer yet. */
  private get shown(): Shown | null {
    const { state, entry, now, held, reader } = this
    if (state.resultFor === null) return null
    const refused = Object.keys(held).length > 0
    return {
      id: entry.id,
      settings: entry.settings,
      result: state.result,
      scenario: state.resultFor,
      now,
      held,
      stale: state.stale || refused,
      edition: state.edition,
      reader,
    }
  }

  override render() {
    const shown = this.shown
    const { state } = this
    const finding = shown && !this.view.saysFinding ? this.view.finding(shown) : null
    return html`<section class=${this.first ? 'first' : ''} aria-labelledby="title">
      ${this.first || this.view.untitled ? html`<h2 class="unseen" id="title">${this.number} ${shown && this.view.title(shown)}</h2>` : this.head(shown)}
      ${finding === null ? nothing : html`<p class="finding ${shown?.stale ? 'pale' : ''}">${finding}</p>`}
      ${shown && !this.first ? this.choices(shown) : nothing}
      ${shown ? this.view.draw(shown) : html`<p class="empty">${this.stateWords()}</p>`}
      ${state.failure ? html`<p class="caution cautions" role="status">${failureSentence(state.failure, this.reader)}</p>` : nothing}
      ${this.cautions()}
      ${this.foot(shown)}
      ${shown ? this.folded(shown) : nothing}
    </section>`
  }

  private head(shown: Shown | null) {
    const { state } = this
    const working = state.status === 'working' && this.seconds > 0
    return html`<div class="head ${state.status === 'failed' ? 'failed' : ''}">
      ${working ? html`<progress class="done" max="1" .value=${state.progress} aria-label=${this.reader.words.entry.working('')}></progress>` : nothing}
      <h2 id="title"><span class="number">${this.number}</span> ${shown ? this.view.title(shown) : this.entry.kind}</h2>
      <div class="words">${this.stateWords()}${shown ? this.actions() : nothing}</div>
    </div>`
  }

  private stateWords() {
    const { state, reader, held, now } = this
    const { entry } = reader.words
    if (state.status === 'waiting') return html`<span class="state">${entry.waiting(state.waitsFor)}</span>`
    if (state.status === 'working' && this.seconds > 0)
      return html`<span class="state">${entry.working(this.seconds.toFixed(1))}</span>
        <button class="word" @click=${() => announce(this, 'stop', { id: this.entry.id })}>${entry.stop}</button>`
    const stale = state.stale || Object.keys(held).length > 0
    if (!stale || state.resultFor === null) return nothing
    const changed = whatChanged(state.resultFor, { now, held, reader })
    return html`<span class="state">${changed ? entry.stillFor(changed) : entry.still}</span>`
  }

  private actions() {
    const { entry } = this.reader.words
    return html`
      ${this.view.table ? this.fold('table', entry.asTable) : nothing}
      ${this.kind.workedOut ? this.fold('worked out', entry.workedOut) : nothing}
    `
  }

  private fold(what: 'table' | 'worked out', words: string) {
    const open = this.open === what
    return html`<button
      class="word"
      aria-expanded=${open ? 'true' : 'false'}
      @click=${() => {
        this.open = open ? null : what
      }}
    >${words}</button>`
  }

  private choices(shown: Shown) {
    const choices = this.view.choices?.(shown)
    if (!choices) return nothing
    return html`<div class="choices" role="group" aria-label=${choices.label}>
      <span>${choices.label}</span>
      ${choices.options.map(
        ({ label, chosen, settings }) => html`<button
          class="word"
          aria-pressed=${chosen ? 'true' : 'false'}
          @click=${() => announce(this, 'rearrange', { id: shown.id, settings })}
        >${label}</button>`,
      )}
    </div>`
  }

  private folded(shown: Shown) {
    const table = this.open === 'table' ? this.view.table?.(shown) : undefined
    if (table) return html`<data-table class="folded" .table=${table}></data-table>`
    const { workedOut } = this.kind
    if (this.open !== 'worked out' || !workedOut) return nothing
    const lines = workedOut({ input: this.state.input, result: shown.result, format: this.reader.format })
    return html`<worked-out
      class="folded"
      .lines=${lines}
      .section=${this.kind.section}
      .check=${this.kind.check}
      .reader=${this.reader}
    ></worked-out>`
  }

  private cautions() {
    const { cautions } = this.state
    if (cautions.length === 0) return nothing
    const { entry } = this.reader.words
    return html`<ul class="cautions" aria-label=${entry.cautions}>${cautions.map(
      caution => html`<li class="caution">${cautionSentence(caution, this.reader)}</li>`,
    )}</ul>`
  }

  private foot(shown: Shown | null) {
    const note = shown && this.view.note(shown)
    const words = this.first
      ? html`<div class="words">${this.stateWords()}${shown ? [this.choices(shown), this.actions()] : nothing}</div>`
      : nothing
    if (!note && !this.first) return nothing
    return html`<div class="foot">${note ? html`<p class="note">${note}</p>` : nothing}${words}</div>`
  }
}

customElements.define('entry-frame', EntryFrame)
