import { type Random, randomFrom } from '../../numerics/index.ts'
import type { SettledUnit } from '../../unit/index.ts'
import { closedHeights, isClosed } from './closedHeights.ts'
import { deviationOf } from './distribution.ts'
import { drawSample, type HeightSample } from './heightSample.ts'
import type { Posed } from './posed.ts'
import { UNSETTLED } from './settleColumns.ts'
import { solvedHeight } from './solvedHeight.ts'
import { allSound, type NoAnswer, partsOfDraw, unsound } from './soundDraws.ts'
import { surrogateHeights } from './surrogateHeights.ts'

/**
 * How the heights were found: every draw from explicit loads, from a polynomial learnt from draws that were solved one
 * by one, or every draw solved.
 */
export type Method =
  | { readonly kind: 'closed form'; readonly solved: number; readonly misses: Misses }
  | { readonly kind: 'surrogate'; readonly learntFrom: number; readonly misses: Misses }
  | { readonly kind: 'one by one' }

/** How far heights lay from those of settle, over draws that were solved to see it. */
export type Misses = {
  readonly checked: number
  readonly largest: number
  /** Root mean square over draws taken as they come. */
  readonly typical: number
}

export type HeightDraws = {
  readonly sample: HeightSample
  readonly heights: Float64Array
  /** Heights of the draws that have an answer, lowest first. */
  readonly sorted: Float64Array
  /** 0 where a draw has an answer, else one more than its place in `reasons`. */
  readonly codes: Uint8Array
  readonly reasons: readonly NoAnswer[]
  readonly method: Method
}

/** Blocks of draws: enough to tell an error to a sixth of itself. */
const BLOCKS = 20
/** Draws solved one by one where there is no quicker way that is exact enough. */
const MOST_SOLVED = 2_000
/** Draws solved to see how far off the rest are: as they come, and lowest and highest. */
const CHECKED = 40
const AT_ENDS = 10
/** What a surrogate may miss, as parts of the standard deviation of the heights: typically, and at its ends. */
const TYPICAL_MISS = 0.02
const LARGEST_MISS = 0.15

const layoutOf = (draws: number) => ({ blocks: BLOCKS, size: Math.ceil(draws / BLOCKS) })

/** Draws without an answer, by reason. */
function ledger(count: number) {
  const reasons: NoAnswer[] = []
  const codes = new Uint8Array(count)
  const mark = (draw: number, { why, where }: NoAnswer) => {
    const known = reasons.findIndex(one => one.why === why && one.where === where)
    codes[draw] = (known >= 0 ? known : reasons.push({ why, where }) - 1) + 1
  }
  return { reasons, codes, mark }
}

type Drawn = Omit<HeightDraws, 'method' | 'sorted'> & {
  readonly mark: (draw: number, reason: NoAnswer) => void
}

/** Draws, those that make no unit or no turf marked, no heights yet. */
function freshDraws(posed: Posed, draws: number, random: Random): Drawn {
  const sample = drawSample(posed.varied, layoutOf(draws), random)
  const count = sample.layout.blocks * sample.layout.size
  const { reasons, codes, mark } = ledger(count)
  if (!allSound(posed.varied, sample))
    for (let i = 0; i < count; i++) {
      const reason = unsound(partsOfDraw(posed.varied, sample, i))
      if (reason) mark(i, reason)
    }
  return { sample, heights: new Float64Array(count), codes, reasons, mark }
}

/** Solves every draw that a column marked, or all of them. */
function solveDraws(
  posed: Posed,
  drawn: Drawn,
  isAsked: (code: number) => boolean,
  each: (done: number) => void,
) {
  const { sample, heights, codes, mark } = drawn
  for (let i = 0; i < heights.length; i++) {
    if (!isAsked(codes[i]!)) continue
    const height = solvedHeight(posed, sample, i)
    codes[i] = 0
    if (typeof height === 'number') heights[i] = height
    else mark(i, height)
    each(i + 1)
  }
}

/** Heights of the draws that have an answer, among some, lowest first. */
function sortedHeights({ heights, codes }: Drawn | HeightDraws, from = 0, to = heights.length): Float64Array {
  const answered = new Float64Array(to - from)
  let count = 0
  for (let i = from; i < to; i++) if (codes[i] === 0) answered[count++] = heights[i]!
  return answered.subarray(0, count).sort()
}

/** Heights of each block, lowest first. */
export const blocksOf = (drawn: HeightDraws): Float64Array[] => {
  const { blocks, size } = drawn.sample.layout
  return Array.from({ length: blocks }, (_, block) => sortedHeights(drawn, block * size, (block + 1) * size))
}

/** Answered draws with the lowest and with the highest heights. */
function atEnds({ heights, codes }: Drawn, sorted: Float64Array): number[] {
  const low = sorted[Math.min(AT_ENDS, sorted.length) - 1] ?? Number.NaN
  const high = sorted[Math.max(sorted.length - AT_ENDS, 0)] ?? Number.NaN
  const places: number[] = []
  for (let i = 0; i < heights.length; i++)
    if ((heights[i]! <= low || heights[i]! >= high) && codes[i] === 0) places.push(i)
  return places.slice(0, 2 * AT_ENDS)
}

/** Solves some draws to see how far off the heights are; undefined when one of them has no answer after all. */
function missesOf(posed: Posed, drawn: Drawn, sorted: Float64Array, typicalOf: number): Misses | undefined {
  const { sample, heights, codes } = drawn
  const step = Math.max(1, Math.floor(heights.length / typicalOf))
  const taken = Array.from({ length: typicalOf }, (_, k) => k * step).filter(i => codes[i] === 0)
  const ends = atEnds(drawn, sorted)
  let largest = 0
  let squares = 0
  for (const [k, i] of [...taken, ...ends].entries()) {
    const solved = solvedHeight(posed, sample, i)
    if (typeof solved !== 'number') return undefined
    const miss = Math.abs(solved - heights[i]!)
    largest = Math.max(largest, miss)
    if (k < taken.length) squares += miss * miss
  }
  return {
    checked: taken.length + ends.length,
    largest,
    typical: Math.sqrt(squares / Math.max(1, taken.length)),
  }
}

const isAnswered = (code: number) => code === 0
const NONE_CHECKED: Misses = { checked: 0, largest: 0, typical: 0 }

function fromClosedForms(
  posed: Posed,
  nominal: SettledUnit,
  drawn: Drawn,
  step: (part: number) => void,
): HeightDraws {
  const count = drawn.heights.length
  closedHeights(posed, drawn.sample, nominal, drawn.heights, drawn.codes, done => step(done / count))
  const solved = drawn.codes.reduce((sum, code) => sum + (code === UNSETTLED ? 1 : 0), 0)
  solveDraws(
    posed,
    drawn,
    code => code === UNSETTLED,
    done => step(done / count),
  )
  const sorted = sortedHeights(drawn)
  const misses = missesOf(posed, drawn, sorted, CHECKED / 2) ?? NONE_CHECKED
  return { ...drawn, sorted, method: { kind: 'closed form', solved, misses } }
}

/** Heights by a polynomial; undefined where it is not exact enough. */
function fromSurrogate(
  posed: Posed,
  drawn: Drawn,
  random: Random,
  step: (part: number) => void,
): HeightDraws | undefined {
  const told = surrogateHeights(posed, drawn.sample, random, step)
  if (!told) return undefined
  drawn.heights.set(told.heights)
  const sorted = sortedHeights(drawn)
  const misses = missesOf(posed, drawn, sorted, CHECKED)
  const deviation = deviationOf(sorted)
  const isGood =
    misses && misses.typical <= TYPICAL_MISS * deviation && misses.largest <= LARGEST_MISS * deviation
  return isGood
    ? { ...drawn, sorted, method: { kind: 'surrogate', learntFrom: told.solved, misses } }
    : undefined
}

/**
 * Draws of everything that varies, and the height of each.
 *
 * Loads that are explicit in the sinkage are solved in columns. Elsewhere a polynomial is learnt, and kept when draws
 * solved to check it miss by less than a fiftieth of the scatter (a seventh at the ends). Where it misses by more,
 * or where some turf bottoms out, fewer draws are made and every one is solved.
 */
export function heightDraws(
  posed: Posed,
  nominal: SettledUnit | undefined,
  asked: { readonly draws: number; readonly seed: number; readonly method?: 'quick' | 'one by one' },
  onStep: (part: number) => void,
): HeightDraws {
  const random = randomFrom(asked.seed)
  if (asked.method !== 'one by one' && nominal) {
    const drawn = freshDraws(posed, asked.draws, random)
    const found = isClosed(posed)
      ? fromClosedForms(posed, nominal, drawn, onStep)
      : fromSurrogate(posed, drawn, random, onStep)
    if (found) return found
  }
  const most = asked.method === 'one by one' ? asked.draws : Math.min(asked.draws, MOST_SOLVED)
  const drawn = freshDraws(posed, most, random)
  const count = drawn.heights.length
  solveDraws(posed, drawn, isAnswered, done => onStep(done / count))
  return { ...drawn, sorted: sortedHeights(drawn), method: { kind: 'one by one' } }
}
