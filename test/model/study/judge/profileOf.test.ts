import { describe, expect, test } from 'vitest'
import { fDistribution } from '../../../../packages/model/src/numerics/index.ts'
import { profileOf, resampleFit } from '../../../../packages/model/src/study/fit/judge/index.ts'
import { type ComplianceQuestion, fitCompliance } from '../../../../packages/model/src/study/index.ts'
import { expectNear, stated } from '../../../support/tolerance.ts'
import { ellerbyReadings } from './ellerbyReadings.ts'

const mm = 1e-3
const wide = [4, 7, 12, 20, 33].map(p => p * 1e3)

const question: ComplianceQuestion = {
  readings: ellerbyReadings({
    law: () => ({ kind: 'power', softness: 0.9 * mm, exponent: 0.8 }),
    pressures: wide,
    noise: 0.04 * mm,
    seed: 32,
  }),
  law: 'power',
  free: ['softness', 'exponent'],
  noise: { kind: 'estimated' },
}

function fitted(asked: ComplianceQuestion) {
  const fit = fitCompliance(asked)
  if (fit.outcome === 'failed') return expect.fail(fit.why)
  return { question: asked, fit }
}

const ends = (interval: ReturnType<typeof profileOf>) =>
  interval.kind === 'interval' ? interval : expect.fail(JSON.stringify(interval))

describe('the profile', () => {
  test('of a law that is linear in its softness is the t interval itself', () => {
    const asked = fitted({ ...question, law: 'linear', free: ['softness'] })
    const { value, standardError } = asked.fit.parameters[0]!
    const { low, high } = ends(profileOf({ ...asked, name: 'softness' }))
    // Student's t of nine degrees at 95 % (tables, from memory)
    expectNear((high - value) / standardError!, 2.262, stated(2e-4))
    expectNear((value - low) / standardError!, 2.262, stated(2e-4))
  })

  test('ends where holding the number there makes the fit as much worse as its level allows', () => {
    const asked = fitted(question)
    const { fit } = asked
    const { low, high } = ends(profileOf({ ...asked, name: 'exponent', level: 0.9 }))
    for (const exponent of [low, high]) {
      const held = fitted({ ...question, free: ['softness'], start: { exponent } })
      const ratio = (held.fit.sumOfSquares / fit.sumOfSquares - 1) * fit.degreesOfFreedom
      expectNear(fDistribution.survival(ratio, 1, fit.degreesOfFreedom), 0.1, stated(1e-5))
    }
  })

  test('is open to one side where the readings do not bound it there, with the reason', () => {
    const readings = ellerbyReadings({
      law: () => ({ kind: 'linear', softness: 0.9 * mm }),
      pressures: wide,
      noise: 0.1 * mm,
      seed: 33,
    })
    const asked = fitted({
      ...question,
      readings,
      law: 'stiffening',
      free: ['softness', 'lockingDepth'],
    })
    const found = profileOf({ ...asked, name: 'lockingDepth' })
    expect(found.kind).toBe('at least')
    expect(found.kind === 'at least' && found.why).toContain('nothing speaks against')
  })

  test('is asked by name, and by set where each has its own', () => {
    const asked = fitted(question)
    expect(() => profileOf({ ...asked, name: 'spread' })).toThrow('softness, exponent')
    const readings = ellerbyReadings({
      law: set => ({ kind: 'linear', softness: (0.8 + 0.2 * set) * mm }),
      sets: 2,
      pressures: wide,
      noise: 0.05 * mm,
    })
    const sets = fitted({ ...question, readings, law: 'linear', free: [{ name: 'softness', per: 'set' }] })
    expect(() => profileOf({ ...sets, name: 'softness' })).toThrow('green 1')
    const { low, high } = ends(profileOf({ ...sets, name: 'softness', set: 'green 2' }))
    const { value } = sets.fit.parameters[1]!
    expect(low < value && value < high).toBe(true)
  })

  test('of a robust fit is refused', () => {
    const loss = { kind: 'huber', at: 1.5 } as const
    expect(() => profileOf({ ...fitted({ ...question, loss }), name: 'softness' })).toThrow('robust')
  })
})

describe('the fit drawn again', () => {
  const asked = fitted(question)

  test('scatters as its covariance says, and counts what failed', () => {
    const { parameters, values, failed, draws } = resampleFit({ ...asked, resample: 'residuals', seed: 3 })
    expect(parameters).toEqual([{ name: 'softness' }, { name: 'exponent' }])
    expect(values.length + Object.values(failed).reduce((sum, n) => sum + n, 0)).toBe(draws)
    parameters.forEach((_, j) => {
      const column = values.map(row => row[j]!)
      const mean = column.reduce((sum, x) => sum + x, 0) / column.length
      const deviation = Math.sqrt(column.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (column.length - 1))
      // ten residuals, raised by their leverage, leave a tenth or two
      expectNear(deviation, asked.fit.parameters[j]!.standardError!, stated(0.2))
    })
  })

  test('is the same from the same seed', () => {
    const once = resampleFit({ ...asked, resample: 'readings', draws: 50, seed: 9 })
    expect(resampleFit({ ...asked, resample: 'readings', draws: 50, seed: 9 })).toEqual(once)
  })

  test('by sets moves what sets share, and leaves what a set has of its own', () => {
    const readings = ellerbyReadings({
      law: set => ({ kind: 'power', softness: (0.8 + 0.1 * set) * mm, exponent: 0.8 + 0.05 * set }),
      sets: 4,
      pressures: wide,
      noise: 0.04 * mm,
    })
    const sets = fitted({ ...question, readings, free: [{ name: 'softness', per: 'set' }, 'exponent'] })
    const { values } = resampleFit({ ...sets, resample: 'sets', draws: 200, seed: 5 })
    const exponents = new Set(values.map(row => row[4]!.toFixed(6)))
    expect(exponents.size).toBeGreaterThan(20)
  })
})
