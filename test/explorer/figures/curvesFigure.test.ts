import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type CurvesSpec,
  curvesLayout,
  shortened,
} from '../../../packages/explorer/src/figures/curvesLayout.ts'
import { sinkageCurves } from '../../../packages/explorer/src/figures/sinkageCurves.ts'
import { textWidth } from '../../../packages/explorer/src/figures/textWidth.ts'
import { curvesFigure } from '../../../packages/explorer/src/words/english/curves.ts'
import { bounded } from '../../support/arbitraries.ts'
import { framing } from './framing.ts'
import { curveCases, curvesSpec } from './gallery/curveFigures.ts'
import { markup, ownText } from './markup.ts'

const words = curvesFigure({ show: 'load', unit: 'N', sinkageUnit: 'mm' })
const drawn = (spec: CurvesSpec, width = 792) => markup(sinkageCurves(spec, framing(words, { width })))
const widths = [792, 560, 358, 280]

describe.each(curveCases)('the curves of %s', name => {
  const spec = curvesSpec(name)

  test('are drawn at every width without a number that is none', () => {
    for (const width of widths) expect(drawn(spec, width)).not.toMatch(/NaN|Infinity|undefined|false/)
  })

  test('have no words of their own and no style attribute', () => {
    expect(ownText(sinkageCurves(spec, framing(words)))).toBe('')
    expect(drawn(spec)).not.toMatch(/\sstyle=/)
  })

  test('have depth pointing down, and every mark inside the axes', () => {
    for (const width of widths) {
      const { box, at, y } = curvesLayout(spec, framing(words, { width }))
      expect(y(0)).toBe(box.y)
      expect(y(spec.present.sinkage)).toBeGreaterThan(y(0))
      for (const mark of [spec.present, ...spec.readings]) {
        const place = at(mark)
        expect(place.x).toBeLessThanOrEqual(box.x + box.width)
        expect(place.y).toBeLessThanOrEqual(box.y + box.height)
      }
    }
  })

  test('are each named, the case in hand in strong type', () => {
    const text = drawn(spec, 1200)
    for (const { label, points } of spec.curves) if (points.length > 0) expect(text).toContain(label)
    expect(text).toMatch(/class="on-paper strong"/)
  })
})

test('a law that is only carried on is dashed over stipple, and said to be not measured', () => {
  const text = drawn(curvesSpec('known so far'))
  expect(text).toContain('carried-on')
  expect(text).toContain('url(#stipple)')
  expect(text).toContain(words.unknown)
  expect(drawn(curvesSpec('rollers'))).not.toContain('url(#stipple)')
})

test('readings are rings, as many as there are; replicates stand side by side', () => {
  const spec = curvesSpec('readings')
  const rings = [...drawn(spec).matchAll(/class="solid measured" cx=([\d.]+)/g)].map(([, x]) => Number(x))
  expect(rings.length).toBe(spec.readings.length)
  expect(new Set(rings).size).toBe(rings.length)
})

test('the two axes of the case in hand are found by cross lines', () => {
  expect([...drawn(curvesSpec('rollers')).matchAll(/class="present-cross"/g)].length).toBe(2)
})

test('curves of any size are drawn, one datum and extremes among them', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  const any = fc.record({
    most: size(0.5, 1000),
    sinkage: size(1e-6, 15e-3),
    count: fc.integer({ min: 1, max: 9 }),
  })
  fc.assert(
    fc.property(any, ({ most, sinkage, count }) => {
      const points = Array.from({ length: count }, (_, i) => ({
        x: (most * i) / Math.max(1, count - 1),
        sinkage: (sinkage * i) / Math.max(1, count - 1),
      }))
      const present = { x: most / 2, sinkage: sinkage / 2 }
      const curve = { label: 'one', present: true, points, knownTo: null, bottomsOut: false, own: present }
      const none = { ...curve, label: 'none', present: false, points: [], own: null }
      const spec: CurvesSpec = {
        quantity: 'load',
        curves: [curve, none],
        present,
        softness: null,
        readings: [],
        most,
      }
      for (const width of widths) expect(drawn(spec, width)).not.toMatch(/NaN|Infinity|undefined|false/)
    }),
    bounded(60),
  )
})

test('a name too long for its room is cut off, and says so', () => {
  const cut = shortened('a very long name for a green', 80, 13)
  expect(cut).toMatch(/…$/)
  expect(textWidth(cut, 13, true)).toBeLessThanOrEqual(80)
  expect(shortened('peg 1', 80, 13)).toBe('peg 1')
})
