import { svg } from 'lit'
import { drawLevelDimension, type LevelDimension, levelDimension } from './dimension.ts'
import { type Frame, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import { type SectionLayout, type SectionSpec, SHARE_BAR } from './sectionLayout.ts'
import { landsOf } from './sectionMetal.ts'
import type { SectionWords } from './sectionWords.ts'

/** The line of an outside dimension, and air before its number, px. */
const OUTSIDE = 20

type Stretch = { readonly from: number; readonly to: number; readonly y: number }
type Texts = { readonly named: string; readonly bare: string }

/** A width with its name where there is room, else its number, inside or at the side; null where neither fits. */
function widthOf(
  { from, to, y }: Stretch,
  { named, bare }: Texts,
  q: { readonly size: number; readonly right: number },
): LevelDimension | null {
  const full = levelDimension({ y, from, to, text: named, size: q.size })
  if (full.inside) return full
  const short = levelDimension({ y, from, to, text: bare, size: q.size })
  if (short.inside || short.label.x >= 0) return short
  const x = to + OUTSIDE
  return x + short.label.width <= q.right ? { ...short, label: { ...short.label, x } } : null
}

/** Land, gap and pitch, under the lines that carry the land edges down. */
export function drawWidths(spec: SectionSpec, layout: SectionLayout, frame: Frame<SectionWords>): Mark {
  const { grooves } = spec
  if (!grooves) return svg``
  const { words, format } = frame
  const { y, dimensions, share, width } = layout
  const [upper, lower] = dimensions
  const size = textSize(frame)
  const lands = landsOf(grooves, layout)
  const [[left = 0, right = 0] = [], [next = 0] = []] = lands
  const texts = (say: (width: string) => string, value: number): Texts => {
    const bare = format(value, 'land')
    return { named: say(bare), bare }
  }
  const end = { size, right: width }
  const land = widthOf({ from: left, to: right, y: upper }, texts(words.land, grooves.land), end)
  const between = { from: right, to: next, y: upper }
  const gap = widthOf(between, texts(words.gap, grooves.pitch - grooves.land), end)
  const pitch = widthOf({ from: left, to: next, y: lower }, texts(words.pitch, grooves.pitch), end)
  // The gap is what is left of the pitch: it gives way where both have no room.
  const isClear = land?.inside !== false && gap?.inside !== false
  const dotted = lands
    .flat()
    .map(at => `M${px(at)} ${px(y(spec.sinkage) + 6)}V${px(share.top + SHARE_BAR)}`)
    .join('')
  const top = share.text + 6
  const ends = `M${px(left)} ${px(top)}V${px(lower + 6)}M${px(right)} ${px(top)}V${px(upper + 6)}M${px(next)} ${px(top)}V${px(lower + 6)}`
  const drawn = [land, isClear ? gap : null, pitch].filter(dimension => dimension !== null)
  return svg`<path class="dotted" d=${dotted} /><path class="hair" d=${ends} />${drawn.map(drawLevelDimension)}`
}
