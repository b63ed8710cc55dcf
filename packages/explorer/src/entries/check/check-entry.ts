import { displayUnit } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { paleStyles, watchWidth } from '../../controls/index.ts'
import { type CheckedRow, type CheckScale, checkAxis, checkRow, checkScale } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import '../own-setting.ts'
import { plotTableStyles } from '../plotTableStyles.ts'
import type { Checked } from './kind.ts'
import { SET_HERE, settableOf } from './settings.ts'
import { cellsOf, type ShownCheck, stripName } from './strips.ts'

const COLUMNS = ['count', 'measured', 'between', 'difference'] as const

/** Every strip in a row: its heights beside what was expected, drawn on one scale. */
export class CheckEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [
    sharedStyles,
    figureStyles,
    plotTableStyles,
    paleStyles,
    css`
      .verdict {
        display: block;
        font-size: var(--t-axis);
        color: var(--ink-2);
      }
      .off .verdict {
        color: var(--ink);
        font-weight: var(--weight-strong);
      }
      .settings {
        margin-top: var(--s-4);
        display: grid;
        gap: 0 var(--gap);
      }
      @media (min-width: 44rem) {
        .settings {
          grid-template-columns: repeat(2, minmax(0, 24rem));
        }
      }
      @media (max-width: 66rem) {
        .count,
        .difference {
          display: none;
        }
      }
      @media (max-width: 48rem) {
        .between {
          display: none;
        }
      }
      @media print {
        .settings {
          display: none;
        }
      }
    `,
  ]

  declare shown: ShownCheck
  private readonly width = watchWidth(this, '.plot-head')

  override render() {
    const { result, stale, reader } = this.shown
    const { check } = reader.words
    if (result.strips.length === 0) return html`<p>${check.none}</p>`
    const { table } = check
    const rows = result.strips.map(strip => this.drawn(strip))
    const width = this.width()
    const scale = width === 0 ? null : checkScale(rows, { width })
    const unit = displayUnit('height', reader.units)
    return html`
      <div class="scrolls ${stale ? 'pale' : ''}" tabindex="0" role="group" aria-label=${table.caption}>
        <table>
          <caption class="unseen">${table.caption}</caption>
          <thead><tr>
            <th scope="col">${table.strip}</th>
            ${COLUMNS.map(
              column =>
                html`<th scope="col" class=${column}>${table[column]}<span class="unit">${column === 'count' ? '' : unit}</span></th>`,
            )}
            <th scope="col" class="plot-head">${table.plot}</th>
          </tr></thead>
          <tbody>${result.strips.map((strip, i) => this.row(strip, rows[i], scale))}</tbody>
          <tfoot><tr><td></td>${COLUMNS.map(column => html`<td class=${column}></td>`)}<td class="plot">${scale && this.axis(scale)}</td></tr></tfoot>
        </table>
      </div>
      <div class="settings">${SET_HERE.map(name => this.setting(name))}</div>
    `
  }

  private drawn(strip: Checked): CheckedRow {
    const { heights, measured: mean, expected, between } = strip
    return { name: stripName(strip, this.shown.reader), measured: heights, mean, expected, between }
  }

  private row(strip: Checked, drawn: CheckedRow | undefined, scale: CheckScale | null) {
    const { reader, result } = this.shown
    const cells = cellsOf(strip, result.whole, reader)
    const isOff = strip.verdict === 'lower' || strip.verdict === 'higher'
    return html`<tr class=${isOff ? 'off' : ''}>
      <th scope="row">${stripName(strip, reader)}<span class="verdict">${cells.verdict}</span></th>
      ${COLUMNS.map(column => html`<td class=${column}>${cells[column]}</td>`)}
      <td class="plot">${scale && drawn ? checkRow(drawn, scale) : nothing}</td>
    </tr>`
  }

  private axis(scale: CheckScale) {
    const { words, format, units, locale, figureText } = this.shown.reader
    const said = words.figures.check({ unit: displayUnit('height', units) })
    return checkAxis(scale, { width: scale.width, words: said, format, units, locale, text: figureText })
  }

  private setting(name: (typeof SET_HERE)[number]) {
    const { id, settings, now, reader } = this.shown
    return html`<own-setting
      entry=${id}
      field=${name}
      .of=${settableOf(name, settings)}
      .scenario=${now}
      .reader=${reader}
    ></own-setting>`
  }
}

customElements.define('check-entry', CheckEntry)
