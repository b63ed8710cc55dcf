import { type Loss, leastSquares, type Residuals } from '../../numerics/index.ts'
import { describe, InputError, type Problem, refuse } from '../../quantities/index.ts'
import type { Fit, FittedParameter, Noise } from './fit.ts'
import { fitFrom } from './statement.ts'

type Named = Readonly<Record<string, number>>

export type CurveQuestion<X = number> = {
  readonly model: (x: X, parameters: Named) => number
  readonly x: ArrayLike<X>
  readonly y: ArrayLike<number>
  /** Where the search for each free parameter begins. */
  readonly start: Named
  readonly noise: Noise
  readonly lower?: Named
  readonly upper?: Named
  /** 1/variance of each reading; relative when the noise is estimated. */
  readonly weights?: ArrayLike<number>
  /** Parameters that are given and not searched. */
  readonly held?: Named
  readonly level?: number
  readonly loss?: Loss
  /** The model's slopes ∂model/∂parameter, by name; without it differences are taken. */
  readonly jacobian?: (x: X, parameters: Named) => Named
  readonly restarts?: number
  readonly seed?: number
}

const numberOf = (path: string, value: unknown): Problem[] =>
  typeof value === 'number' && Number.isFinite(value)
    ? []
    : [{ path, expected: 'a finite number', received: describe(value) }]

function problemsOf<X>({
  x,
  y,
  start,
  noise,
  lower,
  upper,
  weights,
  held,
  level,
  loss,
}: CurveQuestion<X>): Problem[] {
  const names = Object.keys(start)
  const problems: Problem[] = []
  const say = (path: string, expected: string, received: unknown) =>
    problems.push({ path, expected, received: describe(received) })
  if (names.length === 0) say('start', 'at least one parameter', 0)
  if (x.length === 0) say('x', 'at least one reading', 0)
  if (y.length !== x.length) say('y', `${x.length} numbers, as many as x`, y.length)
  if (weights && weights.length !== x.length)
    say('weights', `${x.length} numbers, as many as x`, weights.length)
  for (let i = 0; i < y.length; i++) problems.push(...numberOf(`y.${i}`, y[i]))
  for (let i = 0; i < (weights?.length ?? 0); i++)
    if (!(weights![i]! > 0 && weights![i]! < Number.POSITIVE_INFINITY))
      say(`weights.${i}`, 'more than 0', weights![i])
  for (const name of names) problems.push(...numberOf(`start.${name}`, start[name]))
  for (const [name, value] of Object.entries(held ?? {})) {
    problems.push(...numberOf(`held.${name}`, value))
    if (name in start) say(`held.${name}`, 'a parameter that is not also searched', value)
  }
  for (const [path, bounds] of Object.entries({ lower, upper }))
    for (const [name, value] of Object.entries(bounds ?? {}))
      if (!(name in start) || Number.isNaN(value))
        say(`${path}.${name}`, 'a bound of a searched parameter', value)
  for (const name of names)
    if ((lower?.[name] ?? Number.NEGATIVE_INFINITY) > (upper?.[name] ?? Number.POSITIVE_INFINITY))
      say(`lower.${name}`, `at most its upper bound ${upper?.[name]}`, lower?.[name])
  if (noise.kind === 'known' && !(noise.standardDeviation > 0))
    say('noise.standardDeviation', 'more than 0', noise.standardDeviation)
  if (level !== undefined && !(level > 0 && level < 1)) say('level', 'between 0 and 1', level)
  if (loss && loss.kind !== 'squares' && !(loss.at > 0)) say('loss.at', 'more than 0', loss.at)
  return problems
}

/** The curve's weighted residuals; the model sees one object, written anew for every evaluation. */
function curveResiduals<X>(
  question: CurveQuestion<X>,
  names: readonly string[],
  weights: Float64Array,
): Residuals {
  const { model, x, y, jacobian, held } = question
  const roots = weights.map(Math.sqrt)
  const named: Record<string, number> = { ...Object.fromEntries(names.map(name => [name, 0])), ...held }
  const write = (p: Float64Array) => {
    for (let k = 0; k < names.length; k++) named[names[k]!] = p[k]!
  }
  return {
    count: x.length,
    size: names.length,
    evaluate(p, r) {
      write(p)
      for (let i = 0; i < r.length; i++) {
        const value = (y[i]! - model(x[i]!, named)) * roots[i]!
        if (!Number.isFinite(value)) return false
        r[i] = value
      }
      return true
    },
    ...(jacobian && {
      jacobian(p: Float64Array, into: Float64Array) {
        write(p)
        for (let i = 0; i < roots.length; i++) {
          const slopes = jacobian(x[i]!, named)
          for (let k = 0; k < names.length; k++) {
            const slope = slopes[names[k]!]
            if (slope === undefined)
              throw new InputError({ path: `jacobian.${names[k]}`, expected: 'a slope', received: 'nothing' })
            into[i * names.length + k] = -slope * roots[i]!
          }
        }
        return true
      },
    }),
  }
}

const heldParameters = (held: Named): FittedParameter[] =>
  Object.entries(held).map(([name, value]) => ({
    name,
    value,
    standardError: null,
    interval: { kind: 'undetermined', why: 'it was given, not fitted' },
    state: 'fixed',
  }))

/**
 * Fits any curve to readings.
 *
 *   Σ wᵢ (yᵢ − model(xᵢ, p))² → least
 *
 * Holds   without `jacobian` to about nine digits, by extrapolated differences (docs/physics.md §7.1)
 * Throws  InputError when something given is not a number, has the wrong length or names no parameter, or when the
 *         model has no answer at the start nor anywhere around it.
 */
export function fitCurve<X = number>(question: CurveQuestion<X>): Fit {
  refuse(problemsOf(question))
  const { x, y, start, noise, lower, upper, held = {}, level, loss, restarts, seed } = question
  const names = Object.keys(start)
  const weights = Float64Array.from(question.weights ?? { length: x.length }, weight => weight ?? 1)
  const solved = leastSquares({
    residuals: curveResiduals(question, names, weights),
    start: Float64Array.from(names, name => start[name]!),
    lower: Float64Array.from(names, name => lower?.[name] ?? Number.NEGATIVE_INFINITY),
    upper: Float64Array.from(names, name => upper?.[name] ?? Number.POSITIVE_INFINITY),
    ...(loss && { loss }),
    ...(restarts !== undefined && { restarts }),
    ...(seed !== undefined && { seed }),
  })
  if (solved.outcome === 'failed')
    throw new InputError({
      path: 'start',
      expected: 'parameters at which the model has a finite value for every x',
      received: describe(start),
    })
  return fitFrom({
    solved,
    names: names.map(name => ({ name })),
    held: heldParameters(held),
    noise,
    ...(level !== undefined && { level }),
    measured: Float64Array.from(y),
    weights,
  })
}
