import { catalogue, fromDisplay, type QuantityName, toDisplay } from '@swardsink/model'
import { ticks as linearTicks } from 'd3'
import { RAMP_STEPS } from '../look/index.ts'
import type { Frame } from './frame.ts'
import { decimalsOf, roundNumber } from './ticks.ts'

export type Rung = {
  /** SI */
  readonly value: number
  readonly text: string
  /** Step of the wash above this value, 1 to 8, and below it. */
  readonly above: number
  readonly below: number
}
export type ContourLadder = {
  readonly kind: 'doubling' | 'even'
  readonly rungs: readonly Rung[]
  /** Step of the wash below the first rung, and of the whole map where there is none. */
  readonly base: number
}

const MOST_RUNGS = RAMP_STEPS - 1
/** Rungs left out at the shallow end, where contours say least, before every second one is taken. */
const MOST_DROPPED = 2
/** Fewer contours than these say too little: then even steps are taken. */
const LEAST_RUNGS = 3

/**
 * Contours at a fixed ladder in steps of √2, written with two figures as it is printed: … 0.25 0.35 0.5 0.7 1 1.4 2 2.8
 * …, in the reader's unit. A wider range takes every second rung, every fourth; a narrow one, or one that
 * reaches zero, takes even steps of 1, 2 or 5.
 */
export function contourLadder(q: {
  low: number
  high: number
  quantity: QuantityName
  /** Whether a small value is the deep one, as with a height. */
  deepIsLow: boolean
  reader: Pick<Frame<unknown>, 'units' | 'locale'>
}): ContourLadder {
  const [low, high] = [q.low, q.high].map(value => toDisplay(value, q.quantity, q.reader.units)) as [
    number,
    number,
  ]
  // Heights are compared by their difference, so a height never takes the ladder.
  const doubling = low > 0 && !q.deepIsLow ? doublingRungs(low, high) : []
  const kind = doubling.length >= LEAST_RUNGS ? 'doubling' : 'even'
  const shown = kind === 'doubling' ? doubling : evenRungs(low, high)
  // As many decimals as the quantity has elsewhere, more only where a rung itself needs them.
  const usual = Math.min(decimalsOf(shown), catalogue[q.quantity][q.reader.units].decimals)
  const first = 1 + Math.floor((MOST_RUNGS - shown.length) / 2)
  const step = (i: number) => (q.deepIsLow ? RAMP_STEPS + 1 - (first + i) : first + i)
  return {
    kind,
    base: step(0),
    rungs: shown.map((value, i) => ({
      value: fromDisplay(value, q.quantity, q.reader.units),
      text: roundNumber(value, Math.max(usual, decimalsOf([value])), q.reader),
      below: step(i),
      above: step(i + 1),
    })),
  }
}

/** The rung of an index: 2^(k/2), its half steps written as 1.4 times a power of two, to two figures. */
export function rungAt(index: number): number {
  const half = ((index % 2) + 2) % 2
  const exact = (half === 1 ? 1.4 : 1) * 2 ** ((index - half) / 2)
  return Number(exact.toPrecision(2))
}

function doublingRungs(low: number, high: number): readonly number[] {
  const first = Math.floor(2 * Math.log2(low)) - 2
  const last = Math.ceil(2 * Math.log2(high)) + 2
  for (let stride = 1; ; stride *= 2) {
    const rungs: number[] = []
    for (let index = Math.ceil(first / stride) * stride; index <= last; index += stride) {
      const rung = rungAt(index)
      if (rung > low && rung < high) rungs.push(rung)
    }
    if (rungs.length <= MOST_RUNGS + MOST_DROPPED) return rungs.slice(-MOST_RUNGS)
  }
}

function evenRungs(low: number, high: number): readonly number[] {
  if (!(high > low)) return []
  for (let count = MOST_RUNGS + 1; count > 0; count--) {
    const rungs = linearTicks(low, high, count).filter(value => value > low && value < high)
    if (rungs.length <= MOST_RUNGS) return rungs
  }
  return []
}
