import type { Metres } from '../../quantities/index.ts'
import { type LawKind, LOCKING_LIMIT, REFERENCE_PRESSURE } from './lawKind.ts'
import { lockingLaw } from './locking.ts'
import { atanLoss, entropyRemainder } from './remainders.ts'

export type LogarithmicLaw = {
  readonly kind: 'logarithmic'
  readonly softness: Metres
  readonly lockingDepth: Metres
}

/**
 * Stiffening as a logarithm towards the locking depth.
 *
 *   p = −M ln(1 − z/H),  M = −p_r/ln(1 − s/H)
 *   ∫₀ᵃ p dx = M a [2 (1 − (atan y)/y) − ln(1 − z_a/H)],  z_a = z₀ − a²/2R,  y² = a²/2R(H − z₀)
 *   its slope  M a (atan y)/y/(H − z₀)
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
      underParabola: arc => {
        const { sinkage: z, reach: a, radius: R } = arc
        const rise = (a * a) / (2 * R)
        const loss = atanLoss(rise / (H - z))
        arc.load = M * a * (2 * loss - Math.log1p(-(z - rise) / H))
        arc.slope = (M * a * (1 - loss)) / (H - z)
        return true
      },
    }
  },
}
