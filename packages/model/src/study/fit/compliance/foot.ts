import {
  isOnSprings,
  type Plate,
  type Pressing,
  plateOnTurf,
  rollerOnTurf,
  springColumn,
  springShare,
} from '../../../contact/index.ts'
import { beta, increasingRoot } from '../../../numerics/index.ts'
import type { Metres, Newtons } from '../../../quantities/index.ts'
import { isGrooved, type Roller } from '../../../roller/index.ts'
import { curveOf, REFERENCE_PRESSURE, shearOf, type Turf } from '../../../turf/index.ts'

/** What presses the turf: a plate, or a roller that stands on it. */
export type Foot =
  | { readonly kind: 'plate'; readonly plate: Plate }
  | { readonly kind: 'roller'; readonly roller: Roller }

export type Carried = {
  readonly load: Newtons
  /** dW/dz. */
  readonly stiffness: number
  /** d ln W/d ln G; undefined where differences have to tell. */
  readonly byShear: number | undefined
  /** d ln W/d ln f + d ln W/d ln z of a law stretched in depth by f with the shear kept; undefined as above. */
  readonly stretch: number | undefined
}

/** One foot on one turf: the load is explicit in the sinkage. */
export type FootOnTurf = {
  readonly limit: Metres
  /** undefined without an answer. */
  readonly at: (sinkage: Metres) => Carried | undefined
  /** Where the sinkage is explicit in the load. */
  readonly under?: (load: Newtons, out: Stood) => void
  /**
   * Many loads at once, each from where ln z is thought to lie: fills sinkages, Infinity past the limit, and
   * d ln W/d ln z.
   */
  readonly column?: (
    loads: Float64Array,
    lnStarts: Float64Array,
    sinkages: Float64Array,
    steepnesses: Float64Array,
  ) => void
}

/** How deep a foot stands, d ln W/d ln z there, and whether that lies beyond what its turf answers. */
export type Stood = { sinkage: Metres; steepness: number; beyond: boolean }

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
function underPower({ diameter, length }: Roller, softness: Metres, exponent: number) {
  const constant =
    Math.log(2 * length * arcPart(exponent) * REFERENCE_PRESSURE * Math.sqrt(diameter)) -
    exponent * Math.log(softness)
  const steepness = exponent + 1 / 2
  return (load: Newtons, out: Stood) => {
    out.sinkage = Math.exp((Math.log(load) - constant) / steepness)
    out.steepness = steepness
  }
}

/** Part of a smooth roller's load that the shear of the mat carries, from the closed form of the edges. */
const shareOfShear = (roller: Roller, shear: number, { lineLoad, leading, beyondEnd, load }: Pressing) =>
  // ∂E/∂G = a/2R at a fixed sinkage, and an end reaches as the root of G
  (shear * (leading.reach / (roller.diameter / 2)) * (roller.length + 2 * beyondEnd) + lineLoad * beyondEnd) /
  load

/** All of a roller's loads at once, where it stands on springs with a closed form. */
function rollerColumn(roller: Roller, turf: Turf): Pick<FootOnTurf, 'column'> {
  const question = { roller, turf, condition: { kind: 'standing' } } as const
  if (!isOnSprings(question)) return {}
  const curve = curveOf(turf.law)
  const share = springShare(question)
  return {
    column: (loads, lnStarts, sinkages, steepnesses) => {
      springColumn(curve, roller.diameter / 2, share, loads, lnStarts, sinkages, steepnesses)
    },
  }
}

function rollerFoot(roller: Roller, turf: Turf): FootOnTurf {
  const { limit, at } = rollerOnTurf({ roller, turf, condition: { kind: 'standing' } })
  const shear = shearOf(turf)
  if (isGrooved(roller.surface))
    return {
      limit,
      at: sinkage => {
        const { load, stiffness } = at(sinkage)
        return { load, stiffness, byShear: shear === 0 ? 0 : undefined, stretch: undefined }
      },
    }
  return {
    limit,
    ...rollerColumn(roller, turf),
    at: sinkage => {
      const pressing = at(sinkage)
      const { load, stiffness, beyondEnd } = pressing
      return {
        load,
        stiffness,
        byShear: shear === 0 ? 0 : shareOfShear(roller, shear, pressing),
        stretch: 1 / 2 + beyondEnd / (roller.length + 2 * beyondEnd),
      }
    },
  }
}

function plateFoot(plate: Plate, turf: Turf): FootOnTurf {
  const { limit, at, area } = plateOnTurf(plate, turf)
  const on: FootOnTurf = {
    limit,
    at: sinkage => {
      const pressing = at(sinkage)
      if (!pressing) return undefined
      const { load, stiffness } = pressing
      const byShear = pressing.byShear / load
      return { load, stiffness, byShear, stretch: byShear }
    },
  }
  if (shearOf(turf) > 0) return on
  const { sinkage, pressure, slope } = curveOf(turf.law)
  return {
    ...on,
    under: (load, out) => {
      const z = sinkage(load / area)
      out.sinkage = z
      out.steepness = (z * slope(z)) / pressure(z)
    },
  }
}

/** A foot on a turf: standing, on fresh turf. */
export function footOnTurf(foot: Foot, turf: Turf): FootOnTurf {
  if (foot.kind === 'plate') return plateFoot(foot.plate, turf)
  const { roller } = foot
  const on = rollerFoot(roller, turf)
  const { law } = turf
  if (!isPlain(foot, turf) || (law.kind !== 'linear' && law.kind !== 'power')) return on
  return { ...on, under: underPower(roller, law.softness, law.kind === 'power' ? law.exponent : 1) }
}

/** On ln(load). */
const BALANCED = 1e-13

/**
 * Sinkage under a load, searched from a start, into `out`; false where there is none.
 *
 * Beyond the law's limit a foot that is searched for goes on along its last slope in logarithms, and `out.beyond` says
 * so: a fit passes through turfs that bear too little before it finds one that does not.
 *
 *   z = z_max (1 + ln(load/W(z_max))/(d ln W/d ln z))
 */
export function standUnder(on: FootOnTurf, load: Newtons, start: Metres, out: Stood): boolean {
  const { limit, under } = on
  if (under) {
    under(load, out)
    out.beyond = out.sinkage > limit
    return out.sinkage > 0
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
  out.beyond = root.outcome === 'beyond'
  out.steepness = root.slope
  out.sinkage = out.beyond ? limit * (1 - root.residual / root.slope) : Math.exp(root.at)
  return (root.outcome === 'converged' || out.beyond) && !lost && out.sinkage > 0
}
