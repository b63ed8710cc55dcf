import type { SettledUnit } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { paleStyles, watchWidth } from '../../controls/index.ts'
import { heightGlyph, sideLayout, sideView } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import { frameOf, specOf } from './drawing.ts'
import { sideViewFinding } from './finding.ts'
import { watchHandles } from './handles.ts'
import type { SideViewSettings } from './kind.ts'

/** The unit from the side, the two numbers that matter, and what moves them. */
export class SideViewEntry extends LitElement {
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
      .numbers {
        display: grid;
        grid-template-columns: repeat(2, minmax(0, 1fr));
        gap: var(--s-2) var(--s-4);
      }
      .number {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: 0 var(--s-4);
        align-items: end;
      }
      .number svg {
        grid-row: span 2;
      }
      .number .small {
        color: var(--ink-2);
        line-height: 1.2;
      }
      .size {
        font-size: var(--t-number);
        line-height: 1;
        white-space: nowrap;
      }
      .size .unit {
        font-size: var(--t-title);
        color: var(--ink-2);
      }
      .finding {
        font-size: var(--t-text);
        line-height: 1.4;
        margin: var(--s-3) 0 var(--s-2);
        display: var(--finding, block);
      }
      .drawn {
        min-width: 0;
      }
      @media (min-width: 79rem) {
        :host {
          grid-template-columns: minmax(0, 792fr) minmax(0, 384fr);
        }
        .aside {
          grid-column: 2;
          grid-row: 1;
        }
        .drawn {
          grid-column: 1;
          grid-row: 1;
        }
        .numbers {
          grid-template-columns: 1fr;
        }
      }
      @media (max-width: 30rem) {
        .numbers {
          display: flex;
          flex-wrap: wrap;
          gap: var(--s-2) var(--s-8);
        }
        .number {
          grid-template-columns: 1fr;
        }
        .number svg {
          display: none;
        }
      }
    `,
  ]

  declare shown: Shown<SideViewSettings, SettledUnit>
  private readonly width = watchWidth(this, '.drawn')

  constructor() {
    super()
    watchHandles(this, () => sideLayout(specOf(this.shown), frameOf(this.shown.reader, this.width())))
  }

  override render() {
    const { shown } = this
    const { reader, result, scenario, stale, settings, now, held } = shown
    const { words, format } = reader
    const pale = stale ? 'pale' : ''
    const { benchHeight } = scenario.unit
    const cut = result.effectiveHeight.middle
    return html`
      <div class="aside">
        <div class="numbers ${pale}">
          ${this.number('bench', words.sideView.bench, benchHeight)}
          ${this.number('turf', words.sideView.cut, cut)}
        </div>
        <p class="finding ${pale}">${sideViewFinding(shown)}</p>
        <setting-list pairs .names=${settings.settings} .scenario=${now} .held=${held} .reader=${reader}></setting-list>
      </div>
      <div class="drawn">
        <div class=${pale}>${this.figure()}</div>
      </div>
      <span class="unseen" role="status">${words.sideView.cut}: ${format(cut, 'height')}</span>
    `
  }

  private number(where: 'bench' | 'turf', name: string, height: number) {
    const { reader } = this.shown
    const [, unit = ''] = reader.format(height, 'height').split('\u202f')
    return html`<div class="number">
      ${heightGlyph(where)}
      <span class="small">${name}</span>
      <span class="size">${reader.format(height, 'height', { unit: false })}<span class="unit">\u202f${unit}</span></span>
    </div>`
  }

  private figure() {
    const width = this.width()
    return width === 0 ? nothing : sideView(specOf(this.shown), frameOf(this.shown.reader, width))
  }
}

customElements.define('side-view-entry', SideViewEntry)
