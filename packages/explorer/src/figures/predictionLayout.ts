import { displayUnit, fromDisplay, type QuantityName, toDisplay } from '@swardsink/model'
import { ticks as linearTicks, scaleLinear } from 'd3'
import { type Frame, lineHeight, textSize } from './frame.ts'
import type { PredictionWords } from './predictionWords.ts'
import { textWidth } from './textWidth.ts'
import { decimalsOf, roundNumber, type Tick } from './ticks.ts'

/** A prediction and what it is set against; values SI, or in the unit they are told in. */
export type PredictionSpec = {
  readonly told: { readonly quantity: QuantityName } | { readonly unit: string }
  /** What is asked, in a word or two, for the axis. */
  readonly what: string
  readonly domain: readonly [number, number]
  /** Larger is deeper, and lower on the page. */
  readonly deep: boolean
  readonly now: number | null
  readonly yours: number | null
  /** null until it is revealed. */
  readonly model: number | null
  /** Where the drawn roller is between what was said, 0, and the model, 1. */
  readonly settled: number
  readonly guesses: readonly number[]
  readonly roller: { readonly diameter: number; readonly at: 'front' | 'rear' } | null
  /** The signed error as it is read; empty before there is one. */
  readonly error: string
  readonly text: (value: number) => string
  /** What was said may still be moved; what is spoken of it. */
  readonly movable: boolean
  readonly spoken: string
}

export type PredictionLayout = {
  readonly height: number
  readonly left: number
  readonly right: number
  readonly top: number
  readonly foot: number
  /** The ground line of a roller. */
  readonly ground: number
  readonly y: (value: number) => number
  readonly valueAt: (y: number) => number
  readonly ticks: readonly Tick[]
  readonly axis: string
  /** px per metre along the ground, and how many times depth is drawn. */
  readonly along: number
  readonly times: number
}

const TALL = 250
/** Room for the roller above the ground. */
const ROOF = 38
const TIMES = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200, 300, 500, 1000]
/** Part of the drawn width that the contact at the foot of the scale may take. */
const WIDEST = 0.62

function ticksOf(
  { told, domain }: PredictionSpec,
  count: number,
  frame: Frame<PredictionWords>,
): readonly Tick[] {
  const shown = (value: number) => ('quantity' in told ? toDisplay(value, told.quantity, frame.units) : value)
  const back = (value: number) =>
    'quantity' in told ? fromDisplay(value, told.quantity, frame.units) : value
  const round = linearTicks(shown(domain[0]), shown(domain[1]), count)
  const decimals = decimalsOf(round)
  return round.map(value => ({ value: back(value), text: roundNumber(value, decimals, frame) }))
}

export function predictionLayout(spec: PredictionSpec, frame: Frame<PredictionWords>): PredictionLayout {
  const size = textSize(frame)
  const line = lineHeight(frame)
  const { words, units } = frame
  const ticks = ticksOf(spec, TALL / (line * 2.4), frame)
  const left = Math.ceil(Math.max(...ticks.map(({ text }) => textWidth(text, size)))) + 18
  const names = [
    spec.now === null ? '' : words.now(spec.text(spec.now)),
    spec.yours === null ? '' : words.yours(spec.text(spec.yours)),
    spec.model === null ? '' : words.model(spec.text(spec.model)),
    // Kept free before there is anything to name, so that nothing moves when there is.
    words.model(spec.text(spec.domain[1])),
  ]
  const right = frame.width - Math.ceil(Math.max(...names.map(text => textWidth(text, size, true)))) - 14
  const top = line + 8 + (spec.roller ? ROOF : 6)
  const foot = top + TALL
  const [low, high] = spec.domain
  const y = scaleLinear()
    .domain([low, high])
    .range(spec.deep ? [top, foot] : [foot, top])
  const unit = 'quantity' in spec.told ? displayUnit(spec.told.quantity, units) : spec.told.unit
  const perMetre = TALL / (high - low)
  const half = spec.roller ? Math.sqrt(spec.roller.diameter * Math.max(high, 0)) : 0
  const times =
    TIMES.findLast(factor => (perMetre / factor) * 2 * half > WIDEST * (right - left)) ?? TIMES[0] ?? 1
  const next = TIMES.find(factor => factor > times) ?? times
  const fits = (perMetre / times) * 2 * half <= WIDEST * (right - left)
  const drawn = fits ? times : next
  return {
    height: foot + 12,
    left,
    right,
    top,
    foot,
    ground: y(0),
    y: value => y(value),
    valueAt: at => Math.min(high, Math.max(low, y.invert(at))),
    ticks,
    axis: words.axis({ what: spec.what, unit }),
    along: perMetre / drawn,
    times: drawn,
  }
}
