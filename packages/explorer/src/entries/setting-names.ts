import type { Scenario } from '@swardsink/model'
import { css, html, LitElement, type PropertyValues } from 'lit'
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

  /** What was chosen when the list came up stands first, and nothing moves from under a finger or the focus. */
  private first: readonly string[] = []

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('entry')) this.first = this.chosen
  }

  override render() {
    const { first, reader, scenario } = this
    const { editing } = reader.words
    const others = settableNames(scenario).filter(name => !first.includes(name))
    return html`<fieldset aria-label=${editing.which}>${first.map(name => this.tick(name))}</fieldset>
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
