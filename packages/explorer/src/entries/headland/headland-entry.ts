import { css, html, LitElement, nothing } from 'lit'
import { announce, paleStyles, watchWidth, wordStyles } from '../../controls/index.ts'
import { slidingProfile } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import '../own-setting.ts'
import type { Shown } from '../view.ts'
import { frameOf, specOf } from './drawing.ts'
import { AXLES, type HeadlandResult, type HeadlandSettings } from './kind.ts'
import { headlandTable } from './rows.ts'
import { type SetHere, settableOf } from './settings.ts'

/** Sliding over the width, the rack on the same turn, and beside them the turn itself. */
export class HeadlandEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [
    sharedStyles,
    wordStyles,
    figureStyles,
    paleStyles,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--s-4) var(--gap);
      }
      .main {
        min-width: 0;
      }
      .scrolls {
        overflow-x: auto;
        margin-top: var(--s-4);
      }
      table {
        width: 100%;
      }
      .unit {
        display: block;
        font-size: var(--t-axis);
      }
      tbody tr:last-child > * {
        border-bottom-color: var(--ink-3);
      }
      th[scope='row'] {
        text-align: left;
        color: var(--ink);
        border-bottom: 1px solid var(--rule);
        vertical-align: middle;
        white-space: nowrap;
      }
      tr.fitted > * {
        font-weight: var(--weight-strong);
      }
      .setting + .setting,
      .choices {
        border-top: 1px solid var(--rule);
      }
      .choices {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 var(--s-3);
        font-size: var(--t-note);
        padding: var(--s-2) 0;
      }
      .choices > span {
        margin-right: auto;
      }
      @media (min-width: 44rem) and (max-width: 78.9rem) {
        .settings {
          display: grid;
          grid-template-columns: repeat(2, minmax(0, 1fr));
          gap: 0 var(--gap);
        }
        .choices {
          grid-column: 1 / -1;
        }
      }
      @media (min-width: 79rem) {
        :host {
          grid-template-columns: minmax(0, 792fr) minmax(0, 384fr);
        }
      }
    `,
  ]

  declare shown: Shown<HeadlandSettings, HeadlandResult>
  private readonly width = watchWidth(this, '.drawn')

  override render() {
    const { shown } = this
    const { stale, reader } = shown
    const width = this.width()
    const pale = stale ? 'pale' : ''
    return html`
      <div class="main ${pale}">
        <div class="drawn">${width === 0 ? nothing : slidingProfile(specOf(shown), frameOf(reader, width))}</div>
        ${this.rack()}
      </div>
      <div class="settings">${this.setting('radius')}${this.sections()}${this.setting('friction')}${this.setting('drag')}${this.axles()}</div>
    `
  }

  private rack() {
    const { caption, columns, rows } = headlandTable(this.shown)
    const { result } = this.shown
    return html`<div class="scrolls" tabindex="0" role="group" aria-label=${caption}>
      <table>
        <caption class="unseen">${caption}</caption>
        <thead><tr>${columns.map(
          ({ head, unit }) => html`<th scope="col">${head}<span class="unit">${unit}</span></th>`,
        )}</tr></thead>
        <tbody>${rows.map(
          ([name, ...cells], i) => html`<tr class=${result.rows[i]?.fitted ? 'fitted' : ''}>
            <th scope="row">${name}</th>${cells.map(cell => html`<td>${cell}</td>`)}
          </tr>`,
        )}</tbody>
      </table>
    </div>`
  }

  private setting(name: SetHere) {
    const { id, settings, now, reader } = this.shown
    return html`<div class="setting"><own-setting
      entry=${id}
      field=${name}
      .of=${settableOf(name, settings)}
      .scenario=${now}
      .reader=${reader}
    ></own-setting></div>`
  }

  /** How many free sections the roller has is a matter of the roller, wherever it is set. */
  private sections() {
    const { settings, now, held, reader } = this.shown
    const name = `${settings.at === 'front' ? 'frontRoller' : 'rearRoller'}.sections`
    return html`<setting-list class="setting" .names=${[name]} .scenario=${now} .held=${held} .reader=${reader}></setting-list>`
  }

  private axles() {
    const { settings, reader, id } = this.shown
    const { headland } = reader.words
    return html`<div class="choices" role="group" aria-label=${headland.axles}>
      <span>${headland.axles}</span>
      ${AXLES.map(
        axles => html`<button
          class="word"
          aria-pressed=${axles === settings.axles ? 'true' : 'false'}
          @click=${() => announce(this, 'rearrange', { id, settings: { axles } })}
        >${headland.axleChoices[axles]}</button>`,
      )}
    </div>`
  }
}

customElements.define('headland-entry', HeadlandEntry)
