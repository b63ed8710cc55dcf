import type { Scenario } from '@swardsink/model'
import { css, html, LitElement } from 'lit'
import type { Held, QuantitySettable } from '../book/index.ts'
import { type Announcement, announce } from '../controls/index.ts'
import type { Reader } from '../words/index.ts'

/** A number that is an entry's own: what is entered goes to the entry's settings, not to the scenario. */
export class OwnSetting extends LitElement {
  static override properties = {
    entry: {},
    field: {},
    of: { attribute: false },
    scenario: { attribute: false },
    reader: { attribute: false },
    refused: { state: true },
  }
  static override styles = css`
    :host {
      display: block;
    }
  `

  /** Id of the entry, and the name of the number in its settings. */
  declare entry: string
  declare field: string
  declare of: QuantitySettable
  declare scenario: Scenario
  declare reader: Reader
  /** What was typed and cannot be taken. */
  declare refused: Held | undefined

  override render() {
    return html`<quantity-setting
      data-setting=${this.of.name}
      .of=${this.of}
      .scenario=${this.scenario}
      .held=${this.refused}
      .reader=${this.reader}
      @sward-enter=${this.entered}
    ></quantity-setting>`
  }

  private entered(event: Announcement<'enter'>): void {
    event.stopPropagation()
    const { value, text, gesture } = event.detail
    const refusal =
      value === null ? ({ reason: 'not a number', text } as const) : this.of.refuse(this.scenario, value)
    this.refused = refusal ? { text, value, refusal } : undefined
    if (refusal) return
    const { entry: id, field } = this
    announce(this, 'rearrange', { id, settings: { [field]: value }, gesture: `${id} ${gesture ?? field}` })
  }
}

customElements.define('own-setting', OwnSetting)
