import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inside, overlaps } from '../../../packages/explorer/src/figures/box.ts'
import { alongLine, leaderStart } from '../../../packages/explorer/src/figures/leader.ts'
import { sideLabels } from '../../../packages/explorer/src/figures/sideLabels.ts'
import { sideLayout } from '../../../packages/explorer/src/figures/sideLayout.ts'
import { sideScales } from '../../../packages/explorer/src/figures/sideScales.ts'
import { sideDimensions } from '../../../packages/explorer/src/figures/sideView.ts'
import { anyUnit, type DrawnUnit, usualUnit } from './drawnUnit.ts'
import { framing } from './framing.ts'
import { sideWords } from './gallery/words.ts'

const shapes = fc.constantFrom(
  { width: 792, text: 13 },
  { width: 560, text: 13 },
  { width: 358, text: 13 },
  { width: 320, text: 13 },
  { width: 1100, text: 20 },
  { width: 358, text: 14 },
)
const factors = fc.constantFrom(1, 5, 10) as fc.Arbitrary<1 | 5 | 10>
const systems = fc.constantFrom('metric', 'US') as fc.Arbitrary<'metric' | 'US'>

function drawn(q: {
  drawn: DrawnUnit
  shape: { width: number; text: number }
  exaggeration: 1 | 5 | 10
  units: 'metric' | 'US'
}) {
  const frame = framing(sideWords, { ...q.shape, units: q.units })
  const spec = { ...q.drawn, exaggeration: q.exaggeration }
  const layout = sideLayout(spec, frame)
  return { layout, spec, frame, labels: sideLabels({ layout, ...q.drawn, fixed: [] }, frame) }
}

describe('for any unit, width and text size', () => {
  test('no two labels of the side view touch', () => {
    fc.assert(
      fc.property(anyUnit, shapes, factors, systems, (unit, shape, exaggeration, units) => {
        const { labels } = drawn({ drawn: unit, shape, exaggeration, units })
        labels.forEach((a, i) => {
          for (const b of labels.slice(i + 1)) {
            expect(overlaps(a.box, b.box), `${a.name}, ${b.name}`).toBe(false)
          }
        })
      }),
      { numRuns: 400 },
    )
  })

  test('no label leaves the figure', () => {
    fc.assert(
      fc.property(anyUnit, shapes, factors, systems, (unit, shape, exaggeration, units) => {
        const { labels, layout } = drawn({ drawn: unit, shape, exaggeration, units })
        for (const { box, name } of labels) expect(inside(box, layout.bounds), name).toBe(true)
      }),
      { numRuns: 400 },
    )
  })

  test('the unit stays inside the figure, and the figure is no taller than it is wide', () => {
    fc.assert(
      fc.property(anyUnit, shapes, factors, systems, (unit, shape, exaggeration, units) => {
        const { layout } = drawn({ drawn: unit, shape, exaggeration, units })
        const { geometry: g, X, Y, scale } = layout
        for (const circle of [g.front, g.rear, ...(g.cylinder ? [g.cylinder] : [])]) {
          expect(X(circle.x - circle.radius)).toBeGreaterThanOrEqual(0)
          expect(X(circle.x + circle.radius)).toBeLessThanOrEqual(layout.width)
          expect(Y(circle.y + circle.radius)).toBeGreaterThanOrEqual(0)
          expect(Y(circle.y - circle.radius)).toBeLessThanOrEqual(layout.foot)
        }
        expect(scale).toBeGreaterThan(0.1)
        expect(layout.height).toBeLessThanOrEqual(layout.width * 1.2)
      }),
      { numRuns: 400 },
    )
  })

  test('the two scales and the level dimensions keep clear of each other and of the edges', () => {
    fc.assert(
      fc.property(anyUnit, shapes, factors, systems, (unit, shape, exaggeration, units) => {
        const { layout, spec, frame } = drawn({ drawn: unit, shape, exaggeration, units })
        const dimensions = sideDimensions(spec, layout, frame)
        const scales = sideScales(layout, frame, dimensions)
        expect(scales.x).toBeGreaterThanOrEqual(0)
        expect(scales.x + scales.along).toBeLessThanOrEqual(layout.width)
        for (const { label, to, y } of dimensions) {
          expect(label.x).toBeGreaterThanOrEqual(0)
          expect(label.x + label.width).toBeLessThanOrEqual(layout.width)
          const beside = scales.x > Math.max(to, label.x + label.width)
          expect(beside || scales.y - scales.up > y).toBe(true)
        }
      }),
      { numRuns: 400 },
    )
  })
})

test('the usual unit leaves room for the map below it on a laptop', () => {
  const { layout } = drawn({
    drawn: usualUnit,
    shape: { width: 792, text: 13 },
    exaggeration: 5,
    units: 'metric',
  })
  expect(layout.height).toBeLessThan(450)
  expect(layout.exaggeration).toBe(5)
})

test('drawn to scale, the wheelbase is as many pixels as the scale says', () => {
  const { layout } = drawn({
    drawn: usualUnit,
    shape: { width: 560, text: 13 },
    exaggeration: 5,
    units: 'metric',
  })
  expect(Math.abs(layout.X(190) - layout.X(0) - 190 * layout.scale)).toBeLessThan(1e-9)
  expect(Math.abs(layout.benchLine - layout.edgeLine - 5 * 3.4 * layout.scale)).toBeLessThan(1e-9)
})

describe('a label that is', () => {
  const values = ['bench', 'effective', 'drop', 'front load', 'rear load', 'weight ']

  test('a value is never left out', () => {
    fc.assert(
      fc.property(anyUnit, shapes, factors, systems, (unit, shape, exaggeration, units) => {
        const names = drawn({ drawn: unit, shape, exaggeration, units }).labels.map(label => label.name)
        expect(names).toEqual(expect.arrayContaining(values))
      }),
      { numRuns: 200 },
    )
  })

  test.each([792, 560, 358])('a name stands on the usual unit at %i px', width => {
    const { labels } = drawn({
      drawn: usualUnit,
      shape: { width, text: 13 },
      exaggeration: 5,
      units: 'metric',
    })
    const names = ['front roller', 'rear roller', 'cylinder', 'blade', 'turf']
    expect(labels.map(label => label.name)).toEqual(expect.arrayContaining(names))
  })

  test('a name has no other label under its leader', () => {
    fc.assert(
      fc.property(anyUnit, shapes, factors, systems, (unit, shape, exaggeration, units) => {
        const { labels } = drawn({ drawn: unit, shape, exaggeration, units })
        labels.forEach(({ box, target, name }, i) => {
          if (!target) return
          const pieces = alongLine(leaderStart(box, target), target)
          for (const other of labels.slice(0, i)) {
            expect(
              pieces.some(piece => overlaps(piece, other.box)),
              `${name} over ${other.name}`,
            ).toBe(false)
          }
        })
      }),
      { numRuns: 200 },
    )
  })
})

test('a load of no weight has no arrow, and one that lifts points up', () => {
  const { unit } = usualUnit
  const loads = [
    { name: 'box', mass: 6.4, at: -0.07 },
    { name: 'empty', at: 0.1 },
    { name: 'arm', down: -40, at: 0.2 },
  ]
  const withLoads = { ...usualUnit, unit: { ...unit, loads } }
  const { layout } = drawn({
    drawn: withLoads,
    shape: { width: 792, text: 13 },
    exaggeration: 5,
    units: 'metric',
  })
  expect(layout.loads.above.map(({ name, lifts }) => [name, lifts])).toEqual([
    ['', false],
    ['box', false],
    ['arm', true],
  ])
  expect(layout.loads.above.at(-1)?.newtons).toBe(40)
})
