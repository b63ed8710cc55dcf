import { css, html, LitElement } from 'lit'
import { live } from 'lit/directives/live.js'
import { wordStyles } from '../../controls/index.ts'
import type { ValueTyped } from '../../controls/quantity-field.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Reader } from '../../words/index.ts'
import './amount-field.ts'
import type { Told } from './kind.ts'
import type { Option } from './settings.ts'

/** A few options, each with the range of the asked value in which it is right. */
export class QuestionOptions extends LitElement {
  static override properties = {
    options: { attribute: false },
    told: { attribute: false },
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
        font-size: var(--t-note);
      }
      .option {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap);
        align-items: end;
        border-bottom: 1px solid var(--rule);
        padding: var(--s-1) 0;
      }
      label {
        display: grid;
        color: var(--ink-2);
        flex: 1 1 14rem;
      }
      input.field {
        text-align: left;
        width: 100%;
        box-sizing: border-box;
      }
    `,
  ]

  declare options: readonly Option[]
  declare told: Told
  declare reader: Reader

  override render() {
    const { edit } = this.reader.words.question
    return html`<div role="group" aria-label=${edit.options}>
      <p>${edit.options}</p>
      ${this.options.map((option, i) => this.option(option, i))}
      <button class="word" @click=${() => this.say([...this.options, { text: '', from: null, to: null, right: false }])}>${edit.add}</button>
      <p class="note">${edit.optionsHint}</p>
    </div>`
  }

  private option(option: Option, place: number) {
    const { edit } = this.reader.words.question
    const number = String(place + 1)
    const put = (change: Partial<Option>) => this.say(this.options.with(place, { ...option, ...change }))
    const bound = (label: string, which: 'from' | 'to') => html`<amount-field
      .label=${label}
      .value=${option[which]}
      .told=${this.told}
      .reader=${this.reader}
      @sward-value=${({ detail }: CustomEvent<ValueTyped>) => put({ [which]: detail.value })}
    ></amount-field>`
    return html`<div class="option">
      <label>${edit.option(number)}
        <input class="field" .value=${live(option.text)} @input=${(event: Event) => put({ text: (event.currentTarget as HTMLInputElement).value })}>
      </label>
      ${bound(edit.from(number), 'from')}${bound(edit.to(number), 'to')}
      <button class="word" @click=${() => this.say(this.options.filter((_, i) => i !== place))}>${edit.takeOut(option.text)}</button>
    </div>`
  }

  private say(options: readonly Option[]): void {
    this.dispatchEvent(new CustomEvent<readonly Option[]>('options', { detail: options }))
  }
}

customElements.define('question-options', QuestionOptions)
