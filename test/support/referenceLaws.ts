import type { PressureLaw } from '@swardsink/model'

const REFERENCE_PRESSURE = 10e3

/** A law written out a second time, from the page of equations and not from the model. */
export type ReferenceLaw = {
  readonly pressure: (sinkage: number) => number
  readonly slope: (sinkage: number) => number
  /** Φ(z) = ∫₀ᶻ p. */
  readonly work: (sinkage: number) => number
  /** Deeper than this it answers nothing. */
  readonly limit: number
}

const power = (s: number, n: number): ReferenceLaw => ({
  pressure: z => REFERENCE_PRESSURE * (z / s) ** n,
  slope: z => (REFERENCE_PRESSURE * n * (z / s) ** (n - 1)) / s,
  work: z => (REFERENCE_PRESSURE * s * (z / s) ** (n + 1)) / (n + 1),
  limit: Number.POSITIVE_INFINITY,
})

/** −ln(1 − u) − u and u + (1 − u) ln(1 − u) by their series while u is small. */
const series = (u: number, term: (j: number) => number): number => {
  let sum = 0
  for (let j = 12; j >= 2; j--) sum = sum * u + term(j)
  return sum * u * u
}
const SMALL = 0.05

function stiffening(s: number, H: number): ReferenceLaw {
  const k = REFERENCE_PRESSURE * (1 / s - 1 / H)
  return {
    pressure: z => k / (1 / z - 1 / H),
    slope: z => k / (1 - z / H) ** 2,
    work: z => k * H * H * (z / H < SMALL ? series(z / H, j => 1 / j) : -Math.log(1 - z / H) - z / H),
    limit: H,
  }
}

function logarithmic(s: number, H: number): ReferenceLaw {
  const M = -REFERENCE_PRESSURE / Math.log1p(-s / H)
  return {
    pressure: z => -M * Math.log1p(-z / H),
    slope: z => M / (H - z),
    work: z => {
      const u = z / H
      return M * H * (u < SMALL ? series(u, j => 1 / (j * (j - 1))) : u + (1 - u) * Math.log(1 - u))
    },
    limit: H,
  }
}

export function referenceLaw(law: PressureLaw): ReferenceLaw {
  switch (law.kind) {
    case 'linear':
      return power(law.softness, 1)
    case 'power':
      return power(law.softness, law.exponent)
    case 'stiffening':
      return stiffening(law.softness, law.lockingDepth)
    case 'logarithmic':
      return logarithmic(law.softness, law.lockingDepth)
    default:
      throw new Error(`no second writing of the ${law.kind} law`)
  }
}

/** h(x), h′(x), h″(x) and the x at which h is this. */
export const referenceArcs = {
  parabola: (R: number) => ({
    height: (x: number) => (x * x) / (2 * R),
    slope: (x: number) => x / R,
    curvature: () => 1 / R,
    reach: (h: number) => Math.sqrt(2 * R * h),
    /** h(to) − h(x) by the distance from `to`, without cancellation. */
    below: (x: number, short: number) => (short * (2 * x + short)) / (2 * R),
  }),
  circle: (R: number) => ({
    height: (x: number) => R - Math.sqrt(R * R - x * x),
    slope: (x: number) => x / Math.sqrt(R * R - x * x),
    curvature: (x: number) => (R * R) / (R * R - x * x) ** 1.5,
    reach: (h: number) => Math.sqrt(2 * R * h - h * h),
    below: (x: number, short: number) =>
      (short * (2 * x + short)) / (Math.sqrt(R * R - x * x) + Math.sqrt(R * R - (x + short) ** 2)),
  }),
} as const
