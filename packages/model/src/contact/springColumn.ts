import type { Curve, UnderArc } from '../turf/index.ts'
import { TANGENT } from './sinkageTable.ts'

const MOST_TURNS = 60
/** Longest step of ln z: what starts far off comes near in a few. */
const REACH = 4

const under: UnderArc = { load: 0, slope: 0 }

/** How a column of loads was solved; counted so that a test sees what a clock would not tell twice. */
export type ColumnCounts = { solved: number; turns: number }

/**
 * Sinkages of a smooth roller on springs under many loads, for a law with a closed form under the arc.
 *
 *   ln E(z) = ln(W/share),  E = ∫₀ᵃ p dx, a = √(2Rz);  share = 2L standing, (1 + √λ)L mowing
 *
 * Newton in logarithms, in which every law is nearly straight: each search starts from the one before along its slope
 * and ends with a step along the tangent. The power law is straight, and found by the first step.
 *
 * Fills sinkages; past the law's limit Infinity.
 *
 * Source  derived (docs/physics.md §3.1)
 */
export function springColumn(
  { underParabola, limit }: Curve,
  radius: number,
  share: number,
  loads: ArrayLike<number>,
  startLnSinkage: number,
  sinkages: Float64Array,
  counts?: ColumnCounts,
): void {
  const deepest = Math.log(limit)
  const lnShare = Math.log(share)
  let x = startLnSinkage
  // along the slope of the last answer; before there is one, no way at all
  let lnBefore = Number.NaN
  let give = 0
  let turns = 0
  for (let i = 0; i < loads.length; i++) {
    const lnLoad = Math.log(loads[i]!) - lnShare
    if (give > 0) x += (lnLoad - lnBefore) * give
    if (x > deepest) x = deepest
    sinkages[i] = Number.POSITIVE_INFINITY
    for (let turn = 0; turn < MOST_TURNS; turn++) {
      const z = Math.exp(x)
      underParabola!(z, Math.sqrt(2 * radius * z), radius, under)
      const miss = Math.log(under.load) - lnLoad
      give = under.load / (under.slope * z)
      turns++
      if (miss < -TANGENT && x === deepest) break
      const step = -miss * give
      x += step > REACH ? REACH : step < -REACH ? -REACH : step
      if (miss <= TANGENT && miss >= -TANGENT) {
        sinkages[i] = Math.exp(x)
        break
      }
      if (x > deepest) x = deepest
    }
    lnBefore = lnLoad
  }
  if (counts) {
    counts.solved += loads.length
    counts.turns += turns
  }
}
