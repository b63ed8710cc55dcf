import { css, html, LitElement } from 'lit'
import { live } from 'lit/directives/live.js'
import { announce, wordStyles } from '../../controls/index.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Editing } from '../view.ts'
import type { TextSettings } from './kind.ts'
import { valueNames } from './values.ts'

/** Prose as it is typed, and the names of the values that may stand in it. */
export class TextEditor extends LitElement {
  static override properties = { editing: { attribute: false } }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
      }
      label,
      summary {
        font-size: var(--t-note);
        color: var(--ink-2);
      }
      summary {
        cursor: pointer;
        min-height: var(--target);
      }
      textarea.field {
        display: block;
        width: 100%;
        max-width: var(--measure);
        min-height: 8rem;
        padding: var(--s-2);
        text-align: left;
        line-height: 1.45;
        resize: vertical;
        field-sizing: content;
      }
      ul {
        list-style: none;
        columns: 15rem;
        font-size: var(--t-axis);
      }
      li {
        break-inside: avoid;
        overflow-wrap: anywhere;
      }
    `,
  ]

  declare editing: Editing<TextSettings>

  override render() {
    const { settings, reader } = this.editing
    const { editing } = reader.words
    return html`
      <label for="prose">${editing.prose}</label>
      <textarea
        class="field"
        id="prose"
        aria-describedby="hint"
        .value=${live(settings.text)}
        @input=${this.typed}
        @change=${() => announce(this, 'settled', { name: this.editing.id })}
      ></textarea>
      <p class="note" id="hint">${editing.proseHint}</p>
      <details>
        <summary>${editing.values}</summary>
        <ul>${valueNames().map(
          name => html`<li><button class="word" @click=${() => this.put(name)}>${`{${name}}`}</button></li>`,
        )}</ul>
      </details>
    `
  }

  private take(text: string): void {
    const { id } = this.editing
    announce(this, 'rearrange', { id, settings: { text }, gesture: `text ${id}` })
  }

  private typed(event: Event): void {
    this.take((event.currentTarget as HTMLTextAreaElement).value)
  }

  /** Puts a value's name where the reader last stood in the text. */
  private put(name: string): void {
    const area = this.renderRoot.querySelector('textarea')
    if (!area) return
    area.setRangeText(`{${name}}`, area.selectionStart, area.selectionEnd, 'end')
    this.take(area.value)
    announce(this, 'settled', { name: this.editing.id })
    area.focus()
  }
}

customElements.define('text-editor', TextEditor)
