import { compareRollers, type SettledUnit, settle, type Turf, type Unit } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { standing } from '../../support/arbitraries.ts'
import { expectNear, solver, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const smooth = { kind: 'smooth' } as const
const unit: Unit = {
  wheelbase: 0.2,
  edge: 0.11,
  benchHeight: 6 * mm,
  frontRoller: { mass: 5.2, diameter: 0.06, length: 0.5, surface: smooth },
  rearRoller: { mass: 4.1, diameter: 0.052, length: 0.5, surface: smooth },
  body: { mass: 21, at: 0.095, height: 0.1 },
}
const soil = { law: { kind: 'power', softness: 0.7 * mm, exponent: 0.85 }, spread: 1.4 * mm } as const
const mowing = (speed: number) => ({ kind: 'mowing', speed }) as const
const settled = (turf: Turf, speed?: number, balance?: 'level') =>
  settle({
    unit,
    turf,
    condition: speed === undefined ? standing : mowing(speed),
    ...(balance ? { balance } : {}),
  }) as SettledUnit

describe('the rear roller on the front roller’s track', () => {
  test('that springs back at once rolls as on fresh turf, which is as it stands', () => {
    const rolled = settled({ ...soil, rebound: 1 }, 1.3)
    const stood = settled(soil)
    expectNear(rolled.rear.sinkage, stood.rear.sinkage, solver)
    const nearly = settled({ ...soil, rebound: 1 - 1e-9, recoveryTime: 3 }, 1.3)
    expectNear(nearly.rear.sinkage, stood.rear.sinkage, stated(1e-6))
  })

  test('sinks less into the turf itself the more the front roller left pressed, and lies deeper', () => {
    const fresh = settled({ ...soil, rebound: 0.5 }, 1.3, 'level')
    const slow = settled({ ...soil, rebound: 0.5, recoveryTime: 20 }, 1.3, 'level')
    expect(slow.rear.sinkage).toBeGreaterThan(fresh.rear.sinkage)
    const resisted = (one: SettledUnit) => one.rear.resistance
    expect(resisted(slow)).toBeLessThan(resisted(fresh))
  })

  test('meets less of it the slower the unit goes', () => {
    const turf = { ...soil, rebound: 0.4, recoveryTime: 0.3 }
    const left = [0.5, 1, 2, 4].map(speed => settled(turf, speed).unrecovered)
    for (let i = 1; i < left.length; i++) expect(left[i]!).toBeGreaterThan(left[i - 1]!)
  })

  test('carries what the balance asks, by the law of turf pressed again', () => {
    // z = v + μ z_e; q = (√μ + √λ) E(z_e), E = C_n p(z_e) √(2R z_e): docs/physics.md §2.3; C_n at n = 1 is 2/3
    const springs = { law: { kind: 'linear', softness: 0.7 * mm }, rebound: 0.6, recoveryTime: 1e6 } as const
    const light = { ...unit, rearRoller: { ...unit.rearRoller, mass: 0.4 }, body: { ...unit.body, at: 0.05 } }
    const { front, rear } = settle({ unit: light, turf: springs, condition: mowing(1) }) as SettledUnit
    const back = 0.6
    const left = (1 - back) * front.sinkage
    const equivalent = (rear.sinkage - left) / back
    expect(rear.sinkage).toBeLessThan(front.sinkage)
    const k = 10e3 / (0.7 * mm)
    const leading = (2 / 3) * k * equivalent * Math.sqrt(0.052 * equivalent)
    expectNear(rear.load, (Math.sqrt(back) + Math.sqrt(0.6)) * leading * 0.5, stated(1e-6))
  })

  test('is met by every roller of a rack', () => {
    const turf = { ...soil, rebound: 0.5, recoveryTime: 5 }
    const rollers = { light: { ...unit.frontRoller, mass: 3.9 }, heavy: { ...unit.frontRoller, mass: 9.2 } }
    const rows = compareRollers({ unit, rollers, turf, condition: mowing(1.4) })
    for (const row of rows) {
      const fitted = settle({ unit: { ...unit, frontRoller: row.roller }, turf, condition: mowing(1.4) })
      if (row.outcome !== 'settled' || fitted.outcome !== 'settled') throw new Error(row.outcome)
      expectNear(row.otherSinkage, fitted.rear.sinkage, solver)
    }
  })
})
