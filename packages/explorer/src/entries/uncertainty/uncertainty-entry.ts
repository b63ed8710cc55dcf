import { css, html, LitElement, nothing } from 'lit'
import { paleStyles, watchWidth } from '../../controls/index.ts'
import { heightSpread, shareBars } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import '../own-setting.ts'
import type { Shown } from '../view.ts'
import { frameOf, sharesOf, spreadOf } from './drawing.ts'
import type { UncertaintyResult } from './kind.ts'
import { SET_HERE, type SetHere, settableOf, type UncertaintySettings } from './settings.ts'

/** Heights and what they hang on; beside them, how far each scatters. */
export class UncertaintyEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [
    sharedStyles,
    figureStyles,
    paleStyles,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--s-4) var(--gap);
      }
      .drawn {
        display: grid;
        gap: var(--s-6);
        min-width: 0;
      }
      h3 {
        font-size: var(--t-note);
      }
      .setting {
        display: block;
        border-top: 1px solid var(--rule);
      }
      @media (min-width: 48rem) and (max-width: 78.9rem) {
        .settings {
          display: grid;
          grid-template-columns: repeat(2, minmax(0, 1fr));
          gap: 0 var(--gap);
        }
        h3 {
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

  declare shown: Shown<UncertaintySettings, UncertaintyResult>
  private readonly width = watchWidth(this, '.drawn')

  override render() {
    const { shown } = this
    const { stale, result, reader, settings } = shown
    const width = this.width()
    const frame = frameOf(reader, width)
    const shares = sharesOf(result, reader)
    const hidden = (name: SetHere) =>
      (name === 'softness' && settings.fit !== '') || (name === 'tolerance' && !result.wanted)
    return html`
      <div class="drawn ${stale ? 'pale' : ''}">${
        width === 0
          ? nothing
          : [heightSpread(spreadOf(result), frame), shares ? shareBars(shares, frame) : nothing]
      }</div>
      <div class="settings">
        <h3>${reader.words.uncertainty.settings}</h3>
        ${SET_HERE.filter(name => !hidden(name)).map(name => this.setting(name))}
        ${result.wanted ? nothing : html`<p class="note">${reader.words.uncertainty.noWanted}</p>`}
      </div>
    `
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
}

customElements.define('uncertainty-entry', UncertaintyEntry)
