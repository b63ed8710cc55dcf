import { logGamma } from '../../../numerics/index.ts'

/** How often the sign changes along an order, and how rare so few changes are by chance. */
export type Runs = {
  readonly above: number
  readonly below: number
  /** Stretches of one sign. */
  readonly runs: number
  /** As many as chance gives on average. */
  readonly expected: number
  /** Probability of so few or fewer, by chance, given how many lie above and below. */
  readonly probability: number
}

const logChoose = (n: number, k: number): number =>
  k < 0 || k > n ? Number.NEGATIVE_INFINITY : logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1)

function chance(runs: number, above: number, below: number): number {
  const all = logChoose(above + below, above)
  const half = Math.floor(runs / 2)
  if (runs % 2 === 0)
    return 2 * Math.exp(logChoose(above - 1, half - 1) + logChoose(below - 1, half - 1) - all)
  return (
    Math.exp(logChoose(above - 1, half) + logChoose(below - 1, half - 1) - all) +
    Math.exp(logChoose(above - 1, half - 1) + logChoose(below - 1, half) - all)
  )
}

/**
 * Runs of signs of numbers in their order; zeros are left out. null where all have one sign.
 *
 *   P(R = 2k) = 2 C(n₊−1, k−1) C(n₋−1, k−1)/C(n, n₊), and the like for odd R; exact, not the normal approximation
 *
 * Source  Wald and Wolfowitz 1940, Annals of Mathematical Statistics 11:147-162 (from memory)
 */
export function runsOf(numbers: readonly number[]): Runs | null {
  const signs = numbers.filter(number => number !== 0).map(Math.sign)
  const above = signs.filter(sign => sign > 0).length
  const below = signs.length - above
  if (above === 0 || below === 0) return null
  const runs = 1 + signs.slice(1).filter((sign, i) => sign !== signs[i]).length
  let probability = 0
  for (let r = 2; r <= runs; r++) probability += chance(r, above, below)
  return {
    above,
    below,
    runs,
    expected: 1 + (2 * above * below) / (above + below),
    probability: Math.min(1, probability),
  }
}
