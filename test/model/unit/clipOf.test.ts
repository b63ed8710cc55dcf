import { clipOf } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectNear, expectPrinted, identity, stated } from '../../support/tolerance.ts'

const turnsPerSecond = 2200 / 60

describe('published values', () => {
  // Source: travel per blade = v/(N rpm/60); 15 blades at 2200 rpm (docs/physics.md §4)
  test.each([
    [6 / 3.6, '3.030'],
    [(3.8 * 1609.344) / 3600, '3.089'],
  ])('15 blades at 2200 rpm and %d m/s', (speed, clip) => {
    expectPrinted(1000 * clipOf({ blades: 15, turnsPerSecond, speed }), clip)
  })

  test('the published 0.122 in for 6 km/h is rounded: 2.3 % more', () => {
    const clip = clipOf({ blades: 15, turnsPerSecond, speed: 6 / 3.6 })
    expectNear(0.122 * 0.0254, clip, stated(0.024))
  })
})

test('the clip is what the unit travels in a turn, shared by the blades', () => {
  const turn = 1.3 / 20
  expectNear(clipOf({ blades: 9, turnsPerSecond: 20, speed: 1.3 }), turn / 9, identity)
})

test.each([
  ['blades', { blades: 7.5, turnsPerSecond, speed: 1 }],
  ['blades', { blades: 0, turnsPerSecond, speed: 1 }],
  ['turnsPerSecond', { blades: 9, turnsPerSecond: 0, speed: 1 }],
  ['speed', { blades: 9, turnsPerSecond, speed: -1 }],
])('refuses %s', (path, question) => {
  expect(() => clipOf(question)).toThrow(path)
})
