import { svg } from 'lit'
import { type Frame, type Point, pathOf, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import type { PatchLayout, PatchSpec } from './patchLayout.ts'
import type { PatchWords } from './patchWords.ts'
import { textWidth } from './textWidth.ts'

/** Upright lines stand so far apart, px: the further they reach, the more is carried. */
const EVERY = 5
/** Part of the half groove that the greatest force reaches over, and the most of it in px. */
const REACH = 0.5
const FURTHEST = 44

/** Line force along the lower land edge, drawn out into the groove; both edges carry the same. */
export function drawEdgeForce(
  { quarter, grooves }: PatchSpec,
  layout: PatchLayout,
  frame: Frame<PatchWords>,
): Mark | undefined {
  const { along, force } = quarter.edges
  const most = force.reduce((a, b) => Math.max(a, b), 0)
  if (!grooves || most <= 0) return undefined
  const { words, format } = frame
  const { x, y, foot, half, left, right } = layout
  const size = textSize(frame)
  const edge = y(grooves.land / 2)
  // Where the floor is touched, what is pressed there is left clear.
  const floor = y(Math.min(grooves.pitch / 2, ...quarter.outline.floor.map(({ across }) => across)))
  const reach = Math.min(FURTHEST, (foot - edge) * REACH, Math.max(2, floor - edge - 4))
  const forceAt = (place: number): number => {
    const next = along.findIndex(at => at >= Math.abs(place))
    if (next <= 0) return next === 0 ? (force[0] ?? 0) : 0
    const [from, to] = [along[next - 1] ?? 0, along[next] ?? 0]
    const part = to > from ? (Math.abs(place) - from) / (to - from) : 0
    return (force[next - 1] ?? 0) + ((force[next] ?? 0) - (force[next - 1] ?? 0)) * part
  }
  const steps = 60
  const profile: readonly Point[] = Array.from({ length: 2 * steps + 1 }, (_, i) => {
    const place = (half.along * (i - steps)) / steps
    return { x: x(place), y: edge + (reach * forceAt(place)) / most }
  })
  let uprights = ''
  for (let at = Math.ceil(left / EVERY) * EVERY; at < right; at += EVERY) {
    const place = ((at - left) / (right - left)) * 2 * half.along - half.along
    const length = (reach * forceAt(place)) / most
    if (length > 1) uprights += `M${px(at)} ${px(edge)}v${px(length)}`
  }
  const text = words.edge(format(most, 'lineLoad'))
  const needs = textWidth(text, size)
  const at = Math.min(right - needs / 2 - 4, Math.max(left + needs / 2 + 4, x(0)))
  // Where the groove is too low on the page for a line of text, the words stand in the note alone.
  const baseline = edge + reach + size + 3
  const label =
    baseline < foot - 3 &&
    quarter.outline.floor.length === 0 &&
    needs < right - left &&
    svg`<text class="on-paper" x=${px(at)} y=${px(baseline)} text-anchor="middle">${text}</text>`
  return svg`<path class="hair" d=${uprights} /><path class="thin" d=${pathOf(profile)} />${label || undefined}`
}
