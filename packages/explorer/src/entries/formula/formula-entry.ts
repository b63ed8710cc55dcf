import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import { announce, paleStyles, wordStyles } from '../../controls/index.ts'
import { sharedStyles } from '../../look/index.ts'
import { amountText } from '../../words/index.ts'
import { valueNames } from '../text/values.ts'
import type { Shown } from '../view.ts'
import { calledBy } from './calledBy.ts'
import type { FormulaResult, FormulaSettings } from './kind.ts'

/** Three fields, and what comes of them: a value with its unit, or one sentence on what to change. */
export class FormulaEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [
    sharedStyles,
    wordStyles,
    paleStyles,
    css`
      :host {
        display: block;
      }
      .fields {
        margin-top: var(--s-3);
        display: grid;
        grid-template-columns: minmax(6rem, 1fr) minmax(12rem, 3fr) minmax(4rem, 0.7fr);
        gap: var(--s-2) var(--s-4);
        align-items: end;
      }
      label {
        display: grid;
        font-size: var(--t-note);
        color: var(--ink-2);
      }
      input.field {
        font: inherit;
        font-size: var(--t-text);
        color: var(--ink);
        text-align: left;
        min-width: 0;
        width: 100%;
        box-sizing: border-box;
      }
      .value {
        font-size: var(--t-title);
        margin-top: var(--s-3);
      }
      .caution {
        margin-top: var(--s-3);
      }
      details {
        margin-top: var(--s-2);
        font-size: var(--t-note);
        color: var(--ink-2);
      }
      summary {
        cursor: pointer;
        min-height: var(--target);
        width: fit-content;
      }
      ul {
        list-style: none;
        columns: 22rem;
        column-gap: var(--gap);
        margin-bottom: var(--s-3);
      }
      li {
        break-inside: avoid;
        max-width: none;
        padding: 2px 0;
      }
      li .word {
        color: var(--ink);
        overflow-wrap: anywhere;
        text-align: left;
      }
      @media print {
        details {
          display: none;
        }
      }
      @media (max-width: 40rem) {
        .fields {
          grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
        }
        .from {
          grid-column: 1 / -1;
          grid-row: 2;
        }
      }
    `,
  ]

  declare shown: Shown<FormulaSettings, FormulaResult>

  override render() {
    const { settings, result, reader, stale } = this.shown
    const { worked } = result
    const { formula, failures } = reader.words
    const wrong = worked.outcome === 'none'
    const said = wrong
      ? (failures.reasons[worked.reason]?.(worked.values) ?? worked.reason)
      : amountText({ value: worked.value, unit: worked.unit }, reader)
    return html`<div class="fields">
        ${this.field('name', formula.name, settings.name)}
        ${this.field('from', formula.from, settings.from)}
        ${this.field('in', formula.in, settings.in)}
      </div>
      <div role="status">${
        wrong
          ? html`<p class="caution" id="wrong">${said}</p>`
          : html`<p class="value ${stale ? 'pale' : ''}">${settings.name}: <strong>${said}</strong></p>`
      }</div>
      <details>
        <summary>${formula.names}</summary>
        <ul>${[...result.others, ...valueNames()].map(name => this.called(name))}</ul>
      </details>`
  }

  private called(name: string) {
    const meaning = calledBy(name, this.shown.reader)
    return html`<li><button class="word" @click=${() => this.put(name)}>${name}</button> ${meaning}</li>`
  }

  /** Puts a name where the reader last stood in what it is worked from. */
  private put(name: string): void {
    const field = this.renderRoot.querySelector<HTMLInputElement>('.from input')
    if (!field) return
    const end = field.value.length
    field.setRangeText(name, field.selectionStart ?? end, field.selectionEnd ?? end, 'end')
    this.typed('from', field.value)
    field.focus()
  }

  private field(which: 'name' | 'from' | 'in', label: string, value: string) {
    const wrong = this.shown.result.worked.outcome === 'none'
    return html`<label class=${which}>${label}
      <input
        class="field"
        autocomplete="off"
        autocapitalize="off"
        spellcheck="false"
        .value=${live(value)}
        aria-invalid=${wrong && which === 'from' ? 'true' : 'false'}
        aria-describedby=${wrong ? 'wrong' : nothing}
        @input=${(event: Event) => this.typed(which, (event.currentTarget as HTMLInputElement).value)}
      >
    </label>`
  }

  private typed(which: 'name' | 'from' | 'in', text: string): void {
    const { id } = this.shown
    announce(this, 'rearrange', { id, settings: { [which]: text }, gesture: `${id} ${which}` })
  }
}

customElements.define('formula-entry', FormulaEntry)
