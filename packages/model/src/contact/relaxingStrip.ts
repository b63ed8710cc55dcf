import { increasingRoot } from '../numerics/index.ts'

/** Linear springs of which a part relaxes: k + k₁ e^(−t/τ). */
export type Relaxing = { readonly stiffness: number; readonly added: number; readonly time: number }

/** A strip of roller that rolls steadily, per length. */
export type RelaxingStrip = {
  readonly lineLoad: number
  /** d line load/d entry, N/m². */
  readonly byEntry: number
  readonly lengthBehind: number
  /** Per length, N/m. */
  readonly resistance: number
}

/** Below this argument the remainders are summed as a series: the recurrence cancels there. */
const SERIES_BELOW = 2
/** Terms of the series: 2^27/30! is below 1e-24. */
const TERMS = 28

/** ψ_k(e) = Σ (−e)^j/(j + k)!: e^(−e) without its first k terms, over (−e)^k; k from 0 to 4. */
function remainders(e: number, out: Float64Array): void {
  out[0] = Math.exp(-e)
  if (e < SERIES_BELOW) {
    let term = 1
    for (let k = 1; k < out.length; k++) {
      term /= k
      let sum = term
      let next = term
      for (let j = 1; j < TERMS; j++) {
        next *= -e / (j + k)
        sum += next
      }
      out[k] = sum
    }
    return
  }
  let factorial = 1
  for (let k = 1; k < out.length; k++) {
    out[k] = (1 / factorial - out[k - 1]!) / e
    factorial *= k
  }
}

const FACTORIALS = [1, 1, 2, 6, 24] as const
const scratch = new Float64Array(FACTORIALS.length)
const EXACT = 4 * Number.EPSILON

/** K_j: the relaxing stiffness integrated j times over the distance s from the entry, over s^j. */
function stiffnesses(relaxing: Relaxing, far: number, s: number, out: Float64Array): void {
  remainders(s / far, scratch)
  for (let j = 0; j < out.length; j++)
    out[j] = relaxing.stiffness / FACTORIALS[j]! + relaxing.added * scratch[j]!
}

const K = new Float64Array(FACTORIALS.length)

/**
 * Distance from entry to exit: the pressure, concave in s, is zero again.
 *
 *   a K₁ = S K₂
 */
function exitOf(relaxing: Relaxing, far: number, entry: number): number {
  const root = increasingRoot({
    evaluate: s => {
      stiffnesses(relaxing, far, s, K)
      // −p R/s; the slope follows from p′ = (a K₀ − s K₁)/R
      const value = s * K[2]! - entry * K[1]!
      return { value, slope: K[1]! - (entry * K[0]! + value) / s }
    },
    start: 2 * entry,
    low: 0,
    high: 2 * entry,
    tolerance: EXACT * entry * relaxing.stiffness,
  })
  return root.at
}

/**
 * Steady rolling on springs of which a part relaxes, entered at a = √(2 R z₀) ahead of the axis.
 *
 *   K_j = k/j! + k₁ ψ_j(S/Λ),  Λ = speed · τ,  ψ_j(e) = Σ (−e)^i/(i + j)!
 *   p = (a s K₁ − s² K₂)/R,  left at S: a K₁ = S K₂
 *   P = (a S² K₂ − S³ K₃)/R,  F = [(a − S) P + (a S³ K₃ − S⁴ K₄)/R]/R
 *
 * Holds   any speed: the remainders ψ keep the digits that the exponential form loses once Λ is long
 * Source  derived: the closed forms of May, Morris and Atack's model, written in repeated integrals of the
 *         relaxing stiffness (docs/physics.md §3.5)
 */
export function relaxingStrip(
  relaxing: Relaxing,
  speed: number,
  radius: number,
  entry: number,
): RelaxingStrip {
  const far = speed * relaxing.time
  const S = far > 0 && relaxing.added > 0 ? exitOf(relaxing, far, entry) : 2 * entry
  stiffnesses(relaxing, far, S, K)
  const square = S * S * K[2]!
  const cube = S ** 3 * K[3]!
  const lineLoad = (entry * square - cube) / radius
  const moment = (entry - S) * lineLoad + (entry * cube - S ** 4 * K[4]!) / radius
  return {
    lineLoad,
    byEntry: square / radius,
    lengthBehind: S - entry,
    resistance: S === 2 * entry ? 0 : moment / radius,
  }
}
