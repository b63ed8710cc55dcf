import {
  type Arc,
  loadAt,
  type PressureLaw,
  press,
  type Roller,
  softnessOf,
  type Turf,
} from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { across, bounded, laws } from '../../support/arbitraries.ts'
import { referenceArcs, referenceLaw } from '../../support/referenceLaws.ts'
import { doubleExponential } from '../../support/referenceQuadrature.ts'
import { expectNear, ofSize, stated } from '../../support/tolerance.ts'

const mm = 1e-3

type Case = { law: PressureLaw; spread: number; rebound: number; radius: number; sinkage: number }
const casesWith = (spread: fc.Arbitrary<number>): fc.Arbitrary<Case> =>
  fc
    .record({
      law: laws,
      spread,
      rebound: fc.double({ min: 0.05, max: 0.98, noNaN: true }),
      radius: fc.double({ min: 0.02, max: 0.08, noNaN: true }),
      part: fc.double({ min: 0.03, max: 0.95, noNaN: true }),
    })
    .map(({ part, law, ...rest }) => ({
      law,
      ...rest,
      sinkage: part * Math.min(referenceLaw(law).limit, 4 * softnessOf(law), 0.5 * rest.radius),
    }))

function rolled({ law, spread, rebound, radius, sinkage }: Case, arc: Arc) {
  const roller: Roller = { mass: 4.2, diameter: 2 * radius, length: 0.5, surface: { kind: 'smooth' } }
  const turf: Turf = { law, spread, rebound }
  const question = { roller, turf, condition: { kind: 'mowing', speed: 1.2 }, arc } as const
  const loaded = loadAt({ ...question, sinkage })
  if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
  const pressed = press({ ...question, load: loaded.load })
  if (pressed.outcome !== 'settled') return expect.fail(pressed.outcome)
  return { ...pressed, load: loaded.load }
}

/**
 * Vertical and horizontal force of one side by integrating what the turf does to the metal: p + G h″ square to the
 * arc's small slope, over the contact the model names.
 */
function sideForces({ law, spread, radius, sinkage }: Case, arc: Arc, rebound: number, length: number) {
  const { pressure } = referenceLaw(law)
  const { height, slope, curvature } = referenceArcs[arc](radius)
  const G = (spread ** 2 * 10e3) / softnessOf(law)
  const at = (x: number) => pressure(Math.max(0, sinkage - height(x) / rebound)) + G * curvature(x)
  return {
    down: doubleExponential(at, 0, length),
    along: doubleExponential(x => at(x) * slope(x), 0, length),
  }
}

describe('rolling resistance is the work that does not come back', () => {
  const spreads = { 'without spread': fc.constant(0), 'with spread': across(0.2 * mm, 6 * mm) }
  for (const [name, spread] of Object.entries(spreads))
    for (const arc of ['parabola', 'circle'] as const)
      test(`${name}, on a ${arc}: horizontal forces ahead and behind leave (1 − λ) Φ`, () => {
        fc.assert(
          fc.property(casesWith(spread), one => {
            const { resistance, load, lineLoad, lengthAhead, lengthBehind } = rolled(one, arc)
            const ahead = sideForces(one, arc, 1, lengthAhead)
            const behind = sideForces(one, arc, one.rebound, lengthBehind)
            const work = referenceLaw(one.law).work(one.sinkage)
            const what = JSON.stringify(one)
            expectNear(ahead.down + behind.down, lineLoad, stated(3e-8), what)
            expectNear(ahead.along, work, stated(3e-8), what)
            expectNear(behind.along, one.rebound * work, stated(3e-8), what)
            // free ends count in the whole roller's resistance as in its load
            expectNear(
              (resistance * lineLoad) / load,
              ahead.along - behind.along,
              ofSize(work, stated(6e-8)),
              what,
            )
          }),
          bounded(150),
        )
      })

  test('a standing roller resists nothing, and neither does one whose turf gives all of it back', () => {
    const roller: Roller = { mass: 4.2, diameter: 60 * mm, length: 0.5, surface: { kind: 'smooth' } }
    const turf: Turf = { law: { kind: 'linear', softness: 1 * mm }, spread: 2 * mm }
    const asked = { roller, load: 120 }
    const standing = press({ ...asked, turf: { ...turf, rebound: 0.3 }, condition: { kind: 'standing' } })
    const elastic = press({ ...asked, turf, condition: { kind: 'mowing', speed: 1.2 } })
    expect([standing, elastic]).toMatchObject([{ resistance: 0 }, { resistance: 0 }])
  })
})
