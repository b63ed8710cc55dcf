import { describe, expect, test } from 'vitest'
import { gaussLegendre } from '../../../packages/model/src/numerics/index.ts'
import { expectNear, identity, ofSize, rate, stated } from '../../support/tolerance.ts'

// Source: Abramowitz and Stegun, table 25.4 (from memory), on [−1, 1]: abscissa and weight.
const table: Readonly<Record<number, readonly (readonly [string, string])[]>> = {
  2: [['0.577350269189626', '1.000000000000000']],
  3: [
    ['0.000000000000000', '0.888888888888889'],
    ['0.774596669241483', '0.555555555555556'],
  ],
  4: [
    ['0.339981043584856', '0.652145154862546'],
    ['0.861136311594053', '0.347854845137454'],
  ],
  5: [
    ['0.000000000000000', '0.568888888888889'],
    ['0.538469310105683', '0.478628670499366'],
    ['0.906179845938664', '0.236926885056189'],
  ],
  8: [
    ['0.183434642495650', '0.362683783378362'],
    ['0.525532409916329', '0.313706645877887'],
    ['0.796666477413627', '0.222381034453374'],
    ['0.960289856497536', '0.101228536290376'],
  ],
}

/** One in the last printed digit and a few roundings. */
const digit = ofSize(1, stated(2e-15))

describe('published values', () => {
  test.each(Object.keys(table).map(Number))('%i points: places and weights on either side', points => {
    const { nodes, weights } = gaussLegendre(points)
    const rows = table[points] ?? []
    const middle = Math.floor(points / 2)
    const odd = points % 2
    rows.forEach(([place, weight], i) => {
      const right = middle + i
      const left = points - 1 - right
      expectNear(2 * (nodes[right] ?? Number.NaN) - 1, Number(place), digit)
      expectNear(1 - 2 * (nodes[left] ?? Number.NaN), Number(place), digit)
      expectNear(2 * (weights[right] ?? Number.NaN), Number(weight), digit)
      expectNear(2 * (weights[left] ?? Number.NaN), Number(weight), digit)
    })
    expect(rows.length).toBe(middle + odd)
  })
})

describe('limits', () => {
  const powerBy = (points: number, power: number) => {
    const { nodes, weights } = gaussLegendre(points)
    return nodes.reduce((sum, node, i) => sum + (weights[i] ?? Number.NaN) * node ** power, 0)
  }

  test.each([1, 2, 3, 5, 12, 16, 33, 160])('%i points take every power up to 2n − 1 exactly', points => {
    for (let power = 0; power < 2 * points; power++)
      expectNear(powerBy(points, power), 1 / (power + 1), identity, `power ${power}`)
  })

  test('and the next power not', () => {
    for (const points of [1, 2, 3, 4, 5])
      expect(Math.abs(powerBy(points, 2 * points) * (2 * points + 1) - 1)).toBeGreaterThan(1e-6)
  })

  test('places rise and weights are positive', () => {
    for (const points of [2, 7, 48, 160]) {
      const { nodes, weights } = gaussLegendre(points)
      expect([...nodes].every((node, i) => node > (nodes[i - 1] ?? 0) && node < 1)).toBe(true)
      expect([...weights].every(weight => weight > 0)).toBe(true)
    }
  })

  test('in panels, three points converge to order six', () => {
    const { nodes, weights } = gaussLegendre(3)
    const errorOf = (panels: number) => {
      let sum = 0
      for (let panel = 0; panel < panels; panel++)
        nodes.forEach((node, i) => {
          sum += ((weights[i] ?? Number.NaN) / panels) * Math.exp((2 * (panel + node)) / panels)
        })
      return sum - (Math.E ** 2 - 1) / 2
    }
    rate(6).of([errorOf(1), errorOf(2), errorOf(4), errorOf(8)])
  })
})
