import { describe, expect, it } from 'vitest'
import { spanOf } from '../../../packages/explorer/src/entries/map/finding.ts'

/** A map whose value is mass × softness: read off exactly anywhere, as it is linear along either axis. */
function product(masses: readonly number[], softnesses: readonly number[], holes: readonly number[] = []) {
  const values = Float64Array.from(
    softnesses.flatMap(softness => masses.map(mass => mass * softness)),
    (value, i) => (holes.includes(i) ? Number.NaN : value),
  )
  return {
    quantity: 'sinkage',
    masses: Float64Array.from(masses),
    softnesses: Float64Array.from(softnesses),
    values,
    outcomes: Uint8Array.from(values, value => (Number.isNaN(value) ? 1 : 0)),
    outcomeNames: ['settled', 'bottomed out', 'not converged'],
  } as const
}

describe('how far a quantity reaches over the map', () => {
  const map = product([2, 4, 8], [1, 2, 4])

  it('is read along both lines through the case in hand, between the cells as well', () => {
    const { byMass, bySoftness, bottomsFrom } = spanOf(map, { mass: 6, softness: 3 })
    expect(byMass).toEqual({ low: 6, high: 24 })
    expect(bySoftness).toEqual({ low: 6, high: 24 })
    expect(bottomsFrom).toBe(null)
  })

  it('is read at the ends of the axes', () => {
    expect(spanOf(map, { mass: 2, softness: 1 })).toMatchObject({
      byMass: { low: 2, high: 8 },
      bySoftness: { low: 2, high: 8 },
    })
    expect(spanOf(map, { mass: 8, softness: 4 }).bySoftness).toEqual({ low: 8, high: 32 })
  })

  it('keeps to the edge for a case beyond the map', () => {
    expect(spanOf(map, { mass: 20, softness: 1 }).bySoftness).toEqual({ low: 8, high: 32 })
  })

  it('ends where the turf bottoms out, and says from which softness', () => {
    const holed = product([2, 4, 8], [1, 2, 4], [6, 7, 8])
    const span = spanOf(holed, { mass: 4, softness: 1 })
    expect(span.bySoftness).toEqual({ low: 4, high: 8 })
    expect(span.bottomsFrom).toBe(4)
  })

  it('is unknown along a line with no answer at its end', () => {
    const holed = product([2, 4, 8], [1, 2, 4], [2, 5, 8])
    expect(spanOf(holed, { mass: 2, softness: 1 }).byMass).toBe(null)
  })
})
