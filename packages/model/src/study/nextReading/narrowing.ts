/** A covariance of the free numbers of a fit, row-major. */
export type Covariance = { readonly size: number; readonly values: Float64Array }

/** C g. */
export function times({ size, values }: Covariance, g: ArrayLike<number>): Float64Array {
  const out = new Float64Array(size)
  for (let i = 0; i < size; i++) {
    let sum = 0
    for (let j = 0; j < size; j++) sum += values[i * size + j]! * g[j]!
    out[i] = sum
  }
  return out
}

export const dot = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}

/** Variance of a quantity that changes with the numbers as c says. */
export const varianceAlong = (covariance: Covariance, c: ArrayLike<number>): number =>
  dot(c, times(covariance, c))

/** A reading that might be made: how it hangs on the free numbers, and the variance of its mean. */
export type Row = { readonly slopes: ArrayLike<number>; readonly variance: number }

/**
 * The covariance once a reading more is fitted too.
 *
 *   C′ = C − C g gᵀ C/(σ²/n + gᵀ C g)
 *
 * Holds   for a model straight over the scatter; the variance of a reading is taken as known and kept
 * Source  Sherman and Morrison 1950, Annals of Mathematical Statistics 21:124-127
 */
export function withReading(covariance: Covariance, { slopes, variance }: Row): Covariance {
  const { size, values } = covariance
  const along = times(covariance, slopes)
  const whole = variance + dot(slopes, along)
  const next = values.slice()
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) next[i * size + j] = next[i * size + j]! - (along[i]! * along[j]!) / whole
  return { size, values: next }
}

/**
 * Part of the variance of a quantity that a reading takes away, 0 to 1.
 *
 *   1 − cᵀC′c/cᵀCc = (gᵀ C c)²/((σ²/n + gᵀ C g) cᵀ C c)
 */
export function narrowedAlong(
  covariance: Covariance,
  { slopes, variance }: Row,
  c: ArrayLike<number>,
): number {
  const along = times(covariance, slopes)
  const had = varianceAlong(covariance, c)
  return had > 0 ? dot(c, along) ** 2 / ((variance + dot(slopes, along)) * had) : 0
}

/**
 * Part of the volume of the joint confidence region that a reading leaves.
 *
 *   √(det C′/det C) = 1/√(1 + gᵀ C g n/σ²)
 *
 * Source  matrix determinant lemma; the D-criterion of Wald 1943, Annals of Mathematical Statistics 14:134-140 (from memory)
 */
export const volumeLeft = (covariance: Covariance, { slopes, variance }: Row): number =>
  1 / Math.sqrt(1 + varianceAlong(covariance, slopes) / variance)
