import { scaleLinear, scaleLog } from 'd3'
import type { Box } from './box.ts'
import { type Frame, layoutOf, lineHeight, textSize } from './frame.ts'
import { textWidth } from './textWidth.ts'

export type MapDomain = {
  /** SI, low and high */
  readonly mass: readonly [number, number]
  readonly softness: readonly [number, number]
}
export type MapScales = {
  /** The framed part, px. */
  readonly box: Box
  readonly height: number
  readonly x: (mass: number) => number
  readonly y: (softness: number) => number
  /** From a pointer back to values, kept inside the domain. */
  readonly massAt: (x: number) => number
  readonly softnessAt: (y: number) => number
}

/** Height of the framed part against the figure's width. */
const PROPORTION = { wide: 0.46, middle: 0.54, narrow: 0.72 }
/** Lower than this its contours could not be told apart, px. */
const LOWEST = 160
/** Ticks, the wedge of the present case, and air: from the frame to the numbers of an axis. */
export const AXIS_GAP = 14

/** Mass to the right on a linear axis, softness up on a logarithmic one: firm at the foot, soft at the top. */
export function mapScales(
  domain: MapDomain,
  frame: Pick<
    Frame<{ readonly firm: string; readonly soft: string }>,
    'width' | 'text' | 'tallest' | 'words'
  >,
): MapScales {
  const size = textSize(frame)
  const line = lineHeight(frame)
  const layout = layoutOf(frame)
  const numbers = textWidth('0.05', size) + AXIS_GAP
  const ends = Math.max(textWidth(frame.words.firm, size), textWidth(frame.words.soft, size)) + 8
  const left = Math.ceil(layout === 'narrow' ? numbers + 2 : numbers + ends)
  const right = Math.ceil(textWidth('0.175', size) + 16)
  const top = 2 * line + 8
  const below = AXIS_GAP + 2 * line + 10
  const wanted = Math.round(frame.width * PROPORTION[layout])
  const box = {
    x: left,
    y: top,
    width: frame.width - left - right,
    height: Math.min(wanted, Math.max(LOWEST, (frame.tallest ?? Number.POSITIVE_INFINITY) - top - below)),
  }
  const x = scaleLinear()
    .domain(domain.mass)
    .range([box.x, box.x + box.width])
    .clamp(true)
  const y = scaleLog()
    .domain(domain.softness)
    .range([box.y + box.height, box.y])
    .clamp(true)
  return {
    box,
    height: box.y + box.height + below,
    x: mass => x(mass),
    y: softness => y(softness),
    massAt: at => x.invert(at),
    softnessAt: at => y.invert(at),
  }
}
