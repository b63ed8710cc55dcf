import { type Condition, press, type Roller, softnessOf, type Turf, withSoftness } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded, conditions, rollers, turfs } from '../../support/arbitraries.ts'

type Case = { roller: Roller; turf: Turf; condition: Condition; load: number; times: number }
const cases: fc.Arbitrary<Case> = fc.record({
  roller: rollers,
  turf: turfs,
  condition: conditions,
  load: fc.double({ min: 5, max: 400, noNaN: true }),
  times: fc.double({ min: 1.0001, max: 3, noNaN: true }),
})

const sinks = (one: Omit<Case, 'times'>) => {
  const pressed = press(one)
  return pressed.outcome === 'settled' ? pressed.sinkage : undefined
}

/** How often both sides of a comparison had an answer. */
function deeper(runs: number, change: (one: Case) => Omit<Case, 'times'> | undefined, way = 1) {
  let count = 0
  fc.assert(
    fc.property(cases, one => {
      const changed = change(one)
      const before = sinks(one)
      const after = changed && sinks(changed)
      if (before === undefined || after === undefined) return
      count++
      expect(way * (after - before)).toBeGreaterThan(0)
    }),
    bounded(runs),
  )
  expect(count).toBeGreaterThan(runs / 3)
}

describe('a roller sinks deeper', () => {
  test('the more it is loaded', () => deeper(300, one => ({ ...one, load: one.load * one.times })))

  test('the softer the turf', () =>
    deeper(300, one => {
      const softness = softnessOf(one.turf.law) * one.times
      const { law } = one.turf
      if ('lockingDepth' in law && softness >= law.lockingDepth) return undefined
      return { ...one, turf: withSoftness(one.turf, softness) }
    }))
})

describe('a roller sinks less', () => {
  test('the longer it is', () =>
    deeper(200, one => ({ ...one, roller: { ...one.roller, length: one.roller.length * one.times } }), -1))

  test('the more of its face is land', () =>
    deeper(
      300,
      one => {
        const { surface } = one.roller
        if (surface.kind !== 'grooved') return undefined
        const land = surface.pitch - (surface.pitch - surface.land) / one.times
        return { ...one, roller: { ...one.roller, surface: { ...surface, land } } }
      },
      -1,
    ))

  test('the stouter it is', () =>
    deeper(
      200,
      one => {
        return { ...one, roller: { ...one.roller, diameter: one.roller.diameter * one.times } }
      },
      -1,
    ))
})
