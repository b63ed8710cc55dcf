import { css, html, LitElement } from 'lit'
import type { WorkedLine } from '../book/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'

/** An equation is written on one line, W_f for W with the letter f below it. */
function withSubscripts(equation: string) {
  return equation.split(/_(\w+)/).map((part, i) => (i % 2 === 1 ? html`<sub>${part}</sub>` : part))
}

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
      sub {
        font-size: 0.8em;
        line-height: 0;
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
    const { entry, workings, workingSays } = this.reader.words
    return html`<dl>${this.lines.map(
      ({ what, equation, filled }) => html`
        <dt>${workings[what] ?? what}</dt>
        <dd class="equation">${withSubscripts(workingSays(equation))}</dd>
        <dd>${workingSays(filled)}</dd>
      `,
    )}</dl>
    <p>${entry.section(this.section)} ${entry.check(this.check)}</p>`
  }
}

customElements.define('worked-out', WorkedOut)
