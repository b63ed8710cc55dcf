import { css, html, LitElement, nothing } from 'lit'
import { settable } from '../../book/index.ts'
import { paleStyles, watchWidth } from '../../controls/index.ts'
import { grooveSection } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import { frameOf, specOf } from './drawing.ts'
import type { SectionResult, SectionSettings } from './kind.ts'

/** What moves the section, by what it is of the roller. */
const OF_THE_ROLLER = ['surface', 'pitch', 'land', 'depth']

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
    const roller = settings.at === 'front' ? 'frontRoller' : 'rearRoller'
    const names = [...OF_THE_ROLLER.map(part => `${roller}.${part}`), 'turf.spread'].filter(settable)
    return html`
      <div class="drawn ${stale ? 'pale' : ''}">${
        width === 0 ? nothing : grooveSection(specOf(shown), frameOf(reader, width))
      }</div>
      <setting-list pairs .names=${names} .scenario=${now} .held=${held} .reader=${reader}></setting-list>
    `
  }
}

customElements.define('section-entry', SectionEntry)
