import { css, html, LitElement, nothing } from 'lit'
import { settable } from '../../book/index.ts'
import { announce, paleStyles } from '../../controls/index.ts'
import { sharedStyles } from '../../look/index.ts'
import { amountText } from '../../words/index.ts'
import type { Shown, View } from '../view.ts'
import type { TextResult, TextSettings } from './kind.ts'
import { type Piece, paragraphsOf } from './prose.ts'

type ShownText = Shown<TextSettings, TextResult>

/** Prose. What can be set is marked and leads to where it is set; what follows from it carries no mark. */
export class TextEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [
    sharedStyles,
    paleStyles,
    css`
      :host {
        display: block;
      }
      p + p {
        margin-top: var(--s-3);
      }
      button.settable {
        font: inherit;
        color: inherit;
        background: none;
        border-width: 0 0 2px;
        border-radius: 0;
        padding: 0;
        min-height: 0;
        cursor: pointer;
      }
    `,
  ]

  declare shown: ShownText

  private piece(piece: Piece) {
    if (piece.kind === 'words') return piece.text
    const { result, reader } = this.shown
    const live = result[piece.name]
    if (!live) return reader.words.text.unknown
    const text = amountText(live, reader)
    if (!settable(piece.name)) return html`<span class="value">${text}</span>`
    const find = () => announce(this, 'find', { name: piece.name })
    return html`<button class="settable" @click=${find}>${text}</button>`
  }

  override render() {
    const { settings, stale } = this.shown
    if (!this.shown.result) return nothing
    return html`<div class=${stale ? 'pale' : ''}>${paragraphsOf(settings.text).map(
      pieces => html`<p>${pieces.map(piece => this.piece(piece))}</p>`,
    )}</div>`
  }
}

customElements.define('text-entry', TextEntry)

export const textView: View<'text', TextSettings, TextResult> = {
  kind: 'text',
  untitled: true,
  title: ({ reader }) => reader.words.text.title,
  finding: () => null,
  note: () => null,
  draw: shown => html`<text-entry .shown=${shown}></text-entry>`,
  edit(editing) {
    void import('./text-editor.ts')
    return html`<text-editor .editing=${editing}></text-editor>`
  },
}
