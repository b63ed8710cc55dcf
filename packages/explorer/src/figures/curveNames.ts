import { svg } from 'lit'
import { type CurvesLayout, type CurvesSpec, namesRoom, shortened } from './curvesLayout.ts'
import type { CurvesWords } from './curvesWords.ts'
import { type Frame, lineHeight, pathOf, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import { spreadOut } from './spreadOut.ts'

/** From the end of a curve to its name, px. */
const REACH = 12

/** Every curve is named where it ends; names keep apart, with a thin line to their curve. */
export function drawCurveNames(spec: CurvesSpec, layout: CurvesLayout, frame: Frame<CurvesWords>): Mark {
  const { words } = frame
  const size = textSize(frame)
  const { box, at } = layout
  const right = box.x + box.width
  const named = spec.curves.flatMap(({ points, label, present, bottomsOut }) => {
    const last = points.at(-1)
    if (!last) return []
    const text = bottomsOut ? words.bottomsOut(label) : label
    return [{ end: at(last), text: shortened(text, namesRoom(frame) + 4, size), present }]
  })
  const places = spreadOut(
    named.map(({ end }) => end.y),
    { gap: lineHeight(frame), low: box.y + size * 0.4, high: box.y + box.height },
  )
  return svg`${named.map(({ end, text, present }, i) => {
    const y = places[i] ?? end.y
    const x = right + REACH + 2
    const leads = Math.abs(y - end.y) > 2 || end.x < right - 2
    const leader = leads
      ? svg`<path class="hair" d=${pathOf([
          { x: end.x + 2, y: end.y },
          ...(end.x < right - 2 ? [{ x: right, y: end.y }] : []),
          { x: x - 3, y },
        ])} />`
      : undefined
    return svg`${leader}<text class="on-paper ${present ? 'strong' : ''}" x=${px(x)} y=${px(y + size * 0.36)}>${text}</text>`
  })}`
}
