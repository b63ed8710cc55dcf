import { logGamma } from './gamma.ts'
import { stirlingRest } from './incompleteBeta.ts'

const LARGE = 10
const TINY = 1e-300
const TURNS = 100_000

/** xᵃ e⁻ˣ/Γ(a), gathered so that large a and x near it cost no digits. */
function front(a: number, x: number): number {
  if (a < LARGE) return Math.exp(a * Math.log(x) - x - logGamma(a))
  const off = (x - a) / a
  // ln(1 + off) − off: the two are nearly equal where the distribution has its weight
  const rest = Math.abs(off) < 0.1 ? logRest(off) : Math.log1p(off) - off
  return Math.sqrt(a / (2 * Math.PI)) * Math.exp(a * rest - stirlingRest(a))
}

/** ln(1 + u) − u by its series, for small u. */
function logRest(u: number): number {
  let term = -u * u
  let sum = 0
  for (let k = 2; k < 40; k++, term *= -u) {
    const next = sum + term / k
    if (next === sum) break
    sum = next
  }
  return sum
}

/**
 * The share Q(a, x) of Euler's gamma integral above x.
 *
 *   Q = ∫ₓ^∞ tᵃ⁻¹ e⁻ᵗ dt / Γ(a)
 *
 * Holds   a ≥ ½
 * Source  Abramowitz and Stegun 6.5.29 (series) and 6.5.31 (fraction).
 */
export function gammaAbove(a: number, x: number): number {
  if (x <= 0) return 1
  if (x < a + 1) return 1 - belowBySeries(a, x)
  return aboveByFraction(a, x)
}

/** The share P(a, x) = 1 − Q(a, x) below x, exact in its own tail. */
export function gammaBelow(a: number, x: number): number {
  if (x <= 0) return 0
  if (x < a + 1) return belowBySeries(a, x)
  return 1 - aboveByFraction(a, x)
}

function belowBySeries(a: number, x: number): number {
  let term = 1 / a
  let sum = term
  for (let k = 1; k < TURNS; k++) {
    term *= x / (a + k)
    sum += term
    if (term < sum * Number.EPSILON) break
  }
  return sum * front(a, x)
}

function aboveByFraction(a: number, x: number): number {
  let b = x + 1 - a
  let c = 1 / TINY
  let d = 1 / b
  let value = d
  for (let k = 1; k < TURNS; k++) {
    const over = -k * (k - a)
    b += 2
    d = over * d + b
    if (Math.abs(d) < TINY) d = TINY
    c = b + over / c
    if (Math.abs(c) < TINY) c = TINY
    d = 1 / d
    const change = d * c
    value *= change
    if (Math.abs(change - 1) < Number.EPSILON) break
  }
  return value * front(a, x)
}
