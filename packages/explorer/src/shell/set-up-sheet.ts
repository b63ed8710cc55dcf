import type { QuantityName } from '@swardsink/model'
import { html, LitElement, nothing, type PropertyValues } from 'lit'
import { type Book, fittedName, type Held, packScenario, presentTurf, writeAddress } from '../book/index.ts'
import { PAPER_WIDTH, watchWidth, wordStyles } from '../controls/index.ts'
import '../controls/quantity-field.ts'
import { failureOf } from '../entries/settled.ts'
import { sideView } from '../figures/index.ts'
import { figureStyles, sharedStyles } from '../look/index.ts'
import { cautionSentence, formatterFor, type Reader } from '../words/index.ts'
import { failureSentence } from './failureSentence.ts'
import { type LinkCode, linkCode } from './linkCode.ts'
import { announceReader } from './readerEvents.ts'
import { caseInHand, type SetUp, setUp } from './setUp.ts'
import { setUpSheetStyles } from './setUpSheetStyles.ts'
import { setUpTables } from './setUpTables.ts'
import { sheetBar } from './sheetBar.ts'
import { sheetStyles } from './sheetStyles.ts'
import { watchPrinting } from './watchPrinting.ts'

type Settled = Extract<SetUp, { readonly bench: number }>

/** Heights at the turf are drawn so many times as large. */
const EXAGGERATION = 5

/** As tall as leaves room for the rest on Letter, which is the shorter of the two papers, px. */
const PRINTED_FIGURE = 340

/** One page to take to the bench: what to set, what it is for, and boxes for what was then measured. */
export class SetUpSheet extends LitElement {
  static override properties = {
    book: { attribute: false },
    held: { attribute: false },
    addressed: {},
    page: { type: Number },
    invented: { type: Boolean },
    reader: { attribute: false },
    code: { state: true },
  }
  static override styles = [sharedStyles, wordStyles, figureStyles, sheetStyles, setUpSheetStyles]

  declare book: Book
  declare held: Readonly<Record<string, Held>>
  /** The book's name in the address; null for the one an address without a name means. */
  declare addressed: string | null
  /** From 0. */
  declare page: number
  /** The book ships with invented units and greens. */
  declare invented: boolean
  declare reader: Reader
  declare code: LinkCode | null
  private readonly width = watchWidth(this, '.figure')
  private readonly printing = watchPrinting(this, () => {
    this.requestUpdate()
    this.performUpdate()
  })

  constructor() {
    super()
    this.code = null
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('book') || changed.has('page')) void this.makeCode()
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true })
    window.scrollTo(0, 0)
  }

  /** Opened from disk there is no address to put in a code. */
  private async makeCode(): Promise<void> {
    if (location.protocol === 'file:') return
    const { book } = this
    const scenario = await packScenario(caseInHand(book.scenario))
    const address = writeAddress({
      book: this.addressed,
      page: this.page + 1,
      view: 'set-up-sheet',
      scenario,
    })
    const code = await linkCode(`${location.href.split('#', 1)[0]}${address}`)
    if (book === this.book) this.code = code
  }

  override render() {
    const { book, reader } = this
    const { sheets } = reader.words
    const { scenario } = book
    const found = setUp(scenario, book.adjuster)
    const roller = fittedName(scenario, 'front') ?? ''
    const title = sheets.setUp.title({ unit: scenario.unitName ?? '', roller, turf: scenario.turf })
    return html`${sheetBar(this, { page: this.page, reader, more: this.settings() })}
      <main>
        <header class="title">
          <div class="name">
            <p>${sheets.setUp.name}</p>
            <h1 tabindex="-1">${title}</h1>
          </div>
          <div class="write">${sheets.date}</div>
          <div class="write">${sheets.setUp.setBy}</div>
        </header>
        <p class="caution safety"><strong>${sheets.setUp.caution}</strong> ${reader.words.page.safetyText}</p>
        ${found.outcome === 'settled' ? this.sheet(found) : html`<p class="caution">${this.whyNot(found)}</p>`}
        ${this.last()}
      </main>`
  }

  private whyNot(found: Exclude<SetUp, Settled>): string {
    const { reader } = this
    if (found.outcome === 'no such setting')
      return reader.words.sheets.setUp.impossible(reader.format(found.wanted, 'height'))
    return failureSentence(failureOf(found), reader)
  }

  private settings() {
    const { book, held, reader } = this
    const { setUp: said } = reader.words.sheets
    const adjusted = ({ detail }: CustomEvent<{ readonly value: number | null }>) =>
      announceReader(this, 'adjuster', { adjuster: detail.value })
    const names = ['wantedHeight', 'unit.benchHeight', 'frontRoller', 'turf', 'unit']
    return html`<div class="settings" role="group" aria-label=${said.values}>
      <setting-list .names=${names} .scenario=${book.scenario} .held=${held} .reader=${reader}></setting-list>
      <quantity-field
        .label=${said.adjuster}
        .note=${said.adjusterNote}
        .value=${book.adjuster ?? null}
        .empty=${reader.words.control.notKnown}
        .quantity=${'height' satisfies QuantityName}
        .reader=${reader}
        @sward-value=${adjusted}
      ></quantity-field>
    </div>`
  }

  private both(value: number, quantity: QuantityName, signed = false) {
    const { units, locale } = this.reader
    const other = formatterFor(units === 'metric' ? 'US' : 'metric', locale)
    return [this.reader.format(value, quantity, { signed }), other(value, quantity, { signed })] as const
  }

  private sheet(found: Settled) {
    const { reader, book } = this
    const { setUp: said } = reader.words.sheets
    const { scenario } = book
    const width = this.printing() ? PAPER_WIDTH : this.width()
    const { words, format, units, locale, figureText } = reader
    const limit = this.printing() ? { tallest: PRINTED_FIGURE } : {}
    const frame = { width, words: words.figures.sideView, format, units, locale, text: figureText, ...limit }
    const spec = {
      unit: found.unit,
      settled: found.settled,
      turf: presentTurf(scenario),
      exaggeration: EXAGGERATION,
    } as const
    return html`<div class="numbers">
        ${this.number(said.bench, this.both(found.bench, 'height'))}
        ${this.ends(found)}
        ${this.number(said.cut, this.both(found.wanted, 'height'), found.asNow ? said.asNow : '')}
        ${found.turns ? this.turns(found, found.turns) : nothing}
      </div>
      <div class="figure">${width === 0 ? nothing : sideView(spec, frame)}</div>
      <p class="note">${[this.condition(), words.sideView.scale(EXAGGERATION)].join(' ')}</p>
      ${found.settled.cautions.map(caution => html`<p class="caution">${cautionSentence(caution, reader)}</p>`)}
      ${setUpTables({ scenario, found, reader })}`
  }

  private number(name: string, [size, other]: readonly [string, string], note = '') {
    const [digits, unit] = size.split('\u202f')
    return html`<div class="number">
      <p>${name}</p>
      <p class="size">${digits}${unit ? html`<small>\u202f${unit}</small>` : nothing}</p>
      <p class="other">${other}${note ? html`<br>${note}` : nothing}</p>
    </div>`
  }

  /** Both ends alike are one number. */
  private ends({ change }: Settled) {
    const { setUp: said } = this.reader.words.sheets
    const [left, right] = [this.both(change.left, 'height', true), this.both(change.right, 'height', true)]
    if (left[0] === right[0]) return this.number(said.change, left)
    return html`<div class="number">
      <p>${said.changeEnds}</p>
      <p class="size ends">${said.ends({ left: left[0], right: right[0] })}</p>
      <p class="other">${said.ends({ left: left[1], right: right[1] })}</p>
    </div>`
  }

  private turns({ travel }: Settled, turns: { readonly left: number; readonly right: number }) {
    const { reader } = this
    const { setUp: said } = reader.words.sheets
    const count = (value: number) => reader.format(Math.abs(value), 'ratio', { unit: false })
    const way = (value: number) => (count(value) === count(0) ? said.noTurn : value > 0 ? said.down : said.up)
    const [left, right] = [count(turns.left), count(turns.right)]
    const same = left === right && way(turns.left) === way(turns.right)
    const goes = said.travel(reader.format(Math.abs(travel.left), 'height'))
    if (same) return this.number(said.turns, [left, `${way(turns.left)}: ${goes}`])
    const end = (value: number) => `${count(value)}, ${way(value)}`
    return html`<div class="number">
      <p>${said.turns}</p>
      <p class="size ends">${said.ends({ left: end(turns.left), right: end(turns.right) })}</p>
    </div>`
  }

  private condition(): string {
    const { condition } = this.book.scenario
    const { setUp: said } = this.reader.words.sheets
    return condition.kind === 'standing'
      ? said.standing
      : said.mowing(this.reader.format(condition.speed, 'speed'))
  }

  private last() {
    const { reader, book, code, invented } = this
    const { sheets, page } = reader.words
    const hasCode = code?.kind === 'code'
    const place = sheets.of({
      book: book.title || page.untitledBook,
      page: String(this.page + 1),
      total: String(book.pages.length),
    })
    const said = [
      hasCode ? sheets.setUp.opens : '',
      sheets.setUp.estimate,
      invented ? sheets.setUp.invented : '',
    ]
    return html`<footer class="last">
      ${
        hasCode
          ? html`<svg class="code" role="img" aria-label=${sheets.setUp.code} viewBox="0 0 ${code.size} ${code.size}" shape-rendering="crispEdges">
              <rect width=${code.size} height=${code.size} fill="#fff" />
              <path d=${code.path} fill="#000" />
            </svg>`
          : nothing
      }
      <p>${said.filter(Boolean).join(' ')}</p>
      <span>${place}</span>
    </footer>`
  }
}

customElements.define('set-up-sheet', SetUpSheet)
