/** A number told from draws, and how far it may be off for their limited number. */
export type Estimate = { readonly value: number; readonly standardError: number }

/** Quantiles asked of a height. */
export const PROBABILITIES = [0.025, 0.25, 0.5, 0.75, 0.975] as const

export type Histogram = {
  /** Lower end of the first bin. */
  readonly from: number
  readonly width: number
  readonly counts: readonly number[]
}

/** Quantile of sorted values: between the two about place (n − 1) q (Hyndman and Fan 1996, type 7). */
export function quantileOf(sorted: Float64Array, probability: number): number {
  const place = (sorted.length - 1) * probability
  const below = Math.floor(place)
  const low = sorted[below]!
  return low + (place - below) * ((sorted[below + 1] ?? low) - low)
}

/** Standard error of a mean of blocks from what they differ by. */
export function errorOfBlocks(blocks: readonly number[]): number {
  const mean = blocks.reduce((sum, value) => sum + value, 0) / blocks.length
  const squares = blocks.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  return Math.sqrt(squares / (blocks.length - 1) / blocks.length)
}

export function meanOf(values: Float64Array): number {
  let sum = 0
  for (const value of values) sum += value
  return sum / values.length
}

export function deviationOf(values: Float64Array): number {
  const mean = meanOf(values)
  let sum = 0
  for (const value of values) sum += (value - mean) ** 2
  return Math.sqrt(sum / (values.length - 1))
}

const FEWEST_BINS = 10
const MOST_BINS = 60

/**
 * Counts of sorted values in equal bins over their whole range, ends at round numbers.
 *
 *   width near 2 (q₇₅ − q₂₅)/∛n, rounded to 1, 2 or 5 times a power of ten
 *
 * Source  Freedman and Diaconis 1981, Zeitschrift für Wahrscheinlichkeitstheorie 57:453-476 (from memory)
 */
export function histogramOf(sorted: Float64Array): Histogram {
  const least = sorted[0]!
  const most = sorted.at(-1)!
  const range = most - least
  if (!(range > 0)) return { from: least, width: 0, counts: [sorted.length] }
  const spread = quantileOf(sorted, 0.75) - quantileOf(sorted, 0.25)
  const asked = (2 * spread) / Math.cbrt(sorted.length)
  const width = roundWidth(Math.min(Math.max(asked, range / MOST_BINS), range / FEWEST_BINS))
  const first = Math.floor(least / width)
  const counts = new Array<number>(Math.floor(most / width) - first + 1).fill(0)
  for (const value of sorted) {
    const bin = Math.min(Math.max(Math.floor(value / width) - first, 0), counts.length - 1)
    counts[bin] = counts[bin]! + 1
  }
  return { from: first * width, width, counts }
}

/** The nearest of 1, 2 and 5 times a power of ten that is no less. */
function roundWidth(width: number): number {
  const ten = 10 ** Math.floor(Math.log10(width))
  const WHISKER = 1e-9
  return ten * ([1, 2, 5].find(step => step * ten >= width * (1 - WHISKER)) ?? 10)
}
