import { scaleLinear } from 'd3'
import { type Frame, layoutOf, lineHeight, textSize } from './frame.ts'
import type { SpreadWords } from './spreadWords.ts'
import { textWidth } from './textWidth.ts'

/** Heights that scatter, SI. */
export type SpreadSpec = {
  readonly nominal: number | null
  /** 2.5, 50 and 97.5 %. */
  readonly quantiles: readonly [low: number, middle: number, high: number]
  /** Counts of draws; null while only the width of the scatter is known. */
  readonly histogram: {
    readonly from: number
    readonly width: number
    readonly counts: readonly number[]
  } | null
  readonly deviation: number
  readonly wanted: { readonly height: number; readonly tolerance: number } | null
}

/** One step of the outline: from a height to another, and how often, against the oftenest. */
export type Step = { readonly from: number; readonly to: number; readonly often: number }

export type SpreadLayout = {
  readonly domain: readonly [number, number]
  readonly steps: readonly Step[]
  readonly left: number
  /** How far the oftenest reaches, and where the labels begin. */
  readonly reach: number
  readonly names: number
  readonly top: number
  readonly foot: number
  readonly height: number
  readonly y: (height: number) => number
}

const TALL = { wide: 300, middle: 280, narrow: 260 } as const
/** Of the drawn heights, outside everything that is shown. */
const AIR = 0.05
/** Tails are drawn this far beyond 95 of 100, against their width: further out there is next to nothing. */
const TAIL = 0.7
const NORMAL_STEPS = 48
const NORMAL_REACH = 3
/** Heights that differ by less than this are one height. */
const NONE = 1e-9

function normalSteps({ quantiles: [, middle], deviation }: SpreadSpec): readonly Step[] {
  const width = (2 * NORMAL_REACH * deviation) / NORMAL_STEPS
  return Array.from({ length: NORMAL_STEPS }, (_, i) => {
    const from = middle - NORMAL_REACH * deviation + i * width
    const z = (from + width / 2 - middle) / deviation
    return { from, to: from + width, often: Math.exp((-z * z) / 2) }
  })
}

function stepsOf(spec: SpreadSpec): readonly Step[] {
  const { histogram, deviation } = spec
  if (!histogram) return deviation > NONE ? normalSteps(spec) : []
  const { from, width, counts } = histogram
  const most = Math.max(1, ...counts)
  return width > 0
    ? counts.map((count, i) => ({ from: from + i * width, to: from + (i + 1) * width, often: count / most }))
    : []
}

export function spreadLayout(spec: SpreadSpec, frame: Frame<SpreadWords>): SpreadLayout {
  const { quantiles, nominal, wanted } = spec
  const { words, format, width } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const [low, , high] = quantiles
  const tail = TAIL * (high - low)
  const steps = stepsOf(spec).filter(({ from, to }) => to >= low - tail && from <= high + tail)
  const shown = [
    ...steps.flatMap(({ from, to }) => [from, to]),
    ...quantiles,
    ...(nominal === null ? [] : [nominal]),
    ...(wanted ? [wanted.height - wanted.tolerance, wanted.height + wanted.tolerance] : []),
  ]
  const [least, most] = [Math.min(...shown), Math.max(...shown)]
  const air = Math.max(AIR * (most - least), 0.02e-3)
  const domain = [least - air, most + air] as const
  const layout = layoutOf(frame)
  const top = line + 14
  const foot = top + TALL[layout]
  const height = (value: number) => format(value, 'height', { unit: false })
  const texts = [
    words.low(height(low)),
    words.middle(height(quantiles[1])),
    words.high(height(high)),
    ...(nominal === null ? [] : [words.present(height(nominal))]),
    ...(wanted ? [words.wanted({ height: height(wanted.height), tolerance: height(wanted.tolerance) })] : []),
  ]
  const names = Math.max(...texts.map(text => textWidth(text, size, true)))
  const left = Math.ceil(textWidth('00.00', size)) + 16
  const y = scaleLinear().domain(domain).range([foot, top])
  const end = width - Math.ceil(names) - 6
  return {
    domain,
    steps,
    left,
    reach: Math.max(left + 40, end - 34),
    names: end,
    top,
    foot,
    height: foot + line + 10,
    y: value => y(value),
  }
}
