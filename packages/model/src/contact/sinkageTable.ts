import { increasingRoot } from '../numerics/index.ts'
import type { RollerOnTurf } from './rollerOnTurf.ts'

/** Sinkage of one roller on one turf against ln load, as cubics on even steps: a look-up where a search would be. */
export type SinkageTable = {
  readonly lowLnLoad: number
  readonly step: number
  /** Of 1, t, t² and t³ in each step, t from 0 to 1. */
  readonly cubics: Float64Array
  /** Steps in which the cubic misses: what lies there is to be solved. */
  readonly misses: Uint8Array
  /** ln load at the greatest sinkage that is answered; Infinity where the table ends before. */
  readonly limitLnLoad: number
}

/** A cubic through values and slopes so far apart in ln W misses z by less than 3e-10 for exponents from 0.2 on. */
const STEP = 0.0125
/** What a step may miss in ln z half way. */
const MISS = 1e-9
/** A miss this small in ln W is mended along the tangent: that leaves its square. */
export const TANGENT = 1e-6

/** ln z at ln W and d ln z/d ln W, searched from a start; undefined past the limit. */
export function searchLn(
  on: RollerOnTurf,
  lnLoad: number,
  start: number,
): { readonly lnSinkage: number; readonly slope: number } | 'beyond' | undefined {
  const root = increasingRoot({
    evaluate: x => {
      const { load, stiffness, sinkage } = on.at(Math.exp(x))
      return { value: Math.log(load) - lnLoad, slope: (stiffness * sinkage) / load }
    },
    start,
    tolerance: TANGENT,
    ...(Number.isFinite(on.limit) ? { high: Math.log(on.limit) } : {}),
  })
  if (root.outcome === 'beyond') return 'beyond'
  if (root.outcome === 'not converged') return undefined
  return { lnSinkage: root.at - root.residual / root.slope, slope: 1 / root.slope }
}

/**
 * Tabulates a roller between two loads, or up to what its turf bears.
 *
 *   z = a + b t + c t² + d t³ between ln W_k and ln W_k + step, through z and dz/d ln W at both
 *
 * Holds   to 1e-9 in z; undefined where the search finds nothing
 */
export function sinkageTable(
  on: RollerOnTurf,
  lnLow: number,
  lnHigh: number,
  startLnSinkage: number,
): SinkageTable | undefined {
  const atLimit = Number.isFinite(on.limit) ? Math.log(on.at(on.limit).load) : Number.POSITIVE_INFINITY
  const high = Math.min(lnHigh, atLimit)
  if (!(high > lnLow)) return undefined
  const count = Math.max(1, Math.ceil((high - lnLow) / STEP))
  const step = (high - lnLow) / count
  const cubics = new Float64Array(4 * count)
  const misses = new Uint8Array(count)
  let start = startLnSinkage
  let before: { sinkage: number; rise: number } | undefined
  for (let k = 0; k <= count; k++) {
    // the last knot at the limit itself, so that rounding leaves nothing beyond it
    const found =
      k === count && high === atLimit
        ? { lnSinkage: Math.log(on.limit), slope: slopeAt(on, on.limit) }
        : searchLn(on, lnLow + k * step, start)
    if (found === undefined || found === 'beyond') return undefined
    const sinkage = Math.exp(found.lnSinkage)
    const rise = sinkage * found.slope * step
    if (before) {
      const gain = sinkage - before.sinkage
      const at = 4 * (k - 1)
      cubics[at] = before.sinkage
      cubics[at + 1] = before.rise
      cubics[at + 2] = 3 * gain - 2 * before.rise - rise
      cubics[at + 3] = before.rise + rise - 2 * gain
      const half = before.sinkage + gain / 2 + (before.rise - rise) / 8
      const { load } = on.at(half)
      const miss = (Math.log(load) - (lnLow + (k - 0.5) * step)) * found.slope
      // not Math.abs(miss) > MISS: a step whose middle is not a number misses too
      misses[k - 1] = Math.abs(miss) <= MISS ? 0 : 1
    }
    before = { sinkage, rise }
    start = found.lnSinkage + found.slope * step
  }
  return {
    lowLnLoad: lnLow,
    step,
    cubics,
    misses,
    limitLnLoad: high === atLimit ? atLimit : Number.POSITIVE_INFINITY,
  }
}

const slopeAt = (on: RollerOnTurf, depth: number): number => {
  const { load, stiffness, sinkage } = on.at(depth)
  return load / (stiffness * sinkage)
}

/**
 * Reads a column of loads; what the table does not hold is left as it stands.
 *
 *   z = depth · table(ln W − shift):  another turf of which every depth and load is so many times those of the table
 */
export function readSinkages(
  { lowLnLoad, step, cubics, misses }: SinkageTable,
  lnLoads: Float64Array,
  shift: number,
  depth: number,
  sinkages: Float64Array,
): void {
  const count = misses.length
  const per = 1 / step
  const from = (lowLnLoad + shift) * per
  for (let i = 0; i < lnLoads.length; i++) {
    const place = lnLoads[i]! * per - from
    if (!(place >= 0 && place < count)) continue
    const k = place | 0
    if (misses[k] === 1) continue
    const t = place - k
    const at = 4 * k
    sinkages[i] = depth * (cubics[at]! + t * (cubics[at + 1]! + t * (cubics[at + 2]! + t * cubics[at + 3]!)))
  }
}
