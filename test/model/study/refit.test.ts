import { compareRollers, type Roller, refit, settle, type Unit } from '@swardsink/model'
import { expect, test } from 'vitest'
import { expectNear, identity } from '../../support/tolerance.ts'

const smooth = (mass: number, diameter: number): Roller => ({
  mass,
  diameter,
  length: 0.55,
  surface: { kind: 'smooth' },
})
const unit: Unit = {
  wheelbase: 0.19,
  edge: 0.105,
  benchHeight: 4.1e-3,
  frontRoller: smooth(6.2, 0.057),
  rearRoller: smooth(4.2, 0.051),
  body: { mass: 18.4, at: 0.098, height: 0.09 },
}
const turf = { law: { kind: 'linear' as const, softness: 0.4e-3 }, spread: 1.5e-3 }
const condition = { kind: 'standing' as const }

test.each(['front', 'rear'] as const)(
  'a roller refitted at the %s cuts where the rack says it does',
  position => {
    const roller = smooth(9.4, 0.063)
    const [row] = compareRollers({ unit, rollers: { stout: roller }, turf, condition, position })
    const settled = settle({ unit: refit({ unit, position, roller }), turf, condition })
    if (row?.outcome !== 'settled' || settled.outcome !== 'settled') return expect.fail('no answer')
    expectNear(settled.effectiveHeight.middle, row.effectiveHeight, identity)
  },
)

test('a roller of the same diameter leaves the bench height alone', () => {
  expect(refit({ unit, position: 'front', roller: smooth(9.4, 0.057) }).benchHeight).toBe(unit.benchHeight)
})
