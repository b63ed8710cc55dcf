import {
  benchHeightFor,
  GRAVITY,
  type SettledUnit,
  settle,
  type Turf,
  type Unit,
  unitFromScales,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { standing } from '../../support/arbitraries.ts'
import { expectNear, ofSize, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const length = 0.5
const roller = (mass: number, diameter: number) => ({
  mass,
  diameter,
  length,
  surface: { kind: 'smooth' } as const,
})
const unit: Unit = {
  wheelbase: 0.2,
  edge: 0.11,
  benchHeight: 6 * mm,
  frontRoller: roller(5.2, 0.06),
  rearRoller: roller(4.1, 0.06),
  body: { mass: 21, at: 0.095, height: 0.1 },
}
const turf: Turf = {
  law: { kind: 'stiffening', softness: 0.8 * mm, lockingDepth: 9 * mm },
  spread: 1.2 * mm,
  rebound: 0.7,
}

const settled = (changed: Partial<Unit>, on = turf) =>
  settle({ unit: { ...unit, ...changed }, turf: on, condition: standing }) as SettledUnit

const leaning: Partial<Unit> = { body: { ...unit.body, offset: 0.04 }, slopeAcross: 0.06 }
const mirrored: Partial<Unit> = { body: { ...unit.body, offset: -0.04 }, slopeAcross: -0.06 }

describe('left and right', () => {
  test('mirrored left to right, the answers swap', () => {
    const one = settled(leaning)
    const other = settled(mirrored)
    expectNear(other.roll, -one.roll, stated(1e-10))
    expectNear(other.effectiveHeight.left, one.effectiveHeight.right, stated(1e-10))
    expectNear(other.drop.right, one.drop.left, stated(1e-10))
    expectNear(other.front.sinkage, one.front.sinkage, stated(1e-10))
  })

  test('the heavier and the lower side cuts lower', () => {
    expect(settled({ body: { ...unit.body, offset: 0.04 } }).roll).toBeGreaterThan(0)
    const { effectiveHeight, roll } = settled({ slopeAcross: 0.06 })
    expect(roll).toBeGreaterThan(0)
    expect(effectiveHeight.right).toBeLessThan(effectiveHeight.left)
  })

  test('the moment of both rollers answers offset and slope', () => {
    // independent: composite midpoint rule over the length for springs without spread, q = (4/3) k √(2R) z^(3/2)
    const springs: Turf = { law: { kind: 'linear', softness: 0.8 * mm } }
    const { front, rear, roll } = settled(leaning, springs)
    const k = 10e3 / (0.8 * mm)
    const steps = 20_000
    const momentOf = (sinkage: number, diameter: number) => {
      let moment = 0
      for (let i = 0; i < steps; i++) {
        const y = ((i + 0.5) / steps - 0.5) * length
        const z = Math.max(sinkage + roll * y, 0)
        moment += (4 / 3) * k * Math.sqrt(diameter) * z ** 1.5 * y * (length / steps)
      }
      return moment
    }
    const masses = [
      [21, 0.1, 0.04],
      [5.2, 0.03, 0],
      [4.1, 0.03, 0],
    ] as const
    const asked = masses.reduce(
      (sum, [mass, height, offset]) =>
        sum + mass * GRAVITY * (offset * Math.cos(0.06) + height * Math.sin(0.06)),
      0,
    )
    const answered = momentOf(front.sinkage, 0.06) + momentOf(rear.sinkage, 0.06)
    expectNear(answered, asked, stated(1e-7))
  })

  test('a roller whose end leaves the turf still balances', () => {
    const { outcome, roll, front, balance } = settled({ body: { ...unit.body, offset: 0.23 } })
    expect(outcome).toBe('settled')
    expect((roll * length) / 2).toBeGreaterThan(front.sinkage)
    expectNear(balance.down, 0, ofSize(front.load, stated(1e-9)))
  })

  test('the edge is set level by its two ends', () => {
    const wanted = 5 * mm
    const question = { unit: { ...unit, ...leaning }, turf, condition: standing }
    const setting = benchHeightFor({ ...question, effectiveHeight: wanted })
    if (setting.outcome !== 'settled') throw new Error(setting.outcome)
    const { roll } = settled(leaning)
    expectNear(setting.change.right - setting.change.left, roll * length, stated(1e-3))
    const share = 1 - unit.edge / unit.wheelbase
    expectNear(setting.rollerTravel.left * share, setting.change.left, stated(1e-12))
  })
})

test('a centre of gravity beyond the ends of the rollers would tip the unit', () => {
  const tipping = { ...unit, body: { ...unit.body, offset: 0.42 } }
  expect(() => settle({ unit: tipping, turf, condition: standing })).toThrow(/body\.offset: .*would tip/)
})

describe('scales under the ends of the front roller', () => {
  const rollers = { front: unit.frontRoller, rear: unit.rearRoller }
  const question = { front: 15.6, rear: 14.7, rollers, wheelbase: 0.2, edge: 0.11, benchHeight: 6 * mm }

  test('give the offset of the body by the balance of moments', () => {
    // m_right L/2 − m_left L/2 = m_body y, both rollers lying evenly about the middle
    const { body } = unitFromScales({ ...question, left: 14.4, right: 15.9 })
    expectNear(body.mass * (body.offset ?? Number.NaN), (15.9 - 14.4) * (length / 2), stated(1e-12))
    expectNear(
      unitFromScales({ ...question, left: 14.4 }).body.offset ?? Number.NaN,
      body.offset ?? 0,
      stated(1e-12),
    )
  })

  test('that disagree with front and rear are told with the difference', () => {
    expect(() => unitFromScales({ ...question, left: 14.4, right: 16.8 })).toThrow(
      /scales\.left.*difference of 0\.9 kg/,
    )
    expect(() => unitFromScales({ ...question, right: 31 })).toThrow(
      /scales\.right: expected less than the whole unit/,
    )
  })
})
