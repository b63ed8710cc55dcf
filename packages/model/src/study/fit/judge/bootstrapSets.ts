import { randomFrom } from '../../../numerics/index.ts'
import type { Interval } from '../fit.ts'

export type Bootstrapped = {
  readonly interval: Interval
  readonly draws: number
  /** Draws that held one set only, again and again: they have no scatter of their own, and were left out. */
  readonly failed: number
  readonly seed: number
}

/** Below this a resample has too few different sets to show the shape of anything. */
const FEWEST_STUDENTISED = 4
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
  /** Whether the estimates also have an error in common, which resampling them would not show. */
  readonly shared: boolean
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
 * Source  Efron 1979, Annals of Statistics 7:1-26; Hall 1988, Annals of Statistics 16:927-953 (from memory)
 */
export function bootstrapSets({ values, level, draws, seed, shared }: Question): {
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
  const told = { draws, seed }
  const common = shared
    ? 'the sets share a fitted parameter, whose error resampling them does not show'
    : null
  const step = deviation / Math.sqrt(m)
  const few = common ?? (m < FEWEST_STUDENTISED ? `told from ${FEWEST_STUDENTISED} sets on` : null)
  const lost = failed > MOST_FAILED * draws ? `${failed} of ${draws} draws held one set only` : null
  const narrow = common ?? (m < FEWEST_PERCENTILE ? `too narrow below ${FEWEST_PERCENTILE} sets` : null)
  return {
    studentised: {
      ...told,
      failed,
      interval:
        few === null && lost === null
          ? {
              kind: 'interval',
              low: mean - quantile(sorted, upper) * step,
              high: mean - quantile(sorted, lower) * step,
              level,
            }
          : undetermined(few ?? lost ?? ''),
    },
    percentile: {
      ...told,
      failed: 0,
      interval:
        narrow === null
          ? { kind: 'interval', low: quantile(means, lower), high: quantile(means, upper), level }
          : undetermined(narrow),
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
