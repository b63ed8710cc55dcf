import { deviationOf, type Estimate, errorOfBlocks, meanOf } from './distribution.ts'
import type { HeightSample, Source } from './heightSample.ts'
import { evaluatePolynomial, fitPolynomial, termsOfDegree } from './polynomial.ts'

/** What one source of scatter does to the height. */
export type Share = {
  /** The input; `fit` for all parameters of a fit together, which do not scatter each for itself. */
  readonly name: string
  /** Part of the variance that would go if this were known: Var E(h | input)/Var h. */
  readonly share: Estimate
  /** Change of the height per standard deviation of the input, positive where both grow; null for a fit. */
  readonly effect: number | null
}

export type Shares = {
  /** Greatest first. */
  readonly hangsOn: readonly Share[]
  /** What only inputs together explain: one minus the sum of the shares. */
  readonly interactions: Estimate
}

const DEGREES = 3

/** Products of heights with the polynomials of an input, summed block by block: degree 1, 2, 3 of each block in turn. */
type Sums = { readonly blocks: Float64Array; readonly all: Float64Array }

type Draws = {
  readonly sample: HeightSample
  /** Heights less their mean; 0 without an answer. */
  readonly rest: Float64Array
  readonly isAnswered: Uint8Array
  /** Answered draws of each block, and of all. */
  readonly answered: readonly number[]
  readonly count: number
}

/**
 * Polynomials of degree 2 and 3 that are orthonormal over a standard variate x, as α (x² − 1) and x (β x² − γ):
 * Hermite's for the normal distribution, Legendre's for the uniform one over ±√3.
 */
const NORMAL = { alpha: Math.SQRT1_2, beta: 1 / Math.sqrt(6), gamma: 3 / Math.sqrt(6) }
const UNIFORM = {
  alpha: Math.sqrt(5) / 2,
  beta: (5 * Math.sqrt(7)) / (2 * Math.sqrt(27)),
  gamma: Math.sqrt(21) / 2,
}
const basisOf = ({ kind }: Source) => (kind === 'uniform' ? UNIFORM : NORMAL)

/** Coefficients c_k = E[h P_k] of one input in what is left of the heights. */
function coefficients({ sample, rest, answered, count }: Draws, source: Source): Sums {
  const { blocks, size } = sample.layout
  const { alpha, beta, gamma } = basisOf(source)
  const x = source.columns[0]!
  const sums = { blocks: new Float64Array(DEGREES * blocks), all: new Float64Array(DEGREES) }
  for (let block = 0; block < blocks; block++) {
    let first = 0
    let second = 0
    let third = 0
    for (let i = block * size; i < (block + 1) * size; i++) {
      const t = x[i]!
      const h = rest[i]!
      const square = t * t
      first += h * t
      second += h * (square - 1)
      third += h * t * (beta * square - gamma)
    }
    const told = [first, alpha * second, third]
    told.forEach((sum, k) => {
      sums.blocks[DEGREES * block + k] = sum / Math.max(1, answered[block]!)
      sums.all[k]! += sum / count
    })
  }
  return sums
}

/** Takes an input's part out of what is left of the heights. */
function takeAway({ rest, isAnswered }: Draws, source: Source, by: ArrayLike<number>): void {
  const { alpha, beta, gamma } = basisOf(source)
  const x = source.columns[0]!
  const first = by[0]!
  const second = alpha * (by[1] ?? 0)
  const third = by[2] ?? 0
  for (let i = 0; i < rest.length; i++) {
    if (isAnswered[i] === 0) continue
    const t = x[i]!
    const square = t * t
    rest[i] = rest[i]! - first * t - second * (square - 1) - third * t * (beta * square - gamma)
  }
}

/** The share of one input; `first` was taken out of the heights before. */
function shareOf(draws: Draws, source: Source, first: number, variance: number): Share {
  const { all, blocks } = coefficients(draws, source)
  takeAway(draws, source, all)
  let value = 0
  let error = 0
  all.forEach((mean, k) => {
    const c = k === 0 ? mean + first : mean
    const e = errorOfBlocks(Array.from(blocks.filter((_value, at) => at % DEGREES === k)))
    value += c * c - e * e
    error += (2 * c * e) ** 2 + 2 * e ** 4
  })
  return {
    name: source.name,
    share: { value: Math.max(0, value / variance), standardError: Math.sqrt(error) / variance },
    effect: first + all[0]!,
  }
}

/** Most draws that the parameters of a fit are regressed over. */
const MOST_REGRESSED = 20_000

/** Share of all parameters of a fit together: by regression of what the other inputs leave on their products. */
function fitShare({ rest, sample, isAnswered }: Draws, { columns }: Source, variance: number): Estimate {
  const places: number[] = []
  const stride = Math.max(1, Math.ceil(rest.length / MOST_REGRESSED))
  for (let i = 0; i < rest.length; i += stride) if (isAnswered[i]) places.push(i)
  const at = (column: Float64Array) => Float64Array.from(places, i => column[i]!)
  const all = columns.map((_, k) => k)
  const degree = columns.length > DEGREES ? 2 : DEGREES
  const terms = Array.from({ length: degree + 1 }, (_, d) => termsOfDegree(all, d)).flat()
  const points = columns.map(at)
  const fitted = evaluatePolynomial(fitPolynomial(terms, points, at(rest)), points, places.length)
  const blockOf = (k: number) => Math.floor(places[k]! / sample.layout.size)
  const mean = meanOf(fitted)
  const blocks = sample.layout.blocks
  const sums = new Float64Array(blocks)
  const counts = new Float64Array(blocks)
  fitted.forEach((value, k) => {
    sums[blockOf(k)]! += (value - mean) ** 2
    counts[blockOf(k)]! += 1
  })
  const parts = Array.from(sums, (sum, block) => sum / Math.max(1, counts[block]!) / variance)
  return { value: deviationOf(fitted) ** 2 / variance, standardError: errorOfBlocks(parts) }
}

/**
 * First-order shares of the variance of the height (Sobol' indices), from the draws themselves.
 *
 *   S = Var E(h | input)/Var h = Σ c_k²/Var h,  c_k = E[h P_k(input)], P_k orthonormal, degrees 1 to 3
 *
 * The square of each coefficient's own error, told by the blocks, is taken off. Parameters of a fit go together and
 * share one index: the part of the variance that a polynomial in all of them explains.
 *
 * Holds   for heights smooth in each input; among the draws that have an answer
 * Source  Sobol' 1993, Mathematical Modelling and Computational Experiments 1:407-414; by orthogonal polynomials: Sudret
 *         2008, Reliability Engineering and System Safety 93:964-979 (both from memory)
 */
export function firstOrderShares(
  sample: HeightSample,
  heights: Float64Array,
  isAnswered: Uint8Array,
): Shares {
  const { blocks, size } = sample.layout
  const answered = Array.from({ length: blocks }, (_, block) =>
    isAnswered.subarray(block * size, (block + 1) * size).reduce((sum, one) => sum + one, 0),
  )
  const kept = heights.filter((_height, i) => isAnswered[i])
  const mean = meanOf(kept)
  const variance = deviationOf(kept) ** 2
  const rest = heights.map((height, i) => (isAnswered[i] ? height - mean : 0))
  const count = kept.length
  const draws: Draws = { sample, rest, isAnswered, answered, count }
  const single = sample.sources.filter(({ kind }) => kind !== 'fit')
  // the straight parts first: what they leave hardly disturbs the rest
  const first = single.map(source => coefficients(draws, source).all[0]!)
  single.forEach((source, k) => {
    takeAway(draws, source, [first[k]!])
  })
  const own = single.map((source, k) => shareOf(draws, source, first[k]!, variance))
  const fit = sample.sources
    .filter(({ kind }) => kind === 'fit')
    .map((source): Share => ({ name: source.name, share: fitShare(draws, source, variance), effect: null }))
  const hangsOn = [...own, ...fit].sort((a, b) => b.share.value - a.share.value)
  const explained = hangsOn.reduce((sum, { share }) => sum + share.value, 0)
  return {
    hangsOn,
    interactions: {
      value: Math.max(0, 1 - explained),
      standardError: Math.sqrt(hangsOn.reduce((sum, { share }) => sum + share.standardError ** 2, 0)),
    },
  }
}
