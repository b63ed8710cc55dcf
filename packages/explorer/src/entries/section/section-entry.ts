import { css, html, LitElement, nothing } from 'lit'
import { paleStyles, watchWidth } from '../../controls/index.ts'
import { grooveSection } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import { frameOf, specOf } from './drawing.ts'
import { type SectionResult, type SectionSettings, setBeside } from './kind.ts'

/** The section, and beside it what it hangs on. */
export class SectionEntry extends LitElement {
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
        min-width: 0;
      }
      @media (min-width: 79rem) {
        :host {
          grid-template-columns: minmax(0, 792fr) minmax(0, 384fr);
        }
      }
    `,
  ]

  declare shown: Shown<SectionSettings, SectionResult>
  private readonly width = watchWidth(this, '.drawn')

  override render() {
    const { shown } = this
    const { stale, settings, now, held, reader } = shown
    const width = this.width()
    const names = setBeside(settings)
    return html`
      <div class="drawn ${stale ? 'pale' : ''}">${
        width === 0 ? nothing : grooveSection(specOf(shown), frameOf(reader, width))
      }</div>
      <setting-list pairs .names=${names} .scenario=${now} .held=${held} .reader=${reader}></setting-list>
    `
  }
}

customElements.define('section-entry', SectionEntry)
