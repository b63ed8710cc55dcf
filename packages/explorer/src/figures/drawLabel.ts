import { svg } from 'lit'
import { type Point, pathOf, px } from './frame.ts'
import { leaderStart } from './leader.ts'
import type { Mark } from './marks.ts'
import type { PlacedLabel } from './placeLabel.ts'

/** Part of a line's height above the baseline. */
const ASCENT = 0.8

export function drawLabel(
  { lines, anchor, box }: PlacedLabel,
  casing: 'on-paper' | 'on-ground' = 'on-paper',
): Mark {
  const lineHeight = box.height / lines.length
  const x = px(anchor === 'end' ? box.x + box.width : box.x)
  return svg`${lines.map(
    ({ text, strong }, i) =>
      svg`<text class="${casing} ${strong ? 'strong' : ''}" text-anchor=${anchor} x=${x} y=${px(box.y + lineHeight * (i + ASCENT))}>${text}</text>`,
  )}`
}

/** A thin line from a label to what it names, ending in a small dot. */
export function drawLeader(label: PlacedLabel, target: Point): Mark {
  return svg`<path class="hair" d=${pathOf([leaderStart(label.box, target), target])} /><circle class="leader-end" cx=${px(target.x)} cy=${px(target.y)} r="1.75" />`
}
