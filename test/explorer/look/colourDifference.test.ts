import { describe, expect, test } from 'vitest'
import { ciede2000, contrast, type Lab } from '../../support/colour.ts'

/** Sharma, Wu, Dalal 2005, table 1, some of its 34 pairs; from memory. */
const published: readonly (readonly [Lab, Lab, number])[] = [
  [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
  [[50, 3.1571, -77.2803], [50, 0, -82.7485], 2.8615],
  [[50, 2.8361, -74.02], [50, 0, -82.7485], 3.4412],
  [[50, -1.3802, -84.2814], [50, 0, -82.7485], 1.0],
  [[50, 0, 0], [50, -1, 2], 2.3669],
  [[50, 2.49, -0.001], [50, -2.49, 0.0009], 7.1792],
  [[50, 2.49, -0.001], [50, -2.49, 0.0011], 7.2195],
  [[50, -0.001, 2.49], [50, 0.0009, -2.49], 4.8045],
  [[50, -0.001, 2.49], [50, 0.0011, -2.49], 4.7461],
  [[50, 2.5, 0], [50, 0, -2.5], 4.3065],
  [[50, 2.5, 0], [73, 25, -18], 27.1492],
  [[50, 2.5, 0], [61, -5, 29], 22.8977],
  [[50, 2.5, 0], [56, -27, -3], 31.903],
  [[50, 2.5, 0], [58, 24, 15], 19.4535],
  [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
  [[22.7233, 20.0904, -46.694], [23.0331, 14.973, -42.5619], 2.0373],
  [[90.9257, -0.5406, -0.9208], [88.6381, -0.8985, -0.7239], 1.5381],
  [[2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], 0.9082],
]

describe('the difference of two colours', () => {
  test.each(published)('%o and %o differ as published', (a, b, difference) => {
    // Half of the last printed digit.
    expect(Math.abs(ciede2000(a, b) - difference)).toBeLessThanOrEqual(0.00005)
  })

  test('is the same both ways', () => {
    for (const [a, b] of published) expect(Math.abs(ciede2000(a, b) - ciede2000(b, a))).toBeLessThan(1e-12)
  })
})

test('black on white has the greatest contrast there is', () => {
  expect(contrast('#000000', '#ffffff')).toBe(21)
})
