import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type PredictionSpec,
  predictionLayout,
} from '../../../packages/explorer/src/figures/predictionLayout.ts'
import { predictionRow, predictionScale } from '../../../packages/explorer/src/figures/predictionScale.ts'
import { questionFigure as words } from '../../../packages/explorer/src/words/english/question.ts'
import { bounded } from '../../support/arbitraries.ts'
import { framing } from './framing.ts'
import { predictionSpecs } from './gallery/predictionFigures.ts'
import { markup, ownText } from './markup.ts'

const widths = [560, 358, 280]
const noNumber = /NaN|Infinity|undefined|false/
const drawn = (spec: PredictionSpec, width = 560) => markup(predictionScale(spec, framing(words, { width })))
const specOf = (name: string): PredictionSpec => {
  const spec = predictionSpecs[name]
  if (!spec) throw new Error(name)
  return spec
}

describe.each(Object.entries(predictionSpecs))('the scale: %s', (_, spec) => {
  test('is drawn at every width without a number that is none', () => {
    for (const width of widths) expect(drawn(spec, width)).not.toMatch(noNumber)
  })

  test('has no words of its own and no style attribute', () => {
    expect(ownText(predictionScale(spec, framing(words)))).toBe('')
    expect(drawn(spec)).not.toMatch(/\sstyle=/)
  })

  test('keeps the roller inside what is drawn', () => {
    for (const width of widths) {
      const { along, left, right } = predictionLayout(spec, framing(words, { width }))
      const half = spec.roller ? along * Math.sqrt(spec.roller.diameter * spec.domain[1]) : 0
      expect(2 * half).toBeLessThanOrEqual(right - left)
    }
  })
})

test('deeper is lower on a scale of depths, and more is higher on any other', () => {
  const depth = predictionLayout(specOf('said'), framing(words))
  expect(depth.y(1e-3)).toBeGreaterThan(depth.y(0))
  const load = predictionLayout(specOf('load'), framing(words))
  expect(load.y(100)).toBeLessThan(load.y(0))
})

test('the ring, and the name of the model, come only when it is revealed', () => {
  expect(drawn(specOf('locked'))).not.toMatch(/present-cross|>model/)
  expect(drawn(specOf('revealed'))).toMatch(/>model.+solid present/s)
  expect(drawn(specOf('revealed'))).toContain(words.model('0.98'))
})

test('the mark can be moved until it is locked, and says what it stands at', () => {
  expect(drawn(specOf('said'))).toMatch(/data-handle="prediction".+aria-valuetext=1\.24 mm/s)
  expect(drawn(specOf('locked'))).not.toContain('data-handle')
})

test('every guess of a room is a dot of its own', () => {
  const dots = (text: string) => [...text.matchAll(/class="dot"/g)].length
  expect(dots(drawn(specOf('a room')))).toBe(specOf('a room').guesses.length)
  const places = [...drawn(specOf('sixty alike')).matchAll(/class="dot" cx=([\d.]+)/g)].map(([, x]) => x)
  expect(new Set(places).size).toBe(60)
  const row = markup(
    predictionRow(
      { guesses: 9, most: 60, yours: false, model: false, name: '' },
      framing(null, { width: 280 }),
    ),
  )
  expect(dots(row)).toBe(9)
})

test('a pointer’s place is read back as the value that is drawn there', () => {
  const { y, valueAt } = predictionLayout(specOf('said'), framing(words))
  for (const value of [0, 0.4e-3, 2e-3]) expect(Math.abs(valueAt(y(value)) - value)).toBeLessThan(1e-12)
  expect(valueAt(-1000)).toBe(0)
})

test('any prediction is drawn', () => {
  const any = fc.record({
    high: fc.double({ min: 1e-6, max: 0.05, noNaN: true }),
    yours: fc.double({ min: 0, max: 1, noNaN: true }),
    model: fc.double({ min: 0, max: 1, noNaN: true }),
    diameter: fc.double({ min: 0.04, max: 0.2, noNaN: true }),
    settled: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  fc.assert(
    fc.property(any, ({ high, yours, model, diameter, settled }) => {
      const spec: PredictionSpec = {
        ...specOf('revealed'),
        domain: [0, high],
        now: 0,
        yours: yours * high,
        model: model * high,
        settled,
        roller: { diameter, at: 'front' },
      }
      for (const width of widths) expect(drawn(spec, width)).not.toMatch(noNumber)
    }),
    bounded(80),
  )
})
