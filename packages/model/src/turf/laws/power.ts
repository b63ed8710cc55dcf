import { beta } from '../../numerics/index.ts'
import { type Metres, numberProblem } from '../../quantities/index.ts'
import { type LawKind, REFERENCE_PRESSURE } from './lawKind.ts'

export type PowerLaw = { readonly kind: 'power'; readonly softness: Metres; readonly exponent: number }

const LEAST_EXPONENT = 0.2
const GREATEST_EXPONENT = 2
/** Within this of its full reach an arc counts as whole: the closed form below is for the whole arc. */
const WHOLE = 1e-12

/** Terms of the far mat's series: from 74 u_m on, eight leave less than 1e-15 for every exponent. */
const FAR_TERMS = 8
const TINY = 1e-9

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
  stretched: (law, factor) => ({ ...law, softness: factor * law.softness }),
  curve: ({ softness: s, exponent: n }) => {
    const k = REFERENCE_PRESSURE
    const Cn = beta(0.5, n + 1) / 2
    // a third of the time of the power operator, and as exact for the depths of turf
    const pressure = (z: number) => k * Math.exp(n * Math.log(z / s))
    const slope = (z: number) => (z > 0 ? (n * pressure(z)) / z : ((k * n) / s) * 0 ** (n - 1))
    const work = (z: number) => (pressure(z) * z) / (n + 1)
    // a mat is followed from one turning point at a time: its work is kept for the next node
    let last = Number.NaN
    let lastWork = Number.NaN
    return {
      pressure,
      slope,
      work,
      workBetween: (z, by) => {
        if (z === 0) return work(by)
        if (z !== last) {
          last = z
          lastWork = work(z)
        }
        return lastWork * Math.expm1((n + 1) * Math.log1p(by / z))
      },
      column: (depths, count, pressures, slopes) => {
        for (let i = 0; i < count; i++) {
          const z = depths[i]!
          pressures[i] = pressure(z)
          slopes[i] = z > 0 ? (n * pressures[i]!) / z : slope(0)
        }
      },
      sinkage: p => s * Math.exp(Math.log(p / k) / n),
      pole: Number.POSITIVE_INFINITY,
      limit: Number.POSITIVE_INFINITY,
      underParabola: arc => {
        const { sinkage: z, reach: a, radius: R } = arc
        if (a < Math.sqrt(2 * R * z) * (1 - WHOLE)) return false
        arc.load = Cn * pressure(z) * a
        arc.slope = ((n + 1 / 2) * arc.load) / z
        return true
      },
      straight: true,
      powerAtZero: n,
      farMat: (from, to, turning, out) => {
        const m = n + 1
        const A = k / (m * s ** n)
        const ratio = (turning / from) ** m
        const length = Math.log(to / from)
        let factor = from / Math.sqrt(A * from ** m)
        let value = 0
        let slope = 0
        for (let j = 0; j < FAR_TERMS; j++) {
          // (Φ − Φm)^(−½) = Φ^(−½) Σ binomial(2j, j)/4ʲ (Φm/Φ)ʲ, each term a power of u
          const power = 1 - m * (j + 0.5)
          const term =
            factor * (Math.abs(power * length) < TINY ? length : Math.expm1(power * length) / power)
          value += term
          slope += j * term
          factor *= (ratio * (2 * j + 1)) / (2 * j + 2)
        }
        out.value = value
        out.slope = slope / (A * turning ** m)
      },
      ...(n < 1
        ? {
            restReach: (z: number, G: number) =>
              (Math.sqrt((G * (n + 1) * s ** n) / (2 * k)) * 2 * z ** ((1 - n) / 2)) / (1 - n),
          }
        : {}),
    }
  },
}
