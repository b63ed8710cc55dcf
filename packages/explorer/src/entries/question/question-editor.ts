import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import { settable, settableNames } from '../../book/index.ts'
import { announce, wordStyles } from '../../controls/index.ts'
import type { ValueTyped } from '../../controls/quantity-field.ts'
import { sharedStyles } from '../../look/index.ts'
import { settableWords } from '../../words/index.ts'
import { settledInput } from '../settled.ts'
import { liveValue, valueNames } from '../text/values.ts'
import type { Editing } from '../view.ts'
import './amount-field.ts'
import type { Told } from './kind.ts'
import './question-options.ts'
import { valueName } from './saying.ts'
import { type Change, PARTS, type Part, type QuestionSettings } from './settings.ts'

const WAYS = ['by', 'times', 'to'] as const
type Way = (typeof WAYS)[number]

/** Fields for what is asked, what is changed, and what may be chosen. */
export class QuestionEditor extends LitElement {
  static override properties = { editing: { attribute: false } }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: grid;
        gap: var(--s-3);
      }
      label.block {
        display: grid;
        font-size: var(--t-note);
        color: var(--ink-2);
      }
      textarea.field {
        width: 100%;
        max-width: var(--measure);
        padding: var(--s-2);
        text-align: left;
        line-height: 1.45;
        resize: vertical;
        field-sizing: content;
      }
      select.field {
        text-align: left;
        max-width: 100%;
        font-size: var(--t-note);
      }
      .pair {
        display: flex;
        flex-wrap: wrap;
        gap: var(--s-2) var(--gap);
        align-items: end;
      }
      .tick {
        display: flex;
        gap: var(--s-2);
        align-items: center;
        font-size: var(--t-note);
        min-height: var(--target);
      }
      .tick input {
        accent-color: var(--ink);
        width: 16px;
        height: 16px;
        margin: 0;
      }
    `,
  ]

  declare editing: Editing<QuestionSettings>

  override render() {
    const { settings, reader } = this.editing
    const { edit } = reader.words.question
    return html`
      ${this.area('question', edit.sentence, edit.sentenceHint)}
      <div class="pair">
        ${this.select(edit.asks, settings.asks, this.asked(), asks => this.set({ asks }))}
        ${this.select(
          edit.of,
          settings.of,
          PARTS.map(part => [part, edit.parts[part]] as const),
          of => this.set({ of: of as Part }),
        )}
      </div>
      ${this.change()}${this.area('because', edit.because, '')}
      <label class="tick">
        <input type="checkbox" .checked=${live(settings.room)} @change=${() => this.set({ room: !settings.room })}>${edit.room}
      </label>
      <question-options .options=${settings.options} .told=${this.told} .reader=${reader} @options=${(event: CustomEvent<QuestionSettings['options']>) => this.set({ options: event.detail, prediction: null, guesses: [], state: 'asked' })}></question-options>
    `
  }

  /** What a bound of an option is told in. */
  private get told(): Told {
    const { settings, now } = this.editing
    if (settings.of === 'ratio') return { unit: '' }
    const live = liveValue(settings.asks, { scenario: now, settled: null, input: settledInput(now) })
    return live && 'quantity' in live ? { quantity: live.quantity } : { unit: '' }
  }

  private asked(): readonly (readonly [string, string])[] {
    const { settings, reader } = this.editing
    const names = valueNames().includes(settings.asks) ? valueNames() : [settings.asks, ...valueNames()]
    return names.map(name => [name, `${valueName(name, reader)} (${name})`])
  }

  private change() {
    const { settings, now, reader } = this.editing
    const { edit } = reader.words.question
    const { change } = settings
    const names = settableNames(now).map(name => [name, namedSetting(name, reader)] as const)
    const of = change && settable(change.name)
    return html`<div class="pair">
      ${this.select(edit.change, change?.name ?? '', [['', edit.none], ...names], name => this.set({ change: this.freshChange(name) }))}
      ${!change || !of ? nothing : of.kind === 'choice' ? this.choice(change, of.options(now)) : [this.way(change), this.amountOf(change)]}
    </div>`
  }

  private freshChange(name: string): Change | null {
    const of = settable(name)
    if (!of) return null
    return of.kind === 'choice' ? { name, to: of.options(this.editing.now)[0] ?? '' } : { name, times: 2 }
  }

  private choice(change: Change, options: readonly string[]) {
    const { edit } = this.editing.reader.words.question
    const { options: words } = this.editing.reader.words
    const to = 'to' in change ? String(change.to) : ''
    return this.select(
      edit.ways.to,
      to,
      options.map(option => [option, words[option] ?? option] as const),
      chosen => this.set({ change: { name: change.name, to: chosen } }),
    )
  }

  private way(change: Change) {
    const { edit } = this.editing.reader.words.question
    const way: Way = 'by' in change ? 'by' : 'times' in change ? 'times' : 'to'
    return this.select(
      edit.how,
      way,
      WAYS.map(one => [one, edit.ways[one]] as const),
      chosen => this.set({ change: this.anotherWay(change, chosen as Way) }),
    )
  }

  private anotherWay({ name }: Change, way: Way): Change {
    const of = settable(name)
    const now = of?.kind === 'quantity' ? (of.value(this.editing.now) ?? 0) : 0
    if (way === 'times') return { name, times: 2 }
    return way === 'by' ? { name, by: now } : { name, to: now }
  }

  private amountOf(change: Change) {
    const { reader } = this.editing
    const of = settable(change.name)
    if (of?.kind !== 'quantity') return nothing
    const [way, value] =
      'by' in change ? ['by', change.by] : 'times' in change ? ['times', change.times] : ['to', change.to]
    const told: Told = way === 'times' ? { unit: '' } : { quantity: of.quantity }
    return html`<amount-field
      .label=${reader.words.question.edit.amount}
      .value=${typeof value === 'number' ? value : null}
      .told=${told}
      .reader=${reader}
      @sward-value=${({ detail }: CustomEvent<ValueTyped>) => {
        if (detail.value !== null)
          this.set({ change: { name: change.name, [way as Way]: detail.value } as Change }, 'change')
      }}
    ></amount-field>`
  }

  private area(which: 'question' | 'because', label: string, hint: string) {
    const text = this.editing.settings[which]
    return html`<label class="block">${label}
      <textarea
        class="field"
        rows="2"
        .value=${live(text)}
        @input=${(event: Event) => this.set({ [which]: (event.currentTarget as HTMLTextAreaElement).value }, which)}
        @change=${() => announce(this, 'settled', { name: this.editing.id })}
      ></textarea>
      ${hint ? html`<span class="note">${hint}</span>` : nothing}
    </label>`
  }

  private select(
    label: string,
    chosen: string,
    options: readonly (readonly [string, string])[],
    choose: (option: string) => void,
  ) {
    return html`<label class="block">${label}
      <select class="field" @change=${(event: Event) => choose((event.currentTarget as HTMLSelectElement).value)}>${options.map(
        ([value, text]) => html`<option value=${value} .selected=${value === chosen}>${text}</option>`,
      )}</select>
    </label>`
  }

  private set(settings: Partial<QuestionSettings>, gesture?: string): void {
    const { id } = this.editing
    announce(this, 'rearrange', { id, settings, ...(gesture ? { gesture: `${id} ${gesture}` } : {}) })
  }
}

function namedSetting(name: string, { words }: Editing['reader']): string {
  const said = settableWords(name, words)
  return said.note ? `${said.name}, ${said.note}` : said.name
}

customElements.define('question-editor', QuestionEditor)
