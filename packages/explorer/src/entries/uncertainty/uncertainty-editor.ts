import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import { announce } from '../../controls/index.ts'
import { readNumber } from '../../controls/readNumber.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Editing } from '../view.ts'
import { DRAWS, type UncertaintySettings } from './settings.ts'

/** Where turf and scatter come from, and how many units are drawn. */
export class UncertaintyEditor extends LitElement {
  static override properties = { editing: { attribute: false } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: var(--s-2) var(--gap);
        align-items: end;
      }
      label {
        display: grid;
        font-size: var(--t-note);
        color: var(--ink-2);
      }
      select.field,
      input.field {
        text-align: left;
        max-width: 18rem;
      }
    `,
  ]

  declare editing: Editing<UncertaintySettings>

  override render() {
    const { settings, reader, entries } = this.editing
    const { edit } = reader.words.uncertainty
    const fits = entries.filter(({ kind }) => kind === 'fit')
    const draws = [...new Set([...DRAWS, settings.draws])].sort((a, b) => a - b)
    const counts = new Intl.NumberFormat(reader.locale)
    return html`
      <label>${edit.fit}
        <select class="field" @change=${(event: Event) => this.set({ fit: chosen(event), set: '' })}>
          <option value="" .selected=${settings.fit === ''}>${edit.own}</option>
          ${fits.map(({ id, title }) => html`<option value=${id} .selected=${id === settings.fit}>${title} (${id})</option>`)}
        </select>
      </label>
      ${
        settings.fit === ''
          ? nothing
          : html`<label>${edit.set}
              <input class="field" .value=${live(settings.set)} @change=${(event: Event) => this.set({ set: (event.currentTarget as HTMLInputElement).value.trim() })}>
            </label>`
      }
      <label>${edit.draws}
        <select class="field" @change=${(event: Event) => this.set({ draws: Number(chosen(event)) })}>${draws.map(
          count =>
            html`<option value=${count} .selected=${count === settings.draws}>${counts.format(count)}</option>`,
        )}</select>
      </label>
      <label>${edit.seed}
        <input class="field" inputmode="numeric" .value=${live(String(settings.seed))} @change=${this.started}>
      </label>
    `
  }

  private started(event: Event): void {
    const seed = readNumber((event.currentTarget as HTMLInputElement).value)
    if (seed !== null && Number.isInteger(seed) && seed >= 0) this.set({ seed })
    else this.requestUpdate()
  }

  private set(settings: Partial<UncertaintySettings>): void {
    announce(this, 'rearrange', { id: this.editing.id, settings })
  }
}

const chosen = (event: Event): string => (event.currentTarget as HTMLSelectElement).value

customElements.define('uncertainty-editor', UncertaintyEditor)
