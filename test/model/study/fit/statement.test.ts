import { InputError } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { leastSquares, type Residuals, twoSided } from '../../../../packages/model/src/numerics/index.ts'
import { fitFrom } from '../../../../packages/model/src/study/fit/statement.ts'
import { puromycin } from '../../../support/publicReadings.ts'
import { expectNear, stated } from '../../../support/tolerance.ts'

const measured = Float64Array.from(puromycin.y)
const weights = new Float64Array(measured.length).fill(1)

/** The same curve, its parameters searched as they are or as logarithms. */
const uptake = (read: (p: number) => number): Residuals => ({
  count: measured.length,
  size: 2,
  evaluate(p, r) {
    const [Vm = 0, K = 0] = [...p].map(read)
    for (let i = 0; i < measured.length; i++)
      r[i] = measured[i]! - (Vm * puromycin.x[i]!) / (K + puromycin.x[i]!)
    return r.every(Number.isFinite)
  },
})

const told = (transform: 'itself' | 'ln') =>
  fitFrom({
    solved: leastSquares({
      residuals: uptake(transform === 'ln' ? Math.exp : p => p),
      start: Float64Array.from([200, 0.05], p => (transform === 'ln' ? Math.log(p) : p)),
    }),
    names: [{ name: 'Vm' }, { name: 'K', set: 'treated' }],
    held: [],
    noise: { kind: 'estimated' },
    measured,
    weights,
    transforms: [transform, transform],
  })

describe('limits', () => {
  test('a parameter searched as a logarithm is told in its own unit', () => {
    const plain = told('itself')
    const ln = told('ln')
    ln.parameters.forEach((parameter, k) => {
      expectNear(parameter.value, plain.parameters[k]!.value, stated(1e-8))
      expectNear(parameter.standardError!, plain.parameters[k]!.standardError!, stated(1e-7))
    })
    expectNear(ln.covariance![0]![1]!, plain.covariance![0]![1]!, stated(1e-7))
    expectNear(ln.correlation![0]![1]!, plain.correlation![0]![1]!, stated(1e-7))
  })

  test('its interval is as wide upward and downward by ratio, and never reaches zero', () => {
    const { value, standardError, interval } = told('ln').parameters[1]!
    if (interval.kind !== 'interval') expect.fail(interval.kind)
    expectNear(interval.high / value, value / interval.low, stated(1e-12))
    expectNear(Math.log(interval.high / value), (twoSided(0.95, 10) * standardError!) / value, stated(1e-12))
    expect(interval.low).toBeGreaterThan(0)
  })

  test('names keep their set', () => {
    expect(told('itself').parameters.map(({ name, set }) => [name, set])).toEqual([
      ['Vm', undefined],
      ['K', 'treated'],
    ])
  })
})

describe('refuses', () => {
  test('a search that failed', () => {
    const solved = leastSquares({
      residuals: { count: 12, size: 2, evaluate: () => false },
      start: Float64Array.from([1, 1]),
    })
    expect(() =>
      fitFrom({
        solved,
        names: [{ name: 'Vm' }, { name: 'K' }],
        held: [],
        noise: { kind: 'estimated' },
        measured,
        weights,
      }),
    ).toThrow(InputError)
  })
})
