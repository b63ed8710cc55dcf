import type { QuantityName } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { announce, paleStyles, watchWidth, wordStyles } from '../../controls/index.ts'
import type { ValueTyped } from '../../controls/quantity-field.ts'
import { weighedUnit } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import { readingsOf, type UnitFromScalesResult, type UnitFromScalesSettings } from './kind.ts'
import { contradictionSentence } from './sentences.ts'
import { type Readings, weigh } from './weigh.ts'
import '../../controls/quantity-field.ts'

type Name = keyof Readings

const OF_SCALES: readonly Name[] = ['total', 'front', 'rear', 'left', 'right']
const OF_BOX: readonly Name[] = ['boxEmpty', 'boxFull', 'boxAt', 'height']
const LENGTHS = ['unit.wheelbase', 'unit.edge', 'unit.benchHeight']
const DIMENSIONS = ['body.mass', 'body.at', 'body.height', 'body.offset', ...LENGTHS]
const QUANTITY: Readonly<Partial<Record<Name, QuantityName>>> = { boxAt: 'place', height: 'place' }

/** The readings in fields, the unit on its scales beside them; what they come to is taken over at once. */
export class UnitFromScalesEntry extends LitElement {
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
      h3 {
        font-size: var(--t-note);
      }
      .drawn {
        min-width: 0;
      }
      .fields > * + * {
        border-top: 1px solid var(--rule);
      }
      .caution {
        margin: var(--s-2) 0;
      }
      @media (min-width: 44rem) and (max-width: 78.9rem) {
        .settings {
          display: grid;
          grid-template-columns: repeat(2, minmax(0, 1fr));
          gap: 0 var(--gap);
        }
      }
      @media (min-width: 79rem) {
        :host {
          grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
        }
        .settings {
          display: grid;
          grid-template-columns: repeat(2, minmax(0, 1fr));
          gap: 0 var(--gap);
        }
      }
    `,
  ]

  declare shown: Shown<UnitFromScalesSettings, UnitFromScalesResult>
  private readonly width = watchWidth(this, '.drawn')

  override render() {
    const { settings, now, held, reader, stale } = this.shown
    const said = reader.words.unitFromScales
    const scales = settings.from === 'scales'
    return html`<div>
        <div class="drawn ${stale ? 'pale' : ''}">${this.drawing()}</div>
        <div role="status">${scales ? this.told() : nothing}</div>
      </div>
      <div class="settings">
        ${
          scales
            ? html`<section aria-label=${said.readings}><h3>${said.readings}</h3><div class="fields">${OF_SCALES.map(name => this.field(name))}</div></section>
                <section aria-label=${said.lengths}><h3>${said.lengths}</h3>
                  <setting-list .names=${LENGTHS} .scenario=${now} .held=${held} .reader=${reader}></setting-list>
                  <div class="fields">${OF_BOX.map(name => this.field(name))}</div></section>`
            : html`<setting-list .names=${DIMENSIONS.slice(0, 4)} .scenario=${now} .held=${held} .reader=${reader}></setting-list>
                <setting-list .names=${DIMENSIONS.slice(4)} .scenario=${now} .held=${held} .reader=${reader}></setting-list>`
        }
      </div>`
  }

  private drawing() {
    const { result, settings, scenario, reader } = this.shown
    const width = this.width()
    if (width === 0) return nothing
    const { weighed } = result
    const unit = weighed.state === 'weighed' ? weighed.unit : scenario.unit
    const { words, format, units, locale, figureText } = reader
    const title = words.unitFromScales.titles[settings.from]
    const known = settings.from === 'scales' && weighed.state === 'weighed'
    return weighedUnit(
      {
        wheelbase: unit.wheelbase,
        edge: unit.edge,
        front: unit.frontRoller.diameter,
        rear: unit.rearRoller.diameter,
        at: unit.body.at,
        loads: (unit.loads ?? []).flatMap(({ name, at, mass }) =>
          mass === undefined ? [] : [{ name: `${name} ${format(mass, 'mass')}`, at }],
        ),
        readings: known || settings.from === 'dimensions' ? result.reads : { front: null, rear: null },
      },
      {
        width,
        words: words.figures.unitFromScales({ body: format(unit.body.mass, 'mass'), title }),
        format,
        units,
        locale,
        text: figureText,
      },
    )
  }

  /** What is wrong with the readings, or with the unit against them. */
  private told() {
    const { result, reader } = this.shown
    const said = reader.words.unitFromScales
    const { weighed, answers, reads } = result
    if (weighed.state === 'contradiction')
      return html`<p class="caution">${contradictionSentence(weighed.why, reader)}</p>`
    if (weighed.state === 'too few' || answers) return nothing
    return html`<p class="small">${said.changed({
      total: reader.format(reads.total, 'mass'),
      front: reader.format(reads.front, 'mass'),
    })} <button class="word" @click=${() => this.take(readingsOf(this.shown.settings), 'weigh')}>${said.again}</button></p>`
  }

  private field(name: Name) {
    const { settings, reader } = this.shown
    const { labels, notes } = reader.words.unitFromScales
    return html`<quantity-field
      data-reading=${name}
      .label=${labels[name]}
      .note=${notes[name]}
      .quantity=${QUANTITY[name] ?? 'mass'}
      .value=${settings[name] ?? null}
      .reader=${reader}
      @sward-value=${(event: CustomEvent<ValueTyped>) => this.typed(name, event.detail)}
    ></quantity-field>`
  }

  private typed(name: Name, { value, gesture }: ValueTyped): void {
    const { id, settings } = this.shown
    const { [name]: _, ...others } = readingsOf(settings)
    const readings: Readings = value === null ? others : { ...others, [name]: value }
    announce(this, 'rearrange', { id, settings: { [name]: value ?? undefined }, gesture })
    this.take(readings, gesture)
  }

  /** The unit that answers the readings takes the place of the one in hand, as part of the same step. */
  private take(readings: Readings, gesture: string): void {
    const { now } = this.shown
    const weighed = weigh(readings, now.unit)
    if (weighed.state !== 'weighed') return
    announce(this, 'replace', { scenario: { ...now, unit: weighed.unit }, gesture })
  }
}

customElements.define('unit-from-scales-entry', UnitFromScalesEntry)
