import type { Roller, Scenario } from '@swardsink/model'
import { html, LitElement, nothing } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import {
  addRoller,
  copyRoller,
  fitRoller,
  fittedName,
  POSITIONS,
  type Position,
  ROLLER_FIELDS,
  renameRoller,
  takeOutRoller,
  touching,
} from '../../book/index.ts'
import { announce, paleStyles, watchWidth, wordStyles } from '../../controls/index.ts'
import type { Renamed } from '../../controls/name-field.ts'
import { faceStrip, stripHeight } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import type { RackRoller, RollersResult, RollersSettings } from './kind.ts'
import { rollersStyles } from './rollersStyles.ts'
import { columnUnit, ROLLER_COLUMNS, rollerCell, whereWords } from './rows.ts'
import '../../controls/name-field.ts'

const DEEPEST = 14e-3
const WIDEST = 192

/** The rack as a list of faces, and the numbers of the roller that lies open. */
export class RollersEntry extends LitElement {
  static override properties = { shown: { attribute: false }, chosen: { state: true } }
  static override styles = [sharedStyles, wordStyles, figureStyles, paleStyles, rollersStyles]

  declare shown: Shown<RollersSettings, RollersResult>
  /** The roller a reader opened here; null while none was. */
  declare chosen: string | null
  private wantsName = false
  private readonly width = watchWidth(this, '.scrolls')

  constructor() {
    super()
    this.chosen = null
  }

  /** The roller that lies open: one that is gone makes room for the fitted one, and that for the first. */
  private get open(): string {
    const { now, settings } = this.shown
    const wished = [this.chosen, settings.roller, fittedName(now), Object.keys(now.rollers)[0]]
    return wished.find(name => name && Object.hasOwn(now.rollers, name)) ?? ''
  }

  override updated(): void {
    if (!this.wantsName) return
    this.wantsName = false
    this.renderRoot.querySelector<HTMLElement>('name-field')?.focus()
  }

  override render() {
    const { result, reader, stale } = this.shown
    const said = reader.words.rollers
    const deepest = Math.max(
      ...result.rollers.map(({ roller: { surface } }) => (surface.kind === 'grooved' ? surface.depth : 0)),
    )
    const strip = {
      width: this.width() < 500 ? 120 : WIDEST,
      height: stripHeight(Math.min(DEEPEST, deepest)),
    }
    return html`<div class="scrolls ${stale ? 'pale' : ''}" tabindex="0" role="group" aria-label=${said.caption}>
        <table>
          <caption class="unseen">${said.caption}</caption>
          <thead><tr>
            <th scope="col">${said.roller}</th>
            <th class="face" scope="col">${said.face}</th>
            ${ROLLER_COLUMNS.map(
              column =>
                html`<th class=${column} scope="col">${said.columns[column]}<span class="unit">${columnUnit(column, reader)}</span></th>`,
            )}
            <th class="where" scope="col">${said.where}</th>
          </tr></thead>
          <tbody>${repeat(
            result.rollers,
            ({ name }) => name,
            row => this.row(row, strip),
          )}</tbody>
        </table>
      </div>
      ${this.one()}`
  }

  private row(row: RackRoller, strip: { readonly width: number; readonly height: number }) {
    const { reader, result } = this.shown
    const said = reader.words.rollers
    const { name, roller } = row
    const isOpen = name === this.open
    return html`<tr class=${isOpen ? 'open' : ''}>
      <th scope="row"><button
        class="word"
        aria-pressed=${isOpen ? 'true' : 'false'}
        @click=${() => {
          this.chosen = name
        }}
      >${name}</button></th>
      <td class="face">${faceStrip(
        { surface: roller.surface, buildUp: roller.buildUp ?? 0 },
        { ...strip, name: said.faceName(name) },
      )}</td>
      ${ROLLER_COLUMNS.map(column => html`<td class=${column}>${rollerCell(row, column, reader)}</td>`)}
      <td class="where">${whereWords(row, result, reader)}</td>
    </tr>`
  }

  /** The open roller: its name, its numbers, and what can be done with it. */
  private one() {
    const { now, held, reader, result } = this.shown
    const { rollers: said, naming } = reader.words
    const name = this.open
    const row = result.rollers.find(one => one.name === name)
    const names = Object.keys(now.rollers)
    const fields = ROLLER_FIELDS.map(field => `rollers.${name}.${field}`)
    const half = fields.toSpliced(3, 0, `rollers.${name}.surface`)
    return html`<section class="one" aria-label=${said.open(name)}>
      <h3>${said.open(name)}</h3>
      <p class="note">${row && row.places.length > 0 ? said.follows(whereWords(row, result, reader)) : said.free}</p>
      <name-field
        .label=${naming.name}
        .name=${name}
        .taken=${names.filter(one => one !== name)}
        .reader=${reader}
        @sward-named=${(event: CustomEvent<Renamed>) => this.become(event.detail.name, renameRoller(now, name, event.detail.name))}
      ></name-field>
      <setting-list brief class="fields" .names=${half} .scenario=${now} .held=${held} .reader=${reader}></setting-list>
      <div class="words">
        ${POSITIONS.map(position => this.fitWord(name, position))}
        <button class="word" @click=${() => this.copy(name)}>${naming.copy(name)}</button>
        ${
          names.length > 1
            ? html`<button class="word" @click=${() => this.become(null, takeOutRoller(now, name))}>${naming.takeOut(name)}</button>`
            : nothing
        }
        <button class="word" @click=${() => this.add(now.rollers[name] ?? now.unit.frontRoller)}>${said.add}</button>
      </div>
      ${this.cannot(name)}
    </section>`
  }

  private fitWord(name: string, position: Position) {
    const { now, reader } = this.shown
    const said = reader.words.rollers
    if (fittedName(now, position) === name) return nothing
    const fitted = fitRoller(now, position, name)
    const cannot = fitted === now || touching(fitted.unit) !== null
    return html`<button
      class="word"
      ?disabled=${cannot}
      @click=${() => announce(this, 'replace', { scenario: fitted })}
    >${position === 'front' ? said.fitFront : said.fitRear}</button>`
  }

  /** Why the open roller cannot be fitted, where it cannot. */
  private cannot(name: string) {
    const { now, reader } = this.shown
    const said = reader.words.rollers
    const free = POSITIONS.filter(position => fittedName(now, position) !== name)
    const fits = free.map(position => fitRoller(now, position, name))
    const why = fits.some(({ unit }) => touching(unit) !== null)
      ? said.touches
      : fits.some(fitted => fitted === now)
        ? said.tooSmall
        : null
    return why ? html`<p class="note">${why}</p>` : nothing
  }

  private become(name: string | null, scenario: Scenario): void {
    this.chosen = name
    announce(this, 'replace', { scenario })
  }

  private copy(of: string): void {
    const { scenario, name } = copyRoller(this.shown.now, of)
    this.wantsName = true
    this.become(name, scenario)
  }

  private add(like: Roller): void {
    const { now, reader } = this.shown
    const { diameter, length, mass } = like
    const roller: Roller = { mass, diameter, length, surface: { kind: 'smooth' } }
    const added = addRoller(now, { roller, name: reader.words.rollers.newName, after: null })
    this.wantsName = true
    this.become(added.name, added.scenario)
  }
}

customElements.define('rollers-entry', RollersEntry)
