import { svg } from 'lit'
import type { Box } from './box.ts'
import { type Point, pathOf, px } from './frame.ts'
import { arrowHead, type Mark } from './marks.ts'
import { textWidth } from './textWidth.ts'

/** Below this the arrows stand outside and point inwards, px. */
const NARROW = 24
const TAIL = 16

/** The line and heads of an upright dimension; its label stands beside it. */
export function uprightDimension({ x, from, to }: { x: number; from: number; to: number }): Mark {
  const [top, foot] = from < to ? [from, to] : [to, from]
  if (foot - top >= NARROW) {
    return svg`<path class="hair" d=${pathOf([
      { x, y: top },
      { x, y: foot },
    ])} />${arrowHead({ x, y: top }, -90)}${arrowHead({ x, y: foot }, 90)}`
  }
  return svg`<path class="hair" d=${pathOf([
    { x, y: top - TAIL },
    { x, y: foot + TAIL },
  ])} />${arrowHead({ x, y: top }, 90)}${arrowHead({ x, y: foot }, -90)}`
}

export type LevelDimension = {
  readonly y: number
  readonly from: number
  readonly to: number
  readonly text: string
  /** Where the number stands and whether the heads stand inside. */
  readonly label: Box
  readonly inside: boolean
}

/** A level dimension: its line is broken for the number; where the number has no room it stands at the left. */
export function levelDimension(q: {
  y: number
  from: number
  to: number
  text: string
  size: number
}): LevelDimension {
  const width = textWidth(q.text, q.size)
  const inside = q.to - q.from >= width + 2 * NARROW
  const x = inside ? (q.from + q.to - width) / 2 : q.from - TAIL - 4 - width
  return { ...q, inside, label: { x, y: q.y - q.size * 0.6, width, height: q.size * 1.2 } }
}

export function drawLevelDimension({ y, from, to, text, label, inside }: LevelDimension): Mark {
  const baseline = label.y + label.height * 0.8
  const number = svg`<text x=${px(label.x + label.width / 2)} y=${px(baseline)} text-anchor="middle">${text}</text>`
  const line = (a: number, b: number) =>
    pathOf([
      { x: a, y },
      { x: b, y },
    ])
  if (!inside) {
    return svg`<path class="hair" d=${line(from - TAIL, to + TAIL)} />${arrowHead({ x: from, y }, 0)}${arrowHead({ x: to, y }, 180)}${number}`
  }
  const gap = 4
  return svg`<path class="hair" d=${line(from, label.x - gap) + line(label.x + label.width + gap, to)} />${arrowHead({ x: from, y }, 180)}${arrowHead({ x: to, y }, 0)}${number}`
}

/** A load: an arrow whose upper end stands at a point; it points down, or up where it lifts. */
export function loadArrow({ x, y }: Point, { length, lifts }: { length: number; lifts: boolean }): Mark {
  const head = 12
  const foot = y + length
  const [tail, tip, inwards] = lifts ? [foot, y, head - 3] : [y, foot, 3 - head]
  return svg`<path class="load" d=${pathOf([
    { x, y: tail },
    { x, y: tip + inwards },
  ])} />${arrowHead({ x, y: tip }, lifts ? -90 : 90, { kind: 'load-head', length: head })}`
}
