import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import { booksAddress } from '../book/index.ts'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import { LANGUAGE_NAMES, LANGUAGES, type Reader } from '../words/index.ts'
import { PAPERS, type Preferences, UNIT_SYSTEMS } from './preferences.ts'
import { announceReader } from './readerEvents.ts'

/** Book, page, and the few words that are always at hand. */
export class RunningHead extends LitElement {
  static override properties = {
    book: {},
    page: {},
    preferences: { attribute: false },
    canUndo: { type: Boolean },
    canRedo: { type: Boolean },
    editing: { type: Boolean },
    listing: { type: Boolean },
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: var(--s-1) var(--s-6);
        border-bottom: 1px solid var(--ink-3);
        padding: var(--s-4) 0 var(--s-2);
        font-size: var(--t-note);
      }
      .page {
        color: var(--ink-2);
      }
      .words {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: var(--s-1) var(--s-4);
        margin-left: auto;
      }
      label {
        color: var(--ink-2);
        display: inline-flex;
        align-items: baseline;
        gap: var(--s-2);
      }
      select {
        font: inherit;
        color: var(--ink);
        background: var(--paper);
        border: 0;
        border-bottom: 1px solid var(--ink-3);
        border-radius: 0;
        min-height: var(--target);
        padding: 0;
        max-width: 100%;
        field-sizing: content;
      }
      .edit {
        color: var(--ink);
      }
      @media print {
        .words {
          display: none;
        }
      }
    `,
  ]

  declare book: string
  declare page: string
  declare preferences: Preferences
  declare canUndo: boolean
  declare canRedo: boolean
  declare editing: boolean
  /** All books are listed just now. */
  declare listing: boolean
  declare reader: Reader

  override render() {
    const { page: said, editing, files } = this.reader.words
    const { language, units, paper } = this.preferences
    return html`<header class="head">
      <strong>${this.book}</strong>
      <span class="page">${this.page}</span>
      <nav class="words" aria-label=${said.atHand}>
        <a class="word" href=${booksAddress} aria-current=${this.listing ? 'page' : nothing}>${files.books}</a>
        <label>${said.units}
          <select .value=${live(units)} @change=${this.chooseUnits}>${UNIT_SYSTEMS.map(
            system =>
              html`<option value=${system} ?selected=${system === units}>${said.unitSystems[system]}</option>`,
          )}</select>
        </label>
        <label>${said.theme}
          <select .value=${live(paper)} @change=${this.choosePaper}>${PAPERS.map(
            name => html`<option value=${name} ?selected=${name === paper}>${said.themes[name]}</option>`,
          )}</select>
        </label>
        <label>${said.language}
          <select .value=${live(language)} @change=${this.chooseLanguage}>${LANGUAGE_NAMES.map(
            name =>
              html`<option value=${name} lang=${name} ?selected=${name === language}>${LANGUAGES[name]}</option>`,
          )}</select>
        </label>
        ${this.listing ? nothing : html`<button class="word edit" @click=${() => announceReader(this, 'edit', !this.editing)}>${this.editing ? editing.done : editing.edit}</button>`}
        <button class="word" ?disabled=${!this.canUndo} @click=${() => announceReader(this, 'undo')}>${said.undo}</button>
        <button class="word" ?disabled=${!this.canRedo} @click=${() => announceReader(this, 'redo')}>${said.redo}</button>
        <button class="word" @click=${() => window.print()}>${said.print}</button>
      </nav>
    </header>`
  }

  private chooseUnits(event: Event): void {
    const chosen = (event.currentTarget as HTMLSelectElement).value
    const units = UNIT_SYSTEMS.find(system => system === chosen)
    if (units) announceReader(this, 'prefer', { ...this.preferences, units })
  }

  private chooseLanguage(event: Event): void {
    const select = event.currentTarget as HTMLSelectElement
    const language = LANGUAGE_NAMES.find(name => name === select.value)
    // Until its words are here the page speaks the old one, and so does the list.
    select.value = this.preferences.language
    if (language) announceReader(this, 'prefer', { ...this.preferences, language })
  }

  private choosePaper(event: Event): void {
    const chosen = (event.currentTarget as HTMLSelectElement).value
    const paper = PAPERS.find(name => name === chosen)
    if (paper) announceReader(this, 'prefer', { ...this.preferences, paper })
  }
}

customElements.define('running-head', RunningHead)
