import { svg } from 'lit'
import { type Point, px } from './frame.ts'
import type { Mark } from './marks.ts'

export type PlacedTick = { readonly at: number; readonly text: string }

const NAMED = 7
const UNNAMED = 4

/** Ticks and numbers below a level line. */
export function axisBelow(q: { ticks: readonly PlacedTick[]; y: number; gap: number; size: number }): Mark {
  const marks = q.ticks.map(({ at, text }) => `M${px(at)} ${px(q.y)}v${text ? NAMED : UNNAMED}`).join('')
  const baseline = px(q.y + q.gap + q.size * 0.8)
  return svg`<path class="axis" d=${marks} />${q.ticks.map(
    ({ at, text }) => text && svg`<text x=${px(at)} y=${baseline} text-anchor="middle">${text}</text>`,
  )}`
}

/** Ticks and numbers at the left of an upright line. */
export function axisLeft(q: { ticks: readonly PlacedTick[]; x: number; gap: number; size: number }): Mark {
  const marks = q.ticks.map(({ at, text }) => `M${px(q.x)} ${px(at)}h${-(text ? NAMED : UNNAMED)}`).join('')
  return svg`<path class="axis" d=${marks} />${q.ticks.map(
    ({ at, text }) =>
      text && svg`<text x=${px(q.x - q.gap)} y=${px(at + q.size * 0.36)} text-anchor="end">${text}</text>`,
  )}`
}

export const title = (text: string, { x, y }: Point, anchor: 'start' | 'end' = 'start'): Mark =>
  svg`<text x=${px(x)} y=${px(y)} text-anchor=${anchor}>${text}</text>`
