import { matchUnits } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectNear, identity } from '../../support/tolerance.ts'

const heights = { left: 0.00412, middle: 0.0043, right: 0.00451 }

test('every pair is compared once, the second against the first', () => {
  const { pairs } = matchUnits({ heights })
  expect(pairs.map(({ units }) => units)).toEqual([
    ['left', 'middle'],
    ['left', 'right'],
    ['middle', 'right'],
  ])
  expectNear(pairs[1]!.difference, 0.00039, identity)
})

// Source: two units of one machine are seen to differ at about 0.25 mm (from memory; common practice, no source)
test('units are matched when none differs by more than is seen', () => {
  const found = matchUnits({ heights })
  expect(found.pairs.map(({ matched }) => matched)).toEqual([true, false, true])
  expect(found.matched).toBe(false)
  expectNear(found.spread, 0.00039, identity)
  expect(matchUnits({ heights, tolerance: 0.0004 }).matched).toBe(true)
})

test('the order of the units changes signs, never the verdict', () => {
  const { left, middle, right } = heights
  const turned = matchUnits({ heights: { right, middle, left } })
  expectNear(turned.pairs[1]!.difference, -0.00039, identity)
  expect(turned.spread).toBe(matchUnits({ heights }).spread)
})

describe('refuses', () => {
  test.each([
    ['heights', { heights: { alone: 0.004 } }],
    ['heights.two', { heights: { one: 0.004, two: Number.NaN } }],
    ['tolerance', { heights, tolerance: -1 }],
  ])('%s', (path, question) => {
    expect(() => matchUnits(question)).toThrow(path)
  })
})
