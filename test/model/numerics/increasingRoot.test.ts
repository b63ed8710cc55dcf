import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { increasingRoot } from '../../../packages/model/src/numerics/index.ts'
import { bounded } from '../../support/arbitraries.ts'
import { expectNear, stated } from '../../support/tolerance.ts'

const cubic = (root: number) => (x: number) => ({
  value: (x - root) ** 3 + (x - root),
  slope: 3 * (x - root) ** 2 + 1,
})

describe('a root of an increasing function', () => {
  test('is found from any start', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: -30, max: 30, noNaN: true }),
        (root, start) => {
          const found = increasingRoot({ evaluate: cubic(root), start, tolerance: 1e-12 })
          expect(found.outcome).toBe('converged')
          expect(Math.abs(found.at - root)).toBeLessThanOrEqual(2e-12)
        },
      ),
      bounded(200),
    )
  })

  test('is found where Newton alone would run away', () => {
    const root = increasingRoot({
      evaluate: x => ({ value: Math.cbrt(x - 2), slope: Math.cbrt(x - 2) ** -2 / 3 }),
      start: -5,
      tolerance: 1e-4,
    })
    expect(root.outcome).toBe('converged')
    expectNear(root.at, 2, stated(1e-10))
  })

  test('is found where the slope is of no use', () => {
    const flat = increasingRoot({
      evaluate: x => ({ value: Math.tanh(x - 9), slope: 0 }),
      start: 0,
      tolerance: 1e-12,
    })
    expect(flat.outcome).toBe('converged')
    expectNear(flat.at, 9, stated(1e-11))
  })

  test('beyond the upper end is said to be beyond', () => {
    const found = increasingRoot({ evaluate: cubic(5), start: 0, high: 4, tolerance: 1e-12 })
    expect(found).toMatchObject({ outcome: 'beyond', at: 4 })
  })

  test('in the upper end itself is found', () => {
    const found = increasingRoot({ evaluate: cubic(4), start: 0, high: 4, tolerance: 1e-12 })
    expect(found.outcome).toBe('converged')
    expectNear(found.at, 4, stated(1e-12))
  })

  test('that is not reached in the turns given is said not to have converged, with what is left', () => {
    const found = increasingRoot({ evaluate: cubic(1e6), start: 0, tolerance: 1e-12, most: 5 })
    expect(found.outcome).toBe('not converged')
    expect(found.iterations).toBe(5)
    expect(found.residual).toBeLessThan(0)
  })
})
