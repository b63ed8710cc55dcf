import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkAxis, checkRow, checkScale } from '../../../packages/explorer/src/figures/checkRow.ts'
import { fitCurve, unreadStretches } from '../../../packages/explorer/src/figures/fitCurve.ts'
import { type FitSpec, fitLayout } from '../../../packages/explorer/src/figures/fitLayout.ts'
import { replicatesOf } from '../../../packages/explorer/src/figures/fitMarks.ts'
import { type SetsSpec, setsFigure, setsLayout } from '../../../packages/explorer/src/figures/setsFigure.ts'
import * as said from '../../../packages/explorer/src/words/english/fit.ts'
import { bounded } from '../../support/arbitraries.ts'
import { framing } from './framing.ts'
import { checkedRows, fitSpecs, setsSpecs } from './gallery/fitFigures.ts'
import { markup, ownText } from './markup.ts'

const fitWords = said.fitFigure({ along: 'load', unit: 'N', sinkageUnit: 'mm' })
const setsWords = (along: SetsSpec['along']) =>
  said.setsFigure({ along, unit: 'mm', day: day => `day ${day}` })
const widths = [1100, 792, 560, 358, 280]
const wrong = /NaN|Infinity|undefined|>false/
const drawn = (spec: FitSpec, width = 792) => markup(fitCurve(spec, framing(fitWords, { width })))

describe.each(Object.entries(fitSpecs))('the fit %s', (name, spec) => {
  test('is drawn at every width, in both units, without a number that is none', () => {
    for (const width of widths) {
      expect(drawn(spec, width)).not.toMatch(wrong)
      expect(markup(fitCurve(spec, framing(fitWords, { width, units: 'US', text: 20 })))).not.toMatch(wrong)
    }
  })

  test('has no words of its own and no style attribute', () => {
    expect(ownText(fitCurve(spec, framing(fitWords)))).toBe('')
    expect(drawn(spec)).not.toMatch(/\sstyle=/)
  })

  test('keeps every reading inside its axes, deeper further down', () => {
    const { box, strip, x, y, r } = fitLayout(spec, framing(fitWords))
    for (const reading of spec.readings) {
      expect(x(reading.x)).toBeGreaterThanOrEqual(box.x)
      expect(x(reading.x)).toBeLessThanOrEqual(box.x + box.width)
      expect(y(reading.sinkage)).toBeGreaterThanOrEqual(box.y)
      expect(y(reading.sinkage)).toBeLessThanOrEqual(box.y + box.height)
      expect(r(reading.residual)).toBeGreaterThanOrEqual(strip.y)
      expect(r(reading.residual)).toBeLessThanOrEqual(strip.y + strip.height)
    }
    expect(y(1e-3)).toBeGreaterThan(y(0))
    if (spec.readings.length > 0) expect(r(1e-5)).toBeGreaterThan(r(0))
  })

  test('shows every reading twice: on the curve and in what is left over', () => {
    const rings = drawn(spec).split('class="solid measured"').length - 1
    const dots = drawn(spec).match(/class="measured-fill" d=/g)?.length ?? 0
    if (name === 'many readings') expect([rings, dots]).toEqual([0, 2])
    else expect(rings).toBe(2 * spec.readings.length)
  })
})

describe('what was not read', () => {
  test('is stippled on both sides of the readings, and everywhere without any', () => {
    const spec = fitSpecs.plates
    if (!spec) throw new Error('no plates')
    const stretches = unreadStretches(spec)
    expect(stretches).toHaveLength(2)
    expect(stretches[0]?.[1]).toBe(6)
    expect(stretches[1]?.[0]).toBe(72)
    expect(unreadStretches({ ...spec, points: [] })).toEqual([[0, spec.most]])
  })

  test('has the curve dashed over it', () => {
    expect(drawn(fitSpecs.plates as FitSpec)).toMatch(/class="outline carried-on" d=M/)
  })
})

describe('replicates', () => {
  test('stand side by side in the order of the table, about their load', () => {
    const readings = [3, 1, 2].map(sinkage => ({ x: 50, sinkage, residual: 0 }))
    const [place] = replicatesOf(readings, x => 2 * x)
    expect(place?.readings.map(({ sinkage }) => sinkage)).toEqual([3, 1, 2])
    expect(place?.readings.map(({ at }) => at)).toEqual([89, 100, 111])
  })

  test('move closer where another load is near', () => {
    const at = (x: number) => [0, 1, 2].map(() => ({ x, sinkage: 1e-3, residual: 0 }))
    const [first] = replicatesOf([...at(50), ...at(60)], x => 2 * x)
    expect(first?.width).toBeLessThan(20)
    expect(new Set(first?.readings.map(one => one.at)).size).toBe(3)
  })
})

describe.each(Object.entries(setsSpecs))('the softness of sets, %s', (_, spec) => {
  const words = setsWords(spec.along)
  test('is drawn at every width without a number that is none, and without words of its own', () => {
    for (const width of widths) expect(markup(setsFigure(spec, framing(words, { width })))).not.toMatch(wrong)
    expect(ownText(setsFigure(spec, framing(words)))).toBe('')
  })

  test('has a dot for each set, the softer further down', () => {
    const text = markup(setsFigure(spec, framing(words)))
    expect(text.split('class="dot"').length - 1).toBe(spec.sets.length)
    const { y, deepest } = setsLayout(spec, framing(words))
    expect(y(deepest)).toBeGreaterThan(y(0))
  })
})

describe.each(Object.entries(checkedRows))('a check, %s', (_, rows) => {
  const scale = checkScale(rows, { width: 300 })
  test('is drawn without a number that is none', () => {
    for (const row of rows) expect(markup(checkRow(row, scale))).not.toMatch(wrong)
    expect(markup(checkAxis(scale, framing({ axis: 'height, mm' }, { width: 300 })))).not.toMatch(wrong)
  })

  test('has every height on the one scale, at its own place', () => {
    for (const { measured } of rows)
      for (const height of measured) {
        expect(scale.x(height)).toBeGreaterThan(0)
        expect(scale.x(height)).toBeLessThan(300)
      }
    for (const row of rows) {
      const text = markup(checkRow(row, scale))
      expect(text.split('class="solid measured"').length - 1).toBe(row.measured.length)
      expect(text.includes('url(#stipple)')).toBe(row.expected === null && row.between === null)
    }
  })
})

test('any fit is drawn', () => {
  const metre = fc.double({ min: -1e-2, max: 2e-2, noNaN: true })
  const range = fc.option(fc.tuple(metre, metre))
  const any = fc.record({
    most: fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 1000, noNaN: true })),
    points: fc.array(
      fc.record({
        x: fc.double({ min: 0, max: 1000, noNaN: true }),
        sinkage: metre,
        curve: range,
        reading: range,
        beyond: fc.boolean(),
      }),
      { maxLength: 6 },
    ),
    readings: fc.array(
      fc.record({ x: fc.double({ min: 0, max: 1000, noNaN: true }), sinkage: metre, residual: metre }),
      { maxLength: 6 },
    ),
    scatter: fc.option(fc.double({ min: 0, max: 1e-2, noNaN: true })),
  })
  fc.assert(
    fc.property(any, spec => {
      for (const width of widths)
        expect(drawn({ quantity: 'load', others: [], present: null, ...spec }, width)).not.toMatch(wrong)
    }),
    bounded(60),
  )
})
