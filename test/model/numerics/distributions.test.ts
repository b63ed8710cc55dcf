import { InputError } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  chiSquared,
  fDistribution,
  normal,
  studentT,
  twoSided,
} from '../../../packages/model/src/numerics/index.ts'
import { bounded } from '../../support/arbitraries.ts'
import { numberOf, type Row, referenceTable } from '../../support/referenceTables.ts'
import { expectNear, expectPrinted, stated } from '../../support/tolerance.ts'

const kinds: Readonly<Record<string, (row: Row) => number>> = {
  'normal.cdf': row => normal.cdf(numberOf(row, 'at')),
  'normal.quantile': row => normal.quantile(numberOf(row, 'at')),
  'studentT.cdf': row => studentT.cdf(numberOf(row, 'at'), numberOf(row, 'a')),
  'studentT.quantile': row => studentT.quantile(numberOf(row, 'at'), numberOf(row, 'a')),
  'fDistribution.cdf': row => fDistribution.cdf(numberOf(row, 'at'), numberOf(row, 'a'), numberOf(row, 'b')),
  'fDistribution.survival': row =>
    fDistribution.survival(numberOf(row, 'at'), numberOf(row, 'a'), numberOf(row, 'b')),
  'chiSquared.cdf': row => chiSquared.cdf(numberOf(row, 'at'), numberOf(row, 'a')),
  'chiSquared.survival': row => chiSquared.survival(numberOf(row, 'at'), numberOf(row, 'a')),
}

describe('published values', () => {
  // Source: Abramowitz and Stegun, table 26.10 (from memory): t with A(t|ν) of it between −t and t.
  test.each([
    [1, 0.95, '12.706'],
    [2, 0.95, '4.303'],
    [5, 0.95, '2.571'],
    [10, 0.95, '2.228'],
    [30, 0.95, '2.042'],
    [120, 0.95, '1.980'],
    [Number.POSITIVE_INFINITY, 0.95, '1.960'],
    [1, 0.99, '63.657'],
    [4, 0.99, '4.604'],
    [10, 0.99, '3.169'],
    [10, 0.9, '1.812'],
    [3, 0.99, '5.841'],
  ])('t of %d degrees of freedom, %d of it inside', (freedom, level, text) => {
    expectPrinted(twoSided(level, freedom), text)
    expectPrinted(studentT.quantile((1 + level) / 2, freedom), text)
  })

  // Source: Abramowitz and Stegun, table 26.9 (from memory): F passed once in 20, and once in 100.
  test.each([
    [1, 1, 0.05, 161.4],
    [1, 10, 0.05, 4.96],
    [2, 10, 0.05, 4.1],
    [4, 6, 0.05, 4.53],
    [5, 5, 0.05, 5.05],
    [10, 30, 0.05, 2.16],
    [2, 10, 0.01, 7.56],
    [3, 20, 0.01, 4.94],
  ])(
    'F of %d and %d degrees of freedom is passed with probability %d at %d',
    (above, below, share, value) => {
      // the tables print three or four digits
      const digit = value > 100 ? 0.05 : 0.005
      expect(fDistribution.survival(value - digit, above, below)).toBeGreaterThan(share)
      expect(fDistribution.survival(value + digit, above, below)).toBeLessThan(share)
    },
  )

  // Source: Abramowitz and Stegun, table 26.8 (from memory): χ² passed once in 20.
  test.each([
    [1, 3.841],
    [2, 5.991],
    [5, 11.07],
    [10, 18.307],
    [30, 43.773],
  ])('χ² of %d degrees of freedom is passed once in twenty at %d', (freedom, value) => {
    expect(chiSquared.survival(value - 0.0006, freedom)).toBeGreaterThan(0.05)
    expect(chiSquared.survival(value + 0.0006, freedom)).toBeLessThan(0.05)
  })

  // test/reference/data/distributions.csv, by scipy and mpmath: test/reference/generate/distributions.py
  const rows = referenceTable('distributions')
  test('248 values of another tool', () => expect(rows).toHaveLength(248))
  test.each(Object.keys(kinds))('%s to eleven digits, tails included', kind => {
    const own = rows.filter(row => row.kind === kind)
    expect(own.length).toBeGreaterThan(8)
    for (const row of own)
      expectNear(kinds[kind]!(row), numberOf(row, 'value'), stated(1e-11), Object.values(row).join(' '))
  })
})

describe('limits', () => {
  const shares = fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true })
  const freedoms = fc.double({ min: 0, max: 12, noNaN: true }).map(Math.exp)

  test('a quantile has its share below it', () => {
    fc.assert(
      fc.property(shares, freedoms, (share, freedom) => {
        expectNear(studentT.cdf(studentT.quantile(share, freedom), freedom), share, stated(1e-11))
        expectNear(normal.cdf(normal.quantile(share)), share, stated(1e-11))
      }),
      bounded(300),
    )
  })

  test('t with endless freedom is normal, and near it before', () => {
    expect(studentT.quantile(0.975, Number.POSITIVE_INFINITY)).toBe(normal.quantile(0.975))
    expectNear(studentT.quantile(0.975, 1e9), normal.quantile(0.975), stated(1e-8))
  })

  test('t of one degree of freedom is the tangent of an angle', () => {
    for (const share of [0.51, 0.75, 0.9, 0.999, 0.999999])
      expectNear(studentT.quantile(share, 1), Math.tan(Math.PI * (share - 0.5)), stated(1e-9))
  })

  test('t² is F with one degree of freedom above', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 30, noNaN: true }), freedoms, (t, freedom) => {
        expectNear(fDistribution.survival(t * t, 1, freedom), 2 * studentT.cdf(-t, freedom), stated(1e-10))
      }),
      bounded(200),
    )
  })

  test('F over a variance that is known is χ² per degree of freedom', () => {
    for (const value of [0.3, 1, 2.5])
      expect(fDistribution.survival(value, 4, Number.POSITIVE_INFINITY)).toBe(
        chiSquared.survival(4 * value, 4),
      )
  })
})

describe('refuses', () => {
  test.each([0, 1, -0.1, 1.2, Number.NaN])('the quantile of a share of %s', share => {
    expect(() => normal.quantile(share)).toThrow(InputError)
    expect(() => studentT.quantile(share, 5)).toThrow(InputError)
  })
  test('less than one degree of freedom', () => {
    expect(() => studentT.quantile(0.9, 0.5)).toThrow(InputError)
    expect(() => fDistribution.cdf(1, 0, 3)).toThrow(InputError)
    expect(() => chiSquared.cdf(1, 0)).toThrow(InputError)
  })
})
