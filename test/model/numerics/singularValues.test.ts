import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { singularValues } from '../../../packages/model/src/numerics/singularValues.ts'
import { expectNear, identity, ofSize, stated } from '../../support/tolerance.ts'

const moved = (matrix: readonly number[], direction: ArrayLike<number>, columns: number) =>
  Array.from({ length: matrix.length / columns }, (_, i) =>
    Array.from(direction).reduce((sum, part, j) => sum + part * matrix[i * columns + j]!, 0),
  )
const lengthOf = (vector: readonly number[]) => Math.hypot(...vector)

describe('published values', () => {
  test('the 2 × 2 matrix (3 0; 4 5) has √45 and √5 (a textbook example, from memory)', () => {
    const { values } = singularValues([3, 0, 4, 5], 2, 2)
    expectNear(values[0]!, Math.sqrt(45), identity)
    expectNear(values[1]!, Math.sqrt(5), identity)
  })

  test('the 3 × 3 Hilbert matrix has condition 524.056778 (from memory)', () => {
    const { values } = singularValues([1, 1 / 2, 1 / 3, 1 / 2, 1 / 3, 1 / 4, 1 / 3, 1 / 4, 1 / 5], 3, 3)
    expectNear(values[0]! / values[2]!, 524.0567775860608, stated(1e-11))
  })
})

describe('limits', () => {
  test('a small value beside a great one keeps its digits', () => {
    const tiny = 1e-9
    // Läuchli's matrix: its square has lost the small value altogether.
    const { values } = singularValues([1, 1, tiny, 0, 0, tiny], 3, 2)
    expectNear(values[1]!, tiny, stated(1e-9))
  })

  test('columns that are copies of each other leave a value of nothing', () => {
    const { values, directions } = singularValues([1, 2, 2, 4, 3, 6, 4, 8], 4, 2)
    expectNear(values[1]!, 0, ofSize(values[0]!, identity))
    expectNear(Math.abs(directions[1]![0]! / directions[1]![1]!), 2, stated(1e-9))
  })

  test('fewer rows than columns leave directions that move nothing', () => {
    const { values } = singularValues([1, 2, 3], 1, 3)
    expectNear(values[0]!, Math.sqrt(14), identity)
    expect(values[1]).toBeLessThan(1e-12)
    expect(values[2]).toBeLessThan(1e-12)
  })
})

test('each direction has length one and moves the rows by its value', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 15, maxLength: 15 }),
      matrix => {
        const { values, directions } = singularValues(matrix, 5, 3)
        const size = Math.max(1, values[0]!)
        directions.forEach((direction, k) => {
          expectNear(lengthOf([...direction]), 1, stated(1e-11))
          expectNear(lengthOf(moved(matrix, direction, 3)), values[k]!, ofSize(size, stated(1e-11)))
        })
        const sum = matrix.reduce((all, x) => all + x * x, 0)
        expectNear(
          values.reduce((all, v) => all + v * v, 0),
          sum,
          ofSize(size ** 2, stated(1e-11)),
        )
      },
    ),
  )
})
