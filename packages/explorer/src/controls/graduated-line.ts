import type { QuantityName } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import type { Line } from '../book/index.ts'
import { settingScale } from '../figures/index.ts'
import { figureStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import { watchWidth } from './watchWidth.ts'

/** The graduated line under a range. */
export class GraduatedLine extends LitElement {
  static override properties = {
    line: { attribute: false },
    quantity: {},
    reader: { attribute: false },
  }
  static override styles = [
    figureStyles,
    css`
      :host {
        display: block;
      }
    `,
  ]

  declare line: Line
  declare quantity: QuantityName
  declare reader: Reader
  private readonly width = watchWidth(this)

  override render() {
    const width = this.width()
    if (width === 0) return nothing
    const { low, high, usual, scale } = this.line
    const { format, units, locale, figureText } = this.reader
    return html`${settingScale(
      { quantity: this.quantity, domain: [low, high], kind: scale, usual },
      { width, format, units, locale, text: figureText },
    )}`
  }
}

customElements.define('graduated-line', GraduatedLine)
