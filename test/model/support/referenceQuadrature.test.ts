import { test } from 'vitest'
import { derivative, doubleExponential } from '../../support/referenceQuadrature.ts'
import { expectNear, stated } from '../../support/tolerance.ts'

test('powers at an end are integrated as smooth functions are', () => {
  for (const n of [-0.5, 0, 0.2, 0.7, 1, 1.9, 3])
    expectNear(
      doubleExponential((_, x) => x ** n, 2, 5),
      3 ** (n + 1) / (n + 1),
      stated(n < 0 ? 1e-7 : 1e-12),
      `power ${n}`,
    )
  expectNear(doubleExponential(Math.exp, 0, 2), Math.expm1(2), stated(1e-12))
  expectNear(
    doubleExponential((_x, _low, high) => high ** 1.3, 0, 2),
    2 ** 2.3 / 2.3,
    stated(1e-12),
  )
})

test('the derivative of a smooth function is right to ten digits', () => {
  expectNear(derivative(Math.sin, 0.7, 1e-3), Math.cos(0.7), stated(1e-10))
})
