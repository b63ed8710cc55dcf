import type { Scenario } from '@swardsink/model'
import { css, html, LitElement } from 'lit'
import { live } from 'lit/directives/live.js'
import type { ChoiceSettable } from '../book/index.ts'
import { sharedStyles } from '../look/index.ts'
import { briefly, type Reader, settableWords } from '../words/index.ts'
import { announce } from './announce.ts'

/** One of a few, as native radio buttons in a row. The wedge marks the present one. */
export class ChoiceSetting extends LitElement {
  static override properties = {
    of: { attribute: false },
    scenario: { attribute: false },
    reader: { attribute: false },
    brief: { type: Boolean },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        padding: var(--s-2) 0;
      }
      fieldset {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 var(--s-4);
        border: 0;
        margin: 0;
        padding: 0;
        font-size: var(--t-note);
      }
      .note {
        display: block;
      }
      legend {
        float: left;
        padding: 0;
        margin-right: auto;
      }
      /* Under a glove: a row of its own for each, with room for the whole of a finger. */
      fieldset.workshop {
        display: grid;
        font-size: var(--t-text);
      }
      .workshop legend {
        margin-bottom: var(--s-1);
      }
      .workshop label {
        min-height: 60px;
        gap: var(--s-4);
        border-top: 1px solid var(--rule);
      }
      .workshop input {
        width: 24px;
        height: 24px;
      }
      label {
        display: inline-flex;
        align-items: center;
        gap: var(--s-2);
        min-height: max(28px, var(--target));
        cursor: pointer;
      }
      input {
        appearance: none;
        width: 14px;
        height: 14px;
        margin: 0;
        border: 1.5px solid var(--ink-3);
        border-radius: 50%;
        cursor: pointer;
      }
      input:checked {
        border: 0;
        border-radius: 0;
        background: var(--present);
        clip-path: polygon(0 8%, 100% 8%, 50% 100%);
        forced-color-adjust: none;
      }
      label:has(:checked) {
        font-weight: var(--weight-strong);
      }
      label:has(:focus-visible) {
        outline: 2px solid var(--ink);
        outline-offset: 2px;
      }
      input:focus-visible {
        outline: none;
        box-shadow: none;
      }
    `,
  ]

  declare of: ChoiceSettable
  declare scenario: Scenario
  declare reader: Reader
  /** Whose number it is stands over the list. */
  declare brief: boolean

  override focus(): void {
    this.renderRoot.querySelector<HTMLInputElement>('input:checked')?.focus()
  }

  override render() {
    const { of, reader, scenario } = this
    const { options } = reader.words
    const present = of.value(scenario)
    const said = this.brief ? briefly(of.name, reader.words) : settableWords(of.name, reader.words)
    return html`<fieldset class=${reader.workshop ? 'workshop' : ''}>
      <legend>${said.name}${said.note ? html`<span class="note">${said.note}</span>` : ''}</legend>
      ${of.options(scenario).map(
        option => html`<label>
          <input
            type="radio"
            name="choice"
            value=${option}
            .checked=${live(option === present)}
            @change=${() => announce(this, 'choose', { name: of.name, option })}
          >${of.named ? option : (options[option] ?? option)}
        </label>`,
      )}
    </fieldset>`
  }
}

customElements.define('choice-setting', ChoiceSetting)
