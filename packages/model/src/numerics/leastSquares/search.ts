import { type Random, randomFrom } from '../random.ts'
import { covarianceOf } from './covariance.ts'
import { type Descended, descend } from './descend.ts'
import { type Descent, squares } from './descentRoom.ts'
import { endings } from './endings.ts'
import { spreadStart } from './spreadStarts.ts'

/** Starts looked at for each that is followed. */
const LOOKED_AT = 24
/** Two sums of squares that agree so closely are the same minimum. */
const SAME = 1e-7
/** A standard error larger than its parameter by this says that the fit may have ended on a plateau. */
const SUSPICIOUS = 1
/** How far along the loosest direction a lower point is looked for, in standard errors. */
const PROBES = [-1, 1, -4, 4] as const

export type Searched = Descended & { readonly restarts: number }

const converged = (run: Descended): boolean => endings[run.ending].outcome === 'converged'

/** The parameters whose own standard errors drown them; none where there is no scatter to judge by. */
function drowned({ least }: Descent, run: Descended, covariance: Float64Array | null): number[] {
  const size = run.p.length
  const freedom = run.residuals.length - size
  if (covariance === null || freedom <= 0) return []
  const variance = run.sumOfSquares / freedom
  return [...run.p.keys()].filter(
    k =>
      Math.sqrt(variance * covariance[k * size + k]!) > SUSPICIOUS * Math.max(Math.abs(run.p[k]!), least[k]!),
  )
}

/** Points along the directions in which a drowned parameter is loosest: a minimum is the lowest of them. */
function* probes(descent: Descent, run: Descended): Generator<Float64Array> {
  const size = run.p.length
  const covariance = covarianceOf(run)
  for (const k of drowned(descent, run, covariance)) {
    const own = covariance![k * size + k]!
    const deviation = Math.sqrt((run.sumOfSquares / (run.residuals.length - size)) * own)
    for (const far of PROBES)
      yield run.p.map((value, j) => value + (far * deviation * covariance![j * size + k]!) / own)
  }
}

const inside = ({ lower, upper }: Descent, start: Float64Array): Float64Array =>
  start.map((value, k) => Math.min(Math.max(value, lower[k]!), upper[k]!))

/** The lowest of many starts that are only looked at. */
function lookAround(
  descent: Descent,
  random: Random,
  around: readonly Float64Array[],
  round: number,
): { start: Float64Array | null; evaluations: number } {
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
  return { start, evaluations: LOOKED_AT }
}

/**
 * The search from the given start and, where that ends badly or suspiciously, from others spread around it. The lowest
 * of all counts; it has converged only if a search that came as low says so.
 */
export function search(descent: Descent, start: Float64Array, restarts: number, seed: number): Searched {
  const first = descend(descent, start)
  let iterations = first.iterations
  let evaluations = first.evaluations
  let lowest = first
  let followed = 0
  const suspicious = (run: Descended) => drowned(descent, run, covarianceOf(run)).length > 0
  if (converged(first) && !(restarts > 0 && suspicious(first))) return { ...first, restarts: 0 }

  /** How many searches ended soundly at the lowest sum so far. */
  let agreeing = 0
  const follow = (from: Float64Array): void => {
    const run = descend(descent, from)
    followed++
    iterations += run.iterations
    evaluations += run.evaluations
    if (!Number.isFinite(run.sumOfSquares)) return
    const known = Number.isFinite(lowest.sumOfSquares)
    const same = known && Math.abs(run.sumOfSquares - lowest.sumOfSquares) <= SAME * lowest.sumOfSquares
    if (same && converged(lowest) && converged(run)) agreeing++
    const better = !known || run.sumOfSquares < lowest.sumOfSquares * (same ? 0 : 1)
    if (!better && !(same && converged(run) && !converged(lowest))) return
    lowest = run
    agreeing = converged(run) && !suspicious(run) ? 1 : 0
  }
  if (converged(first)) {
    for (const probe of probes(descent, first)) {
      const from = inside(descent, probe)
      evaluations++
      if (!descent.residuals.evaluate(from, descent.room.trialResiduals)) continue
      if (squares(descent.room.trialResiduals) < first.sumOfSquares * (1 - SAME)) follow(from)
    }
  }
  const random = randomFrom(seed)
  const given = inside(descent, start)
  for (let round = 0; round < restarts && agreeing < 2; round++) {
    const around = converged(lowest) ? [given, lowest.p] : [given]
    const looked = lookAround(descent, random, around, round)
    evaluations += looked.evaluations
    if (looked.start) follow(looked.start)
  }
  return { ...lowest, iterations, evaluations, restarts: followed }
}
