import { css, html, LitElement } from 'lit'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import { ACTS, type Act } from './readerEvents.ts'

/** "earlier · later · copy · take out" on one line. */
export class ActWords extends LitElement {
  static override properties = {
    can: { attribute: false },
    what: {},
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--s-4);
        align-items: baseline;
      }
    `,
  ]

  /** What of it can be done here. */
  declare can: Readonly<Record<Act, boolean>>
  /** What the words act on. */
  declare what: string
  declare reader: Reader

  /** The word that was pressed, or the nearest one that can still be. */
  focusAct(act: Act): void {
    const buttons = [...this.renderRoot.querySelectorAll('button')]
    const wanted = buttons[ACTS.indexOf(act)]
    const open = wanted?.disabled ? buttons.find(button => !button.disabled) : wanted
    open?.focus()
  }

  override render() {
    const { editing } = this.reader.words
    const words: Readonly<Record<Act, string>> = {
      earlier: editing.earlier,
      later: editing.later,
      copy: editing.copy,
      'take out': editing.takeOut,
    }
    return ACTS.map(
      act => html`<button
        class="word"
        ?disabled=${!this.can[act]}
        @click=${() => this.dispatchEvent(new CustomEvent<Act>('act', { detail: act }))}
      >${words[act]}<span class="unseen">${editing.what(this.what)}</span></button>`,
    )
  }
}

customElements.define('act-words', ActWords)
