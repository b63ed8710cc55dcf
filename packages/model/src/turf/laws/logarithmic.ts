import type { Metres } from '../../quantities/index.ts'
import { type LawKind, LOCKING_LIMIT, REFERENCE_PRESSURE } from './lawKind.ts'
import { CLOSED_FROM, lockingLaw } from './locking.ts'
import { entropyRemainder } from './remainders.ts'

export type LogarithmicLaw = {
  readonly kind: 'logarithmic'
  readonly softness: Metres
  readonly lockingDepth: Metres
}

/**
 * Stiffening as a logarithm towards the locking depth.
 *
 *   p = −M ln(1 − z/H),  M = −p_r/ln(1 − s/H)
 *   ∫₀ᵃ p dx = M [2a − a ln(q² + (a/b)²) − 2 b q atan(a/(b q))],  b = √(2RH), q = √(1 − z₀/H)
 *
 * Holds   s < H; bottomed out beyond 0.99 H
 * Source  compaction of snow and foams; arc integral derived.
 */
export const logarithmic: LawKind<LogarithmicLaw> = {
  kind: 'logarithmic',
  equation: 'p = −M ln(1 − z/H), M = −p_r/ln(1 − s/H)',
  source: 'compaction of snow and foams',
  ...lockingLaw<LogarithmicLaw>(),
  curve: ({ softness: s, lockingDepth: H }) => {
    const M = -REFERENCE_PRESSURE / Math.log1p(-s / H)
    return {
      pressure: z => -M * Math.log1p(-z / H),
      slope: z => M / (H - z),
      work: z => M * H * entropyRemainder(z / H),
      workBetween: (z, by) => {
        const rest = 1 - z / H
        return M * H * (rest * entropyRemainder(by / (H - z)) - (by / H) * Math.log1p(-z / H))
      },
      sinkage: p => -H * Math.expm1(-p / M),
      pole: H,
      limit: LOCKING_LIMIT * H,
      underParabola: (z, a, R) => {
        if (z < CLOSED_FROM * H) return Number.NaN
        const b = Math.sqrt(2 * R * H)
        const q = Math.sqrt(1 - z / H)
        return M * (2 * a - a * Math.log(q * q + (a / b) ** 2) - 2 * b * q * Math.atan(a / (b * q)))
      },
    }
  },
}
