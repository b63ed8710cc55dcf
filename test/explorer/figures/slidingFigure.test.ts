import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type SlidingSpec,
  slidingAt,
  slidingLayout,
  slidingProfile,
} from '../../../packages/explorer/src/figures/slidingProfile.ts'
import { headlandFigure } from '../../../packages/explorer/src/words/english/headland.ts'
import { bounded } from '../../support/arbitraries.ts'
import { expectNear, identity } from '../../support/tolerance.ts'
import { framing } from './framing.ts'
import { slidingSpec, slidingSpecs } from './gallery/slidingFigures.ts'
import { markup, ownText } from './markup.ts'

const words = headlandFigure({ unit: 'mm/m', placeUnit: 'mm' })
const drawn = (spec: SlidingSpec, width = 792) => markup(slidingProfile(spec, framing(words, { width })))
const widths = [792, 560, 358, 280]

describe.each(Object.entries(slidingSpecs))('the profile %s', (_, spec) => {
  test('is drawn at every width without a number that is none', () => {
    for (const width of widths) expect(drawn(spec, width)).not.toMatch(/NaN|Infinity|undefined|false/)
  })

  test('has no words of its own and no style attribute', () => {
    expect(ownText(slidingProfile(spec, framing(words)))).toBe('')
    expect(drawn(spec)).not.toMatch(/\sstyle=/)
  })

  test('has room for the most that slides, with more sliding higher up', () => {
    const layout = slidingLayout(spec, framing(words))
    const half = spec.length / 2
    const ends = [-half, half].map(place =>
      slidingAt({
        place,
        still: spec.whole ?? spec.still.at(-1) ?? 0,
        offset: spec.offset,
        radius: spec.radius,
      }),
    )
    expect(layout.most).toBeGreaterThan(Math.max(...ends, spec.mean, spec.rootMeanSquare))
    expect(layout.y(layout.most)).toBeLessThan(layout.y(0))
  })

  test('draws a roller of as many sections', () => {
    expect([...drawn(spec).matchAll(/class="solid outline"/g)].length).toBe(spec.sections)
  })
})

test('the mean is that of the profile that is drawn', () => {
  const spec = slidingSpec({ radius: 3, sections: 3, axleSpacing: 0.19 })
  const width = spec.length / spec.sections
  const [still = 0] = spec.still
  const steps = 4000
  const sum = Array.from({ length: steps }, (_, i) => {
    const place = -spec.length / 2 + (width * (i + 0.5)) / steps
    return slidingAt({ place, still, offset: spec.offset, radius: spec.radius })
  }).reduce((a, b) => a + b, 0)
  expectNear(sum / steps, spec.mean, { ...identity, relative: 1e-6 })
})

test('two axles slide everywhere: no line is said not to', () => {
  const text = drawn(slidingSpec({ radius: 3, axleSpacing: 0.19 }))
  expect(text).toContain(words.least)
  expect(text).not.toContain(words.still)
})

test('any turn is drawn', () => {
  const any = fc.record({
    radius: fc.double({ min: 0.05, max: 50, noNaN: true }),
    sections: fc.integer({ min: 1, max: 12 }),
    axleSpacing: fc.double({ min: 0, max: 0.5, noNaN: true }),
    drag: fc.double({ min: -50, max: 50, noNaN: true }),
  })
  fc.assert(
    fc.property(any, ({ drag, ...turn }) => {
      const spec = slidingSpec({ ...turn, friction: 0.4, drag })
      for (const width of widths) expect(drawn(spec, width)).not.toMatch(/NaN|Infinity|undefined|false/)
    }),
    bounded(60),
  )
})
