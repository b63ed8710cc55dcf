import { type Metres, numberProblem } from '../../quantities/index.ts'
import { type LawKind, REFERENCE_PRESSURE } from './lawKind.ts'

export type LinearLaw = { readonly kind: 'linear'; readonly softness: Metres }

/**
 * Independent linear springs.
 *
 *   p = p_r z/s
 *
 * Source  Winkler 1867.
 */
export const linear: LawKind<LinearLaw> = {
  kind: 'linear',
  equation: 'p = p_r z/s',
  source: 'Winkler 1867',
  parameters: [{ name: 'softness', quantity: 'softness', symbol: 's' }],
  problems: (law, path) => numberProblem(law.softness, `${path}.softness`, 'softness', { above: 0 }),
  softness: law => law.softness,
  withSoftness: (law, softness) => ({ ...law, softness }),
  stretched: (law, factor) => ({ ...law, softness: factor * law.softness }),
  curve: ({ softness }) => {
    const k = REFERENCE_PRESSURE / softness
    return {
      pressure: z => k * z,
      slope: () => k,
      work: z => (k * z * z) / 2,
      workBetween: (z, by) => k * by * (z + by / 2),
      sinkage: p => p / k,
      pole: Number.POSITIVE_INFINITY,
      limit: Number.POSITIVE_INFINITY,
      straight: true,
      underParabola: arc => {
        const { sinkage: z, reach: a, radius: R } = arc
        arc.load = k * a * (z - (a * a) / (6 * R))
        arc.slope = k * a
        return true
      },
    }
  },
}
