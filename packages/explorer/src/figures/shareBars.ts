import { html, svg, type TemplateResult } from 'lit'
import { title } from './axis.ts'
import { type Frame, lineHeight, px, textSize } from './frame.ts'
import type { SpreadWords } from './spreadWords.ts'
import { textWidth } from './textWidth.ts'

export type SharesSpec = {
  /** Greatest first. */
  readonly shares: readonly { readonly name: string; readonly share: number }[]
  /** What only several of them together make; null while it is not known. */
  readonly together: number | null
}

const BAR = 12
const LEAST = 0.005

/** What a scatter hangs on: a bar for each source, the whole scatter as wide as the figure allows. */
export function shareBars({ shares, together }: SharesSpec, frame: Frame<SpreadWords>): TemplateResult {
  const { width, words } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const rows = [
    ...shares,
    ...(together !== null && together > LEAST ? [{ name: words.together, share: together }] : []),
  ]
  const names = Math.ceil(Math.max(0, ...rows.map(({ name }) => textWidth(name, size)))) + 12
  const numbers = Math.ceil(textWidth(words.share(1), size)) + 10
  // Where a name and its bar have no room beside each other the name stands over its bar.
  const stacked = names + numbers > width * 0.62
  const left = stacked ? 0 : names
  const full = Math.max(20, width - left - numbers)
  const step = stacked ? 2 * line + 8 : line + 12
  const top = line + 14
  const height = top + rows.length * step
  return html`<svg class="figure share-bars" width=${width} height=${px(height)} viewBox="0 0 ${width} ${px(height)}" font-size=${size} role="img" aria-label=${words.shares}>
    ${title(words.shares, { x: 0, y: size })}<path class="axis" d=${`M${px(left)} ${px(top - 6)}V${px(height - 2)}`} />
    ${rows.map(({ name, share }, i) => {
      const y = top + i * step
      const bar = stacked ? y + line + 2 : y
      const long = full * Math.min(1, Math.max(0, share))
      const baseline = bar + BAR / 2 + size * 0.36
      return svg`<text x="0" y=${px(stacked ? y + size * 0.8 : baseline)}>${name}</text><rect class="bears" x=${px(left)} y=${px(bar)} width=${px(long)} height=${BAR} /><text x=${px(left + long + 8)} y=${px(baseline)}>${words.share(share)}</text>`
    })}
  </svg>`
}
