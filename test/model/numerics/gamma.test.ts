import fc from 'fast-check'
import { gamma } from 'mathjs/number'
import { describe, test } from 'vitest'
import { beta, logGamma } from '../../../packages/model/src/numerics/index.ts'
import { bounded } from '../../support/arbitraries.ts'
import { expectNear, expectPrinted, identity, ofSize, stated } from '../../support/tolerance.ts'

describe('published values', () => {
  // Source: Abramowitz and Stegun 6.1.8 and 6.1.5 (from memory): Γ(½) = √π, Γ(n + 1) = n!
  test('Γ(½) is the root of π', () => expectNear(Math.exp(logGamma(0.5)), Math.sqrt(Math.PI), identity))
  test('Γ(n + 1) is n factorial', () => {
    for (let n = 1, factorial = 1; n <= 12; n++, factorial *= n)
      expectNear(Math.exp(logGamma(n + 1)), factorial, identity)
  })
  // Source: C_n = ½ B(½, n+1), derived; n = ½ is π/4, n = 1 is 2/3, n = 2 is 8/15
  test.each([
    [0.3, '0.853958078993'],
    [0.5, '0.785398163397'],
    [0.8, '0.707473174907'],
    [1.2, '0.632133088143'],
  ])('C_n for n = %f', (n, text) => expectPrinted(beta(0.5, n + 1) / 2, text))
  test('C_n in closed form', () => {
    expectNear(beta(0.5, 1.5) / 2, Math.PI / 4, identity)
    expectNear(beta(0.5, 2) / 2, 2 / 3, identity)
    expectNear(beta(0.5, 3) / 2, 8 / 15, identity)
  })
  test('mathjs has the same gamma function', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 12, noNaN: true }), x =>
        // the library's own approximation is good to about 1e-13
        expectNear(Math.exp(logGamma(x)), gamma(x), stated(1e-12)),
      ),
      bounded(300),
    )
  })
})

describe('limits', () => {
  test('Γ(x + 1) = x Γ(x)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 20, noNaN: true }), x =>
        expectNear(logGamma(x + 1), logGamma(x) + Math.log(x), ofSize(10, identity)),
      ),
      bounded(200),
    )
  })
  test('beta is symmetric', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        (x, y) => expectNear(beta(x, y), beta(y, x), identity),
      ),
      bounded(100),
    )
  })
})
