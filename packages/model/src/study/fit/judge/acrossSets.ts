import { twoSided } from '../../../numerics/index.ts'
import { describe, numberProblem, type Problem, refuse } from '../../../quantities/index.ts'
import type { Interval } from '../fit.ts'
import { type Bootstrapped, bootstrapSets } from './bootstrapSets.ts'

export type AcrossSetsQuestion = {
  /** One a set: softness, drop, or anything else worked out from the set's own fit. */
  readonly estimates: readonly { readonly set: string; readonly value: number }[]
  /** 'ratio' for what is positive and scatters by factors, as softness does; 'difference' for the rest. */
  readonly scale: 'ratio' | 'difference'
  readonly level?: number
  /**
   * Variance, on the scale's own axis, of an error that all estimates have in common because the fit shares
   * parameters over sets; null degrees of freedom when the noise is known.
   */
  readonly shared?: { readonly variance: number; readonly degreesOfFreedom: number | null }
  readonly bootstrap?: { readonly draws: number; readonly seed: number }
}

/** What sets say of the population they were drawn from: greens, plots, days. */
export type AcrossSets = {
  readonly sets: number
  readonly scale: AcrossSetsQuestion['scale']
  /** Median of the population. */
  readonly median: number
  /** Standard deviation between sets: of logarithms for a ratio; null for one set. */
  readonly spread: number | null
  /** Where the median of the population lies, by Student's t over sets. */
  readonly interval: Interval
  /** Where one more set of the same population will lie. */
  readonly newSet: Interval
  /** The same median by resampling whole sets; null unless asked. */
  readonly studentised: Bootstrapped | null
  readonly percentile: Bootstrapped | null
}

const LEVEL = 0.95

function questionProblems({ estimates, scale, level = LEVEL, bootstrap }: AcrossSetsQuestion): Problem[] {
  const sets = estimates.map(({ set }) => set)
  const twice = sets.find((set, i) => sets.indexOf(set) !== i)
  return [
    ...(estimates.length === 0
      ? [{ path: 'estimates', expected: 'at least one set', received: 'none' }]
      : []),
    ...(twice === undefined
      ? []
      : [{ path: 'estimates', expected: 'every set once', received: `${describe(twice)} twice` }]),
    ...estimates.flatMap(({ value }, i) =>
      numberProblem(value, `estimates.${i}.value`, 'ratio', scale === 'ratio' ? { above: 0 } : {}),
    ),
    ...numberProblem(level, 'level', 'ratio', { above: 0, below: 1 }),
    ...(bootstrap === undefined
      ? []
      : numberProblem(bootstrap.draws, 'bootstrap.draws', 'count', { atLeast: FEWEST_DRAWS })),
  ]
}

/** With fewer draws the ends of a 95 % interval are single draws. */
const FEWEST_DRAWS = 200

/** From so many degrees of freedom on Student's t is the normal distribution, to 2e-8. */
const ENDLESS = 1e8

const ONE_SET = 'one set says nothing of how sets differ: measure more sets'

/**
 * The population behind several sets, from one estimate a set. What scatters are whole sets: readings within a set
 * say nothing of the next green.
 *
 *   x_j = ln value_j;  S² = Σ (x_j − x̄)²/(m − 1);  var x̄ = S²/m + C
 *   exp(x̄ ± t √(S²/m + C));  one more set: exp(x̄ ± t √(S² (1 + 1/m) + C))
 *
 * C is what shared parameters do to all sets at once: the mean covariance between the estimates of different sets. S²
 * holds the rest, scatter between sets and noise within; the degrees of freedom are Satterthwaite's.
 *
 * Holds   estimates near normal on their scale; sets drawn at random. The interval for one more set is a little wide
 *         by the noise of an estimate, which S² contains.
 * Throws  InputError when a value, the level or the number of draws makes no sense
 * Source  derived; Satterthwaite 1946, Biometrics Bulletin 2:110-114 (from memory); docs/physics.md §7.3
 */
export function acrossSets(question: AcrossSetsQuestion): AcrossSets {
  refuse(questionProblems(question))
  const { estimates, scale, level = LEVEL, shared, bootstrap } = question
  const [to, from] = scale === 'ratio' ? [Math.log, Math.exp] : [same, same]
  const values = estimates.map(({ value }) => to(value))
  const m = values.length
  const mean = values.reduce((sum, x) => sum + x, 0) / m
  const base = { sets: m, scale, median: from(mean) }
  if (m < 2) {
    const none: Interval = { kind: 'undetermined', why: ONE_SET }
    return { ...base, spread: null, interval: none, newSet: none, studentised: null, percentile: null }
  }
  const between = values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (m - 1)
  const around = (ownVariance: number): Interval => {
    const { variance, dof } = together(ownVariance, m - 1, shared)
    const half = twoSided(level, dof) * Math.sqrt(variance)
    return { kind: 'interval', low: from(mean - half), high: from(mean + half), level }
  }
  const resampled =
    bootstrap === undefined
      ? null
      : bootstrapSets({
          values,
          level,
          seed: bootstrap.seed,
          draws: bootstrap.draws,
          sharedReach: reachOf(shared, level),
        })
  const back = (found: Bootstrapped | undefined): Bootstrapped | null =>
    found === undefined
      ? null
      : found.interval.kind === 'interval'
        ? {
            ...found,
            interval: { ...found.interval, low: from(found.interval.low), high: from(found.interval.high) },
          }
        : found
  return {
    ...base,
    spread: Math.sqrt(between),
    interval: around(between / m),
    newSet: around(between * (1 + 1 / m)),
    studentised: back(resampled?.studentised),
    percentile: back(resampled?.percentile),
  }
}

const same = (x: number) => x

/** How far the common error reaches by itself. */
function reachOf(shared: AcrossSetsQuestion['shared'], level: number): number {
  if (!shared || !(shared.variance > 0)) return 0
  return twoSided(level, shared.degreesOfFreedom ?? Number.POSITIVE_INFINITY) * Math.sqrt(shared.variance)
}

/** Sum of two independent variances, and the degrees of freedom of its estimate. */
function together(own: number, dof: number, shared: AcrossSetsQuestion['shared']) {
  const common = Math.max(0, shared?.variance ?? 0)
  const variance = own + common
  if (common === 0 || variance === 0) return { variance, dof }
  const rest = shared?.degreesOfFreedom ?? null
  const spent = own ** 2 / dof + (rest === null ? 0 : common ** 2 / rest)
  const freedom = variance ** 2 / spent
  return { variance, dof: freedom > ENDLESS ? Number.POSITIVE_INFINITY : freedom }
}
