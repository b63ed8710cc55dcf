import { randomFrom } from '../../../numerics/index.ts'
import type { Interval } from '../fit.ts'

export type Bootstrapped = {
  readonly interval: Interval
  readonly draws: number
  /** Draws that held one set only, again and again: they have no scatter of their own, and were left out. */
  readonly failed: number
  readonly seed: number
}

/** Below this the ends hang on a handful of resamples: of 4 sets it is 1.7 times as wide as Student's t, of 6 1.1. */
const FEWEST_STUDENTISED = 6
/** Below this the percentile bootstrap is too narrow: of 8 sets it covers 88 instead of 95 %. */
const FEWEST_PERCENTILE = 30
/** More failures than this and the rest no longer stands for all. */
const MOST_FAILED = 0.1
/** Resamples whose scatter is this small beside that of the sets are copies of one set. */
const NONE = 1e-9

type Question = {
  readonly values: readonly number[]
  readonly level: number
  readonly draws: number
  readonly seed: number
  /** How far an error that all estimates have in common reaches at this level: resampling does not show it. */
  readonly sharedReach: number
}

const undetermined = (why: string): Interval => ({ kind: 'undetermined', why })

/** Quantile of sorted numbers, a straight line between neighbours. */
function quantile(sorted: Float64Array, q: number): number {
  const at = q * (sorted.length - 1)
  const below = Math.floor(at)
  const low = sorted[below]!
  return low + (at - below) * ((sorted[below + 1] ?? low) - low)
}

/**
 * Resampling of whole sets, on the axis the values are given on.
 *
 *   t′ = (x̄′ − x̄)√m/S′ of each draw;  studentised: x̄ − t′₍hi₎ S/√m to x̄ − t′₍lo₎ S/√m;  percentile: of x̄′ itself
 *
 * A common error of reach c widens each end to √(own² + c²).
 *
 * Source  Efron 1979, Annals of Statistics 7:1-26; Hall 1988, Annals of Statistics 16:927-953; for the
 *         common error Zou and Donner 2008, Statistics in Medicine 27:1693-1702 (from memory)
 */
export function bootstrapSets({ values, level, draws, seed, sharedReach }: Question): {
  readonly studentised: Bootstrapped
  readonly percentile: Bootstrapped
} {
  const m = values.length
  const { mean, deviation } = momentsOf(values)
  const random = randomFrom(seed)
  const means = new Float64Array(draws)
  const ratios = new Float64Array(draws)
  const drawn = new Float64Array(m)
  let failed = 0
  for (let draw = 0; draw < draws; draw++) {
    for (let j = 0; j < m; j++) drawn[j] = values[random.integer(m)]!
    const own = momentsOf(drawn)
    means[draw] = own.mean
    if (own.deviation > NONE * deviation)
      ratios[draw - failed] = ((own.mean - mean) * Math.sqrt(m)) / own.deviation
    else failed++
  }
  means.sort()
  const sorted = ratios.subarray(0, draws - failed).sort()
  const [lower, upper] = [(1 - level) / 2, (1 + level) / 2]
  const step = deviation / Math.sqrt(m)
  const lost = failed > MOST_FAILED * draws ? `${failed} of ${draws} draws held one set only` : null
  const few = m < FEWEST_STUDENTISED ? `told from ${FEWEST_STUDENTISED} sets on` : lost
  const narrow = m < FEWEST_PERCENTILE ? `too narrow below ${FEWEST_PERCENTILE} sets` : null
  /** The common error is independent of what was drawn: squares of the reaches add, each end by itself. */
  const between = (low: number, high: number): Interval => ({
    kind: 'interval',
    low: mean - Math.hypot(mean - low, sharedReach),
    high: mean + Math.hypot(high - mean, sharedReach),
    level,
  })
  return {
    studentised: {
      draws,
      seed,
      failed,
      interval:
        few === null
          ? between(mean - quantile(sorted, upper) * step, mean - quantile(sorted, lower) * step)
          : undetermined(few),
    },
    percentile: {
      draws,
      seed,
      failed: 0,
      interval:
        narrow === null ? between(quantile(means, lower), quantile(means, upper)) : undetermined(narrow),
    },
  }
}

function momentsOf(values: ArrayLike<number>): { mean: number; deviation: number } {
  let sum = 0
  for (let i = 0; i < values.length; i++) sum += values[i]!
  const mean = sum / values.length
  let squares = 0
  for (let i = 0; i < values.length; i++) squares += (values[i]! - mean) ** 2
  return { mean, deviation: Math.sqrt(squares / (values.length - 1)) }
}
