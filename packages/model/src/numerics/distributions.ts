import { numberProblem, refuse } from '../quantities/index.ts'
import { incompleteBeta, logBeta } from './incompleteBeta.ts'
import { gammaAbove, gammaBelow } from './incompleteGamma.ts'

/** Beyond this many degrees of freedom Student's t differs from the normal by less than a rounding. */
const ENDLESS = 1e16
const TURNS = 60

const needProbability = (probability: number): void =>
  refuse(numberProblem(probability, 'probability', 'ratio', { above: 0, below: 1 }))

const needFreedom = (freedom: number, path = 'freedom'): void => {
  if (freedom !== Number.POSITIVE_INFINITY) refuse(numberProblem(freedom, path, 'ratio', { atLeast: 1 }))
}

/** A share below ½ is told by the tail itself, for its last digits would be lost in one minus it. */
function tailOf(x: number): number {
  return 0.5 * gammaAbove(0.5, (x * x) / 2)
}

const density = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)

/** Abramowitz and Stegun 26.2.23: good to 4.5e-4, where Newton's method takes over. */
function firstGuess(tail: number): number {
  const t = Math.sqrt(-2 * Math.log(tail))
  return (
    t -
    (2.515517 + 0.802853 * t + 0.010328 * t * t) /
      (1 + 1.432788 * t + 0.189269 * t * t + 0.001308 * t * t * t)
  )
}

/** x ≥ 0 with the given tail above it, by Halley's method. */
function normalAbove(tail: number): number {
  if (tail === 0.5) return 0
  let x = firstGuess(tail)
  for (let turn = 0; turn < TURNS; turn++) {
    const newton = (tailOf(x) - tail) / density(x)
    const step = newton / (1 - (x * newton) / 2)
    x += step
    if (Math.abs(step) <= Number.EPSILON * Math.abs(x)) break
  }
  return x
}

/**
 * The normal distribution of mean 0 and standard deviation 1.
 *
 * Throws  InputError when a probability is not between 0 and 1.
 */
export const normal = {
  cdf: (x: number): number => (x < 0 ? tailOf(x) : 1 - tailOf(x)),
  quantile(probability: number): number {
    needProbability(probability)
    return probability < 0.5 ? -normalAbove(probability) : normalAbove(1 - probability)
  },
} as const

function studentTail(t: number, freedom: number): number {
  if (freedom >= ENDLESS) return tailOf(t)
  const square = t * t
  const whole = freedom + square
  return 0.5 * incompleteBeta(freedom / 2, 0.5, freedom / whole, square / whole)
}

/** t ≥ 0 with the given tail above it: Newton's method on ln t against the logarithm of the tail, kept in a bracket. */
function studentAbove(tail: number, freedom: number): number {
  if (tail === 0.5) return 0
  if (freedom >= ENDLESS) return normalAbove(tail)
  let low = 0
  let high = Number.POSITIVE_INFINITY
  const start = normalAbove(tail)
  // the first terms of t against the normal; for few degrees the far tail t ~ tail^(−1/freedom) instead
  let t = Math.max(
    start * (1 + (start * start + 1) / (4 * freedom)),
    0.3 * Math.sqrt(freedom) * tail ** (-1 / freedom) - Math.sqrt(freedom),
  )
  const front = -logBeta(freedom / 2, 0.5) - 0.5 * Math.log(freedom)
  for (let turn = 0; turn < TURNS; turn++) {
    const here = studentTail(t, freedom)
    const slope = Math.exp(front - ((freedom + 1) / 2) * Math.log1p((t * t) / freedom))
    if (here > tail) low = t
    else high = t
    // far out the tail is a power of t: straight in logarithms
    const steep = (slope * t) / here
    const byPower = t * Math.exp(Math.log(here / tail) / steep)
    const byValue = t + (here - tail) / slope
    let next = tail < 0.05 ? byPower : byValue
    if (!(next > low && next < high)) next = high === Number.POSITIVE_INFINITY ? 2 * t : (low + high) / 2
    const moved = Math.abs(next - t)
    t = next
    if (moved <= 2 * Number.EPSILON * t) break
  }
  return t
}

/**
 * Student's t with any number of degrees of freedom, Infinity for the normal.
 *
 * Holds   freedom ≥ 1
 * Throws  InputError when a probability is not between 0 and 1, or there is less than one degree of freedom.
 * Source  Abramowitz and Stegun 26.7.1 by the incomplete beta function.
 */
export const studentT = {
  cdf(t: number, freedom: number): number {
    needFreedom(freedom)
    return t < 0 ? studentTail(t, freedom) : 1 - studentTail(t, freedom)
  },
  quantile(probability: number, freedom: number): number {
    needProbability(probability)
    needFreedom(freedom)
    return probability < 0.5 ? -studentAbove(probability, freedom) : studentAbove(1 - probability, freedom)
  },
} as const

/** How far out a coverage of `level`, half on either side, reaches: t, or the normal's with endless freedom. */
export const twoSided = (level: number, freedom: number): number => {
  needProbability(level)
  needFreedom(freedom)
  return studentAbove((1 - level) / 2, freedom)
}

/**
 * The F distribution: the ratio of two mean squares of equal variance.
 *
 * Holds   both at least 1; below may be Infinity, for a variance that is known
 * Throws  InputError when there is less than one degree of freedom.
 * Source  Abramowitz and Stegun 26.6.2.
 */
export const fDistribution = {
  cdf: (value: number, above: number, below: number): number => ratioShare(value, above, below, false),
  survival: (value: number, above: number, below: number): number => ratioShare(value, above, below, true),
} as const

function ratioShare(value: number, above: number, below: number, over: boolean): number {
  refuse(numberProblem(above, 'above', 'ratio', { atLeast: 1 }))
  needFreedom(below, 'below')
  if (!(value > 0)) return over ? 1 : 0
  if (below >= ENDLESS) return (over ? gammaAbove : gammaBelow)(above / 2, (above * value) / 2)
  const part = above * value
  const whole = part + below
  return over
    ? incompleteBeta(below / 2, above / 2, below / whole, part / whole)
    : incompleteBeta(above / 2, below / 2, part / whole, below / whole)
}

/**
 * χ²: the sum of squares of normal numbers.
 *
 * Throws  InputError when there is less than one degree of freedom.
 * Source  Abramowitz and Stegun 26.4.19.
 */
export const chiSquared = {
  cdf(value: number, freedom: number): number {
    refuse(numberProblem(freedom, 'freedom', 'ratio', { atLeast: 1 }))
    return gammaBelow(freedom / 2, value / 2)
  },
  survival(value: number, freedom: number): number {
    refuse(numberProblem(freedom, 'freedom', 'ratio', { atLeast: 1 }))
    return gammaAbove(freedom / 2, value / 2)
  },
} as const
