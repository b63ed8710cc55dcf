import { svg } from 'lit'
import { type Frame, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import type { SectionWords } from './sectionWords.ts'
import { textWidth } from './textWidth.ts'
import { barLength, decimalsOf, roundNumber } from './ticks.ts'

export type SectionScales = {
  /** The corner of the L, and how far it reaches along and up, px. */
  readonly x: number
  readonly y: number
  readonly along: number
  readonly up: number
  readonly alongText: string
  readonly upText: string
  readonly size: number
}

/** Of the size of text. */
const TALL = 2.4
const LONG = 7

/** How many times depths are drawn, as text. */
export const timesText = (times: number, frame: Pick<Frame<unknown>, 'locale'>): string =>
  roundNumber(times, decimalsOf([times]), frame)

/** Both scales as one L, at the right: along the axis, and of depths. Beside the dimensions where they leave room. */
export function sectionScales(
  q: {
    readonly along: number
    readonly down: number
    readonly times: number
    /** The last dimension, and how far right it reaches. */
    readonly row: number
    readonly reach: number
  },
  frame: Frame<SectionWords>,
): SectionScales {
  const size = textSize(frame)
  const along = barLength({ room: LONG * size, perMetre: q.along, quantity: 'pitch', reader: frame })
  const up = barLength({ room: TALL * size, perMetre: q.down, quantity: 'sinkage', reader: frame })
  const upText = frame.words.depthBar(up.text, timesText(q.times, frame))
  const needs = Math.max(along.length, textWidth(upText, size) + 8, textWidth(along.text, size))
  const x = frame.width - needs - 4
  const isClear = x > q.reach + 24
  const y = isClear ? q.row : q.row + Math.max(up.length, size * 1.4) + 16
  return { x, y, along: along.length, up: up.length, alongText: along.text, upText, size }
}

export function drawSectionScales({ x, y, along, up, alongText, upText, size }: SectionScales): Mark {
  return svg`<path class="thin" d="M${px(x + 5)} ${px(y - up)}H${px(x)}V${px(y)}H${px(x + along)}V${px(y - 5)}" /><text x=${px(x + 8)} y=${px(Math.min(y - 5, y - up + size * 0.8))}>${upText}</text><text x=${px(x)} y=${px(y + size * 1.2)}>${alongText}</text>`
}
