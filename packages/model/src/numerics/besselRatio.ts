/** Up to here the power series, from here on the continued fraction. */
const SERIES_TO = 2
/** Euler's constant. */
const EULER = 0.5772156649015329
const MOST_TERMS = 500

/** K₀ and K₁ by power series, K₁ from the Wronskian I₀K₁ + I₁K₀ = 1/x. */
function bySeries(x: number): number {
  const square = (x * x) / 4
  let term = 1
  let harmonic = 0
  let I0 = 1
  let I1 = x / 2
  let rest = 0
  for (let k = 1; k < MOST_TERMS; k++) {
    term *= square / (k * k)
    harmonic += 1 / k
    I0 += term
    I1 += (term * x) / (2 * (k + 1))
    rest += term * harmonic
    if (term * harmonic <= Number.EPSILON * rest) break
  }
  const K0 = rest - (Math.log(x / 2) + EULER) * I0
  return (1 / x - I1 * K0) / (I0 * K0)
}

/** By Steed's continued fraction. */
function byFraction(x: number): number {
  const first = 1 / 4
  let a = -first
  let b = 2 * (1 + x)
  let d = 1 / b
  let step = d
  let sum = d
  for (let i = 2; i < MOST_TERMS; i++) {
    a -= 2 * (i - 1)
    b += 2
    d = 1 / (b + a * d)
    step *= b * d - 1
    sum += step
    if (Math.abs(step) <= Number.EPSILON * Math.abs(sum)) break
  }
  return (x + 1 / 2 - first * sum) / x
}

/**
 * K₁(x)/K₀(x), modified Bessel functions of the second kind.
 *
 * Holds   x > 0
 * Source  Abramowitz and Stegun, 9.6.13 and 9.6.15; Temme 1975, Journal of Computational Physics 19:324-337 (from memory)
 */
export const besselRatio = (x: number): number => (x <= SERIES_TO ? bySeries(x) : byFraction(x))
