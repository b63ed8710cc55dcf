import { describe, test } from 'vitest'
import { besselRatio } from '../../../packages/model/src/numerics/index.ts'
import { expectNear, identity, stated } from '../../support/tolerance.ts'

describe('published values', () => {
  // scipy 1.17.1, special.k1e(x)/special.k0e(x)
  const table = [
    [1e-3, 142.37479286895746],
    [0.1, 4.0599771496323278],
    [0.5, 1.7918725084322205],
    [1, 1.4296253982604021],
    [1.9, 1.2391551054193304],
    [2.1, 1.2179187877885904],
    [5, 1.0957750456413309],
    [20, 1.0247020170182937],
    [100, 1.0049876230864832],
  ] as const

  test('ratios of the modified Bessel functions', () => {
    for (const [x, ratio] of table) expectNear(besselRatio(x), ratio, identity, `at ${x}`)
  })
})

describe('limits', () => {
  test('far out it is one and a half over the argument more', () => {
    expectNear(besselRatio(1e6), 1 + 0.5e-6, identity)
  })

  test('series and fraction meet', () => {
    expectNear(besselRatio(2), besselRatio(2 * (1 + Number.EPSILON)), identity)
  })

  test('its slope follows from the ratio itself: ρ² − ρ/x − 1', () => {
    for (const x of [0.05, 0.4, 1.5, 2.5, 7, 40]) {
      const step = 1e-4 * x
      const ratio = besselRatio(x)
      const slope = (besselRatio(x + step) - besselRatio(x - step)) / (2 * step)
      expectNear(slope, ratio * ratio - ratio / x - 1, stated(1e-6), `at ${x}`)
    }
  })
})
