import { covarianceOf } from './covariance.ts'
import type { Descended } from './descend.ts'
import { type Descent, squares } from './descentRoom.ts'
import { endings } from './endings.ts'

/** A standard error larger than its parameter by this says that the search may have ended on a plateau. */
const DROWNED = 1
/** One standard error away the sum of squares should rise by one variance; less than this part of it is a plateau. */
const RISE = 0.5

/** What is to be thought of where a search ended. */
export type Soundness = {
  readonly sound: boolean
  /** A point beside it that lies lower. */
  readonly lower: Float64Array | null
  readonly evaluations: number
}

/** The parameters whose own standard errors drown them. */
function drowned({ least }: Descent, run: Descended, covariance: Float64Array, variance: number): number[] {
  const size = run.p.length
  return [...run.p.keys()].filter(k => {
    const deviation = Math.sqrt(variance * covariance[k * size + k]!)
    return deviation > DROWNED * Math.max(Math.abs(run.p[k]!), least[k]!)
  })
}

/**
 * Whether a search that converged ended at a minimum that the residuals determine, or on a plateau: where a standard
 * error drowns its parameter, the sum of squares is looked at one standard error to either side. A minimum of a nearly
 * straight model is as deep there as it should be, whatever its parameters.
 */
export function soundnessOf(descent: Descent, run: Descended): Soundness {
  if (endings[run.ending].outcome !== 'converged') return { sound: false, lower: null, evaluations: 0 }
  const certain: Soundness = { sound: true, lower: null, evaluations: 0 }
  const size = run.p.length
  const freedom = run.residuals.length - size
  if (freedom <= 0) return certain
  const covariance = covarianceOf(run)
  if (covariance === null) return certain
  const { residuals, lower: low, upper: high, room } = descent
  const variance = run.sumOfSquares / freedom
  let evaluations = 0
  let sound = true
  let lower: Float64Array | null = null
  let lowest = run.sumOfSquares
  for (const k of drowned(descent, run, covariance, variance)) {
    const own = covariance[k * size + k]!
    for (const side of [-1, 1]) {
      const at = run.p.map((value, j) => value + side * Math.sqrt(variance / own) * covariance[j * size + k]!)
      // a bound may well cut a wide interval short
      if (at.some((value, j) => value < low[j]! || value > high[j]!)) continue
      evaluations++
      if (!residuals.evaluate(at, room.trialResiduals)) continue
      const sum = squares(room.trialResiduals)
      if (sum - run.sumOfSquares < RISE * variance) sound = false
      if (sum < lowest) {
        lowest = sum
        lower = at
      }
    }
  }
  return { sound, lower, evaluations }
}
