import { type Arc, type Condition, conditionProblems } from '../../contact/index.ts'
import {
  describe,
  InputError,
  type Metres,
  numberProblem,
  objectProblem,
  type Problem,
  refuse,
} from '../../quantities/index.ts'
import type { Turf } from '../../turf/index.ts'
import { type Unit, unitQuestionProblems } from '../../unit/index.ts'
import { turfParameters } from '../fit/compliance/lawParameters.ts'
import type { Fit } from '../fit/fit.ts'
import { fitSpread } from './fitSpread.ts'
import { heightInputs, type Parts, partsAt, turfInputs } from './heightInput.ts'
import type { Varied } from './heightSample.ts'
import { type Scatter, scatterProblems } from './scatter.ts'

export type HeightQuestion = {
  readonly unit: Unit
  readonly turf: Turf
  readonly condition: Condition
  /** Its values stand in place of the turf's, and its free parameters scatter together as it says. */
  readonly fit?: Fit
  /** Which set of the fit, where it has several. */
  readonly set?: string
  /** By the name of the input: `softness`, `benchHeight`, `frontRoller.mass`, `scales.front`, … */
  readonly scatter: Readonly<Record<string, Scatter>>
  readonly draws: number
  readonly seed: number
  /** A height to come near to. */
  readonly wanted?: { readonly height: Metres; readonly tolerance: Metres }
  readonly balance?: 'tilted' | 'level'
  readonly arc?: Arc
  /** 'one by one' solves every draw by itself, whatever that takes; otherwise the quickest way that is exact enough. */
  readonly method?: 'quick' | 'one by one'
  readonly onStep?: (done: number) => void
}

/** A question made ready: what varies, about what. */
export type Posed = {
  readonly varied: Varied
  readonly arc?: Arc
  readonly balance?: 'tilted' | 'level'
}

export const FEWEST_DRAWS = 100
export const MOST_DRAWS = 2_000_000

function askedProblems({ draws, wanted, method, scatter }: HeightQuestion): Problem[] {
  const whole = Number.isInteger(draws)
    ? []
    : [{ path: 'draws', expected: 'a whole number', received: describe(draws) }]
  return [
    ...numberProblem(draws, 'draws', 'count', { atLeast: FEWEST_DRAWS, atMost: MOST_DRAWS }),
    ...whole,
    ...objectProblem(scatter, 'scatter'),
    ...(wanted === undefined
      ? []
      : [
          ...numberProblem(wanted.height, 'wanted.height', 'height', { above: 0 }),
          ...numberProblem(wanted.tolerance, 'wanted.tolerance', 'height', { above: 0 }),
        ]),
    ...(method === undefined || method === 'quick' || method === 'one by one'
      ? []
      : [{ path: 'method', expected: 'one of quick, one by one', received: describe(method) }]),
  ]
}

/** The parts with the values of a fit in them. */
function withFit(parts: Parts, values: ReadonlyMap<string, number>): Parts {
  const inputs = turfInputs(parts.turf).filter(({ name }) => values.has(name))
  const put = partsAt(parts, inputs, k => values.get(inputs[k]!.name)!)
  if (put) return put
  throw new InputError({
    path: 'fit.parameters',
    expected: `values that the ${parts.turf.law.kind} law takes`,
    received: describe(Object.fromEntries(values)),
  })
}

/** Checks a question and makes it ready. */
export function pose(question: HeightQuestion): Posed {
  const { unit, turf, condition, fit, set, scatter, arc, balance } = question
  refuse([...unitQuestionProblems(question), ...conditionProblems(condition, 'condition')])
  refuse(askedProblems(question))
  const ofTurf = new Set(turfInputs(turf).map(({ name }) => name))
  const inLog = new Set(
    turfParameters(turf.law).flatMap(({ name, quantity }) =>
      name === 'spread' || quantity === null ? [] : [name],
    ),
  )
  const fitted =
    fit &&
    fitSpread(
      fit,
      name => ofTurf.has(name),
      name => inLog.has(name),
      set,
    )
  const given: Parts = { unit, turf, condition }
  const parts = fitted ? withFit(given, fitted.values) : given
  refuse(unitQuestionProblems(parts))
  const inputs = heightInputs(parts)
  const known = new Map(inputs.map(input => [input.name, input]))
  refuse(
    Object.entries(scatter).flatMap(([name, one]) => {
      const input = known.get(name)
      const path = `scatter.${name}`
      return input
        ? scatterProblems(one, path, input.quantity, input.nominal)
        : [{ path, expected: `one of ${[...known.keys()].join(', ')}`, received: describe(name) }]
    }),
  )
  const places = new Map(fitted?.spread.names.map((name, k) => [name, k]))
  const varied = inputs.flatMap(input => {
    const own = Object.hasOwn(scatter, input.name) ? scatter[input.name] : undefined
    const place = places.get(input.name)
    return own || place !== undefined
      ? [{ input, ...(own ? { scatter: own } : {}), ...(place === undefined ? {} : { fitted: place }) }]
      : []
  })
  if (varied.length === 0)
    throw new InputError({
      path: 'scatter',
      expected: 'at least one input that scatters, or a fit with a free parameter',
      received: 'none',
    })
  const hasFreedom = fitted !== undefined && fitted.spread.names.length > 0
  return {
    varied: { parts, inputs: varied, ...(hasFreedom ? { fit: fitted.spread } : {}) },
    ...(arc ? { arc } : {}),
    ...(balance ? { balance } : {}),
  }
}
