import type { Candidate } from './candidate.ts'
import {
  type Covariance,
  narrowedAlong,
  type Row,
  varianceAlong,
  volumeLeft,
  withReading,
} from './narrowing.ts'
import type { Rated } from './rate.ts'

/** A reading chosen after those before it; `left` is the standard error of the aim then, or the volume for all numbers. */
export type Chosen = { readonly candidate: Candidate; readonly spent: number; readonly left: number }

/** Part that a reading takes away: of the variance along a direction, or of the square of the volume. */
export const narrowing = (covariance: Covariance, row: Row, direction: readonly number[] | null): number =>
  direction ? narrowedAlong(covariance, row, direction) : 1 - volumeLeft(covariance, row) ** 2

/** Gain for its cost: the logarithm of what is left adds up from reading to reading. */
export const worth = (narrowed: number, cost: number): number =>
  -Math.log1p(-Math.min(narrowed, 1 - 1e-15)) / cost

/** Greedy: the best for its cost, again and again, while one can be paid. */
export function sequenceOf(
  start: Covariance,
  rated: readonly Rated[],
  direction: readonly number[] | null,
  budget: number,
): Chosen[] {
  const chosen: Chosen[] = []
  let covariance = start
  let spent = 0
  let volume = 1
  for (;;) {
    const payable = rated.filter(({ cost }) => spent + cost <= budget)
    const here = covariance
    const [best] = payable
      .map(one => ({ ...one, worth: worth(narrowing(here, one.row, direction), one.cost) }))
      .sort((a, b) => b.worth - a.worth)
    if (!best || chosen.length >= MOST_CHOSEN) return chosen
    volume *= volumeLeft(covariance, best.row)
    covariance = withReading(covariance, best.row)
    spent += best.cost
    const left = direction ? Math.sqrt(varianceAlong(covariance, direction)) : volume
    chosen.push({ candidate: best.candidate, spent, left })
  }
}

const MOST_CHOSEN = 200
const ENOUGH = 0.9
const MOST_REPLICATES = 100

/** How many readings give nine tenths of what endless ones of the same would. */
export function enoughOf(
  covariance: Covariance,
  best: Rated,
  direction: readonly number[] | null,
): number | null {
  const single = best.row.variance * (best.candidate.replicates ?? 1)
  const { slopes } = best.row
  if (!direction) return best.candidate.replicates ?? 1
  const endless = narrowedAlong(covariance, { slopes, variance: 0 }, direction)
  for (let n = 1; n <= MOST_REPLICATES; n++)
    if (narrowedAlong(covariance, { slopes, variance: single / n }, direction) >= ENOUGH * endless) return n
  return null
}
