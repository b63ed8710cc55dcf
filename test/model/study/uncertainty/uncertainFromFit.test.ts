import {
  type Fit,
  InputError,
  type NoHeight,
  settle,
  type UncertainHeight,
  uncertainHeight,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectNear, identity, ofSize, stated } from '../../../support/tolerance.ts'
import { relative, smooth, softness, unitWith } from './unitAtEllerby.ts'

const mm = 1e-3
const standing = { kind: 'standing' } as const
const exponent = 0.8
const onPower = { law: { kind: 'power', softness, exponent } } as const

const answered = (told: UncertainHeight | NoHeight): UncertainHeight =>
  told.outcome === 'answered' ? told : expect.fail(told.outcome)

const middleOf = (question: Parameters<typeof settle>[0]): number => {
  const settled = settle(question)
  return settled.outcome === 'settled' ? settled.effectiveHeight.middle : expect.fail(settled.outcome)
}

/** A fit of two parameters, as plain data. */
const fitted = (noise: Fit['noise'], degreesOfFreedom: number): Fit => ({
  outcome: 'converged',
  why: 'converged',
  parameters: [
    {
      name: 'softness',
      value: 0.7 * mm,
      standardError: 0.014 * mm,
      interval: { kind: 'undetermined', why: 'not asked' },
      state: 'free',
    },
    {
      name: 'exponent',
      value: 0.85,
      standardError: 0.02,
      interval: { kind: 'undetermined', why: 'not asked' },
      state: 'free',
    },
  ],
  covariance: [
    [1.96e-10, 2.1e-7],
    [2.1e-7, 4e-4],
  ],
  correlation: null,
  residuals: [],
  weights: [],
  leverage: [],
  noise,
  residualStandardDeviation: null,
  sumOfSquares: 0,
  degreesOfFreedom,
  r2: null,
  aicc: null,
  iterations: 1,
  evaluations: 1,
  cautions: [],
})

describe('a fit', () => {
  const unit = unitWith(smooth)
  const slope = (name: 'softness' | 'exponent', step: number) => {
    const law = { kind: 'power', softness: 0.7 * mm, exponent: 0.85 } as const
    const at = (by: number) =>
      middleOf({ unit, turf: { law: { ...law, [name]: law[name] + by } }, condition: standing })
    return (at(step) - at(-step)) / (2 * step)
  }
  const c = [slope('softness', 1e-8), slope('exponent', 1e-5)] as const
  const { covariance } = fitted('known', 8)
  const [[ss = 0, se = 0] = [], [, ee = 0] = []] = covariance ?? []
  const alone = Math.sqrt(c[0] ** 2 * ss + 2 * c[0] * c[1] * se + c[1] ** 2 * ee)
  const question = { unit, turf: onPower, condition: standing, scatter: {}, draws: 40_000, seed: 4 }

  test('puts its values in place of the turf’s and scatters as its covariance says', () => {
    const told = answered(uncertainHeight({ ...question, fit: fitted('known', 8) }))
    const centre = middleOf({
      unit,
      turf: { law: { kind: 'power', softness: 0.7 * mm, exponent: 0.85 } },
      condition: standing,
    })
    expectNear(told.nominal ?? Number.NaN, centre, identity)
    expectNear(told.standardDeviation?.value ?? Number.NaN, alone, stated(0.015))
    expect(told.hangsOn?.map(({ name, effect }) => ({ name, effect }))).toEqual([
      { name: 'fit', effect: null },
    ])
    expectNear(told.hangsOn?.[0]?.share.value ?? Number.NaN, 1, stated(5e-3))
  })

  // χ² of the draws after Marsaglia and Tsang 2000 (from memory).
  test('whose noise was estimated scatters as Student’s t', () => {
    const freedom = 8
    const told = answered(uncertainHeight({ ...question, fit: fitted('estimated', freedom) }))
    const wider = alone * Math.sqrt(freedom / (freedom - 2))
    expectNear(told.standardDeviation?.value ?? Number.NaN, wider, stated(0.02))
    // t for 8 degrees of freedom, 97.5 %: 2.306 (Student's table, from memory)
    const [low, , median, , high] = told.quantiles.map(({ value }) => value)
    expectNear((high! - low!) / 2, 2.306 * alone, stated(0.02))
    expectNear(median ?? Number.NaN, told.nominal ?? Number.NaN, ofSize(alone, stated(0.03)))
  })

  test('of two degrees of freedom has quantiles, but no mean and no deviation', () => {
    const told = answered(uncertainHeight({ ...question, fit: fitted('estimated', 2) }))
    expect([told.mean, told.standardDeviation, told.hangsOn]).toEqual([null, null, null])
    expect(told.quantiles.every(({ value }) => Number.isFinite(value))).toBe(true)
  })

  test('and a scatter of the same number from place to place add up', () => {
    const place = 0.1
    const told = answered(
      uncertainHeight({ ...question, fit: fitted('known', 8), scatter: { softness: relative(place) } }),
    )
    const whole = Math.hypot(alone, c[0] * place * 0.7 * mm)
    expectNear(told.standardDeviation?.value ?? Number.NaN, whole, stated(0.02))
    expect(told.hangsOn?.map(({ name }) => name)).toEqual(['softness', 'fit'])
  })

  test('that does not determine its numbers is refused', () => {
    const loose = { ...fitted('known', 8), covariance: null }
    expect(() => uncertainHeight({ ...question, fit: loose })).toThrow(InputError)
  })

  test('of several sets asks which', () => {
    const fit = fitted('known', 8)
    const sets = {
      ...fit,
      parameters: [
        { ...(fit.parameters[0] ?? expect.fail()), set: 'north' },
        { ...(fit.parameters[1] ?? expect.fail()), name: 'softness', value: 0.9 * mm, set: 'south' },
      ],
      covariance: [
        [1.96e-10, 0],
        [0, 2.5e-9],
      ],
    }
    expect(() => uncertainHeight({ ...question, fit: sets })).toThrow('set: expected one of "north", "south"')
    const south = answered(uncertainHeight({ ...question, fit: sets, set: 'south' }))
    const at = middleOf({
      unit,
      turf: { law: { kind: 'power', softness: 0.9 * mm, exponent } },
      condition: standing,
    })
    expectNear(south.nominal ?? Number.NaN, at, identity)
  })
})
