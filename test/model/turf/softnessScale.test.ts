import { type PressureLaw, press, pressureAt, softnessOf } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectPrinted } from '../../support/tolerance.ts'

const mm = 1e-3
const linear = (softness: number): PressureLaw => ({ kind: 'linear', softness })

// Volk 1972, Agronomy Journal 64(4):503-506, as its abstract gives it: twenty-four greens went down by so much
// between 0.716 and 55.9 kPa.
describe('the scale of softness, from published greens', () => {
  test.each([
    [6.1, '9.0', '1.1'],
    [11.5, '4.8', '2.1'],
  ])('%f mm: %s kPa/mm, a softness of %s mm', (depth, secant, softness) => {
    const stiffness = (55.9 - 0.716) / depth
    expectPrinted(stiffness, secant)
    const turf = linear((10 / stiffness) * mm)
    expectPrinted(softnessOf(turf) / mm, softness)
    expectPrinted((pressureAt(turf, depth * mm) - pressureAt(turf, 0)) / 1e3, '55.18')
  })

  // docs/physics.md §1: derived. The gap of 0.010 to 0.015 in is common practice, its notes single and uncontrolled.
  test.each([
    [0.05, 0.25],
    [0.09, 0.38],
  ])('a smooth roller of 58 mm under 150 N sinks about as far as the firm end: %f mm', (softness, seen) => {
    const pressed = press({
      roller: { mass: 6, diameter: 58 * mm, length: 0.55, surface: { kind: 'smooth' } },
      turf: { law: linear(softness * mm), spread: 0 },
      load: 150,
      condition: { kind: 'standing' },
    })
    if (pressed.outcome !== 'settled') return expect.fail(pressed.outcome)
    // half of the last digit of the softness that is told
    expect(Math.abs(pressed.sinkage / mm - seen)).toBeLessThan((2 / 3) * seen * (0.005 / softness) + 0.01)
  })
})
