import type { Scenario } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { type Held, isThere, settable } from '../book/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import './choice-setting.ts'
import './quantity-setting.ts'

/** Settings one under the other, as a ruled list. What this scenario does not have takes no room. */
export class SettingList extends LitElement {
  static override properties = {
    names: { attribute: false },
    scenario: { attribute: false },
    held: { attribute: false },
    reader: { attribute: false },
    brief: { type: Boolean },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      @media (min-width: 44rem) and (max-width: 78.9rem) {
        :host([pairs]) {
          display: grid;
          grid-template-columns: repeat(2, minmax(0, 1fr));
          gap: 0 var(--gap);
        }
        :host([pairs]) .setting {
          border: 0;
        }
      }
      .setting + .setting {
        border-top: 1px solid var(--rule);
      }
    `,
  ]

  declare names: readonly string[]
  declare scenario: Scenario
  declare held: Readonly<Record<string, Held>>
  declare reader: Reader
  /** Whose numbers these are stands over the list: it is not said again with each. */
  declare brief: boolean

  /** Puts the focus on one of its settings; false when it is not here. */
  find(name: string): boolean {
    const found = this.renderRoot.querySelector<HTMLElement>(`[data-setting="${CSS.escape(name)}"]`)
    found?.focus()
    return found !== null
  }

  override render() {
    return this.names.map(name => {
      const of = settable(name)
      if (!of || !isThere(of, this.scenario)) return nothing
      return html`<div class="setting">${
        of.kind === 'quantity'
          ? html`<quantity-setting
              data-setting=${name}
              .of=${of}
              .scenario=${this.scenario}
              .held=${this.held[name]}
              .reader=${this.reader}
              .brief=${this.brief}
            ></quantity-setting>`
          : html`<choice-setting
              data-setting=${name}
              .of=${of}
              .scenario=${this.scenario}
              .reader=${this.reader}
              .brief=${this.brief}
            ></choice-setting>`
      }</div>`
    })
  }
}

customElements.define('setting-list', SettingList)
