import type { Scenario } from '@swardsink/model'
import { css, html, LitElement } from 'lit'
import { live } from 'lit/directives/live.js'
import { settableNames } from '../book/index.ts'
import { announce } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import { type Reader, settableWords } from '../words/index.ts'

/** Everything that can be set of this scenario, with a tick at what an entry shows. */
export class SettingNames extends LitElement {
  static override properties = {
    entry: {},
    as: {},
    chosen: { attribute: false },
    scenario: { attribute: false },
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        font-size: var(--t-note);
      }
      details {
        margin-top: var(--s-2);
      }
      summary {
        cursor: pointer;
        color: var(--ink-2);
        min-height: var(--target);
      }
      fieldset {
        border: 0;
        margin: 0;
        padding: 0;
        columns: 16rem;
        column-gap: var(--gap);
      }
      label {
        display: flex;
        align-items: baseline;
        gap: var(--s-2);
        min-height: var(--target);
        break-inside: avoid;
        overflow-wrap: anywhere;
      }
      input {
        accent-color: var(--ink);
        width: 16px;
        height: 16px;
        margin: 0;
        flex: none;
        align-self: center;
      }
      .note {
        margin-left: var(--s-1);
      }
    `,
  ]

  /** The entry whose settings they are, and what those call them. */
  declare entry: string
  declare as: string
  declare chosen: readonly string[]
  declare scenario: Scenario
  declare reader: Reader

  override render() {
    const { chosen, reader, scenario } = this
    const { editing } = reader.words
    // What is chosen stands first and in its order, also what this scenario does not have just now.
    const others = settableNames(scenario).filter(name => !chosen.includes(name))
    return html`<fieldset aria-label=${editing.which}>${chosen.map(name => this.tick(name))}</fieldset>
      <details>
        <summary>${editing.others}</summary>
        <fieldset aria-label=${editing.others}>${others.map(name => this.tick(name))}</fieldset>
      </details>`
  }

  private tick(name: string) {
    const { name: said, note } = settableWords(name, this.reader.words)
    return html`<label>
      <input type="checkbox" .checked=${live(this.chosen.includes(name))} @change=${() => this.toggle(name)}>
      <span>${said}<span class="note">${note}</span></span>
    </label>`
  }

  private toggle(name: string): void {
    const { chosen } = this
    const next = chosen.includes(name) ? chosen.filter(other => other !== name) : [...chosen, name]
    announce(this, 'rearrange', { id: this.entry, settings: { [this.as]: next } })
  }
}

customElements.define('setting-names', SettingNames)
