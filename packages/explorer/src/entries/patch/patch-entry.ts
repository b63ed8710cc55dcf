import { css, html, LitElement, nothing, type PropertyValues } from 'lit'
import { announce, paleStyles, watchWidth, wordStyles } from '../../controls/index.ts'
import { contactPatch } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import { frameOf, specOf } from './drawing.ts'
import { CELLS, type PatchResult, type PatchSettings } from './kind.ts'

/**
 * The contact from above. The full solution takes a while: the last one stays, pale, until the next has come; the quick
 * model is drawn only where there was none before it.
 */
export class PatchEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [
    sharedStyles,
    wordStyles,
    figureStyles,
    paleStyles,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      .drawn {
        max-width: var(--figure);
        min-width: 0;
      }
      .choices {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 var(--s-3);
        margin-top: var(--s-3);
        font-size: var(--t-note);
        color: var(--ink-2);
      }
      .still {
        font-size: var(--t-note);
        color: var(--ink-2);
      }
    `,
  ]

  declare shown: Shown<PatchSettings, PatchResult>
  private readonly width = watchWidth(this, '.drawn')
  /** The last full solution of this roller. */
  private last: { readonly at: PatchSettings['at']; readonly result: PatchResult } | null = null

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('shown')) return
    const { result, settings } = this.shown
    if (result.full) this.last = { at: settings.at, result }
    else if (this.last?.at !== settings.at) this.last = null
  }

  override render() {
    const { shown } = this
    const { reader, result, stale } = shown
    const drawn = result.full ? result : (this.last?.result ?? result)
    const still = drawn !== result
    const width = this.width()
    return html`
      <div class="drawn ${stale || still ? 'pale' : ''}">${
        width === 0 ? nothing : contactPatch(specOf(drawn), frameOf(reader, width))
      }</div>
      ${still ? html`<p class="still">${this.stillFor(drawn)}</p>` : nothing}
      ${this.cells()}
    `
  }

  private stillFor({ load, full }: PatchResult): string {
    const { words, format } = this.shown.reader
    return words.patch.still({
      load: format(load, 'load'),
      sinkage: format(full?.sinkage ?? 0, 'sinkage'),
    })
  }

  private cells() {
    const { id, settings, reader } = this.shown
    const { patch } = reader.words
    return html`<div class="choices" role="group" aria-label=${patch.cells}>
      <span>${patch.cells}</span>
      ${CELLS.map(
        cells => html`<button
          class="word"
          aria-pressed=${cells === settings.cells ? 'true' : 'false'}
          @click=${() => announce(this, 'rearrange', { id, settings: { cells } })}
        >${cells} × ${cells}</button>`,
      )}
      <span>${patch.cellsNote}</span>
    </div>`
  }
}

customElements.define('patch-entry', PatchEntry)
