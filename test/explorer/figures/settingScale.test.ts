import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rackScale } from '../../../packages/explorer/src/figures/rackPlot.ts'
import {
  settingParts,
  settingTicks,
  underThumb,
} from '../../../packages/explorer/src/figures/settingScale.ts'
import { framing } from './framing.ts'

const frame = framing(null, { width: 384 })
const softness = { quantity: 'softness', domain: [0.07e-3, 15e-3], kind: 'logarithmic' } as const
const mass = { quantity: 'mass', domain: [2, 12], kind: 'linear' } as const

describe('the graduated line', () => {
  test('stands where the middle of a 24 px thumb travels', () => {
    expect(underThumb(0, 384)).toBe(12)
    expect(underThumb(1, 384)).toBe(372)
    expect(underThumb(0.5, 384)).toBe(192)
  })

  test('gives a part of the way and takes it back', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(softness, mass),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (setting, part) => {
          const { partOf, valueAt } = settingParts(setting)
          expect(Math.abs(partOf(valueAt(part)) - part)).toBeLessThan(1e-9)
        },
      ),
    )
  })

  test('is logarithmic where equal steps multiply', () => {
    const { partOf } = settingParts(softness)
    expect(Math.abs(partOf(0.2e-3) - partOf(0.1e-3) - (partOf(10e-3) - partOf(5e-3)))).toBeLessThan(1e-12)
  })

  test('names its ticks without crowding', () => {
    for (const width of [384, 320, 240]) {
      for (const setting of [softness, mass]) {
        const { partOf } = settingParts(setting)
        const places = settingTicks(setting, { ...frame, width })
          .filter(tick => tick.text !== '')
          .map(tick => underThumb(partOf(tick.value), width))
        expect(places.length).toBeGreaterThanOrEqual(2)
        places.slice(1).forEach((place, i) => {
          expect(place - (places[i] ?? 0)).toBeGreaterThan(26)
        })
      }
    }
  })
})

describe('the scale of the rack', () => {
  test('holds every roller and the tolerance, in order', () => {
    const heights = [2.84e-3, 3.02e-3, null, 3.4e-3]
    const { x, tolerance } = rackScale({ heights, fitted: 3.02e-3, tolerance: 0.25e-3 }, { width: 300 })
    for (const height of [2.84e-3, 3.02e-3, 3.4e-3, ...(tolerance ?? [])]) {
      expect(x(height)).toBeGreaterThanOrEqual(20)
      expect(x(height)).toBeLessThanOrEqual(280)
    }
    expect(x(2.84e-3)).toBeLessThan(x(3.02e-3))
    expect(tolerance?.map(height => Math.round(height * 1e6))).toEqual([2770, 3270])
  })

  test('stands even where nothing has an answer', () => {
    const { x, tolerance } = rackScale(
      { heights: [null, null], fitted: null, tolerance: 0.25e-3 },
      { width: 300 },
    )
    expect(tolerance).toBeNull()
    expect(Number.isFinite(x(0))).toBe(true)
  })

  test('shows equal heights as equal, not as a division by zero', () => {
    const { x } = rackScale({ heights: [3e-3, 3e-3], fitted: null, tolerance: 0.25e-3 }, { width: 300 })
    expect(Math.abs(x(3e-3) - 150)).toBeLessThan(1e-9)
  })
})
