import { press, type Roller, spreadAt, type Turf } from '@swardsink/model'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { across, bounded, grooved, laws, standing } from '../../support/arbitraries.ts'
import { expectNear, stated } from '../../support/tolerance.ts'

test('turf that spreads load without end carries every roller as a smooth one', () => {
  let seen = 0
  fc.assert(
    fc.property(laws, grooved, across(50, 400), (law, surface, load) => {
      const roller: Roller = { mass: 5, diameter: 0.06, length: 0.5, surface }
      const turf: Turf = { law, spread: 50 }
      const pressed = press({ roller, turf, load, condition: standing })
      if (pressed.outcome !== 'settled' || surface.kind !== 'grooved') return
      // what counts is the spread at this sinkage: it shrinks with it where the exponent is below one
      if (spreadAt(turf, pressed.sinkage) < 100 * surface.pitch) return
      seen++
      expectNear(pressed.bearingFraction, 1, stated(1e-3))
    }),
    bounded(60),
  )
  expect(seen).toBeGreaterThan(30)
})
