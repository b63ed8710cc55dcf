import { leastSquares } from '../../../numerics/index.ts'
import { describe, InputError } from '../../../quantities/index.ts'
import { profileInterval } from '../../uncertainty/profileInterval.ts'
import { asItIs, asSolved } from '../compliance/plan.ts'
import { residualsOf } from '../compliance/setUp.ts'
import type { Interval } from '../fit.ts'
import { type FitAndQuestion, fittedModel } from './fittedModel.ts'
import { heldResiduals } from './heldResiduals.ts'

export type ProfileOfQuestion = FitAndQuestion & {
  /** A parameter or datum that was fitted. */
  readonly name: string
  /** Whose, where each set has its own. */
  readonly set?: string
  readonly level?: number
}

const LEVEL = 0.95

function placeOf(
  planned: readonly { readonly name: string; readonly set?: string }[],
  asked: ProfileOfQuestion,
) {
  const place = planned.findIndex(({ name, set }) => name === asked.name && set === asked.set)
  if (place >= 0) return place
  const sets = planned.flatMap(({ name, set }) => (name === asked.name && set !== undefined ? [set] : []))
  throw sets.length > 0
    ? new InputError({
        path: 'set',
        expected: `one of ${sets.map(set => JSON.stringify(set)).join(', ')}`,
        received: describe(asked.set),
      })
    : new InputError({
        path: 'name',
        expected: `one of ${[...new Set(planned.map(({ name }) => name))].join(', ')}`,
        received: describe(asked.name),
      })
}

/**
 * The profile interval of one number of a fit of turf: all values with which the others still come near enough to the
 * readings. It may be lopsided, or open to one side or both, and then says how far nothing speaks against it.
 *
 *   S(v) − S ≤ s² t², S(v) the least sum of squares with the number held at v
 *
 * Throws  InputError when there is no such number, the loss is a robust one, or the fit is not one of the question
 * Source  Bates and Watts 1988, §6.1 (docs/physics.md §7.3)
 */
export function profileOf(asked: ProfileOfQuestion): Interval {
  const { question, fit } = asked
  if (question.loss && question.loss.kind !== 'squares')
    throw new InputError({
      path: 'question.loss',
      expected: 'squares: a robust loss has no profile',
      received: question.loss.kind,
    })
  const { made, p } = fittedModel(asked)
  const { plan, measured, weights, lower, upper, scale } = made
  const place = placeOf(plan.planned, asked)
  const { by } = plan.planned[place]!
  const parameter = fit.parameters.find(one => one.name === asked.name && one.set === asked.set)
  const residuals = residualsOf(made, measured, weights)
  const held = heldResiduals(residuals, place)
  const bounds = { lower: held.others(lower), upper: held.others(upper), scale: held.others(scale) }
  const single = new Float64Array(residuals.count)
  const best = held.others(p)
  let from: Float64Array = best

  const sumAt = (value: number): number | null => {
    const at = asSolved(by, value)
    if (!Number.isFinite(at)) return null
    held.hold(at)
    if (best.length === 0)
      return held.residuals.evaluate(best, single) ? single.reduce((sum, r) => sum + r * r, 0) : null
    for (const start of from === best ? [best] : [from, best]) {
      const solved = leastSquares({ residuals: held.residuals, start, ...bounds, restarts: 0 })
      if (solved.outcome !== 'converged') continue
      from = solved.p
      return solved.sumOfSquares
    }
    return null
  }

  return profileInterval({
    solve: sumAt,
    best: fit.sumOfSquares,
    value: asItIs(by, p[place]!),
    standardError: parameter?.standardError ?? null,
    level: asked.level ?? question.level ?? LEVEL,
    dof: fit.degreesOfFreedom,
    noise: fit.noise === 'known' ? { kind: 'known', standardDeviation: 1 } : { kind: 'estimated' },
    lower: asItIs(by, lower[place]!),
    upper: asItIs(by, upper[place]!),
  })
}
