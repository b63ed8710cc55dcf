import { InputError } from '../../quantities/index.ts'
import type { Fit, Interval, Noise } from '../fit/fit.ts'
import { type CurveQuestion, fitCurve } from '../fit/fitCurve.ts'
import { profileInterval } from './profileInterval.ts'

const LEVEL = 0.95

/** The sum of squares with nothing left to search. */
function sumOf<X>(
  { model, x, y, weights }: CurveQuestion<X>,
  parameters: Record<string, number>,
): number | null {
  let sum = 0
  for (let i = 0; i < x.length; i++) sum += (weights?.[i] ?? 1) * (y[i]! - model(x[i]!, parameters)) ** 2
  return Number.isFinite(sum) ? sum : null
}

/**
 * The profile interval of one parameter of a fitted curve: for every value it is held at, the others are fitted anew
 * from where they last were.
 *
 * Throws  InputError when the fit has no such free parameter, or its loss is not that of least squares.
 */
export function profileCurve<X = number>(question: CurveQuestion<X>, fit: Fit, name: string): Interval {
  const of = fit.parameters.find(parameter => parameter.name === name && parameter.state !== 'fixed')
  if (!of) throw new InputError({ path: 'name', expected: 'a parameter that was fitted', received: name })
  if (question.loss && question.loss.kind !== 'squares')
    throw new InputError({
      path: 'loss',
      expected: 'squares: a robust loss has no profile',
      received: question.loss.kind,
    })
  if (fit.outcome !== 'converged') return { kind: 'undetermined', why: 'the search did not end at a minimum' }
  const { start, held, lower = {}, upper = {} } = question
  const others = Object.keys(start).filter(other => other !== name)
  const fitted = Object.fromEntries(fit.parameters.map(parameter => [parameter.name, parameter.value]))
  const noise: Noise = question.noise
  const without = (bounds: Readonly<Record<string, number>>) =>
    Object.fromEntries(Object.entries(bounds).filter(([other]) => other !== name))
  let from = Object.fromEntries(others.map(other => [other, fitted[other]!]))

  return profileInterval({
    solve: value => {
      if (others.length === 0) return sumOf(question, { ...held, [name]: value })
      try {
        const again = fitCurve({
          ...question,
          start: from,
          held: { ...held, [name]: value },
          lower: without(lower),
          upper: without(upper),
          restarts: 0,
        })
        if (again.outcome !== 'converged') return null
        from = Object.fromEntries(again.parameters.slice(0, others.length).map(p => [p.name, p.value]))
        return again.sumOfSquares
      } catch (problem) {
        // the model has no answer there: a fact about the profile, not about the question
        if (problem instanceof InputError) return null
        throw problem
      }
    },
    best: fit.sumOfSquares,
    value: of.value,
    standardError: of.standardError,
    level: question.level ?? LEVEL,
    dof: fit.degreesOfFreedom,
    noise,
    ...(lower[name] !== undefined && { lower: lower[name] }),
    ...(upper[name] !== undefined && { upper: upper[name] }),
  })
}
