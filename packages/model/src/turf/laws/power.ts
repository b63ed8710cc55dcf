import { beta } from '../../numerics/index.ts'
import { type Metres, numberProblem } from '../../quantities/index.ts'
import { type LawKind, REFERENCE_PRESSURE } from './lawKind.ts'

export type PowerLaw = { readonly kind: 'power'; readonly softness: Metres; readonly exponent: number }

const LEAST_EXPONENT = 0.2
const GREATEST_EXPONENT = 2
/** Within this of its full reach an arc counts as whole: the closed form below is for the whole arc. */
const WHOLE = 1e-12

/**
 * Pressure as a power of sinkage.
 *
 *   p = p_r (z/s)ⁿ;  ∫₀ᵃ p dx = ½ B(½, n+1) p(z₀) a for the whole arc a = √(2 R z₀)
 *
 * Holds   n from 0.2 to 2
 * Source  Bernstein 1913; Bekker 1956, p = (k_c/b + k_φ) zⁿ; arc integral derived (docs/physics.md §3.1).
 */
export const power: LawKind<PowerLaw> = {
  kind: 'power',
  equation: 'p = p_r (z/s)ⁿ',
  source: 'Bernstein 1913; Bekker 1956',
  parameters: [
    { name: 'softness', quantity: 'softness', symbol: 's' },
    { name: 'exponent', quantity: 'exponent', symbol: 'n' },
  ],
  problems: (law, path) => [
    ...numberProblem(law.softness, `${path}.softness`, 'softness', { above: 0 }),
    ...numberProblem(law.exponent, `${path}.exponent`, 'exponent', {
      atLeast: LEAST_EXPONENT,
      atMost: GREATEST_EXPONENT,
    }),
  ],
  softness: law => law.softness,
  withSoftness: (law, softness) => ({ ...law, softness }),
  curve: ({ softness: s, exponent: n }) => {
    const k = REFERENCE_PRESSURE
    const Cn = beta(0.5, n + 1) / 2
    const pressure = (z: number) => k * (z / s) ** n
    const work = (z: number) => (pressure(z) * z) / (n + 1)
    return {
      pressure,
      slope: z => (k * n * (z / s) ** (n - 1)) / s,
      work,
      workBetween: (z, by) => (z > 0 ? work(z) * Math.expm1((n + 1) * Math.log1p(by / z)) : work(by)),
      sinkage: p => s * (p / k) ** (1 / n),
      pole: Number.POSITIVE_INFINITY,
      limit: Number.POSITIVE_INFINITY,
      underParabola: (z, a, R) =>
        a >= Math.sqrt(2 * R * z) * (1 - WHOLE) ? Cn * pressure(z) * a : Number.NaN,
      ...(n < 1
        ? {
            restReach: (z: number, G: number) =>
              (Math.sqrt((G * (n + 1) * s ** n) / (2 * k)) * 2 * z ** ((1 - n) / 2)) / (1 - n),
          }
        : {}),
    }
  },
}
