import { parameterQuantity } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { announce } from '../../controls/index.ts'
import type { ValueTyped } from '../../controls/quantity-field.ts'
import '../../controls/quantity-field.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import type { FitResult, FitSettings } from './kind.ts'
import { parameterName } from './numbers.ts'
import { DATUMS, heldAt, LAWS, LOSSES, NOISES, parametersOf, ROLES, type Role, roleOf } from './settings.ts'

/** What is fitted and how: a ruled list of native choices, a number beside one where it is held. */
export class FitSettingsList extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      h3 {
        font-size: var(--t-text);
        margin-bottom: var(--s-2);
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        align-items: baseline;
        gap: 0 var(--s-4);
        padding: var(--s-1) 0;
        border-top: 1px solid var(--rule);
        font-size: var(--t-note);
      }
      .row:last-of-type {
        border-bottom: 1px solid var(--rule);
      }
      .row > label,
      .row > .pair {
        display: flex;
        flex: 1 1 20rem;
        flex-wrap: wrap;
        min-width: 0;
        justify-content: space-between;
        align-items: baseline;
        gap: 0 var(--s-4);
      }
      select.field {
        font-size: var(--t-note);
        text-align: left;
        min-width: 0;
        max-width: 100%;
      }
      quantity-field {
        flex: 1 1 14rem;
        padding: 0;
      }
    `,
  ]

  declare shown: Shown<FitSettings, FitResult>

  override render() {
    const { settings, reader } = this.shown
    const { settings: said, laws } = reader.words.fit
    return html`
      <h3 id="what">${said.what}</h3>
      <div role="group" aria-labelledby="what">
        ${this.row(this.choice(said.law, { options: LAWS, chosen: settings.law, words: laws, take: law => ({ law }) }))}
        ${parametersOf(settings.law).map(name => this.parameter(name))}
        ${this.row(this.choice(said.datum, { options: DATUMS, chosen: settings.datum, words: said.datums, take: datum => ({ datum }) }))}
        ${this.noise()}
        ${this.row(this.choice(said.loss, { options: LOSSES, chosen: settings.loss, words: said.losses, take: loss => ({ loss }) }))}
      </div>
    `
  }

  private row(content: unknown) {
    return html`<div class="row">${content}</div>`
  }

  private choice<Option extends string>(
    label: string,
    q: {
      readonly options: readonly Option[]
      readonly chosen: Option
      readonly words: Readonly<Record<string, string>>
      readonly take: (option: Option) => Partial<FitSettings>
    },
  ) {
    const changed = (event: Event) => {
      const { value } = event.currentTarget as HTMLSelectElement
      const option = q.options.find(one => one === value)
      if (option !== undefined) this.change(q.take(option))
    }
    return html`<label>${label}
      <select class="field" @change=${changed}>
        ${q.options.map(option => html`<option value=${option} ?selected=${option === q.chosen}>${q.words[option] ?? option}</option>`)}
      </select>
    </label>`
  }

  /** How many sets there are decides whether there is anything to share. */
  private get sets(): number {
    const { result } = this.shown
    return result.outcome === 'fitted' ? new Set(result.fit.readings.map(({ set }) => set)).size : 2
  }

  private parameter(name: string) {
    const { settings, reader } = this.shown
    const said = reader.words.fit.settings
    const { sets } = this
    const role = roleOf(settings, name, sets)
    const options = sets < 2 ? ROLES.filter(one => one !== 'per set') : ROLES
    const take = (next: Role): Partial<FitSettings> => ({
      roles: { ...settings.roles, [name]: next },
      ...(next === 'held' ? { held: { ...settings.held, [name]: this.foundFor(name) } } : {}),
    })
    const called = parameterName(name, reader)
    return this.row(html`
      ${this.choice(called, { options, chosen: role, words: sets < 2 ? said.alone : said.roles, take })}
      ${role === 'held' ? this.heldField(name, called) : nothing}
    `)
  }

  private heldField(name: string, called: string) {
    const { settings, reader } = this.shown
    return html`<quantity-field
      .label=${reader.words.fit.settings.heldAt(called)}
      .quantity=${parameterQuantity(name) ?? 'ratio'}
      .value=${heldAt(settings, name)}
      .reader=${reader}
      @sward-value=${({ detail }: CustomEvent<ValueTyped>) => {
        const { value, gesture } = detail
        if (value !== null) this.change({ held: { ...settings.held, [name]: value } }, gesture)
      }}
    ></quantity-field>`
  }

  /** A parameter is first held where the fit has just found it. */
  private foundFor(name: string): number {
    const { settings, result } = this.shown
    const found =
      result.outcome === 'fitted'
        ? result.fit.parameters.find(
            one =>
              one.name === name && (one.set ?? null) === (one.set === undefined ? null : result.curve.set),
          )
        : undefined
    return settings.held[name] ?? found?.value ?? heldAt(settings, name)
  }

  private noise() {
    const { settings, reader } = this.shown
    const said = reader.words.fit.settings
    return this.row(html`
      ${this.choice(said.noise, { options: NOISES, chosen: settings.noise, words: said.noises, take: noise => ({ noise }) })}
      ${
        settings.noise === 'known'
          ? html`<quantity-field
              .label=${said.standardDeviation}
              .quantity=${'sinkage'}
              .value=${settings.standardDeviation}
              .reader=${reader}
              @sward-value=${({ detail }: CustomEvent<ValueTyped>) => {
                const { value, gesture } = detail
                if (value !== null) this.change({ standardDeviation: value }, gesture)
              }}
            ></quantity-field>`
          : nothing
      }
    `)
  }

  private change(settings: Partial<FitSettings>, gesture?: string): void {
    const { id } = this.shown
    announce(this, 'rearrange', {
      id,
      settings,
      ...(gesture === undefined ? {} : { gesture: `${id} ${gesture}` }),
    })
  }
}

customElements.define('fit-settings', FitSettingsList)
