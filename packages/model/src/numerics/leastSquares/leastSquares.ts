import { describe, type Problem, refuse } from '../../quantities/index.ts'
import { type Descent, descentRoom } from './descentRoom.ts'
import { endings } from './endings.ts'
import { leastSizes } from './leastSizes.ts'
import type { LeastSquaresQuestion, Solved } from './question.ts'
import { reweight } from './reweight.ts'
import { search } from './search.ts'

/** Usual settings: eight digits of each parameter, as many starts as found every certified fit tried. */
const TOLERANCE = 1e-8
const RESTARTS = 12
const MOST = 1000
const SEED = 1

function problemsOf({
  residuals,
  start,
  lower,
  upper,
  scale,
  loss,
  tolerance,
}: LeastSquaresQuestion): Problem[] {
  const { size } = residuals
  const lists = { start, lower, upper, scale }
  const problems: Problem[] = Object.entries(lists).flatMap(([path, list]) =>
    list === undefined || list.length === size
      ? []
      : [{ path, expected: `${size} numbers`, received: `${list.length}` }],
  )
  start.forEach((value, k) => {
    if (!Number.isFinite(value))
      problems.push({ path: `start.${k}`, expected: 'a finite number', received: describe(value) })
    if (lower && upper && !(lower[k]! <= upper[k]!))
      problems.push({ path: `lower.${k}`, expected: `at most ${upper[k]}`, received: describe(lower[k]) })
    if (scale && !(scale[k]! > 0))
      problems.push({ path: `scale.${k}`, expected: 'more than 0', received: describe(scale[k]) })
  })
  if (loss && loss.kind !== 'squares' && !(loss.at > 0))
    problems.push({ path: 'loss.at', expected: 'more than 0', received: describe(loss.at) })
  if (tolerance !== undefined && !(tolerance > 0 && tolerance < 1))
    problems.push({ path: 'tolerance', expected: 'between 0 and 1', received: describe(tolerance) })
  return problems
}

/**
 * The parameters that make the sum of squared residuals least, and how the search for them ended.
 *
 *   S(p) = Σ rᵢ(p)² → least, lower ≤ p ≤ upper
 *
 * Holds   it finds a minimum; whether there is a lower one it asks only when the first looks wrong (docs/physics.md §7.1)
 * Throws  InputError when lists differ in length, a start is not finite, or bounds are crossed.
 */
export function leastSquares(question: LeastSquaresQuestion): Solved {
  refuse(problemsOf(question))
  const { residuals, start, loss = { kind: 'squares' } } = question
  const { size } = residuals
  const lower = question.lower ?? new Float64Array(size).fill(Number.NEGATIVE_INFINITY)
  const upper = question.upper ?? new Float64Array(size).fill(Number.POSITIVE_INFINITY)
  const descent: Descent = {
    residuals,
    lower,
    upper,
    least: leastSizes(residuals, start, question.scale, lower, upper),
    tolerance: question.tolerance ?? TOLERANCE,
    most: question.most ?? MOST,
    room: descentRoom(residuals),
  }
  const found = search(descent, start, question.restarts ?? RESTARTS, question.seed ?? SEED)
  const { restarts } = found
  if (loss.kind === 'squares' || endings[found.ending].outcome === 'failed') {
    const { ending, ...rest } = found
    return { ...rest, outcome: endings[ending].outcome, why: ending, robust: null, loss: null, restarts }
  }
  const { ending, spread, ...rest } = reweight(descent, found, loss)
  const { kind, at } = loss
  return { ...rest, outcome: endings[ending].outcome, why: ending, loss: { kind, at, spread }, restarts }
}
