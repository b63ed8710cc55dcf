import { type ComparedRoller, displayUnit } from '@swardsink/model'
import { html, LitElement, nothing } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import { announce, paleStyles, watchWidth, wordStyles } from '../../controls/index.ts'
import { rackAxis, rackRow, rackScale } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import { columnsOf, isSettled, type RackColumn, type RackResult, type RackSettings } from './kind.ts'
import { rackStyles } from './rackStyles.ts'
import { COLUMN_QUANTITY, cellText, fittedHeight, sorted, surfaceWords } from './rows.ts'

/** Units of one machine are kept within this of each other. Common practice, no source. */
const TOLERANCE = 0.25e-3

/** Every roller of the rack in a row: its numbers, and where it cuts on one scale. */
export class RackEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [sharedStyles, wordStyles, figureStyles, rackStyles, paleStyles]

  declare shown: Shown<RackSettings, RackResult>
  private readonly width = watchWidth(this, '.plot-head')

  override render() {
    const { result, settings, stale, reader } = this.shown
    const { words } = reader
    const scale = this.scale()
    return html`<div class="scrolls ${stale ? 'pale' : ''}" tabindex="0" role="group" aria-label=${words.rack.caption}>
      <table>
        <caption class="unseen">${words.rack.caption}</caption>
        <thead><tr>
          <th scope="col">${words.rack.roller}</th>
          ${columnsOf(this.shown.settings).map(column => this.columnHead(column))}
          <th class="plot-head" scope="col">${words.rack.within(reader.format(TOLERANCE, 'height'))}</th>
        </tr></thead>
        <tbody>${repeat(
          sorted(result, settings),
          row => row.name,
          row => this.row(row, scale),
        )}</tbody>
        <tfoot><tr><td></td>${columnsOf(this.shown.settings).map(column => html`<td class=${column}></td>`)}<td class="plot">${
          scale && rackAxis(scale, { ...this.frame(scale.width), words: this.axisWords() })
        }</td></tr></tfoot>
      </table>
    </div>`
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
    const rows = this.shown.result
    const heights = rows.map(row => (isSettled(row) ? row.effectiveHeight : null))
    return rackScale({ heights, fitted: fittedHeight(rows), tolerance: TOLERANCE }, { width })
  }

  private columnHead(column: RackColumn) {
    const { settings, reader, id } = this.shown
    const { rack } = reader.words
    const sorts = settings.sort === column
    const order = sorts && settings.order === 'down' ? 'up' : 'down'
    const direction = settings.order === 'up' ? 'ascending' : 'descending'
    return html`<th class=${column} scope="col" aria-sort=${sorts ? direction : 'none'}>
      <button
        class="sort"
        title=${rack.sort(rack.columns[column])}
        @click=${() => announce(this, 'rearrange', { id, settings: { sort: column, order } })}
      >${rack.columns[column]}${sorts ? html`<span aria-hidden="true">${settings.order === 'up' ? ' ↑' : ' ↓'}</span>` : nothing}</button>
      <span class="unit">${displayUnit(COLUMN_QUANTITY[column], reader.units)}</span>
    </th>`
  }

  private row(row: ComparedRoller, scale: ReturnType<RackEntry['scale']>) {
    const { reader, settings } = this.shown
    const { position } = settings
    const { rack, surfaces } = reader.words
    const name = position === 'front' ? 'frontRoller' : 'rearRoller'
    const fit = () => announce(this, 'choose', { name, option: row.name })
    return html`<tr class=${row.fitted ? 'fitted' : ''}>
      <th scope="row">
        <span class="name">${row.name}, ${surfaceWords(row, reader)}${row.fitted ? html`, ${surfaces.fitted}` : nothing}</span>
        ${row.fitted ? nothing : html`<button class="word" @click=${fit}>${rack.fit}<span class="unseen"> ${row.name}</span></button>`}
      </th>
      ${columnsOf(this.shown.settings).map(column => html`<td class=${column}>${cellText(row, column, { reader, position })}</td>`)}
      <td class="plot">${
        scale &&
        rackRow(
          { height: isSettled(row) ? row.effectiveHeight : null, isFitted: row.fitted, name: row.name },
          scale,
        )
      }</td>
    </tr>`
  }
}

customElements.define('rack-entry', RackEntry)
