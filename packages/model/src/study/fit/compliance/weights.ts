import type { Reading } from '../../../readings/index.ts'
import type { Noise } from '../fit.ts'

export type Weighted = {
  /** 1/variance of each reading; relative to a single reading when the scatter is estimated. */
  readonly weights: Float64Array
  readonly notes: readonly string[]
}

/** A reading to the nearest step lies anywhere within half of one: its variance. */
const stepVariance = ({ gaugeStep = 0 }: Reading): number => gaugeStep ** 2 / 12

/** 1/variance of each reading when the scatter is known. */
function knownWeights(readings: readonly Reading[], standardDeviation: number): Float64Array {
  return Float64Array.from(readings, reading => {
    const scatter = reading.standardDeviation ?? standardDeviation
    return reading.count / (scatter ** 2 + stepVariance(reading))
  })
}

/** Relative weights: where no standard deviation is given the residuals tell it, the gauge's step within it. */
function relativeWeights(readings: readonly Reading[]): Weighted {
  const given = readings.flatMap(({ standardDeviation }) =>
    standardDeviation === undefined ? [] : [standardDeviation ** 2],
  )
  if (given.length === 0) return { weights: Float64Array.from(readings, ({ count }) => count), notes: [] }
  const usual = given.reduce((sum, variance) => sum + variance, 0) / given.length
  const weights = Float64Array.from(readings, reading => {
    const variance = reading.standardDeviation === undefined ? usual : reading.standardDeviation ** 2
    return (reading.count * usual) / (variance + stepVariance(reading))
  })
  const missing = readings.length - given.length
  const notes =
    missing === 0
      ? []
      : [
          `${missing} of ${readings.length} readings have no standard deviation: they are given the root mean square of the others`,
        ]
  return { weights, notes }
}

/**
 * Weights of the readings.
 *
 *   known noise      n/(sd² + step²/12), sd of the reading or else of the noise
 *   estimated noise  n, or n · mean sd²/(sd² + step²/12) where standard deviations are given
 */
export const weightsOf = (readings: readonly Reading[], noise: Noise): Weighted =>
  noise.kind === 'known'
    ? { weights: knownWeights(readings, noise.standardDeviation), notes: [] }
    : relativeWeights(readings)
