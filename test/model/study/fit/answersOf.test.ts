import { type ComplianceFit, type ComplianceQuestion, fitCompliance, turfOf } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { answersOf } from '../../../../packages/model/src/study/fit/compliance/answersOf.ts'
import { solveCompliance } from '../../../../packages/model/src/study/fit/compliance/fitCompliance.ts'
import { expectNear, ofSize, stated } from '../../../support/tolerance.ts'
import { loadsFor, readingsOf, scenario, sinkageOf } from './knownReadings.ts'

const mm = 1e-3
const wobble = (row: number) => 0.01 * mm * Math.sin(7.1 * row)
const one = readingsOf({
  turf: { law: { kind: 'power', softness: 0.7 * mm, exponent: 0.8 }, spread: 1.1 * mm },
  pressers: ['smooth', 'grooved'],
  loads: loadsFor,
  set: 'one',
  error: wobble,
})
const two = readingsOf({
  turf: { law: { kind: 'power', softness: 1.1 * mm, exponent: 0.8 }, spread: 1.1 * mm },
  pressers: ['stout', 'grooved'],
  loads: loadsFor,
  set: 'two',
  error: wobble,
})
const question: ComplianceQuestion = {
  readings: [...one, ...two],
  law: 'power',
  free: [{ name: 'softness', per: 'set' }, 'exponent', 'spread'],
  noise: { kind: 'estimated' },
  datum: 'per set',
  scenario,
}
const { fit, made, solved } = solveCompliance(question)
if (fit.outcome === 'failed') throw new Error(fit.why)
const sound: ComplianceFit = fit

describe('what a fit answers to readings that might be made', () => {
  test('are its own fitted values and slopes at its own readings', () => {
    const size = made.plan.planned.length
    const answers = answersOf(
      JSON.parse(JSON.stringify(sound)) as ComplianceFit,
      sound.readings.map(({ set, foot, load }) => ({ set, foot, load: load!, fromDatum: true })),
      scenario,
    )
    answers.forEach((answer, r) => {
      expectNear(answer!.value, sound.readings[r]!.predicted!, stated(1e-11))
      answer!.derivatives.forEach((slope, k) => {
        const root = Math.sqrt(made.weights[r]!)
        const { by } = made.plan.planned[k]!
        const searched = -solved.jacobian[r * size + k]! / root
        const own = by === 'ln' ? searched / Math.exp(solved.p[k]!) : searched
        expectNear(slope, own, ofSize(Math.abs(own) + 1e-12, stated(1e-8)))
      })
    })
  })

  test('without the datum are what its turf answers anyone', () => {
    const [answer] = answersOf(
      sound,
      [{ set: 'two', foot: { kind: 'roller', name: 'discs' }, load: 120 }],
      scenario,
    )
    expectNear(answer!.value, sinkageOf('discs', 120, turfOf(sound, 'two')), stated(1e-10))
    expect(answer!.derivatives).toHaveLength(sound.covariance!.length)
  })

  test('need a set where each has its own turf', () => {
    expect(() =>
      answersOf(sound, [{ foot: { kind: 'roller', name: 'discs' }, load: 120 }], scenario),
    ).toThrow('set: expected one of "one", "two", received nothing')
    expect(() => turfOf(sound)).toThrow('set: expected one of "one", "two", received nothing')
  })

  test('of the whole unit at a point come without a load', () => {
    const shared = fitCompliance({ ...question, readings: one, free: ['softness', 'exponent', 'spread'] })
    if (shared.outcome === 'failed') throw new Error(shared.why)
    const [answer] = answersOf(shared, [{ foot: { kind: 'roller', name: null }, point: 0.5 }], scenario)
    expect(answer!.value).toBeGreaterThan(0)
    expect(answer!.derivatives).toHaveLength(shared.covariance!.length)
  })
})
