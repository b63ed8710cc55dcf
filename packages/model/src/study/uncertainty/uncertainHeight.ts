import type { BottomedOut, Caution, Metres, NotConverged } from '../../quantities/index.ts'
import { settleSound } from '../../unit/index.ts'
import {
  deviationOf,
  type Estimate,
  errorOfBlocks,
  type Histogram,
  histogramOf,
  meanOf,
  PROBABILITIES,
  quantileOf,
} from './distribution.ts'
import { firstOrderShares, type Share, type Shares } from './firstOrderShares.ts'
import { blocksOf, type HeightDraws, heightDraws, type Method } from './heightDraws.ts'
import { type HeightQuestion, type Posed, pose } from './posed.ts'
import type { NoAnswer } from './soundDraws.ts'

/** Draws without an answer, by reason. */
export type Unanswered = NoAnswer & { readonly count: number; readonly share: number }

export type UncertainHeight = {
  readonly outcome: 'answered'
  /** At the nominal values; null when that unit has no answer, `why` says how it ended. */
  readonly nominal: Metres | null
  readonly nominalOutcome: 'settled' | (BottomedOut | NotConverged)['outcome']
  readonly draws: { readonly asked: number; readonly made: number; readonly answered: number }
  /** Never left out in silence: the distribution below is that of the draws that have an answer. */
  readonly unanswered: readonly Unanswered[]
  /** null, as the shares below, where a fit leaves so few degrees of freedom that its scatter has no variance. */
  readonly mean: Estimate | null
  readonly standardDeviation: Estimate | null
  readonly quantiles: readonly ({ readonly probability: number } & Estimate)[]
  readonly histogram: Histogram
  /** Shares of the variance; null when the heights do not vary. */
  readonly hangsOn: readonly Share[] | null
  readonly interactions: Estimate | null
  /** Part of all draws that cut at or below the turf's surface. */
  readonly scalps: Estimate
  /** Parts of all draws, those without an answer apart. */
  readonly wanted?: {
    readonly height: Metres
    readonly tolerance: Metres
    readonly within: Estimate
    readonly below: Estimate
    readonly above: Estimate
  }
  readonly method: Method
  readonly seed: number
  /** Of the nominal unit. */
  readonly cautions: readonly Caution[]
}

/** No draw has an answer. */
export type NoHeight = {
  readonly outcome: 'no answer'
  readonly draws: UncertainHeight['draws']
  readonly unanswered: readonly Unanswered[]
  readonly seed: number
  readonly cautions: readonly Caution[]
}

/** A part of all draws, and its error from what the blocks differ by. */
function partOf({ heights, codes, sample }: HeightDraws, isIt: (height: number) => boolean): Estimate {
  const { blocks, size } = sample.layout
  const parts = Array.from({ length: blocks }, (_, block) => {
    let count = 0
    for (let i = block * size; i < (block + 1) * size; i++) if (codes[i] === 0 && isIt(heights[i]!)) count++
    return count / size
  })
  return {
    value: parts.reduce((sum, part) => sum + part, 0) / blocks,
    standardError: errorOfBlocks(parts),
  }
}

function wantedParts(drawn: HeightDraws, wanted: NonNullable<HeightQuestion['wanted']>) {
  const { height, tolerance } = wanted
  return {
    ...wanted,
    within: partOf(drawn, h => Math.abs(h - height) <= tolerance),
    below: partOf(drawn, h => h < height - tolerance),
    above: partOf(drawn, h => h > height + tolerance),
  }
}

function unansweredOf({ codes, reasons }: HeightDraws): Unanswered[] {
  const counts = new Array<number>(reasons.length).fill(0)
  for (const code of codes) if (code > 0) counts[code - 1]! += 1
  return reasons
    .map((reason, k) => ({ ...reason, count: counts[k]!, share: counts[k]! / codes.length }))
    .sort((a, b) => b.count - a.count)
}

const ANSWERED_BLOCK = 2
/** Student's t has a variance from three degrees of freedom on. */
const LEAST_FREEDOM = 3

/**
 * How the effective height scatters, in the middle of the edge, when what it hangs on is known only so well: the turf
 * as a fit says or as stated, the unit, its rollers and the setting.
 *
 *   height of every draw as settle; quantiles, mean and deviation of the draws that have an answer;
 *   share of an input = Var E(h | input)/Var h
 *
 * Standard errors are those of the limited number of draws alone, from twenty blocks that are independent of each
 * other. With a fit whose noise was estimated the parameters scatter as Student's t; positive ones in the logarithm.
 *
 * Holds   inputs independent of each other but for the parameters of a fit. Bench height and places are as measured
 *         with the rollers fitted: another diameter changes the contact, not the setting. `method` says how the heights
 *         were found and how far they lay from settle
 * Units   heights [m]; scatter in the unit of its input, or relative
 * Throws  InputError when unit, turf, condition, scatter, draws or seed make no sense, or a fit does not determine its
 *         parameters
 * Source  docs/physics.md §7.4
 */
export function uncertainHeight(question: HeightQuestion): UncertainHeight | NoHeight {
  const posed = pose(question)
  const { draws: asked, seed, method, onStep, wanted } = question
  const nominal = settleSound({ ...posed.varied.parts, ...withArc(posed) })
  const settled = nominal.outcome === 'settled' ? nominal : undefined
  const drawn = heightDraws(posed, settled, { draws: asked, seed, ...(method ? { method } : {}) }, part =>
    onStep?.(part),
  )
  onStep?.(1)
  const { sorted } = drawn
  const draws = { asked, made: drawn.heights.length, answered: sorted.length }
  const unanswered = unansweredOf(drawn)
  const { cautions } = nominal
  if (sorted.length < ANSWERED_BLOCK) return { outcome: 'no answer', draws, unanswered, seed, cautions }
  const blocks = blocksOf(drawn).filter(block => block.length >= ANSWERED_BLOCK)
  const estimate = (tell: (values: Float64Array) => number): Estimate => ({
    value: tell(sorted),
    standardError: errorOfBlocks(blocks.map(tell)),
  })
  const hasVariance = (posed.varied.fit?.degreesOfFreedom ?? Number.POSITIVE_INFINITY) >= LEAST_FREEDOM
  const shares = hasVariance ? sharesOf(drawn) : undefined
  return {
    outcome: 'answered',
    nominal: settled ? settled.effectiveHeight.middle : null,
    nominalOutcome: nominal.outcome,
    draws,
    unanswered,
    mean: hasVariance ? estimate(meanOf) : null,
    standardDeviation: hasVariance ? estimate(deviationOf) : null,
    quantiles: PROBABILITIES.map(probability => ({
      probability,
      ...estimate(values => quantileOf(values, probability)),
    })),
    histogram: histogramOf(sorted),
    hangsOn: shares?.hangsOn ?? null,
    interactions: shares?.interactions ?? null,
    scalps: partOf(drawn, height => height <= 0),
    ...(wanted ? { wanted: wantedParts(drawn, wanted) } : {}),
    method: drawn.method,
    seed,
    cautions,
  }
}

const withArc = ({ arc, balance }: Posed) => ({ ...(arc ? { arc } : {}), ...(balance ? { balance } : {}) })

/** Heights that differ by rounding alone hang on nothing. */
const NO_SCATTER = 1e-12

function sharesOf({ sample, heights, codes, sorted }: HeightDraws): Shares | undefined {
  const range = sorted.at(-1)! - sorted[0]!
  if (!(range > NO_SCATTER * Math.abs(sorted[0]!))) return undefined
  const isAnswered = new Uint8Array(codes.length)
  for (let i = 0; i < codes.length; i++) isAnswered[i] = codes[i] === 0 ? 1 : 0
  return firstOrderShares(sample, heights, isAnswered, sorted)
}
