import { digamma } from '../../../numerics/index.ts'
import type { PressureLaw, Turf } from '../../../turf/index.ts'
import { difference, FARTHEST, STEP } from './difference.ts'
import { type Foot, type FootOnTurf, footOnTurf, isPlain } from './foot.ts'

/** A free parameter of the turf, and how it is solved for: by its logarithm or as it is. */
export type Moved = { readonly name: string; readonly by: 'ln' | 'plain' }

/** A turf and its neighbours. */
export type Neighbourhood = {
  readonly turf: Turf
  readonly moved: readonly Moved[]
  /** Length of a step of each parameter: of its logarithm, or of itself. */
  readonly steps: Float64Array
  /** One parameter moved, as it is solved for; undefined where that makes no turf. */
  readonly neighbour: (parameter: number, by: number) => Turf | undefined
}

/** d ln p/d ln s of a law whose softness does nothing but scale the pressure; undefined for others. */
function amplitudeRate(law: PressureLaw): number | undefined {
  switch (law.kind) {
    case 'linear':
      return -1
    case 'power':
      return -law.exponent
    case 'stiffening':
      return -1 / (1 - law.softness / law.lockingDepth)
    case 'logarithmic': {
      const part = law.softness / law.lockingDepth
      return part / ((1 - part) * Math.log1p(-part))
    }
    default:
      return undefined
  }
}

/** What of a foot at its sinkage the law is asked about: one object, filled again for every reading. */
type At = {
  sinkage: number
  /** d ln W/d ln z. */
  steepness: number
  byShear: number | undefined
  stretch: number | undefined
}

/**
 * d ln W/d ln parameter at a fixed sinkage where the law tells it; undefined where differences are to be taken.
 *
 *   softness        S = a_s (1 − D) − D,  a_s = d ln p/d ln s,  D = d ln W/d ln G: load scales with pressure and shear together
 *   locking depth   c − d ln W/d ln z − S − D: the law stretched in depth with the shear kept is s, H and l² stretched
 *   stretched law   c − d ln W/d ln z − D
 *   exponent        n ln(z/s), and n [ψ(n+1) − ψ(n+3/2)] more under a roller
 *   c               D under a plate, ½ + l_e/(L + 2l_e) under a smooth roller
 *
 * Holds   D is told for smooth rollers and plates; the exponent without spread
 * Source  derived (docs/physics.md §7.2)
 */
function toldByLaw(
  { name }: Moved,
  foot: Foot,
  turf: Turf,
  amplitude: number | undefined,
  at: Readonly<At>,
): number | undefined {
  const { law } = turf
  const { sinkage, steepness, byShear, stretch } = at
  if (byShear === undefined) return undefined
  const bySoftness = amplitude === undefined ? undefined : amplitude * (1 - byShear) - byShear
  if (name === 'softness' && bySoftness !== undefined) return bySoftness
  if (name === 'exponent' && law.kind === 'power' && isPlain(foot, turf)) {
    const n = law.exponent
    const reach = foot.kind === 'roller' ? digamma(n + 1) - digamma(n + 3 / 2) : 0
    return n * (Math.log(sinkage / law.softness) + reach)
  }
  if (stretch === undefined) return undefined
  if (name === 'softness') return stretch - steepness - byShear
  if (name === 'lockingDepth' && bySoftness !== undefined) return stretch - steepness - bySoftness - byShear
  return undefined
}

/** Where spread is nothing it can only grow: as a part of a length of the foot. */
const FIRST_SPREAD = 1e-4

/** How far the foot touches, roughly. */
const contactLength = (foot: Foot, sinkage: number): number =>
  foot.kind === 'roller'
    ? Math.sqrt(foot.roller.diameter * sinkage)
    : 'diameter' in foot.plate
      ? foot.plate.diameter / 2
      : Math.min(foot.plate.width, foot.plate.length) / 2

const NONE = Number.NaN

type Neighbour = (by: number) => Turf | undefined

/**
 * How the load of a foot at a fixed sinkage changes with each parameter, relative: by the law where it tells, by
 * five-point differences of the explicit load elsewhere.
 */
export type LoadRates = {
  /** Fills d ln W/d parameter; false where there is none. `steepness` is d ln W/d ln z. */
  readonly fill: (sinkage: number, steepness: number, out: Float64Array, at: number) => boolean
}

export function loadRates(foot: Foot, around: Neighbourhood): LoadRates {
  const { turf, moved, steps, neighbour } = around
  const spread = turf.spread ?? 0
  const bySpread = moved.findIndex(({ name }) => name === 'spread')
  // after the parameters, the spread whether it is free or not; of each the foot at so many steps either way
  const feet: (FootOnTurf | null | undefined)[] = new Array((moved.length + 1) * (2 * FARTHEST + 1))
  const footAt = (parameter: number, by: number, make: () => Turf | undefined): FootOnTurf | null => {
    const place = parameter * (2 * FARTHEST + 1) + by + FARTHEST
    const known = feet[place]
    if (known !== undefined) return known
    const changed = make()
    const fresh = changed ? footOnTurf(foot, changed) : null
    feet[place] = fresh
    return fresh
  }
  const byDifference = (parameter: number, step: number, sinkage: number, make: Neighbour) =>
    difference(step, by => {
      const carried = footAt(parameter, by, () => make(by * step))?.at(sinkage)
      return carried ? Math.log(carried.load) : NONE
    })
  /** d ln W/d l where there is no spread yet: forwards. */
  const firstSpread = (sinkage: number): number => {
    const step = FIRST_SPREAD * contactLength(foot, sinkage)
    const at = (by: number) => footOnTurf(foot, { ...turf, spread: by * step }).at(sinkage)?.load ?? NONE
    const none = footOnTurf(foot, turf).at(sinkage)?.load ?? NONE
    return (4 * Math.log(at(1) / none) - Math.log(at(2) / none)) / (2 * step)
  }
  /** d ln W/d ln G by differences: shear goes with the square of the spread. */
  const shearRate = (sinkage: number): number =>
    byDifference(moved.length, STEP, sinkage, by => ({ ...turf, spread: spread * Math.exp(by) })) / 2
  const on = footOnTurf(foot, turf)
  // without spread the load is asked for nothing that its steepness does not tell, but for how it stretches
  const plain = isPlain(foot, turf) ? (foot.kind === 'roller' ? 1 / 2 : 0) : undefined
  const amplitude = amplitudeRate(turf.law)
  const needsShear = bySpread >= 0 || amplitude !== undefined
  const at: At = { sinkage: 0, steepness: 0, byShear: 0, stretch: plain }
  const asks = (sinkage: number, steepness: number): boolean => {
    at.sinkage = sinkage
    at.steepness = steepness
    if (plain !== undefined) return true
    const carried = on.at(sinkage)
    if (!carried) return false
    at.byShear = carried.byShear ?? (needsShear ? shearRate(sinkage) : undefined)
    at.stretch = carried.stretch
    return true
  }
  return {
    fill: (sinkage, steepness, out, place) => {
      if (!asks(sinkage, steepness)) return false
      for (let j = 0; j < moved.length; j++) {
        const rate =
          j === bySpread
            ? spread === 0
              ? firstSpread(sinkage)
              : (2 * (at.byShear ?? NONE)) / spread
            : (toldByLaw(moved[j]!, foot, turf, amplitude, at) ??
              byDifference(j, steps[j]!, sinkage, by => neighbour(j, by)))
        if (!Number.isFinite(rate)) return false
        out[place + j] = rate
      }
      return true
    },
  }
}
