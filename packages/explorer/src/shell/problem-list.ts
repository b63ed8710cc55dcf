import type { Problem } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'

/** Everything that was wrong with a file or a link, path first. */
export class ProblemList extends LitElement {
  static override properties = {
    problems: { attribute: false },
    nothing: { type: Boolean },
    reader: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      section {
        margin-top: var(--s-3);
      }
      ul {
        padding-left: var(--s-4);
        overflow-wrap: anywhere;
      }
    `,
  ]

  declare problems: readonly Problem[]
  /** Nothing at all could be opened. */
  declare nothing: boolean
  declare reader: Reader

  override render() {
    if (this.problems.length === 0) return nothing
    const { files, modelSays } = this.reader.words
    return html`<section class="caution" role="alert">
      <p>${this.nothing ? files.unopened : files.damaged}</p>
      <ul>${this.problems.map(
        ({ path, expected, received }) =>
          html`<li>${files.problemAt({ path, expected: modelSays(expected), received: modelSays(received) })}</li>`,
      )}</ul>
    </section>`
  }
}

customElements.define('problem-list', ProblemList)
