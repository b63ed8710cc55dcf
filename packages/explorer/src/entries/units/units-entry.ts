import { displayUnit, unitsOf, withUnitInHand } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import { copyUnit, renameUnit, takeOutUnit } from '../../book/index.ts'
import { announce, paleStyles, watchWidth, wordStyles } from '../../controls/index.ts'
import type { Renamed } from '../../controls/name-field.ts'
import { rackAxis, rackRow, rackScale } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import { plotTableStyles } from '../plotTableStyles.ts'
import type { Shown } from '../view.ts'
import type { UnitRow, UnitsResult, UnitsSettings } from './kind.ts'
import { nameOf, UNIT_COLUMNS, type UnitColumn, unitCell, unitOfColumn } from './rows.ts'
import '../../controls/name-field.ts'

/** What of the unit in hand is set right here: what a technician turns, and which roller is on. */
const SET_HERE = ['unit.benchHeight', 'frontRoller']
/** More pairs than this are left to the table of units. */
const MOST_PAIRS = 6

/** Every unit of the machine in a row: its numbers, and where it cuts on one scale. */
export class UnitsEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [
    sharedStyles,
    wordStyles,
    figureStyles,
    plotTableStyles,
    paleStyles,
    css`
      .under {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--s-4) var(--gap);
        margin-top: var(--s-4);
      }
      h3 {
        font-size: var(--t-note);
      }
      .words {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--s-4);
        padding-top: var(--s-2);
      }
      ul {
        list-style: none;
      }
      li {
        display: flex;
        justify-content: space-between;
        gap: var(--s-3);
        border-bottom: 1px solid var(--rule);
        padding: var(--s-2) 0;
        font-size: var(--t-note);
      }
      li.apart {
        font-weight: var(--weight-strong);
      }
      li span:first-child {
        margin-right: auto;
      }
      @media (min-width: 48rem) {
        .under {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
      }
    `,
  ]

  declare shown: Shown<UnitsSettings, UnitsResult>
  private readonly width = watchWidth(this, '.plot-head')

  override render() {
    const { result, settings, stale, reader } = this.shown
    const said = reader.words.units
    const scale = this.scale()
    return html`<div class="scrolls ${stale ? 'pale' : ''}" tabindex="0" role="group" aria-label=${said.caption}>
        <table>
          <caption class="unseen">${said.caption}</caption>
          <thead><tr>
            <th scope="col">${said.unit}</th>
            ${UNIT_COLUMNS.map(
              column =>
                html`<th class=${column} scope="col">${said.columns[column]}<span class="unit">${unitOfColumn(column, reader)}</span></th>`,
            )}
            <th class="plot-head" scope="col">${said.within(reader.format(settings.tolerance, 'height'))}</th>
          </tr></thead>
          <tbody>${repeat(
            result.rows,
            row => row.name,
            row => this.row(row, scale),
          )}</tbody>
          <tfoot><tr><td></td>${UNIT_COLUMNS.map(column => html`<td class=${column}></td>`)}<td class="plot">${
            scale && rackAxis(scale, { ...this.frame(scale.width), words: this.axisWords() })
          }</td></tr></tfoot>
        </table>
      </div>
      <div class="under">${this.inHand()}${this.pairs()}</div>`
  }

  private axisWords() {
    const { words, units } = this.shown.reader
    return { axis: words.figures.rack.axis(displayUnit('height', units)) }
  }

  private frame(width: number) {
    const { format, units, locale, figureText } = this.shown.reader
    return { width, format, units, locale, text: figureText }
  }

  private scale() {
    const width = this.width()
    if (width === 0) return null
    const { rows } = this.shown.result
    const heights = rows.map(({ settled }) => settled?.effectiveHeight.middle ?? null)
    const fitted = rows.find(({ inHand }) => inHand)?.settled?.effectiveHeight.middle ?? null
    return rackScale({ heights, fitted, tolerance: this.shown.settings.tolerance }, { width })
  }

  private row(row: UnitRow, scale: ReturnType<UnitsEntry['scale']>) {
    const { reader, scenario, now } = this.shown
    const said = reader.words.units
    const name = nameOf(row, reader)
    const take = () => announce(this, 'replace', { scenario: withUnitInHand(now, row.name) })
    const isThere = Object.hasOwn(unitsOf(now), row.name)
    return html`<tr class=${row.inHand ? 'fitted' : ''}>
      <th scope="row">
        <span class="name">${name}${row.inHand ? html`, ${said.inHand}` : nothing}</span>
        ${row.inHand || !isThere ? nothing : html`<button class="word" @click=${take}>${said.take}<span class="unseen"> ${name}</span></button>`}
      </th>
      ${UNIT_COLUMNS.map(column => this.cell(row, column, unitCell(row, column, { reader, scenario })))}
      <td class="plot">${
        scale &&
        rackRow({ height: row.settled?.effectiveHeight.middle ?? null, isFitted: row.inHand, name }, scale)
      }</td>
    </tr>`
  }

  private cell(row: UnitRow, column: UnitColumn, text: string) {
    return html`<td class=${column}>${column === 'toMatch' && row.inHand ? nothing : text}</td>`
  }

  /** Name, setting and roller of the one in hand, and what can be done with it. */
  private inHand() {
    const { now, held, reader } = this.shown
    const { units: said, naming } = reader.words
    const names = Object.keys(unitsOf(now))
    const { unitName } = now
    const name = unitName ?? said.unnamed
    const copy = () => {
      const { scenario } = copyUnit(now, { of: unitName ?? null, name: said.newName })
      announce(this, 'replace', { scenario })
    }
    return html`<section aria-label=${said.nowInHand}>
      <h3>${said.nowInHand}</h3>
      ${
        unitName === undefined
          ? nothing
          : html`<name-field
              .label=${naming.name}
              .name=${unitName}
              .taken=${names.filter(one => one !== unitName)}
              .reader=${reader}
              @sward-named=${(event: CustomEvent<Renamed>) =>
                announce(this, 'replace', { scenario: renameUnit(now, unitName, event.detail.name) })}
            ></name-field>`
      }
      <setting-list .names=${SET_HERE} .scenario=${now} .held=${held} .reader=${reader}></setting-list>
      <div class="words">
        <button class="word" @click=${copy}>${naming.copy(name)}</button>
        ${
          names.length > 1 && unitName !== undefined
            ? html`<button class="word" @click=${() => announce(this, 'replace', { scenario: takeOutUnit(now, unitName) })}>${naming.takeOut(name)}</button>`
            : nothing
        }
      </div>
    </section>`
  }

  private pairs() {
    const { result, reader, stale } = this.shown
    const said = reader.words.units
    const pairs = result.match?.pairs ?? []
    if (pairs.length === 0) return nothing
    const shown = pairs.length > MOST_PAIRS ? pairs.filter(({ matched }) => !matched) : pairs
    return html`<section class=${stale ? 'pale' : ''} aria-label=${said.pairs}>
      <h3>${said.pairs}</h3>
      <ul>${shown.map(
        ({ units: [first, second], difference, matched }) => html`<li class=${matched ? '' : 'apart'}>
          <span>${said.pair({ first, second })}</span>
          <span>${reader.format(difference, 'height', { signed: true })}</span>
          <span>${matched ? said.isAlike : said.isApart}</span>
        </li>`,
      )}</ul>
    </section>`
  }
}

customElements.define('units-entry', UnitsEntry)
