import { headland, type Roller } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { across, bounded } from '../../support/arbitraries.ts'
import { doubleExponential } from '../../support/referenceQuadrature.ts'
import { expectNear, expectPrinted, identity, stated } from '../../support/tolerance.ts'

const inSections = (sections: number): Roller => ({
  mass: 4.2,
  diameter: 0.058,
  length: 0.55,
  surface: { kind: 'smooth' },
  sections,
})
const question = { load: 160, radius: 2 }
const lengths = across(0.2, 1)
const sectionCounts = fc.integer({ min: 1, max: 6 })
const offsets = across(1e-4, 0.3)

describe('published values', () => {
  // Source: derived for this project; width 0.55 m on a radius of 2 m, mm per metre
  test.each([
    [1, '137.5', '68.75', '79.386'],
    [3, '45.833', '22.917', '26.462'],
  ])('sliding in %d sections', (sections, greatest, mean, rms) => {
    const found = headland({ roller: inSections(sections), ...question })
    expectPrinted(1000 * found.greatest, greatest)
    expectPrinted(1000 * found.mean, mean)
    expectPrinted(1000 * found.rootMeanSquare, rms)
  })

  test('the outer end goes 1.31884 times as far as the inner', () => {
    const { outerOverInner } = headland({ roller: inSections(1), ...question })
    if (outerOverInner === null) return expect.fail()
    expectPrinted(outerOverInner, '1.31884')
  })

  test('two axles 0.1 m either side of the centre', () => {
    const slip = (sections: number) =>
      2 * headland({ roller: inSections(sections), ...question, axleSpacing: 0.2 }).mean
    expectPrinted(slip(1), '0.1778774')
    // printed cut off, not rounded: 0.11262136, as the quadrature below confirms
    expectNear(slip(3), 0.1126213, stated(1e-6))
  })
})

describe('a second method', () => {
  /** Mean over the face, split where the sliding is least. */
  function meanOver(half: number, still: number, f: (from: number) => number): number {
    const inside = Math.min(Math.max(still, -half), half)
    const part = (from: number, to: number) =>
      from < to ? doubleExponential(y => f(y - still), from, to, 1 / 64) : 0
    return (part(-half, inside) + part(inside, half)) / (2 * half)
  }
  const slid = (half: number, still: number, e: number, power: number) =>
    meanOver(half, still, from => Math.hypot(from, e) ** power)

  test('mean and root mean square by quadrature, with two axles', () => {
    fc.assert(
      fc.property(lengths, sectionCounts, offsets, (length, sections, e) => {
        const roller = { ...inSections(sections), length }
        const found = headland({ roller, ...question, axleSpacing: 2 * e })
        const half = length / sections / 2
        expectNear(found.mean * question.radius, slid(half, 0, e, 1), identity)
        expectNear(found.rootMeanSquare * question.radius, Math.sqrt(slid(half, 0, e, 2)), identity)
      }),
      bounded(100),
    )
  })

  test('friction along the path balances the drag at the shifted line', () => {
    const parts = fc.double({ min: -0.98, max: 0.98, noNaN: true }).filter(part => Math.abs(part) > 0.01)
    fc.assert(
      fc.property(lengths, sectionCounts, offsets, parts, (length, sections, e, part) => {
        const roller = { ...inSections(sections), length }
        const friction = 0.6
        const drag = part * friction * question.load
        const { shift, mean } = headland({ roller, ...question, axleSpacing: 2 * e, friction, drag })
        const half = length / sections / 2
        // the centre lies at negative y; a piece of the face slides along by y + shift, across by e
        const along = meanOver(half, -shift, from => from / Math.hypot(from, e))
        expectNear(along * friction * question.load, drag, stated(1e-9))
        expectNear(mean * question.radius, slid(half, -shift, e, 1), stated(1e-9))
      }),
      bounded(100),
    )
  })
})

describe('limits', () => {
  test('N sections slide an Nth as far, at every measure', () => {
    const one = headland({ roller: inSections(1), ...question })
    const five = headland({ roller: inSections(5), ...question })
    for (const measure of ['greatest', 'mean', 'rootMeanSquare'] as const)
      expectNear(five[measure], one[measure] / 5, identity)
  })

  test('an axle offset that vanishes leaves the single axle', () => {
    const near = headland({ roller: inSections(3), ...question, axleSpacing: 1e-12 })
    const single = headland({ roller: inSections(3), ...question }).mean
    expectNear(near.mean, single, identity)
    // so small that its square is no number above zero
    expectNear(headland({ roller: inSections(3), ...question, axleSpacing: 1e-320 }).mean, single, identity)
  })

  test('drag moves the still line by F b/2μW, towards the centre', () => {
    const roller = inSections(1)
    const { shift, still } = headland({ roller, ...question, friction: 0.5, drag: 20 })
    expectNear(shift, (20 * 0.55) / (2 * 0.5 * 160), identity)
    expect(still).toEqual([-shift])
  })

  test('each section has a still line of its own, in its middle', () => {
    const { still } = headland({ roller: inSections(3), ...question })
    expect(still.length).toBe(3)
    expectNear(still[0]!, -0.55 / 3, identity)
    expectNear(still[2]!, 0.55 / 3, identity)
  })

  test('friction works as friction × load × mean sliding; unknown without a friction', () => {
    const known = headland({ roller: inSections(1), ...question, friction: 0.4 })
    expectNear(known.frictionWork ?? Number.NaN, (0.4 * 160 * 0.55) / (4 * 2), identity)
    expect(headland({ roller: inSections(1), ...question }).frictionWork).toBeNull()
  })

  test('a turn about a point under the roller has no ratio of paths', () => {
    expect(headland({ roller: inSections(1), ...question, radius: 0.2 }).outerOverInner).toBeNull()
  })
})

describe('refuses', () => {
  const roller = inSections(1)
  test.each([
    ['load', { roller, ...question, load: 0 }],
    ['radius', { roller, ...question, radius: 0 }],
    ['roller.sections', { roller: inSections(1.5), ...question }],
    ['friction', { roller, ...question, drag: 10 }],
    ['drag', { roller, ...question, friction: 0.5, drag: 80 }],
    ['axleSpacing', { roller, ...question, axleSpacing: -0.1 }],
  ])('%s', (path, bad) => {
    expect(() => headland(bad)).toThrow(path)
  })
})

describe('cautions', () => {
  test('a centre of turning under the roller is told, with how far the roller reaches', () => {
    const { cautions } = headland({ roller: inSections(1), ...question, radius: 0.2 })
    expect(cautions).toEqual([{ kind: 'turns about itself', value: 0.2, limit: 0.275 }])
    expect(headland({ roller: inSections(1), ...question }).cautions).toEqual([])
  })

  test('a drag that nearly uses up the grip is told, pushed or held back', () => {
    for (const drag of [76, -76]) {
      const [first] = headland({ roller: inSections(1), ...question, friction: 0.5, drag }).cautions
      expect(first?.kind).toBe('near slipping')
      expectNear(first?.value ?? Number.NaN, 0.95, identity)
    }
  })
})
