import { GRAVITY, loadAt, type SettledUnit, settle, type Unit } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded, standing, turfs, units } from '../../support/arbitraries.ts'
import { expectNear, ofSize, solver, stated } from '../../support/tolerance.ts'

/** Standing on level ground: the sums below are those of weights alone. */
function everyStanding(
  runs: number,
  check: (settled: SettledUnit, unit: Unit, turf: Parameters<typeof settle>[0]['turf']) => void,
  balance: 'level' | 'tilted' = 'tilted',
) {
  let count = 0
  fc.assert(
    fc.property(units, turfs, (unit, turf) => {
      const settled = settle({ unit, turf, condition: standing, balance })
      if (settled.outcome !== 'settled') return
      count++
      check(settled, unit, turf)
    }),
    bounded(runs),
  )
  expect(count).toBeGreaterThan(runs / 2)
}

const near = stated(1e-9)

const weights = (unit: Unit) => {
  const axle = unit.frontRoller.diameter / 2
  return [
    { mass: unit.body.mass, at: unit.body.at, height: unit.body.height ?? axle },
    { mass: unit.frontRoller.mass, at: 0, height: axle },
    { mass: unit.rearRoller.mass, at: unit.wheelbase, height: unit.rearRoller.diameter / 2 },
    ...(unit.loads ?? []).map(load => ({ mass: load.mass ?? 0, at: load.at, height: load.height ?? axle })),
  ]
}
const totalOf = (unit: Unit) => weights(unit).reduce((sum, { mass }) => sum + mass * GRAVITY, 0)

describe('a unit at rest', () => {
  test('its forces sum to nothing, and so do their moments', () => {
    everyStanding(300, ({ forces, balance }, unit) => {
      const total = totalOf(unit)
      const down = forces.reduce((sum, force) => sum + force.down, 0)
      const moment = forces.reduce((sum, force) => sum + force.down * force.at, 0)
      expectNear(down, 0, ofSize(total, near))
      expectNear(moment, 0, ofSize(total * unit.wheelbase, near))
      expectNear(balance.down, 0, ofSize(total, near))
      expectNear(balance.moment, 0, ofSize(total * unit.wheelbase, near))
    })
  })

  // The frame turned by θ about the front axle, written with turned coordinates instead of the model's sums.
  test('the turned weights and reactions balance about the front axle', () => {
    everyStanding(300, ({ front, rear, pitch }, unit) => {
      const turned = (at: number, height: number) =>
        at * Math.cos(pitch) + (height - unit.frontRoller.diameter / 2) * Math.sin(pitch)
      const moment = weights(unit).reduce(
        (sum, { mass, at, height }) => sum + mass * GRAVITY * turned(at, height),
        0,
      )
      const arm = turned(unit.wheelbase, unit.rearRoller.diameter / 2)
      expectNear(rear.load * arm, moment, ofSize(totalOf(unit) * unit.wheelbase, near))
      expectNear(front.load + rear.load, totalOf(unit), near)
    })
  })

  test('each roller carries what the turf answers at its sinkage', () => {
    everyStanding(200, ({ front, rear }, unit, turf) => {
      for (const [axle, roller] of [
        [front, unit.frontRoller],
        [rear, unit.rearRoller],
      ] as const) {
        const loaded = loadAt({ roller, turf, sinkage: axle.sinkage, condition: standing })
        if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
        expectNear(loaded.load, axle.load, solver)
      }
    })
  })

  test('the undersides of both rollers and the edge move as one rigid frame', () => {
    everyStanding(300, ({ front, rear, pitch, drop, effectiveHeight }, unit) => {
      const frontRadius = unit.frontRoller.diameter / 2
      const rearRadius = unit.rearRoller.diameter / 2
      // heights above undisturbed turf of points of the frame, from the front axle down the turned frame
      const height = (at: number, above: number) =>
        frontRadius - front.sinkage - at * Math.sin(pitch) + (above - frontRadius) * Math.cos(pitch)
      const rearUnderside = height(unit.wheelbase, rearRadius) - rearRadius
      expectNear(-rearUnderside, rear.sinkage, ofSize(unit.wheelbase, solver))
      expectNear(
        unit.benchHeight - drop.middle,
        height(unit.edge, unit.benchHeight),
        ofSize(unit.wheelbase, solver),
      )
      expectNear(effectiveHeight.middle, unit.benchHeight - drop.middle, ofSize(unit.benchHeight, solver))
    })
  })

  test('left and right are alike', () => {
    everyStanding(100, ({ drop, effectiveHeight, roll }) => {
      expect(roll).toBe(0)
      expect([drop.left, drop.right]).toEqual([drop.middle, drop.middle])
      expect([effectiveHeight.left, effectiveHeight.right]).toEqual([
        effectiveHeight.middle,
        effectiveHeight.middle,
      ])
    })
  })

  test('level statics give the drop by interpolation between the rollers', () => {
    everyStanding(
      200,
      ({ front, rear, drop, pitch }, unit) => {
        const along = unit.edge / unit.wheelbase
        expectNear(drop.middle, (1 - along) * front.sinkage + along * rear.sinkage, solver)
        expect(Math.abs(pitch)).toBeLessThan(1)
        const moment = weights(unit).reduce((sum, { mass, at }) => sum + mass * GRAVITY * at, 0)
        expectNear(rear.load, moment / unit.wheelbase, solver)
      },
      'level',
    )
  })
})
