import { css, html, LitElement } from 'lit'
import type { WorkedLine } from '../book/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'

/** How an entry is worked out: the equations, the values put in, where they are written down and what checks them. */
export class WorkedOut extends LitElement {
  static override properties = {
    lines: { attribute: false },
    section: {},
    check: {},
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        font-size: var(--t-note);
        line-height: 1.45;
      }
      dt {
        color: var(--ink-2);
        margin-top: var(--s-3);
      }
      dd {
        overflow-wrap: anywhere;
      }
      .equation {
        font-style: italic;
      }
      p {
        margin-top: var(--s-3);
        color: var(--ink-2);
        overflow-wrap: anywhere;
      }
    `,
  ]

  declare lines: readonly WorkedLine[]
  declare section: string
  declare check: string
  declare reader: Reader

  override render() {
    const { entry, workings } = this.reader.words
    return html`<dl>${this.lines.map(
      ({ what, equation, filled }) => html`
        <dt>${workings[what] ?? what}</dt>
        <dd class="equation">${equation}</dd>
        <dd>${filled}</dd>
      `,
    )}</dl>
    <p>${entry.section(this.section)} ${entry.check(this.check)}</p>`
  }
}

customElements.define('worked-out', WorkedOut)
