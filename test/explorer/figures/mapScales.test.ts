import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inside, overlaps } from '../../../packages/explorer/src/figures/box.ts'
import { mapScales } from '../../../packages/explorer/src/figures/mapScales.ts'
import { plateBox } from '../../../packages/explorer/src/figures/sinkageMapView.ts'
import { framing } from './framing.ts'
import { mapWords } from './gallery/words.ts'

const domain = { mass: [2, 12], softness: [0.07e-3, 1.2e-3] } as const
const words = mapWords('metric', 'sinkage', 'mm')
const widths = fc.constantFrom(1100, 792, 560, 358, 320)

describe('scales of the map', () => {
  test('bring a pointer back to the values it stands on', () => {
    fc.assert(
      fc.property(widths, fc.double({ min: 0, max: 1, noNaN: true }), (width, part) => {
        const { x, y, massAt, softnessAt } = mapScales(domain, framing(words, { width }))
        const mass = 2 + 10 * part
        const softness = 0.07e-3 * (1.2 / 0.07) ** part
        expect(Math.abs(massAt(x(mass)) / mass - 1)).toBeLessThan(1e-12)
        expect(Math.abs(softnessAt(y(softness)) / softness - 1)).toBeLessThan(1e-12)
      }),
    )
  })

  test('keep a pointer outside the frame inside the domain', () => {
    const { massAt, softnessAt } = mapScales(domain, framing(words))
    expect(massAt(-50)).toBe(2)
    expect(massAt(5000)).toBe(12)
    expect(Math.abs(softnessAt(5000) - 0.07e-3)).toBeLessThan(1e-15)
    expect(Math.abs(softnessAt(-50) - 1.2e-3)).toBeLessThan(1e-15)
  })

  test('put firm turf at the foot and a heavy roller at the right', () => {
    const { x, y, box } = mapScales(domain, framing(words))
    expect(y(0.07e-3)).toBe(box.y + box.height)
    expect(y(1.2e-3)).toBe(box.y)
    expect(x(12)).toBe(box.x + box.width)
  })

  test('leave room for numbers and names at every width', () => {
    for (const width of [1100, 792, 560, 358, 320]) {
      const { box, height } = mapScales(domain, framing(words, { width }))
      expect(box.width).toBeGreaterThan(0.6 * width)
      expect(box.x + box.width).toBeLessThan(width - 30)
      expect(box.y + box.height).toBeLessThan(height - 40)
    }
  })
})

describe('the plate of the mark', () => {
  const { box } = mapScales(domain, framing(words))
  const place = fc.record({
    x: fc.integer({ min: box.x, max: box.x + box.width }),
    y: fc.integer({ min: box.y, max: box.y + box.height }),
  })

  test('stays inside the frame and does not cover the mark, wherever it is', () => {
    fc.assert(
      fc.property(place, at => {
        const plate = plateBox({ at, box, text: '0.39 mm here', avoided: [] }, {})
        expect(inside(plate, box)).toBe(true)
        expect(overlaps(plate, { x: at.x - 7, y: at.y - 7, width: 14, height: 14 })).toBe(false)
      }),
    )
  })

  test('steps aside for a reading', () => {
    const at = { x: box.x + 300, y: box.y + 150 }
    const reading = { x: at.x + 30, y: at.y - 30, width: 18, height: 18 }
    expect(overlaps(plateBox({ at, box, text: '0.39 mm here', avoided: [] }, {}), reading)).toBe(true)
    expect(overlaps(plateBox({ at, box, text: '0.39 mm here', avoided: [reading] }, {}), reading)).toBe(false)
  })
})
