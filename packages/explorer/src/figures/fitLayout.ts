import { scaleLinear } from 'd3'
import type { Box } from './box.ts'
import type { FitWords } from './fitWords.ts'
import { type Frame, layoutOf, lineHeight, textSize } from './frame.ts'
import { textWidth } from './textWidth.ts'

type Range = readonly [number, number]
/** SI. A point of the curve, with where the curve and one more reading may lie; null where that is not known. */
export type FitPoint = {
  readonly x: number
  readonly sinkage: number
  readonly curve: Range | null
  readonly reading: Range | null
  readonly beyond: boolean
}
export type FitReading = { readonly x: number; readonly sinkage: number; readonly residual: number }
export type FitSpec = {
  readonly quantity: 'load' | 'pressure'
  readonly most: number
  readonly points: readonly FitPoint[]
  readonly readings: readonly FitReading[]
  /** Curves of other sets, by their names. */
  readonly others: readonly { readonly name: string; readonly points: readonly FitPoint[] }[]
  /** Of one reading; null where it is not known. */
  readonly scatter: number | null
  readonly present: { readonly x: number; readonly sinkage: number } | null
}

export type FitLayout = {
  readonly box: Box
  readonly strip: Box
  readonly height: number
  /** What the axes reach, SI. */
  readonly depths: Range
  readonly residual: number
  readonly x: (value: number) => number
  readonly y: (sinkage: number) => number
  /** In the strip: what lies deeper than the fit is further down. */
  readonly r: (residual: number) => number
}

export const NUMBERS_GAP = 14
const PROPORTION = { wide: 0.46, middle: 0.56, narrow: 0.78 }
const STRIP = { wide: 0.13, middle: 0.17, narrow: 0.24 }
const NAMES = { wide: 0.22, middle: 0.24, narrow: 0.27 }
const AIR = 1.06
/** Bands may be wide without end: they are drawn this far beyond what was read or fitted, and leave the figure there. */
const FAR = 1.5
/** The strip reaches at least so many standard deviations to either side. */
const STRIP_REACH = 2.6
/** An axis without any length still has two ends, m. */
const LEAST_DEPTH = 1e-5

const largest = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b), 0)
const smallest = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b), 0)

function depthsOf({ points, readings, others, present }: FitSpec): Range {
  const firm = [
    ...points.map(({ sinkage }) => sinkage),
    ...readings.map(({ sinkage }) => sinkage),
    ...others.flatMap(one => one.points.map(({ sinkage }) => sinkage)),
    present?.sinkage ?? 0,
  ]
  const deepest = largest(firm)
  const bands = points.flatMap(({ reading, curve }) => (reading ?? curve ?? []) as readonly number[])
  const within = bands.filter(value => value <= FAR * deepest)
  // A load lifts nothing: where a band reaches above the ground it ends there. A reading may lie above it.
  const low = smallest(readings.map(({ sinkage }) => sinkage))
  const high = AIR * largest([...firm, ...within])
  return [AIR * low, Math.max(high, LEAST_DEPTH)]
}

/** Names at the ends of lines, widest first. */
const namesOf = ({ fit, curve, oneMore, shallower, deeper }: FitWords): readonly string[] => [
  fit,
  ...curve,
  ...oneMore,
  shallower,
  deeper,
]

/** Depth points down from the ground line; load or pressure to the right; what the fit leaves over in a strip below. */
export function fitLayout(spec: FitSpec, frame: Frame<FitWords>): FitLayout {
  const { words, width, format } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const layout = layoutOf(frame)
  const twoS = spec.scatter === null ? '' : words.twoS(format(2 * spec.scatter, 'sinkage', { unit: false }))
  const wide = Math.max(
    ...[...namesOf(words), twoS, ...spec.others.map(({ name }) => name)].map(text => textWidth(text, size)),
  )
  const left = Math.ceil(textWidth('−10.00', size)) + NUMBERS_GAP + 4
  const right = Math.ceil(Math.min(wide, NAMES[layout] * width)) + 16
  const box = {
    x: left,
    y: 2 * line + 10,
    width: Math.max(80, width - left - right),
    height: Math.round(width * PROPORTION[layout]),
  }
  // Without a reading on the curve nothing is left over to be drawn: the load is read off under the curve itself.
  const strip =
    spec.readings.length === 0
      ? { ...box, y: box.y + box.height, height: 0 }
      : { ...box, y: box.y + box.height + 2 * line + 16, height: Math.round(width * STRIP[layout]) }
  const depths = depthsOf(spec)
  const over = largest(spec.readings.map(({ residual }) => Math.abs(residual)))
  const residual = Math.max(STRIP_REACH * (spec.scatter ?? 0), AIR * 1.1 * over, LEAST_DEPTH)
  const most = spec.most > 0 ? spec.most : 1
  const x = scaleLinear()
    .domain([0, most])
    .range([box.x, box.x + box.width])
  const y = scaleLinear()
    .domain([...depths])
    .range([box.y, box.y + box.height])
  const r = scaleLinear()
    .domain([-residual, residual])
    .range([strip.y, strip.y + strip.height])
  return {
    box,
    strip,
    depths,
    residual,
    height: strip.y + strip.height + NUMBERS_GAP + 2 * line + 10,
    x: value => x(value),
    y: sinkage => y(sinkage),
    r: value => r(value),
  }
}
