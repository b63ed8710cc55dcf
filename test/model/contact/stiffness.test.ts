import { type Arc, type Condition, type Roller, softnessOf, type Turf } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rollerOnTurf } from '../../../packages/model/src/contact/index.ts'
import { bounded, conditions, grooved, rollerWith, smooth, turfs } from '../../support/arbitraries.ts'
import { referenceLaw } from '../../support/referenceLaws.ts'
import { derivative } from '../../support/referenceQuadrature.ts'
import { expectNear, identity, missOf, stated } from '../../support/tolerance.ts'

type Case = { roller: Roller; turf: Turf; condition: Condition; arc: Arc; part: number }
const casesOf = (roller: fc.Arbitrary<Roller>): fc.Arbitrary<Case> =>
  fc.record({
    roller,
    turf: turfs,
    condition: conditions,
    arc: fc.constantFrom('parabola' as const, 'circle' as const),
    part: fc.double({ min: 0.02, max: 0.9, noNaN: true }),
  })

/**
 * How near the slope is: p′ without end at zero (exponents below one) and a floor first met off the panels of the
 * quadrature (on a circle the depth of a groove varies) cost digits of the slope.
 */
function accuracyOf({ turf, roller, arc }: Case, touched: boolean) {
  const steep = turf.law.kind === 'power' && turf.law.exponent < 0.5
  if (steep) return stated(roller.surface.kind === 'grooved' && touched ? 1e-2 : 1e-3)
  return stated(touched && arc === 'circle' ? 2e-4 : 2e-6)
}

const besideKink = 'beside a kink'

/** Miss of dW/dz against differences of W; undefined beside a kink, where there is no derivative. */
function missAt(one: Case): string | undefined {
  const { part, ...question } = one
  const on = rollerOnTurf(question)
  const sinkage =
    part *
    Math.min(
      referenceLaw(question.turf.law).limit,
      4 * softnessOf(question.turf.law),
      0.25 * question.roller.diameter,
    )
  const nearest = Math.abs(Math.log(sinkage / on.touchFrom))
  if (nearest < 0.05) return besideKink
  const { stiffness } = on.at(sinkage)
  const slope = derivative(z => on.at(z).load, sinkage, 1e-3 * sinkage)
  return missOf(stiffness, slope, accuracyOf(one, sinkage > on.touchFrom))
}

describe('stiffness is the slope of load against sinkage', () => {
  test.each([
    ['smooth', rollerWith(smooth), 400],
    ['grooved', rollerWith(grooved), 250],
  ] as const)('%s rollers, any law, spread, arc and condition', (_, rollers, runs) => {
    let compared = 0
    const misses: string[] = []
    fc.assert(
      fc.property(casesOf(rollers), one => {
        const miss = missAt(one)
        if (miss === besideKink) return
        compared++
        if (miss !== undefined) misses.push(`${miss} ${JSON.stringify(one)}`)
      }),
      bounded(runs),
    )
    expect(misses).toEqual([])
    expect(compared).toBeGreaterThan(0.7 * runs)
  })
})

test('a rebound too small to be told from none is none', () => {
  const question = {
    roller: { mass: 4.2, diameter: 0.147, length: 0.4, surface: { kind: 'smooth' } },
    condition: { kind: 'mowing', speed: 1.2 },
    arc: 'circle',
  } as const
  const turf = { law: { kind: 'linear', softness: 1.9e-4 }, spread: 3.5e-3 } as const
  const at = (rebound: number) => rollerOnTurf({ ...question, turf: { ...turf, rebound } }).at(2e-3)
  const none = at(0)
  const least = at(4.4e-323)
  expectNear(least.stiffness, none.stiffness, identity)
  expectNear(least.load, none.load, identity)
})
