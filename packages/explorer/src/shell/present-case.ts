import { benchHeightFor, type Scenario, unitsOf } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import { fittedName, presentTurf, settable } from '../book/index.ts'
import { announce } from '../controls/index.ts'
import { settledOf } from '../entries/settled.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'

/** What of the present case is chosen from a list, in the order it is read. */
const CHOICES = ['unit', 'frontRoller', 'turf', 'condition'] as const
type Choice = (typeof CHOICES)[number]

/**
 * The case every entry is for, on one line that stays in view: which unit, roller and green, standing or mowing, what
 * is set on the bench and what is cut. Where there is room its parts are chosen right here.
 */
export class PresentCase extends LitElement {
  static override properties = {
    scenario: { attribute: false },
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        background: var(--paper);
        border-bottom: 1px solid var(--rule);
        font-size: var(--t-note);
        line-height: 1.35;
        z-index: 2;
      }
      /* On a low screen, or at 400 %, a line that stays would leave too little for the page. */
      @media screen and (min-height: 36rem) {
        :host {
          position: sticky;
          top: 0;
        }
      }
      .line {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 var(--s-6);
        padding: var(--s-1) 0;
      }
      .part {
        display: inline-flex;
        align-items: baseline;
        gap: var(--s-2);
        min-height: 24px;
        min-width: 0;
      }
      .name {
        color: var(--ink-2);
      }
      .height {
        margin-left: auto;
        gap: var(--s-4);
      }
      .mark {
        align-self: center;
        width: 11px;
        height: 10px;
        background: var(--present);
        clip-path: polygon(0 0, 100% 0, 50% 100%);
        forced-color-adjust: none;
      }
      select {
        font: inherit;
        color: var(--ink);
        background: var(--paper);
        border: 0;
        border-bottom: 1px solid var(--ink-3);
        border-radius: 0;
        min-height: 24px;
        padding: 0;
        max-width: 14rem;
        field-sizing: content;
      }
      .said {
        display: none;
      }
      @media (max-width: 58rem) {
        select,
        .name {
          display: none;
        }
        .said {
          display: inline;
        }
        .line {
          gap: 0 var(--s-3);
        }
        .height {
          gap: var(--s-3);
        }
      }
      /* What is set and what is cut, to be read at arm's length. */
      .workshop {
        padding: var(--s-2) 0;
      }
      .workshop .part:not(.height),
      .workshop .mark {
        display: none;
      }
      .workshop .height {
        margin-left: 0;
        flex-wrap: wrap;
        font-size: 1.375rem;
        gap: 0 var(--s-6);
      }
      @media print {
        select {
          display: none;
        }
        .said {
          display: inline;
        }
      }
    `,
  ]

  declare scenario: Scenario
  declare reader: Reader

  override render() {
    const { reader } = this
    const { presentCase } = reader.words
    return html`<section class="line ${reader.workshop ? 'workshop' : ''}" aria-label=${presentCase.title}>
      <span class="mark" aria-hidden="true"></span>
      ${CHOICES.map(name => this.choice(name))}${this.height()}
    </section>`
  }

  private choice(name: Choice) {
    const of = settable(name)
    if (of?.kind !== 'choice' || !this.reader) return nothing
    const { scenario, reader } = this
    if (name === 'unit' && Object.keys(unitsOf(scenario)).length === 0) return nothing
    const { words } = reader
    const value = of.value(scenario)
    const unlisted = name === 'frontRoller' && fittedName(scenario) === null
    const options = of.options(scenario)
    const say = (option: string) => (of.named ? option : (words.options[option] ?? option))
    const said = unlisted ? words.presentCase.unlisted : say(value)
    const label = words.presentCase.parts[name]
    if (options.length < 2 && !unlisted)
      return html`<div class="part"><span class="name">${label}</span><span>${said}</span></div>`
    return html`<div class="part"><span class="name">${label}</span><span class="said">${said}</span><select
      aria-label=${label}
      .value=${live(value)}
      @change=${(event: Event) =>
        announce(this, 'choose', { name, option: (event.currentTarget as HTMLSelectElement).value })}
    >${unlisted ? html`<option value="" selected>${said}</option>` : nothing}${options.map(
      option => html`<option value=${option} ?selected=${option === value}>${say(option)}</option>`,
    )}</select></div>`
  }

  private height() {
    const { scenario, reader } = this
    const { presentCase } = reader.words
    const settled = settledOf(scenario)
    const cuts =
      settled.outcome === 'settled'
        ? reader.format(settled.effectiveHeight.middle, 'height')
        : presentCase.none
    return html`<div class="part height"><span>${presentCase.bench(reader.format(scenario.unit.benchHeight, 'height'))}</span><strong>${presentCase.cuts(cuts)}</strong>${this.toHold()}</div>`
  }

  /** In the workshop: what to set for the height that is wanted. */
  private toHold() {
    const { scenario, reader } = this
    if (!reader.workshop || scenario.effectiveHeight === undefined) return nothing
    const found = benchHeightFor({
      unit: scenario.unit,
      turf: presentTurf(scenario),
      condition: scenario.condition,
      effectiveHeight: scenario.effectiveHeight,
    })
    if (found.outcome !== 'settled' || found.benchHeight <= 0) return nothing
    const bench = reader.format(found.benchHeight, 'height')
    const wanted = reader.format(scenario.effectiveHeight, 'height')
    return html`<strong>${reader.words.presentCase.toHold({ bench, wanted })}</strong>`
  }
}

customElements.define('present-case', PresentCase)
