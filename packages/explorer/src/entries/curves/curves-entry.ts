import { css, html, LitElement, nothing } from 'lit'
import { announce, paleStyles, watchWidth, wordStyles } from '../../controls/index.ts'
import { sinkageCurves } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import { frameOf, specOf } from './drawing.ts'
import { type CurvesResult, type CurvesSettings, SHOWS } from './kind.ts'

/** The curves, and the words that choose between load and pressure. */
export class CurvesEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [
    sharedStyles,
    wordStyles,
    figureStyles,
    paleStyles,
    css`
      :host {
        display: block;
        min-width: 0;
        max-width: max(var(--figure), 72%);
      }
      .choices {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 var(--s-3);
        font-size: var(--t-note);
        color: var(--ink-2);
        margin-bottom: var(--s-2);
      }
      @media print {
        .choices {
          display: none;
        }
      }
    `,
  ]

  declare shown: Shown<CurvesSettings, CurvesResult>
  private readonly width = watchWidth(this, '.drawn')

  override render() {
    const { shown } = this
    const { stale, reader, settings, id, result } = shown
    const { curves } = reader.words
    const width = this.width()
    return html`
      <div class="choices" role="group" aria-label=${curves.show}>
        <span>${curves.show}</span>
        ${SHOWS.map(
          show => html`<button
            class="word"
            aria-pressed=${show === settings.show ? 'true' : 'false'}
            @click=${() => announce(this, 'rearrange', { id, settings: { show } })}
          >${curves.shows[show]}</button>`,
        )}
      </div>
      <div class="drawn ${stale ? 'pale' : ''}">${
        width === 0 ? nothing : sinkageCurves(specOf(shown), frameOf(reader, { show: result.show, width }))
      }</div>
    `
  }
}

customElements.define('curves-entry', CurvesEntry)
