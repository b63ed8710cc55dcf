import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { heightSpread } from '../../../packages/explorer/src/figures/heightSpread.ts'
import { shareBars } from '../../../packages/explorer/src/figures/shareBars.ts'
import { type SpreadSpec, spreadLayout } from '../../../packages/explorer/src/figures/spreadLayout.ts'
import { uncertaintyFigure } from '../../../packages/explorer/src/words/english/uncertainty.ts'
import { bounded } from '../../support/arbitraries.ts'
import { framing } from './framing.ts'
import { shareSpecs, spreadSpecs } from './gallery/spreadFigures.ts'
import { markup, ownText } from './markup.ts'

const words = uncertaintyFigure({ unit: 'mm' })
const widths = [792, 560, 358, 280]
const noNumber = /NaN|Infinity|undefined|false/
const drawn = (spec: SpreadSpec, width = 792) => markup(heightSpread(spec, framing(words, { width })))

describe.each(Object.entries(spreadSpecs))('the heights: %s', (_, spec) => {
  test('are drawn at every width without a number that is none', () => {
    for (const width of widths) expect(drawn(spec, width)).not.toMatch(noNumber)
  })

  test('have no words of their own and no style attribute', () => {
    expect(ownText(heightSpread(spec, framing(words)))).toBe('')
    expect(drawn(spec)).not.toMatch(/\sstyle=/)
  })

  test('lie on the scale, higher ones higher up, 95 of 100 inside what is drawn', () => {
    for (const width of widths) {
      const { domain, y, top, foot, names } = spreadLayout(spec, framing(words, { width }))
      const [low, , high] = spec.quantiles
      expect(y(high)).toBeLessThanOrEqual(y(low))
      for (const height of [low, high, spec.nominal ?? low]) {
        expect(y(height)).toBeGreaterThanOrEqual(top)
        expect(y(height)).toBeLessThanOrEqual(foot)
      }
      expect(domain[1]).toBeGreaterThan(domain[0])
      expect(names).toBeLessThan(width)
    }
  })
})

test('the outline holds every draw that is drawn, each bin as far out as it is often', () => {
  const spec = spreadSpecs.usual as SpreadSpec
  const { steps } = spreadLayout(spec, framing(words))
  const counts = spec.histogram?.counts ?? []
  const most = Math.max(...counts)
  const drawnCounts = steps.map(({ often }) => Math.round(often * most))
  expect(Math.max(...drawnCounts)).toBe(most)
  // the far tails alone are left out
  const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0)
  expect(sum(drawnCounts) / sum(counts)).toBeGreaterThan(0.99)
})

test('before there are draws the outline is dashed, and as wide as its deviation', () => {
  const spec = spreadSpecs['by straight lines'] as SpreadSpec
  expect(drawn(spec)).toContain('outline carried-on')
  expect(drawn(spreadSpecs.usual as SpreadSpec)).not.toContain('carried-on')
  const { steps } = spreadLayout(spec, framing(words))
  const half = steps.filter(({ often }) => often > 0.5)
  const width = (half.at(-1)?.to ?? 0) - (half[0]?.from ?? 0)
  // width at half height of a normal distribution: 2 √(2 ln 2) standard deviations
  const meshed = 0.15
  expect(Math.abs(width / (2 * Math.sqrt(2 * Math.log(2)) * spec.deviation) - 1)).toBeLessThan(meshed)
})

test('bars are as long as their shares, and never longer than all', () => {
  for (const [, spec] of Object.entries(shareSpecs))
    for (const width of widths) {
      const text = markup(shareBars(spec, framing(words, { width })))
      expect(text).not.toMatch(noNumber)
      const bars = [...text.matchAll(/<rect class="bears" x=([\d.]+) y=[\d.]+ width=([\d.]+)/g)]
      const long = bars.map(([, , length]) => Number(length))
      for (const [, x, length] of bars) expect(Number(x) + Number(length)).toBeLessThan(width)
      const [first = 0, second = 0] = long
      const [a, b] = spec.shares
      if (a && b) expect(Math.abs(second / first - b.share / a.share)).toBeLessThan(2e-3)
    }
})

test('any heights are drawn', () => {
  const any = fc.record({
    middle: fc.double({ min: -5e-3, max: 50e-3, noNaN: true }),
    below: fc.double({ min: 0, max: 10e-3, noNaN: true }),
    above: fc.double({ min: 0, max: 10e-3, noNaN: true }),
    nominal: fc.option(fc.double({ min: -5e-3, max: 50e-3, noNaN: true })),
    wanted: fc.option(
      fc.record({
        height: fc.double({ min: 1e-3, max: 0.05, noNaN: true }),
        tolerance: fc.double({ min: 1e-5, max: 2e-3, noNaN: true }),
      }),
    ),
    counts: fc.option(fc.array(fc.integer({ min: 0, max: 5000 }), { minLength: 1, maxLength: 60 })),
  })
  fc.assert(
    fc.property(any, ({ middle, below, above, nominal, wanted, counts }) => {
      const quantiles = [middle - below, middle, middle + above] as const
      const width = counts ? (below + above) / counts.length : 0
      const spec: SpreadSpec = {
        nominal,
        quantiles,
        deviation: (below + above) / 4,
        histogram: counts && { from: middle - below, width, counts },
        wanted,
      }
      for (const size of widths) expect(drawn(spec, size)).not.toMatch(noNumber)
    }),
    bounded(80),
  )
})
