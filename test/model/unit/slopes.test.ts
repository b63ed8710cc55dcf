import { type Condition, GRAVITY, levelLoads, type SettledUnit, settle, type Unit } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded, conditions, standing, turfs, units } from '../../support/arbitraries.ts'
import { expectNear, identity, ofSize, solver, stated } from '../../support/tolerance.ts'

const settledOf = (
  unit: Unit,
  turf: Parameters<typeof settle>[0]['turf'],
  condition: Condition,
  balance?: 'level',
) => {
  const settled = settle({ unit, turf, condition, ...(balance ? { balance } : {}) })
  return settled.outcome === 'settled' ? settled : undefined
}

const mm = 1e-3
const roller = (mass: number, diameter: number) => ({
  mass,
  diameter,
  length: 0.54,
  surface: { kind: 'smooth' } as const,
})
const plain: Unit = {
  wheelbase: 0.21,
  edge: 0.12,
  benchHeight: 5 * mm,
  frontRoller: roller(5.6, 0.061),
  rearRoller: roller(4.4, 0.05),
  body: { mass: 19, at: 0.1, height: 0.11 },
}
const turf = { law: { kind: 'power', softness: 0.6 * mm, exponent: 0.9 }, rebound: 0.6 } as const

/** Units on slopes, pulled at a hitch, with a box ahead and a lift arm. */
const busy = fc
  .record({
    unit: units,
    slopeAlong: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
    slopeAcross: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
    hitch: fc.option(fc.double({ min: 0.02, max: 0.2, noNaN: true }), { nil: undefined }),
    lift: fc.double({ min: -20, max: 20, noNaN: true }),
    push: fc.double({ min: -15, max: 15, noNaN: true }),
  })
  .map(
    ({ unit, slopeAlong, slopeAcross, hitch, lift, push }): Unit => ({
      ...unit,
      slopeAlong,
      slopeAcross,
      ...(hitch === undefined ? {} : { hitchHeight: hitch }),
      loads: [
        ...(unit.loads ?? []),
        { name: 'arm', down: lift, forward: push, at: unit.wheelbase / 2, height: 0.1 },
      ],
    }),
  )
  .filter(unit => Math.min(...Object.values(levelLoads(unit))) > 5)

describe('a unit on a slope', () => {
  test('forces sum to nothing and so do their moments, whatever acts on the unit', () => {
    let seen = 0
    fc.assert(
      fc.property(busy, turfs, conditions, (unit, on, condition) => {
        const settled = settledOf(unit, on, condition)
        if (!settled) return
        seen++
        const weight = settled.forces.reduce((sum, { down }) => sum + Math.max(down, 0), 0)
        expectNear(settled.balance.down, 0, ofSize(weight, stated(1e-9)))
        expectNear(settled.balance.forward, 0, ofSize(weight, stated(1e-9)))
        expectNear(settled.balance.moment, 0, ofSize(weight * unit.wheelbase, stated(1e-9)))
      }),
      bounded(60),
    )
    expect(seen).toBeGreaterThan(20)
  })

  test('level loads answer the balance of moments about the ground', () => {
    // W_r B = Σ m g (x cos α + h sin α) + F_f R_f + F_r R_r − P h_hitch, P = F_f + F_r + M g sin α (docs/physics.md §4)
    const slopeAlong = 0.15
    const hitchHeight = 0.13
    const unit = { ...plain, slopeAlong, hitchHeight }
    const { front, rear, pitch } = settledOf(
      unit,
      turf,
      { kind: 'mowing', speed: 1.2 },
      'level',
    ) as SettledUnit
    const weights = [
      [plain.body.mass, plain.body.at, plain.body.height ?? Number.NaN],
      [plain.frontRoller.mass, 0, plain.frontRoller.diameter / 2],
      [plain.rearRoller.mass, plain.wheelbase, plain.rearRoller.diameter / 2],
    ] as const
    const mass = weights.reduce((sum, [m]) => sum + m, 0)
    const pull = front.resistance + rear.resistance + mass * GRAVITY * Math.sin(slopeAlong)
    const moment =
      weights.reduce(
        (sum, [m, x, h]) => sum + m * GRAVITY * (x * Math.cos(slopeAlong) + h * Math.sin(slopeAlong)),
        0,
      ) +
      (front.resistance * plain.frontRoller.diameter) / 2 +
      (rear.resistance * plain.rearRoller.diameter) / 2 -
      pull * hitchHeight
    expectNear(rear.load * plain.wheelbase, moment, stated(1e-10))
    expectNear(front.load + rear.load, mass * GRAVITY * Math.cos(slopeAlong), identity)
    expect(pitch).not.toBe(0)
  })

  test('standing uphill loads the rear roller, downhill the front one', () => {
    const at = (slopeAlong: number) => levelLoads({ ...plain, slopeAlong, hitchHeight: 0 })
    expect(at(0.1).rear).toBeGreaterThan(at(0).rear)
    expect(at(-0.1).front).toBeGreaterThan(at(0).front)
  })

  test('a lift arm takes off what it lifts, where it lifts', () => {
    const lifted = levelLoads({ ...plain, loads: [{ name: 'arm', down: -30, at: 0 }] })
    const level = levelLoads(plain)
    expectNear(level.front - lifted.front, 30, identity)
    expectNear(lifted.rear, level.rear, identity)
  })

  test('a pull at the front axle hardly differs from no hitch', () => {
    const hitched = settledOf({ ...plain, hitchHeight: plain.frontRoller.diameter / 2 }, turf, standing)
    const free = settledOf(plain, turf, standing)
    expectNear(hitched?.front.load ?? Number.NaN, free?.front.load ?? 0, solver)
  })

  test('a cylinder tells its clip while mowing, and only then', () => {
    // common practice: travel between two blades, speed/(blades × turns a second)
    const unit = { ...plain, cylinder: { blades: 11, turnsPerSecond: 25 } }
    const clip = settledOf(unit, turf, { kind: 'mowing', speed: 1.65 })?.clip
    expectNear(clip ?? Number.NaN, 1.65 / (11 * 25), identity)
    expect(settledOf(unit, turf, standing)?.clip).toBeUndefined()
    const half = { ...plain, cylinder: { blades: 7.5, turnsPerSecond: 25 } }
    expect(() => settle({ unit: half, turf, condition: standing })).toThrow(
      /cylinder\.blades: expected a whole number/,
    )
  })

  test('refuses a slope steeper than a right angle is half of, and a unit that would tip', () => {
    expect(() => settle({ unit: { ...plain, slopeAlong: 1 }, turf, condition: standing })).toThrow(
      /unit\.slopeAlong/,
    )
    const tipping = { ...plain, loads: [{ name: 'box', mass: 60, at: -0.3 }] }
    expect(() => settle({ unit: tipping, turf, condition: standing })).toThrow(/would tip/)
  })
})
