import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dampedStep, stepRoom } from '../../../../packages/model/src/numerics/leastSquares/dampedStep.ts'
import {
  factorise,
  pivotedQr,
  rankOf,
  turn,
} from '../../../../packages/model/src/numerics/leastSquares/pivotedQr.ts'
import { bounded } from '../../../support/arbitraries.ts'
import { expectNear, ofSize, stated } from '../../../support/tolerance.ts'

const SIZE = 3
const ROWS = 5
const entry = fc.integer({ min: -200, max: 200 }).map(hundredths => hundredths / 100)
const cases = fc.record({
  columns: fc.array(fc.array(entry, { minLength: ROWS, maxLength: ROWS }), {
    minLength: SIZE,
    maxLength: SIZE,
  }),
  r: fc.array(entry, { minLength: ROWS, maxLength: ROWS }),
  extent: fc.array(fc.double({ min: 1, max: 5, noNaN: true }), { minLength: SIZE, maxLength: SIZE }),
  radius: fc.double({ min: -6, max: 2, noNaN: true }).map(Math.exp),
})

const dot = (one: readonly number[], other: readonly number[]) =>
  one.reduce((sum, value, i) => sum + value * other[i]!, 0)

function stepOf(
  columns: readonly (readonly number[])[],
  r: readonly number[],
  extent: Float64Array,
  radius: number,
) {
  const qr = pivotedQr(ROWS, SIZE)
  columns.forEach((column, j) => {
    qr.a.set(column, j * ROWS)
  })
  factorise(qr, SIZE)
  const room = stepRoom(SIZE)
  const turned = Float64Array.from(r)
  turn(qr, SIZE, turned)
  room.turned.set(turned.subarray(0, SIZE))
  const rank = rankOf(qr, SIZE, 1e-10)
  const damping = dampedStep(qr, SIZE, rank, room, extent, radius, 0)
  return { step: [...room.step], damping, rank }
}

// Method: Moré 1978, Lecture Notes in Mathematics 630:105-116 (from memory): the damped step inside its radius.
describe('limits', () => {
  test('(AᵀA + λE²) z = −Aᵀr, and |E z| is within a tenth of the radius or λ is nothing', () => {
    let damped = 0
    fc.assert(
      fc.property(cases, ({ columns, r, extent, radius }) => {
        const { step, damping, rank } = stepOf(columns, r, Float64Array.from(extent), radius)
        const length = Math.hypot(...step.map((z, k) => z * extent[k]!))
        expect(length).toBeLessThanOrEqual(1.1001 * radius)
        if (damping > 0) damped++
        // without full rank the undamped step leaves out what nothing determines
        if (rank < SIZE) return
        if (damping > 0) expect(length).toBeGreaterThanOrEqual(0.8999 * radius)
        const moved = Array.from({ length: ROWS }, (_, i) =>
          columns.reduce((sum, c, k) => sum + c[i]! * step[k]!, 0),
        )
        columns.forEach((column, k) => {
          const left = dot(column, moved) + damping * extent[k]! ** 2 * step[k]!
          expectNear(left, -dot(column, r), ofSize(20, stated(1e-9)))
        })
      }),
      bounded(400),
    )
    expect(damped).toBeGreaterThan(100)
  })

  test('a column twice is shared between both', () => {
    const column = [1, 2, 0, 1, -1]
    const { step } = stepOf(
      [column, column, [0, 0, 1, 0, 0]],
      [3, 6, 0, 3, -3],
      Float64Array.from([1, 1, 1]),
      1,
    )
    expectNear(step[0]!, step[1]!, stated(1e-6))
    expect(step[0]).toBeLessThan(0)
  })
})
