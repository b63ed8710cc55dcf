import { svg } from 'lit'
import type { LevelDimension } from './dimension.ts'
import { type Frame, lineHeight, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import type { SideLayout } from './sideLayout.ts'
import type { SideViewWords } from './sideWords.ts'
import { textWidth } from './textWidth.ts'
import { barLength } from './ticks.ts'

export type SideScales = {
  /** The corner of the L, its reach along and up, px. */
  readonly x: number
  readonly y: number
  readonly along: number
  readonly up: number
  readonly alongText: string
  readonly upText: string
  /** Lower end of the lower text. */
  readonly foot: number
  readonly textHeight: number
}

const LONGEST = 100
const TALLEST = 34
const PER_METRE = 1000

/** Both scales as one L: along the ground, and of heights at the turf. In the corner, or below where that is taken. */
export function sideScales(
  layout: SideLayout,
  frame: Frame<SideViewWords>,
  dimensions: readonly LevelDimension[],
): SideScales {
  const size = textSize(frame)
  const room = Math.min(LONGEST, layout.width / 5)
  const perMetre = layout.scale * PER_METRE
  const along = barLength({ room, perMetre, quantity: 'wheelbase', reader: frame })
  const up = barLength({
    room: TALLEST,
    perMetre: perMetre * layout.exaggeration,
    quantity: 'height',
    reader: frame,
  })
  const upText = frame.words.heightBar(up.text, layout.exaggeration)
  const needs = Math.max(along.length, textWidth(upText, size) + 8, textWidth(along.text, size))
  const x = layout.width - 6 - needs
  const reach = Math.max(...dimensions.map(({ to, label }) => Math.max(to + 20, label.x + label.width)))
  const line = lineHeight(frame)
  const y = x > reach + 8 ? layout.scaleRow : layout.scaleRow + Math.max(line, up.length) + 10
  return {
    x,
    y,
    along: along.length,
    up: up.length,
    alongText: along.text,
    upText,
    foot: y + line + 4,
    textHeight: size,
  }
}

export function drawScales({ x, y, along, up, alongText, upText, textHeight }: SideScales): Mark {
  return svg`<path class="thin" d="M${px(x + 5)} ${px(y - up)}H${px(x)}V${px(y)}H${px(x + along)}V${px(y - 5)}" /><text x=${px(x + 8)} y=${px(Math.min(y - 5, y - up + textHeight * 0.8))}>${upText}</text><text x=${px(x)} y=${px(y + textHeight * 1.2)}>${alongText}</text>`
}
