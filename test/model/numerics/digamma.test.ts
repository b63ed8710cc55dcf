import { describe, expect, test } from 'vitest'
import { digamma, logGamma } from '../../../packages/model/src/numerics/index.ts'
import { expectNear, identity, stated } from '../../support/tolerance.ts'

describe('published values', () => {
  // Abramowitz and Stegun, 6.3.2 and 6.3.3 (from memory): ψ(1) = −γ, ψ(½) = −γ − 2 ln 2; γ from the same, 6.1.3.
  const EULER = 0.5772156649015329

  test('at one it is minus Euler’s constant', () => {
    expectNear(digamma(1), -EULER, identity)
  })

  test('at a half it is minus Euler’s constant minus twice ln 2', () => {
    expectNear(digamma(0.5), -EULER - 2 * Math.LN2, identity)
  })
})

describe('limits', () => {
  test('from one number to the next it grows by one over it', () => {
    for (const x of [0.1, 0.7, 1.5, 3.3, 9.9, 10, 25])
      expectNear(digamma(x + 1) - digamma(x), 1 / x, identity)
  })

  test('it is the slope of ln Γ', () => {
    const step = 1e-4
    for (const x of [0.7, 1.2, 2.5, 3.5, 11]) {
      const slope = (logGamma(x + step) - logGamma(x - step)) / (2 * step)
      expectNear(digamma(x), slope, stated(1e-7), `at ${x}`)
    }
  })

  test('far out it is the logarithm less one over twice the number', () => {
    expect(Math.abs(digamma(1e6) - Math.log(1e6) + 5e-7)).toBeLessThan(1e-12)
  })
})
