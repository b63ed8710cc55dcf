import { type Random, randomFrom } from '../random.ts'
import { type Descended, descend } from './descend.ts'
import { type Descent, squares } from './descentRoom.ts'
import { endings } from './endings.ts'
import { soundnessOf } from './soundness.ts'
import { spreadStart } from './spreadStarts.ts'

/** Starts looked at for each that is followed. */
const LOOKED_AT = 24
/** Two sums of squares that agree so closely are the same minimum. */
const SAME = 1e-7
/** So many sound searches have to end at the lowest sum before the others are spared. */
const AGREEING = 2

export type Searched = Descended & { readonly restarts: number }

const converged = (run: Descended): boolean => endings[run.ending].outcome === 'converged'

/** The lowest of many starts that are only looked at. */
function lookAround(
  descent: Descent,
  random: Random,
  around: readonly Float64Array[],
  round: number,
): Float64Array | null {
  const { residuals, room } = descent
  let start: Float64Array | null = null
  let lowest = Number.POSITIVE_INFINITY
  for (let i = 0; i < LOOKED_AT; i++) {
    const drawn = spreadStart(random, descent, around[i % around.length]!, round)
    const sum = residuals.evaluate(drawn, room.trialResiduals) ? squares(room.trialResiduals) : Number.NaN
    if (!(sum < lowest)) continue
    lowest = sum
    start = drawn
  }
  return start
}

/**
 * The search from the given start and, where that ends badly or suspiciously, from others spread around it. The lowest
 * of all counts; it has converged only if a search that came as low says so.
 */
export function search(descent: Descent, start: Float64Array, restarts: number, seed: number): Searched {
  let lowest = descend(descent, start)
  let { iterations, evaluations } = lowest
  let followed = 0
  /** How many searches ended soundly at the lowest sum so far. */
  let agreeing = 0
  let beside: Float64Array | null = null

  const judge = (run: Descended): boolean => {
    const { sound, lower, evaluations: used } = soundnessOf(descent, run)
    evaluations += used
    beside = lower
    return sound
  }
  const follow = (from: Float64Array): void => {
    const run = descend(descent, from)
    followed++
    iterations += run.iterations
    evaluations += run.evaluations
    const sum = run.sumOfSquares
    if (!Number.isFinite(sum)) return
    const known = Number.isFinite(lowest.sumOfSquares)
    const same = known && Math.abs(sum - lowest.sumOfSquares) <= SAME * lowest.sumOfSquares
    if (same) {
      if (judge(run)) agreeing++
      if (converged(run) && (!converged(lowest) || sum < lowest.sumOfSquares)) lowest = run
    } else if (!known || sum < lowest.sumOfSquares) {
      lowest = run
      agreeing = judge(run) ? 1 : 0
    }
  }

  if (converged(lowest) && (restarts === 0 || judge(lowest))) return { ...lowest, evaluations, restarts: 0 }
  if (beside) follow(beside)
  const random = randomFrom(seed)
  const given = start.map((value, k) => Math.min(Math.max(value, descent.lower[k]!), descent.upper[k]!))
  for (let round = 0; round < restarts && agreeing < AGREEING; round++) {
    const looked = lookAround(descent, random, converged(lowest) ? [given, lowest.p] : [given], round)
    evaluations += LOOKED_AT
    if (looked) follow(looked)
  }
  return { ...lowest, iterations, evaluations, restarts: followed }
}
