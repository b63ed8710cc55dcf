import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { faceStrip, stripHeight } from '../../../packages/explorer/src/figures/faceStrip.ts'
import { type WeighedUnitSpec, weighedUnit } from '../../../packages/explorer/src/figures/weighedUnit.ts'
import { framing } from './framing.ts'
import { markup } from './markup.ts'

const words = {
  title: 'on the scales',
  front: 'front',
  rear: 'rear',
  edge: 'edge',
  body: 'body 18.40 kg',
  scale: '',
}
const spec: WeighedUnitSpec = {
  wheelbase: 0.19,
  edge: 0.105,
  front: 0.057,
  rear: 0.051,
  at: 0.098,
  loads: [],
  readings: { front: 14.2, rear: 15.4 },
}
const drawn = (over: Partial<WeighedUnitSpec> = {}, width = 600) =>
  markup(weighedUnit({ ...spec, ...over }, framing(words, { width })))

const strip = (surface: Parameters<typeof faceStrip>[0]['surface'], buildUp = 0) =>
  markup(faceStrip({ surface, buildUp }, { width: 192, height: stripHeight(12e-3), name: 'peg' }))

/** x of every corner where an underside turns up into a groove. */
const cornersOf = (text: string): readonly (readonly [number, number])[] => {
  const outline = /class="outline" d=([^/]+) \/>/.exec(text)?.[1] ?? ''
  return [...outline.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  )
}

describe('the face of a roller', () => {
  test('has its lands and gaps to one scale, 2 px a millimetre', () => {
    const corners = cornersOf(strip({ kind: 'grooved', pitch: 12e-3, land: 5e-3, depth: 6e-3 }))
    // half a land, then a gap of 7 mm, 6 mm deep
    expect(corners[1]?.[0]).toBe(5)
    expect(corners[3]?.[0]).toBe(19)
    expect((corners[1]?.[1] ?? 0) - (corners[2]?.[1] ?? 0)).toBe(12)
  })

  test('is one line where it is smooth', () => {
    expect(cornersOf(strip({ kind: 'smooth' }))).toHaveLength(2)
  })

  test('shows build-up, and nothing where there is none', () => {
    expect(strip({ kind: 'smooth' }, 0.5e-3)).toContain('dotted')
    expect(strip({ kind: 'smooth' })).not.toContain('dotted')
  })

  test('stays in its strip, without a number that is none, for any face', () => {
    const surfaces = fc
      .record({
        pitch: fc.double({ min: 1e-3, max: 0.2, noNaN: true }),
        part: fc.double({ min: 0.01, max: 1, noNaN: true }),
        depth: fc.double({ min: 0, max: 0.1, noNaN: true }),
      })
      .map(({ pitch, part, depth }) => ({ kind: 'grooved' as const, pitch, land: part * pitch, depth }))
    fc.assert(
      fc.property(surfaces, fc.double({ min: 0, max: 0.02, noNaN: true }), (surface, buildUp) => {
        const text = strip(surface, buildUp)
        expect(text).not.toMatch(/NaN|Infinity|undefined/)
        for (const [x, y] of cornersOf(text)) {
          expect(x).toBeGreaterThanOrEqual(0)
          expect(x).toBeLessThanOrEqual(192)
          expect(y).toBeGreaterThanOrEqual(0)
          expect(y).toBeLessThanOrEqual(stripHeight(12e-3))
        }
      }),
    )
  })
})

describe('the unit on its scales', () => {
  test('says what each scale read, and nothing where none was read', () => {
    expect(drawn()).toContain('14.20')
    expect(drawn({ readings: { front: null, rear: null } })).not.toMatch(/14\.20|null/)
  })

  test('has the weight of the body where it acts between the axes', () => {
    const centres = [...drawn().matchAll(/cx=([\d.]+)/g)].map(([, x]) => Number(x))
    const arrow = /class="load" d=M([\d.]+) /.exec(drawn())?.[1]
    const [front = 0, rear = 0] = centres
    const part = (Number(arrow) - front) / (rear - front)
    // coordinates are told to a hundredth of a pixel
    expect(Math.abs(part - 0.098 / 0.19)).toBeLessThan(1e-3)
  })

  test('keeps names apart that would run into one another', () => {
    const loads = [
      { name: 'grass box 2.20 kg', at: 0.1 },
      { name: 'brush 1.40 kg', at: 0.105 },
    ]
    const text = drawn({ loads })
    const rows = [...text.matchAll(/<text class="on-paper" x=[\d.]+ y=([\d.]+) text-anchor="middle">/g)]
    expect(new Set(rows.map(([, y]) => y)).size).toBe(3)
  })

  test('draws any unit at any width without a number that is none', () => {
    const length = fc.double({ min: 1e-3, max: 2, noNaN: true })
    const place = fc.double({ min: -2, max: 2, noNaN: true })
    const units = fc.record({
      wheelbase: length,
      edge: length,
      front: length,
      rear: length,
      at: place,
      loads: fc.array(fc.record({ name: fc.string({ maxLength: 30 }), at: place }), { maxLength: 4 }),
    })
    fc.assert(
      fc.property(units, fc.constantFrom(280, 358, 560, 792), (unit, width) => {
        const text = drawn(unit, width)
        expect(text).not.toMatch(/NaN|Infinity|undefined/)
        for (const [, r] of text.matchAll(/ r=(-?[\d.]+)/g)) expect(Number(r)).toBeGreaterThanOrEqual(0)
      }),
    )
  })
})
