import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  backSubstitute,
  factorise,
  type PivotedQr,
  pivotedQr,
  rankOf,
  turn,
} from '../../../../packages/model/src/numerics/leastSquares/pivotedQr.ts'
import { bounded } from '../../../support/arbitraries.ts'
import { expectNear, identity, ofSize, stated } from '../../../support/tolerance.ts'

/** Columns, each a list of its rows. */
function factored(columns: readonly (readonly number[])[]): PivotedQr {
  const qr = pivotedQr(columns[0]!.length, columns.length)
  columns.forEach((column, j) => {
    column.forEach((value, i) => {
      qr.a[j * qr.rows + i] = value
    })
  })
  factorise(qr, columns.length)
  return qr
}

/** R, its row above the other. */
const upper = ({ rows, a, diagonal }: PivotedQr, i: number, j: number) =>
  i === j ? diagonal[i]! : i < j ? a[j * rows + i]! : 0

const matrices = fc
  .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 9 }))
  .chain(([size, more]) =>
    fc.array(
      fc.array(fc.double({ min: -3, max: 3, noNaN: true }), {
        minLength: size + more,
        maxLength: size + more,
      }),
      { minLength: size, maxLength: size },
    ),
  )

describe('limits', () => {
  test('RᵀR is what AᵀA is, columns taken in the order of the pivots', () => {
    fc.assert(
      fc.property(matrices, columns => {
        const qr = factored(columns)
        for (let j = 0; j < columns.length; j++)
          for (let k = 0; k < columns.length; k++) {
            let mine = 0
            for (let i = 0; i < columns.length; i++) mine += upper(qr, i, j) * upper(qr, i, k)
            const theirs = columns[qr.pivot[j]!]!.reduce(
              (sum, v, i) => sum + v * columns[qr.pivot[k]!]![i]!,
              0,
            )
            expectNear(mine, theirs, ofSize(100, identity))
          }
      }),
      bounded(200),
    )
  })

  // Method: Businger and Golub 1965 (from memory), whose pivots leave the diagonal in falling order.
  test('no diagonal is larger than the one before', () => {
    fc.assert(
      fc.property(matrices, columns => {
        const { diagonal } = factored(columns)
        for (let k = 1; k < columns.length; k++)
          expect(Math.abs(diagonal[k]!)).toBeLessThanOrEqual(Math.abs(diagonal[k - 1]!) * (1 + 1e-12) + 1e-12)
      }),
      bounded(200),
    )
  })

  test('turning a vector keeps its length', () => {
    fc.assert(
      fc.property(matrices, columns => {
        const qr = factored(columns)
        const v = Float64Array.from({ length: qr.rows }, (_, i) => Math.sin(i + 1))
        const before = v.reduce((sum, x) => sum + x * x, 0)
        turn(qr, columns.length, v)
        expectNear(
          v.reduce((sum, x) => sum + x * x, 0),
          before,
          identity,
        )
      }),
      bounded(100),
    )
  })

  test('a straight line through three points is solved exactly', () => {
    const qr = factored([
      [1, 1, 1],
      [0, 1, 2],
    ])
    const b = Float64Array.from([1, 3, 5])
    turn(qr, 2, b)
    backSubstitute(qr, 2, 2, b)
    expectNear(b[qr.pivot.indexOf(0)]!, 1, identity)
    expectNear(b[qr.pivot.indexOf(1)]!, 2, identity)
  })
})

describe('rank', () => {
  test('a column that is the sum of two others adds none', () => {
    const one = [1, 2, 3, 4, 7]
    const two = [0.3, -1, 2, 0.1, 1]
    const qr = factored([one, two, one.map((v, i) => v + two[i]!)])
    expect(rankOf(qr, 3, 1e-10)).toBe(2)
    expect(rankOf(factored([one, two]), 2, 1e-10)).toBe(2)
  })

  test('fewer rows than columns leave no more than the rows', () => {
    expect(rankOf(factored([[1], [2], [3]]), 3, 1e-10)).toBe(1)
  })

  test('nothing but zeros has none', () => {
    expect(
      rankOf(
        factored([
          [0, 0],
          [0, 0],
        ]),
        2,
        1e-10,
      ),
    ).toBe(0)
  })

  // Source: the Hilbert matrix of order n has condition about e^(3.5 n) (Todd 1954, from memory).
  test('Hilbert’s matrix of order six still stands, with a last diagonal a millionth of the first', () => {
    const hilbert = Array.from({ length: 6 }, (_, i) => Array.from({ length: 6 }, (_, j) => 1 / (i + j + 1)))
    const { diagonal } = factored(hilbert)
    const share = Math.abs(diagonal[5]! / diagonal[0]!)
    expect(share).toBeLessThan(1e-5)
    expect(share).toBeGreaterThan(1e-8)
    // Cauchy's formula: its determinant is 5.3673e-18
    expectNear(Math.abs(diagonal.reduce((product, d) => product * d, 1)), 5.36729988735868e-18, stated(1e-8))
  })
})
