import type { Metres } from '../../quantities/index.ts'
import { type LawKind, LOCKING_LIMIT, REFERENCE_PRESSURE } from './lawKind.ts'
import { lockingLaw } from './locking.ts'
import { atanLoss, logRemainder } from './remainders.ts'

export type StiffeningLaw = {
  readonly kind: 'stiffening'
  readonly softness: Metres
  readonly lockingDepth: Metres
}

/**
 * Stiffening towards a depth at which the turf locks.
 *
 *   p = k z/(1 − z/H),  k = p_r (1 − s/H)/s
 *   ∫₀ᵃ p dx = k H a [(atan y)/y − q²]/q²,  q² = 1 − z₀/H,  y = a/(√(2RH) q)
 *   its slope  k a [(atan y)/y + q²/(1 − z_a/H)]/2q⁴
 *
 * Holds   s < H; bottomed out beyond 0.99 H
 * Source  hyperbolic closure: Kondner 1963; Bandis, Lumsden, Barton 1983 (both from memory); arc integral derived.
 */
export const stiffening: LawKind<StiffeningLaw> = {
  kind: 'stiffening',
  equation: 'p = k z/(1 − z/H), k = p_r (1 − s/H)/s',
  source: 'hyperbolic closure: Kondner 1963; Bandis 1983 (from memory)',
  ...lockingLaw<StiffeningLaw>(),
  curve: ({ softness: s, lockingDepth: H }) => {
    const k = (REFERENCE_PRESSURE * (1 - s / H)) / s
    return {
      pressure: z => (k * z) / (1 - z / H),
      slope: z => k / (1 - z / H) ** 2,
      work: z => k * H * H * logRemainder(z / H),
      workBetween: (z, by) => {
        const x = by / (H - z)
        return k * H * (x * z + H * logRemainder(x))
      },
      sinkage: p => p / (k + p / H),
      pole: H,
      limit: LOCKING_LIMIT * H,
      underParabola: arc => {
        const { sinkage: z, reach: a, radius: R } = arc
        const part = z / H
        const rest = 1 - part
        const per = 1 / rest
        const rise = (a * a) / (2 * R * H)
        const loss = atanLoss(rise * per)
        arc.load = k * H * a * (part - loss) * per
        arc.slope = (k * a * ((1 - loss) * per + 1 / (rest + rise)) * per) / 2
        return true
      },
    }
  },
}
