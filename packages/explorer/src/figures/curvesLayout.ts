import { scaleLinear } from 'd3'
import type { Box } from './box.ts'
import type { CurvesWords } from './curvesWords.ts'
import { type Frame, layoutOf, lineHeight, type Point, textSize } from './frame.ts'
import { textWidth } from './textWidth.ts'

/** SI: a load or a pressure, and the sinkage it gives. */
export type CurveData = { readonly x: number; readonly sinkage: number }
export type DrawnCurve = {
  readonly label: string
  readonly present: boolean
  /** None where this is only a mark on the curve of the one in hand. */
  readonly points: readonly CurveData[]
  readonly knownTo: number | null
  readonly bottomsOut: boolean
  readonly own: CurveData | null
}
export type CurvesSpec = {
  readonly quantity: 'load' | 'pressure'
  readonly curves: readonly DrawnCurve[]
  readonly present: CurveData
  readonly softness: CurveData | null
  readonly readings: readonly CurveData[]
  /** End of the axis. */
  readonly most: number
}

export type CurvesLayout = {
  readonly box: Box
  readonly height: number
  readonly deepest: number
  readonly x: (value: number) => number
  readonly y: (sinkage: number) => number
  readonly at: (point: CurveData) => Point
}

const PROPORTION = { wide: 0.46, middle: 0.6, narrow: 0.86 }
/** Names at the right take at most so much of the width. */
const NAMES = { wide: 0.24, middle: 0.28, narrow: 0.3 }
export const NUMBERS_GAP = 14
/** Air below the deepest point. */
const AIR = 1.06

/** A text that is cut off where it is wider than its room. */
export function shortened(text: string, room: number, size: number): string {
  if (textWidth(text, size, true) <= room) return text
  let end = text.length - 1
  while (end > 1 && textWidth(`${text.slice(0, end)}…`, size, true) > room) end--
  return `${text.slice(0, end).trimEnd()}…`
}

/** The room for names at the ends of the lines, px. */
export const namesRoom = (frame: Pick<Frame<unknown>, 'width' | 'text'>): number =>
  frame.width * NAMES[layoutOf(frame)]

/** Depth points down from the ground line at the top; load or pressure to the right. */
export function curvesLayout(spec: CurvesSpec, frame: Frame<CurvesWords>): CurvesLayout {
  const size = textSize(frame)
  const line = lineHeight(frame)
  const layout = layoutOf(frame)
  const marks = spec.curves.flatMap(({ points, own }) => [points.at(-1), own ?? undefined])
  const depths = [...marks, spec.present, spec.softness ?? undefined, ...spec.readings].map(
    mark => mark?.sinkage ?? 0,
  )
  const deepest = AIR * Math.max(...depths)
  const names = Math.max(0, ...spec.curves.map(({ label }) => textWidth(label, size, true)))
  const left = Math.ceil(textWidth('10.00', size)) + NUMBERS_GAP + 4
  const right = Math.ceil(Math.min(names, namesRoom(frame))) + 18
  const box = {
    x: left,
    y: 2 * line + 8,
    width: Math.max(80, frame.width - left - right),
    height: Math.round(frame.width * PROPORTION[layout]),
  }
  const x = scaleLinear()
    .domain([0, spec.most])
    .range([box.x, box.x + box.width])
  const y = scaleLinear()
    .domain([0, deepest])
    .range([box.y, box.y + box.height])
  return {
    box,
    height: box.y + box.height + NUMBERS_GAP + 2 * line + 8,
    deepest,
    x: value => x(value),
    y: sinkage => y(sinkage),
    at: point => ({ x: x(point.x), y: y(point.sinkage) }),
  }
}
