import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { contourLadder, rungAt } from '../../../packages/explorer/src/figures/contourLadder.ts'

const metric = { units: 'metric' } as const
const MM = 1e-3
const ladder = (low: number, high: number, units: 'metric' | 'US' = 'metric') =>
  contourLadder({ low: low * MM, high: high * MM, quantity: 'sinkage', deepIsLow: false, reader: { units } })

const range = fc
  .tuple(fc.integer({ min: 1, max: 20_000 }), fc.integer({ min: 1, max: 20_000 }))
  .filter(([a, b]) => a !== b)
  .map(([a, b]) => [Math.min(a, b) / 1000, Math.max(a, b) / 1000] as const)

describe('the ladder of contours', () => {
  test('is 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2 about a millimetre', () => {
    expect([-4, -3, -2, -1, 0, 1, 2].map(rungAt)).toEqual([0.25, 0.35, 0.5, 0.7, 1, 1.4, 2])
    expect([3, 4, 5, 6, 7, 8].map(rungAt)).toEqual([2.8, 4, 5.6, 8, 11, 16])
  })

  test('climbs by √2, as closely as two figures allow', () => {
    for (let index = -20; index < 20; index++) {
      // Half a unit in the second figure is 5 % at most; 1.4 stands for √2, 1 % less.
      expect(Math.abs(rungAt(index) / 2 ** (index / 2) - 1)).toBeLessThanOrEqual(0.06)
      expect(rungAt(index + 1)).toBeGreaterThan(rungAt(index))
    }
  })

  test('is written as it is placed', () => {
    const { rungs } = ladder(0.2, 2.3)
    expect(rungs.map(rung => rung.text)).toEqual(['0.25', '0.35', '0.50', '0.70', '1.00', '1.40', '2.00'])
    for (const rung of rungs) expect(Math.abs(Number(rung.text) - rung.value / MM)).toBeLessThan(1e-9)
  })

  test('gives a map at most eight bands, each with a step of the wash of its own, in order', () => {
    fc.assert(
      fc.property(range, fc.constantFrom('metric', 'US'), ([low, high], units) => {
        const { rungs, base } = ladder(low, high, units as 'metric' | 'US')
        expect(rungs.length).toBeLessThanOrEqual(7)
        const steps = [base, ...rungs.map(rung => rung.above)]
        for (const step of steps) expect(step >= 1 && step <= 8).toBe(true)
        rungs.forEach((rung, i) => {
          expect(rung.below).toBe(steps[i])
          expect(rung.above).toBe(rung.below + 1)
        })
      }),
    )
  })

  test('has its rungs inside what the map holds, rising', () => {
    fc.assert(
      fc.property(range, ([low, high]) => {
        const values = ladder(low, high).rungs.map(rung => rung.value / MM)
        for (const value of values) expect(value > low && value < high).toBe(true)
        expect(values).toEqual([...values].sort((a, b) => a - b))
      }),
    )
  })

  test('divides any range that is wide enough to be drawn', () => {
    fc.assert(
      fc.property(range, ([low, high]) => {
        fc.pre(high / low > 1.01)
        expect(ladder(low, high).rungs.length).toBeGreaterThan(0)
      }),
    )
  })

  test('leaves out the shallowest rungs where eight bands nearly reach', () => {
    expect(ladder(0.17, 2.7).rungs.map(rung => rung.text)).toEqual(
      ladder(0.2, 2.3).rungs.map(rung => rung.text),
    )
  })

  test('takes every second rung where eight bands do not reach', () => {
    expect(ladder(0.2, 18).rungs.map(rung => rung.value / MM)).toEqual([0.25, 0.5, 1, 2, 4, 8, 16])
  })

  test('takes even steps where the range is narrow or reaches zero', () => {
    expect(ladder(0.61, 0.78).kind).toBe('even')
    expect(ladder(0, 3).rungs.map(rung => rung.text)).toEqual(['0.5', '1.0', '1.5', '2.0', '2.5'])
  })

  test('draws a low height deep', () => {
    const { rungs } = contourLadder({
      low: 1.2 * MM,
      high: 3.3 * MM,
      quantity: 'height',
      deepIsLow: true,
      reader: metric,
    })
    expect(rungs.map(rung => rung.text)).toEqual(['1.5', '2.0', '2.5', '3.0'])
    for (const rung of rungs) expect(rung.above).toBe(rung.below - 1)
  })

  test('has no rung for a map of one value', () => {
    expect(ladder(0.4, 0.4).rungs).toEqual([])
  })
})
