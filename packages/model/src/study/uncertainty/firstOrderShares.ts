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

/** Coefficients c_k = E[h P_k] of one input in what is left of the heights, all of which have an answer. */
function coefficients({ sample, rest }: Draws, source: Source): Sums {
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
      sums.blocks[DEGREES * block + k] = sum / size
      sums.all[k]! += sum / rest.length
    })
  }
  return sums
}

/** Takes an input's part out of what is left of the heights. */
function takeAway({ rest }: Draws, source: Source, by: ArrayLike<number>): void {
  const { alpha, beta, gamma } = basisOf(source)
  const x = source.columns[0]!
  const first = by[0]!
  const second = alpha * by[1]!
  const third = by[2]!
  for (let i = 0; i < rest.length; i++) {
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

/** Moves the straight parts of a source out of what is left of the heights, or back. */
function moveStraight(
  { rest, isAnswered }: Draws,
  { columns }: Source,
  by: readonly number[],
  sign: 1 | -1,
): void {
  columns.forEach((column, k) => {
    const part = sign * by[k]!
    for (let i = 0; i < rest.length; i++) if (isAnswered[i] === 1) rest[i] = rest[i]! + part * column[i]!
  })
}

/** How the heights go with each column by itself. */
const straightParts = ({ rest, isAnswered }: Draws, { columns }: Source): number[] =>
  columns.map(column => {
    let product = 0
    let square = 0
    for (let i = 0; i < rest.length; i++) {
      product += rest[i]! * column[i]!
      if (isAnswered[i] === 1) square += column[i]! * column[i]!
    }
    return product / square
  })

/**
 * Share of a source by regression of what the others leave: for the parameters of a fit, which go together, and where
 * draws without an answer leave an input no longer spread as its polynomials ask.
 */
function regressedShare(
  { rest, sample, isAnswered }: Draws,
  { columns }: Source,
  variance: number,
): Estimate {
  const stride = Math.max(1, Math.ceil(rest.length / MOST_REGRESSED))
  const places: number[] = []
  for (let i = 0; i < rest.length; i += stride) if (isAnswered[i] === 1) places.push(i)
  const at = (column: Float64Array) => Float64Array.from(places, i => column[i]!)
  const all = columns.map((_, k) => k)
  const degree = columns.length > DEGREES ? 2 : DEGREES
  const terms = Array.from({ length: degree + 1 }, (_, d) => termsOfDegree(all, d)).flat()
  const explained = evaluatePolynomial(fitPolynomial(terms, columns.map(at), at(rest)), columns, rest.length)
  const { blocks, size } = sample.layout
  const parts = Array.from({ length: blocks }, (_, block) => {
    const here = explained
      .subarray(block * size, (block + 1) * size)
      .filter((_value, i) => isAnswered[block * size + i] === 1)
    return here.length > 1 ? deviationOf(here) ** 2 / variance : 0
  })
  return { value: parts.reduce((sum, part) => sum + part, 0) / blocks, standardError: errorOfBlocks(parts) }
}

/**
 * First-order shares of the variance of the height (Sobol' indices), from the draws themselves.
 *
 *   S = Var E(h | input)/Var h = Σ c_k²/Var h,  c_k = E[h P_k(input)], P_k orthonormal, degrees 1 to 3
 *
 * The square of each coefficient's own error, told by the blocks, is taken off. Parameters of a fit go together and
 * share one index: the part of the variance that a polynomial in all of them explains, by regression. So it is done for
 * every input where some draws have no answer.
 *
 * Holds   for heights smooth in each input; among the draws that have an answer, which `sorted` lists
 * Source  Sobol' 1993, Mathematical Modelling and Computational Experiments 1:407-414; by orthogonal polynomials: Sudret
 *         2008, Reliability Engineering and System Safety 93:964-979 (both from memory)
 */
export function firstOrderShares(
  sample: HeightSample,
  heights: Float64Array,
  isAnswered: Uint8Array,
  sorted: Float64Array,
): Shares {
  const mean = meanOf(sorted)
  const variance = deviationOf(sorted) ** 2
  const rest = new Float64Array(heights.length)
  for (let i = 0; i < rest.length; i++) if (isAnswered[i] === 1) rest[i] = heights[i]! - mean
  const isWhole = sorted.length === rest.length
  const draws: Draws = { sample, rest, isAnswered }
  // the straight parts of all first: what they leave hardly disturbs the rest
  const straight = sample.sources.map(source => straightParts(draws, source))
  sample.sources.forEach((source, k) => {
    moveStraight(draws, source, straight[k]!, -1)
  })
  const hangsOn = sample.sources
    .map((source, k): Share => {
      const parts = straight[k]!
      if (source.kind !== 'fit' && isWhole) return shareOf(draws, source, parts[0]!, variance)
      moveStraight(draws, source, parts, 1)
      const share = regressedShare(draws, source, variance)
      moveStraight(draws, source, parts, -1)
      return { name: source.name, share, effect: source.kind === 'fit' ? null : parts[0]! }
    })
    .sort((a, b) => b.share.value - a.share.value)
  const explained = hangsOn.reduce((sum, { share }) => sum + share.value, 0)
  return {
    hangsOn,
    interactions: {
      value: Math.max(0, 1 - explained),
      standardError: Math.sqrt(hangsOn.reduce((sum, { share }) => sum + share.standardError ** 2, 0)),
    },
  }
}
