import type { SinkageMap } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { mapDrawing } from '../../../packages/explorer/src/figures/mapDrawing.ts'
import { type MapContour, mapField } from '../../../packages/explorer/src/figures/mapField.ts'
import { framing } from './framing.ts'
import { mapWords } from './gallery/words.ts'

const MM = 1e-3
const N = 41

/** A map of a field that is known in closed form. */
function mapOf(
  field: (mass: number, softness: number) => number,
  quantity: SinkageMap['quantity'] = 'sinkage',
): SinkageMap {
  const masses = Float64Array.from({ length: N }, (_, i) => 2 + (8 * i) / (N - 1))
  const softnesses = Float64Array.from({ length: N }, (_, i) => 0.1 * MM * 16 ** (i / (N - 1)))
  const values = new Float64Array(N * N)
  softnesses.forEach((softness, row) => {
    masses.forEach((mass, column) => {
      values[row * N + column] = field(mass, softness)
    })
  })
  const outcomes = Uint8Array.from(values, value => (Number.isFinite(value) ? 0 : 1))
  return {
    masses,
    softnesses,
    values,
    outcomes,
    outcomeNames: ['settled', 'bottomed out', 'not converged'],
    quantity,
  }
}

const mass = (column: number) => 2 + (8 * column) / (N - 1)
const softness = (row: number) => 0.1 * MM * 16 ** (row / (N - 1))
const points = ({ lines }: MapContour) => lines.flat()
const metric = { units: 'metric' } as const

describe('contours', () => {
  test('of a field that is a power of mass and softness lie where the closed form says', () => {
    // ln z is straight along every grid line but for the mass, whose logarithm bends between two columns.
    const field = (m: number, s: number) => 4 * s * Math.sqrt(m / 4)
    const { contours } = mapField(mapOf(field), metric)
    expect(contours.length).toBeGreaterThan(4)
    for (const contour of contours) {
      expect(points(contour).length).toBeGreaterThan(5)
      for (const { x, y } of points(contour)) {
        // ½ ln m leaves its chord by at most ½ h² / 8 m², h = 0.2 kg: 0.12 % at 2 kg.
        expect(Math.abs(field(mass(x), softness(y)) / contour.rung.value - 1)).toBeLessThan(0.00125)
      }
    }
  })

  test('of a field that does not change with mass are exact', () => {
    const { contours } = mapField(
      mapOf((_, s) => 3 * s),
      metric,
    )
    for (const contour of contours) {
      for (const { y } of points(contour)) {
        expect(Math.abs((3 * softness(y)) / contour.rung.value - 1)).toBeLessThan(1e-9)
      }
    }
  })

  test('end at the border of the map, not half a cell beyond', () => {
    const { contours } = mapField(
      mapOf((m, s) => 4 * s * Math.sqrt(m / 4)),
      metric,
    )
    for (const { lines } of contours) {
      expect(lines).toHaveLength(1)
      for (const end of [lines[0]?.[0], lines[0]?.at(-1)]) {
        const atBorder = end && (end.x === 0 || end.x === N - 1 || end.y === 0 || end.y === N - 1)
        expect(atBorder).toBe(true)
      }
    }
  })

  test('that close inside the map stay closed', () => {
    const hill = (m: number, s: number) =>
      MM * Math.exp(-(((m - 6) / 2) ** 2) - Math.log(s / (0.4 * MM)) ** 2)
    const { contours } = mapField(mapOf(hill), metric)
    const top = contours.at(-1)
    expect(top?.lines).toHaveLength(1)
    expect(top?.lines[0]?.[0]).toEqual(top?.lines[0]?.at(-1))
  })

  test('of a height lie where the straight line says', () => {
    const field = (m: number) => 3.3 * MM - 0.2 * MM * m
    const { contours } = mapField(mapOf(field, 'effectiveHeight'), metric)
    expect(contours.length).toBeGreaterThan(2)
    for (const contour of contours) {
      for (const { x } of points(contour))
        expect(Math.abs(field(mass(x)) - contour.rung.value)).toBeLessThan(1e-9)
    }
  })
})

describe('where the model has no answer', () => {
  const beyond = (m: number, s: number) => (s > 0.8 * MM ? Number.NaN : 4 * s * Math.sqrt(m / 4))
  const { contours, unknown } = mapField(mapOf(beyond), metric)

  test('the map says so, and only there', () => {
    expect(unknown.length).toBeGreaterThan(0)
    // Halfway between the last answer and the first cell without one.
    const first = Math.ceil((Math.log(8) / Math.log(16)) * (N - 1) + 1e-9)
    const least = Math.min(...unknown.flat().map(point => point.y))
    expect(Math.abs(least - (first - 0.5))).toBeLessThanOrEqual(0.5)
  })

  test('no contour is drawn', () => {
    for (const contour of contours) {
      for (const { y } of points(contour)) expect(softness(y)).toBeLessThanOrEqual(0.8 * MM * (1 + 1e-9))
    }
  })

  test('everywhere, there is no contour at all', () => {
    const field = mapField(
      mapOf(() => Number.NaN),
      metric,
    )
    expect(field.contours).toEqual([])
    expect(field.unknown.length).toBe(1)
  })
})

describe('while the mark moves', () => {
  test('field and paths of a map are the ones already made', () => {
    const map = mapOf((m, s) => 4 * s * Math.sqrt(m / 4))
    const frame = framing(mapWords('metric', 'sinkage', 'mm'))
    expect(mapField(map, metric)).toBe(mapField(map, metric))
    expect(mapDrawing(map, frame)).toBe(mapDrawing(map, { ...frame }))
    expect(mapDrawing(map, frame)).not.toBe(mapDrawing(map, { ...frame, width: 560 }))
    expect(mapField({ ...map }, metric)).not.toBe(mapField(map, metric))
  })
})
