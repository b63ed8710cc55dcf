import { css, html, LitElement, nothing } from 'lit'
import { live } from 'lit/directives/live.js'
import type { Entry } from '../book/index.ts'
import type { Editing, View } from '../entries/view.ts'
import { sharedStyles } from '../look/index.ts'
import type { ActWords } from './act-words.ts'
import './act-words.ts'
import { editorStyles } from './editorStyles.ts'
import { lectureFields } from './lectureFields.ts'
import { type Act, announceReader, type FocusOn } from './readerEvents.ts'

/** What stands under an entry while its page is edited: its words, its title, and the kind's own fields. */
export class EntryEditor extends LitElement {
  static override properties = {
    entry: { attribute: false },
    view: { attribute: false },
    editing: { attribute: false },
    usualTitle: {},
    can: { attribute: false },
    canStandBeside: { type: Boolean },
  }
  static override styles = [
    sharedStyles,
    editorStyles,
    css`
      :host {
        display: block;
        margin-top: var(--s-3);
      }
    `,
  ]

  declare entry: Entry
  declare view: View | undefined
  declare editing: Editing
  declare usualTitle: string
  declare can: Readonly<Record<Act, boolean>>
  /** There is an entry before it on the page. */
  declare canStandBeside: boolean

  /** Where a reader goes on who has just done this to the entry; without it, to the first of its fields. */
  async focusAfter(on?: FocusOn): Promise<void> {
    await this.updateComplete
    const words = this.renderRoot.querySelector<ActWords>('act-words')
    await words?.updateComplete
    if (on === 'beside') this.renderRoot.querySelector<HTMLElement>('.tick input')?.focus()
    else if (on) words?.focusAct(on)
    else await this.focusOwnField(words)
  }

  /** The kind's own fields may still be on their way. */
  private async focusOwnField(words: ActWords | null): Promise<void> {
    const own = this.renderRoot.querySelector('.own')
    const patience = 20
    for (let frame = 0; own && frame < patience; frame++) {
      const field = firstField(own)
      if (field) return field.focus()
      await new Promise(resolve => requestAnimationFrame(resolve))
    }
    words?.focusAct('copy')
  }

  override render() {
    const { entry, view, editing } = this
    const { editing: said } = editing.reader.words
    const title = entry.title || this.usualTitle
    const arrange = ({ detail }: CustomEvent<Act>) =>
      announceReader(this, 'arrange', { id: entry.id, act: detail })
    return html`<div role="group" aria-label=${said.thisEntry(title)}>
      <act-words .can=${this.can} .what=${title} .reader=${editing.reader} @act=${arrange}></act-words>
      <div class="fields">
        <label>${said.entryTitle}
          <input
            class="field"
            .value=${live(entry.title ?? '')}
            placeholder=${this.usualTitle && said.usualTitle(this.usualTitle)}
            @input=${this.titled}
            @change=${() => announceReader(this, 'written')}
          >
        </label>
        ${
          this.canStandBeside
            ? html`<label class="tick"><input type="checkbox" .checked=${live(entry.beside)} @change=${this.placed}> ${said.beside}</label>`
            : nothing
        }
        ${lectureFields(this, { of: entry, id: entry.id, reader: editing.reader })}
        ${!entry.asWritten && view?.edit ? html`<div class="own">${view.edit(editing)}</div>` : nothing}
      </div>
    </div>`
  }

  private titled(event: Event): void {
    const text = (event.currentTarget as HTMLInputElement).value
    announceReader(this, 'write', { what: 'entry title', text, id: this.entry.id })
  }

  private placed(event: Event): void {
    const { checked } = event.currentTarget as HTMLInputElement
    announceReader(this, 'beside', { id: this.entry.id, beside: checked })
  }
}

/** The first thing that can be filled in, through every shadow tree below. */
function firstField(root: ParentNode): HTMLElement | null {
  for (const element of root.querySelectorAll<HTMLElement>('*')) {
    if (element.matches('input, textarea, select')) return element
    const inside = element.shadowRoot && firstField(element.shadowRoot)
    if (inside) return inside
  }
  return null
}

customElements.define('entry-editor', EntryEditor)
