import { type Plate, plateOnTurf, rollerOnTurf } from '../../../contact/index.ts'
import { beta, increasingRoot } from '../../../numerics/index.ts'
import type { Metres, Newtons } from '../../../quantities/index.ts'
import { isGrooved, type Roller } from '../../../roller/index.ts'
import { curveOf, REFERENCE_PRESSURE, type Turf } from '../../../turf/index.ts'

/** What presses the turf: a plate, or a roller that stands on it. */
export type Foot =
  | { readonly kind: 'plate'; readonly plate: Plate }
  | { readonly kind: 'roller'; readonly roller: Roller }

export type Carried = { readonly load: Newtons /** dW/dz. */; readonly stiffness: number }

/** One foot on one turf: the load is explicit in the sinkage. */
export type FootOnTurf = {
  readonly limit: Metres
  /** undefined without an answer. */
  readonly at: (sinkage: Metres) => Carried | undefined
  /** Where the sinkage is explicit in the load. */
  readonly under?: (load: Newtons) => Metres
}

/** Whether the law alone answers, without a mat that hangs across grooves or past an edge. */
export const isPlain = (foot: Foot, turf: Turf): boolean =>
  (turf.spread ?? 0) === 0 && (foot.kind === 'plate' || !isGrooved(foot.roller.surface))

/** ½ B(½, n+1), part of p(z₀) a that an arc carries. */
const arcPart = (exponent: number): number => beta(0.5, exponent + 1) / 2

/**
 * Sinkage of a smooth roller on springs whose pressure is a power of it.
 *
 *   W = 2 L C_n p_r (z/s)ⁿ √(2 R z),  C_n = ½ B(½, n+1)
 *
 * Source  docs/physics.md §3.1
 */
function underPower({ diameter, length }: Roller, softness: Metres, exponent: number): FootOnTurf['under'] {
  const constant =
    Math.log(2 * length * arcPart(exponent) * REFERENCE_PRESSURE * Math.sqrt(diameter)) -
    exponent * Math.log(softness)
  return load => Math.exp((Math.log(load) - constant) / (exponent + 1 / 2))
}

/** A foot on a turf: standing, on fresh turf. */
export function footOnTurf(foot: Foot, turf: Turf): FootOnTurf {
  const plain = isPlain(foot, turf)
  const { law } = turf
  if (foot.kind === 'plate') {
    const on = plateOnTurf(foot.plate, turf)
    if (!plain) return on
    const curve = curveOf(law)
    return { ...on, under: load => curve.sinkage(load / on.area) }
  }
  const { roller } = foot
  const { limit, at } = rollerOnTurf({ roller, turf, condition: { kind: 'standing' } })
  if (!plain) return { limit, at }
  if (law.kind === 'linear') return { limit, at, under: underPower(roller, law.softness, 1)! }
  if (law.kind === 'power') return { limit, at, under: underPower(roller, law.softness, law.exponent)! }
  return { limit, at }
}

/** On ln(load). */
const BALANCED = 1e-13

/** Sinkage under a load, searched from a start; NaN where there is none. */
export function sinkageUnder(on: FootOnTurf, load: Newtons, start: Metres): Metres {
  const { limit, under } = on
  if (under) {
    const sinkage = under(load)
    return sinkage <= limit ? sinkage : Number.NaN
  }
  let lost = false
  const root = increasingRoot({
    evaluate: x => {
      const z = Math.exp(x)
      const carried = on.at(z)
      if (!carried) {
        lost = true
        return { value: 0, slope: 1 }
      }
      return { value: Math.log(carried.load / load), slope: (carried.stiffness * z) / carried.load }
    },
    start: Math.log(Math.min(start, limit / 2)),
    tolerance: BALANCED,
    ...(Number.isFinite(limit) ? { high: Math.log(limit) } : {}),
  })
  return root.outcome === 'converged' && !lost ? Math.exp(root.at) : Number.NaN
}
