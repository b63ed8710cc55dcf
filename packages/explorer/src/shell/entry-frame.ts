import type { Scenario } from '@swardsink/model'
import { html, LitElement, nothing, type PropertyValues } from 'lit'
import type { Entry, Held, Kind } from '../book/index.ts'
import { announce, paleStyles, wordStyles } from '../controls/index.ts'
import type { NamedEntry, Shown, Table, View } from '../entries/view.ts'
import type { EntryState } from '../flow/index.ts'
import { sharedStyles } from '../look/index.ts'
import { cautionSentence, decimalText, type Reader } from '../words/index.ts'
import type { EntryEditor } from './entry-editor.ts'
import { entryFrameStyles } from './entryFrameStyles.ts'
import { failureSentence } from './failureSentence.ts'
import { kindName } from './kindName.ts'
import { type Act, announceReader, type FocusOn } from './readerEvents.ts'
import type { FigureFormat } from './saveFigure.ts'
import { shownOf } from './shownOf.ts'
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
    lost: { attribute: false },
    state: { attribute: false },
    near: { type: Boolean },
    number: {},
    first: { type: Boolean },
    now: { attribute: false },
    held: { attribute: false },
    named: { attribute: false },
    heldBackBy: { attribute: false },
    can: { attribute: false },
    canStandBeside: { type: Boolean },
    reader: { attribute: false },
    open: { state: true },
    seconds: { state: true },
    said: { state: true },
  }
  static override styles = [sharedStyles, wordStyles, paleStyles, entryFrameStyles]

  declare entry: Entry
  /** Absent while it is being fetched, and where there is none of that name. */
  declare kind: Kind | undefined
  declare view: View | undefined
  declare lost: 'unknown' | 'unfetched' | null
  declare state: EntryState
  /** In view or near it; what is far keeps what it shows. */
  declare near: boolean
  declare number: string
  /** The first entry of a page stands under the page's own heading. */
  declare first: boolean
  declare now: Scenario
  declare held: Readonly<Record<string, Held>>
  declare named: readonly NamedEntry[]
  /** Id of the question a reader answers before this is shown; null when none holds it back. */
  declare heldBackBy: string | null
  /** What can be done with it while its page is edited; null while it is not. */
  declare can: Readonly<Record<Act, boolean>> | null
  declare canStandBeside: boolean
  declare reader: Reader
  declare open: 'table' | 'worked out' | 'trust' | null
  declare seconds: number
  /** What came of the last file that was asked for. */
  declare said: string
  private clock: ReturnType<typeof setInterval> | undefined
  private since = 0

  constructor() {
    super()
    this.open = null
    this.heldBackBy = null
    this.seconds = 0
    this.said = ''
  }

  override shouldUpdate(changed: PropertyValues<this>): boolean {
    const always = changed.has('entry') || changed.has('can') || changed.has('heldBackBy')
    return this.near || !this.hasUpdated || always
  }

  /** Where a reader goes on who has just done this to the entry. */
  async focusEditor(on?: FocusOn): Promise<void> {
    await this.updateComplete
    const editor = this.renderRoot.querySelector<EntryEditor>('entry-editor')
    await editor?.focusAfter(on)
    editor?.scrollIntoView({ block: 'nearest' })
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
    return this.heldBackBy === null ? shownOf(this) : null
  }

  /** The entry's own title, else its kind's, as far as it is known. */
  private titleOf(shown: Shown | null): string {
    const { entry, view, reader } = this
    const usual = shown && view ? view.title(shown) : ''
    return entry.title || usual || kindName(entry.kind, reader)
  }

  /** The first entry of a page stands under the page’s own heading, unless somebody gave it one. */
  private get headed(): boolean {
    return this.entry.title !== undefined || !(this.first || this.view?.untitled)
  }

  /** A view that fails takes nothing else of the page with it. */
  override render() {
    try {
      return this.whole()
    } catch (error) {
      reportError(error)
      return html`<p class="lost">${this.reader.words.entry.undrawn}</p>`
    }
  }

  private whole() {
    const shown = this.shown
    const { state, view, headed } = this
    const finding = shown && view && !view.saysFinding ? view.finding(shown) : null
    return html`<section class=${this.first ? 'first' : ''} aria-labelledby="title">
      ${headed ? this.head(shown) : html`<h2 class="unseen" id="title">${this.number} ${this.titleOf(shown)}</h2>`}
      ${finding === null ? nothing : html`<p class="finding ${shown?.stale ? 'pale' : ''}">${finding}</p>`}
      ${shown && !this.first ? this.choices(shown) : nothing}
      ${shown && view ? html`<div class="drawn">${view.draw(shown)}</div>` : this.place()}
      ${this.heldBackBy === null ? [this.failed(state), this.cautions()] : nothing}
      ${this.foot(shown)}
      ${shown ? this.folded(shown) : nothing}
      ${this.can ? this.editor(shown) : nothing}
    </section>`
  }

  private failed({ failure }: EntryState) {
    if (!failure) return nothing
    return html`<p class="caution cautions" role="status">${failureSentence(failure, this.reader)}</p>`
  }

  /** Where a figure will stand that is not there yet, or never will be. */
  private place() {
    const { entry: said } = this.reader.words
    const { lost, entry, view } = this
    if (lost === 'unknown') return html`<p class="lost">${said.unknownKind(entry.kind)}</p>`
    if (lost === 'unfetched') return html`<p class="lost">${said.unfetched}</p>`
    const roomy = view?.untitled ? 'short' : 'tall'
    if (this.heldBackBy !== null)
      return html`<p class="empty ${roomy}">${this.waitingFor(said.heldBack, [this.heldBackBy])}</p>`
    return html`<p class="empty ${roomy}">${view ? this.stateWords() : said.fetching}</p>`
  }

  private editor(shown: Shown | null) {
    const { entry, view, can, named, now, held, reader } = this
    const usual = (shown && view ? view.title(shown) : '') || kindName(entry.kind, reader)
    return html`<entry-editor
      .entry=${entry}
      .view=${view}
      .editing=${{ id: entry.id, settings: entry.settings, now, held, reader, entries: named }}
      .usualTitle=${usual}
      .can=${can}
      .canStandBeside=${this.canStandBeside}
    ></entry-editor>`
  }

  private head(shown: Shown | null) {
    const { state } = this
    const working = state.status === 'working' && this.seconds > 0
    return html`<div class="head ${state.status === 'failed' ? 'failed' : ''}">
      ${working ? html`<progress class="done" max="1" .value=${state.progress} aria-label=${this.reader.words.entry.working('')}></progress>` : nothing}
      <h2 id="title"><span class="number">${this.number}</span> ${this.titleOf(shown)}</h2>
      <div class="words">${shown ? [this.stateWords(), this.actions()] : nothing}</div>
    </div>`
  }

  /** What it waits for, by the names a reader knows, each leading there. */
  private waiting() {
    const { waitsFor } = this.state
    return waitsFor.length === 0 ? nothing : this.waitingFor(this.reader.words.entry.waitsFor, waitsFor)
  }

  private waitingFor(why: string, ids: readonly string[]) {
    const { entry } = this.reader.words
    return html`<span class="state">${why} ${ids.map((id, at) => {
      const named = this.named.find(other => other.id === id)
      const comma = at > 0 ? ', ' : ''
      if (!named) return html`${comma}${entry.gone(id)}`
      return html`${comma}<button class="word" @click=${() => announceReader(this, 'show', { id })}>${named.title}</button>`
    })}</span>`
  }

  private stateWords() {
    const { state, reader, held, now } = this
    const { entry } = reader.words
    if (state.status === 'waiting') return this.waiting()
    if (state.status === 'working' && this.seconds > 0)
      return html`<span class="state">${entry.working(decimalText(this.seconds, { decimals: 1, locale: reader.locale }))}</span>
        <button class="word" @click=${() => announce(this, 'stop', { id: this.entry.id })}>${entry.stop}</button>`
    const stale = state.stale || Object.keys(held).length > 0
    if (!stale || state.resultFor === null) return nothing
    const changed = whatChanged(state.resultFor, { now, held, reader })
    return html`<span class="state">${changed ? entry.stillFor(changed) : entry.still}</span>`
  }

  private actions() {
    const { entry } = this.reader.words
    return html`
      ${this.view?.table ? this.fold('table', entry.asTable) : nothing}
      ${this.kind?.workedOut ? this.fold('worked out', entry.workedOut) : nothing}
      ${this.view?.trust ? this.fold('trust', entry.trust) : nothing}
    `
  }

  private fold(what: 'table' | 'worked out' | 'trust', words: string) {
    const open = this.open === what
    return html`<button
      class="word"
      aria-expanded=${open ? 'true' : 'false'}
      @click=${() => {
        this.open = open ? null : what
        if (what === 'trust') void import('./trust-card.ts').catch(() => undefined)
      }}
    >${words}</button>`
  }

  private choices(shown: Shown) {
    const choices = this.view?.choices?.(shown)
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
    const table = this.open === 'table' ? this.view?.table?.(shown) : undefined
    if (table)
      return [html`<data-table class="folded" .table=${table}></data-table>`, this.exports(shown, table)]
    const { kind, view } = this
    if (this.open === 'trust' && view?.trust)
      return html`<trust-card class="folded" .names=${view.trust} .reader=${this.reader}></trust-card>`
    if (this.open !== 'worked out' || !kind?.workedOut) return nothing
    const lines = kind.workedOut({
      input: this.state.input,
      result: shown.result,
      format: this.reader.format,
    })
    return html`<worked-out
      class="folded"
      .lines=${lines}
      .section=${kind.section}
      .check=${kind.check}
      .reader=${this.reader}
    ></worked-out>`
  }

  /** Words under the folded table: the figure and its data as files. */
  private exports(shown: Shown, table: Table) {
    const { entry: said } = this.reader.words
    const title = this.titleOf(shown)
    const finding = this.view?.finding(shown) ?? ''
    const figure = async (format: FigureFormat) => {
      const { saveFigure } = await import('./saveFigure.ts')
      const drawn = this.renderRoot.querySelector('.drawn')
      const saved = drawn !== null && (await saveFigure(drawn, { format, title, finding }))
      this.said = saved ? '' : said.noFigure
    }
    const word = (words: string, act: () => Promise<void>) =>
      html`<button class="word" @click=${() => void act().catch(() => this.failedToSave())}>${words}</button>`
    return html`<div class="exports">
      ${word(said.saveSvg, () => figure('SVG'))}
      ${word(said.savePng, () => figure('PNG'))}
      ${word(said.savePrint, () => figure('SVG for print'))}
      ${word(said.saveCsv, async () => (await import('./saveFigure.ts')).saveTable(table, { title, locale: this.reader.locale }))}
      <span class="note" role="status">${this.said}</span>
    </div>`
  }

  private failedToSave(): void {
    this.said = this.reader.words.entry.notSaved
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
    const note = shown && this.view?.note(shown)
    // A head has its own words already.
    const here = (of: Shown) =>
      this.headed ? this.choices(of) : [this.stateWords(), this.choices(of), this.actions()]
    const words = this.first ? html`<div class="words">${shown ? here(shown) : nothing}</div>` : nothing
    if (!note && !this.first) return nothing
    return html`<div class="foot">${note ? html`<p class="note">${note}</p>` : nothing}${words}</div>`
  }
}

customElements.define('entry-frame', EntryFrame)
