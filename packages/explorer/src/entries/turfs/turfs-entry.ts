import { displayUnit, type PressureLaw, type Scenario } from '@swardsink/model'
import { html, LitElement, nothing } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import { addTurf, byHand, copyTurf, renameTurf, TURF_FIELDS, takeOutTurf } from '../../book/index.ts'
import { announce, paleStyles, watchWidth, wordStyles } from '../../controls/index.ts'
import type { Renamed } from '../../controls/name-field.ts'
import { sinkageCurves } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import type { TurfRow, TurfsResult, TurfsSettings } from './kind.ts'
import type { LawChanged } from './law-editor.ts'
import { columnUnit, TURF_COLUMNS, turfCell } from './rows.ts'
import { turfsStyles } from './turfsStyles.ts'
import '../../controls/name-field.ts'
import './law-editor.ts'

/** The greens in a list, their curves, and the numbers of the one that lies open. */
export class TurfsEntry extends LitElement {
  static override properties = { shown: { attribute: false }, chosen: { state: true } }
  static override styles = [sharedStyles, wordStyles, figureStyles, paleStyles, turfsStyles]

  declare shown: Shown<TurfsSettings, TurfsResult>
  /** The green a reader opened here; null while none was. */
  declare chosen: string | null
  private wantsName = false
  private readonly width = watchWidth(this, '.drawn')

  constructor() {
    super()
    this.chosen = null
  }

  private get open(): string {
    const { now, settings } = this.shown
    const wished = [this.chosen, settings.turf, now.turf]
    return wished.find(name => name && Object.hasOwn(now.turfs, name)) ?? now.turf
  }

  override updated(): void {
    if (!this.wantsName) return
    this.wantsName = false
    this.renderRoot.querySelector<HTMLElement>('name-field')?.focus()
  }

  override render() {
    const { result, reader, stale } = this.shown
    const said = reader.words.turfs
    return html`<div class="main ${stale ? 'pale' : ''}">
        <div class="scrolls" tabindex="0" role="group" aria-label=${said.caption}>
          <table>
            <caption class="unseen">${said.caption}</caption>
            <thead><tr>
              <th scope="col">${said.turf}</th>
              ${TURF_COLUMNS.map(
                column =>
                  html`<th class=${column} scope="col">${said.columns[column]}<span class="unit">${columnUnit(column, reader)}</span></th>`,
              )}
            </tr></thead>
            <tbody>${repeat(
              result.rows,
              ({ name }) => name,
              row => this.row(row),
            )}</tbody>
          </table>
        </div>
        <div class="drawn">${this.curves()}</div>
      </div>
      ${this.one()}`
  }

  private row(row: TurfRow) {
    const { reader, now } = this.shown
    const said = reader.words.turfs
    const isOpen = row.name === this.open
    const present = row.name === now.turf
    return html`<tr class=${present ? 'present' : ''}>
      <th scope="row"><button
          class="word"
          aria-pressed=${isOpen ? 'true' : 'false'}
          @click=${() => {
            this.chosen = row.name
          }}
        >${row.name}</button>${
          present
            ? html`, ${said.inHand}`
            : html`<button class="word" @click=${() => announce(this, 'choose', { name: 'turf', option: row.name })}>${said.stand}<span class="unseen"> ${row.name}</span></button>`
        }</th>
      ${TURF_COLUMNS.map(column => html`<td class=${column}>${turfCell(row, column, reader)}</td>`)}
    </tr>`
  }

  private curves() {
    const { result, reader } = this.shown
    const width = this.width()
    const here = result.rows.find(({ present }) => present)
    if (width === 0 || !here?.own) return nothing
    const { words, format, units, locale, figureText } = reader
    const said = words.figures.curves({
      show: 'pressure',
      unit: displayUnit('pressure', units),
      sinkageUnit: displayUnit('sinkage', units),
    })
    return sinkageCurves(
      {
        quantity: 'pressure',
        curves: result.rows.map(({ name, present, curve }) => ({
          ...curve,
          label: name,
          present,
          own: null,
        })),
        present: here.own,
        softness: { x: 10e3, sinkage: here.softness },
        readings: [],
        most: result.most,
      },
      { width, words: said, format, units, locale, text: figureText },
    )
  }

  /** The open green: its name, its law, and how it comes back. */
  private one() {
    const { now, held, reader } = this.shown
    const { turfs: said, naming } = reader.words
    const name = this.open
    const turf = now.turfs[name]
    if (!turf) return nothing
    const names = Object.keys(now.turfs)
    const change = ({ detail }: CustomEvent<LawChanged>) => {
      const next = { ...byHand(turf), law: detail.law as PressureLaw }
      this.replace({ ...now, turfs: { ...now.turfs, [name]: next } }, detail.gesture)
    }
    return html`<section class="one" aria-label=${said.open(name)}>
      <h3>${said.open(name)}</h3>
      <p class="note">${turf.source === undefined ? said.typed : said.source(turf.source)}</p>
      <name-field
        .label=${naming.name}
        .name=${name}
        .taken=${names.filter(one => one !== name)}
        .reader=${reader}
        @sward-named=${(event: CustomEvent<Renamed>) => {
          this.chosen = event.detail.name
          this.replace(renameTurf(now, name, event.detail.name))
        }}
      ></name-field>
      <law-editor
        .law=${turf.law}
        .path=${`turfs.${name}`}
        .scenario=${now}
        .held=${held}
        .reader=${reader}
        @sward-law=${change}
      ></law-editor>
      <setting-list
        brief
        .names=${TURF_FIELDS.map(field => `turfs.${name}.${field}`)}
        .scenario=${now}
        .held=${held}
        .reader=${reader}
      ></setting-list>
      <div class="words">
        <button class="word" @click=${() => this.copy(name)}>${naming.copy(name)}</button>
        ${
          names.length > 1
            ? html`<button class="word" @click=${() => {
                this.chosen = null
                this.replace(takeOutTurf(now, name))
              }}>${naming.takeOut(name)}</button>`
            : nothing
        }
        <button class="word" @click=${this.add}>${said.add}</button>
      </div>
    </section>`
  }

  private replace(scenario: Scenario, gesture?: string): void {
    announce(this, 'replace', { scenario, ...(gesture === undefined ? {} : { gesture }) })
  }

  private copy(of: string): void {
    const { scenario, name } = copyTurf(this.shown.now, of)
    this.chosen = name
    this.wantsName = true
    this.replace(scenario)
  }

  /** Even turf, as soft as the one in hand: something to begin with. */
  private readonly add = (): void => {
    const { now, reader, result } = this.shown
    const softness = result.rows.find(({ present }) => present)?.softness ?? 0.5e-3
    const turf = { law: { kind: 'linear', softness } } as const
    const { scenario, name } = addTurf(now, { turf, name: reader.words.turfs.newName, after: null })
    this.chosen = name
    this.wantsName = true
    this.replace(scenario)
  }
}

customElements.define('turfs-entry', TurfsEntry)
