import {
  benchHeightFor,
  compareRollers,
  GRAVITY,
  InputError,
  levelLoads,
  settle,
  type Unit,
  unitFromScales,
} from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded, conditions, rollers, turfs, units, unitWith } from '../../support/arbitraries.ts'
import { expectNear, ofSize, solver, stated } from '../../support/tolerance.ts'

const mm = 1e-3

describe('re-setting the bench', () => {
  test('to the height it is told holds the wanted height', () => {
    let count = 0
    fc.assert(
      fc.property(
        units,
        turfs,
        conditions,
        fc.double({ min: 1, max: 30, noNaN: true }),
        (unit, turf, condition, wanted) => {
          const bench = benchHeightFor({ unit, turf, condition, effectiveHeight: wanted * mm })
          if (bench.outcome !== 'settled' || bench.benchHeight <= 0) return
          const settled = settle({ unit: { ...unit, benchHeight: bench.benchHeight }, turf, condition })
          if (settled.outcome !== 'settled') return expect.fail(settled.outcome)
          count++
          expectNear(settled.effectiveHeight.middle, wanted * mm, stated(1e-9))
          expectNear(
            bench.change.left,
            bench.benchHeight - unit.benchHeight,
            ofSize(unit.benchHeight, solver),
          )
          const share = 1 - unit.edge / unit.wheelbase
          expectNear(bench.rollerTravel.right * share, bench.change.right, ofSize(unit.benchHeight, solver))
        },
      ),
      bounded(200),
    )
    expect(count).toBeGreaterThan(80)
  })
})

describe('another front roller', () => {
  test('heavier by Δm adds g Δm to the front and nothing to the rear', () => {
    fc.assert(
      fc.property(units, fc.double({ min: -0.4, max: 12, noNaN: true }), (unit, more) => {
        const before = levelLoads(unit)
        const frontRoller = { ...unit.frontRoller, mass: unit.frontRoller.mass + more }
        const after = levelLoads({ ...unit, frontRoller })
        const size = before.front + before.rear
        expectNear(after.front - before.front, GRAVITY * more, ofSize(size, stated(1e-11)))
        expectNear(after.rear, before.rear, stated(1e-11))
      }),
      bounded(200),
    )
  })

  test('stouter by ΔD raises the edge by ½ΔD (1 − c/B) on very hard turf', () => {
    const hard = { law: { kind: 'linear', softness: 1e-12 } } as const
    fc.assert(
      fc.property(units, fc.double({ min: 0.9, max: 1.2, noNaN: true }), (unit, times) => {
        const other = { ...unit.frontRoller, diameter: unit.frontRoller.diameter * times }
        const [row] = compareRollers({
          unit,
          rollers: { other },
          turf: hard,
          condition: { kind: 'standing' },
        })
        if (row?.outcome !== 'settled') return expect.fail(row?.outcome)
        const grown = (other.diameter - unit.frontRoller.diameter) / 2
        expectNear(
          row.change ?? Number.NaN,
          grown * (1 - unit.edge / unit.wheelbase),
          ofSize(mm, stated(2e-5)),
        )
      }),
      bounded(100),
    )
  })

  test('at the rear raises the edge by ½ΔD c/B on very hard turf', () => {
    const hard = { law: { kind: 'linear', softness: 1e-12 } } as const
    fc.assert(
      fc.property(units, fc.double({ min: 0.9, max: 1.2, noNaN: true }), (unit, times) => {
        const other = { ...unit.rearRoller, diameter: unit.rearRoller.diameter * times }
        const question = { unit, rollers: { other }, turf: hard, position: 'rear' } as const
        const [row] = compareRollers({ ...question, condition: { kind: 'standing' } })
        if (row?.outcome !== 'settled') return expect.fail(row?.outcome)
        const grown = (other.diameter - unit.rearRoller.diameter) / 2
        expectNear(row.change ?? Number.NaN, (grown * unit.edge) / unit.wheelbase, ofSize(mm, stated(2e-5)))
      }),
      bounded(100),
    )
  })

  test('holds the height with the bench it is told', () => {
    let count = 0
    fc.assert(
      fc.property(units, rollers, turfs, conditions, (unit, roller, turf, condition) => {
        const [row] = compareRollers({ unit, rollers: { other: roller }, turf, condition })
        const fitted = settle({ unit, turf, condition })
        if (row?.outcome !== 'settled' || fitted.outcome !== 'settled') return
        if (row.benchHeight === null || row.benchHeight <= 0 || row.benchChange === null) return
        // the bench line moves with the roller: heights that stand on it are told anew
        const share = (at: number) =>
          ((roller.diameter - unit.frontRoller.diameter) / 2) * (1 - at / unit.wheelbase)
        const changed: Unit = {
          ...unit,
          frontRoller: roller,
          benchHeight: row.benchHeight,
          body: { ...unit.body, height: (unit.body.height ?? 0) + share(unit.body.at) },
          loads: (unit.loads ?? []).map(load => ({ ...load, height: (load.height ?? 0) + share(load.at) })),
        }
        const settled = settle({ unit: changed, turf, condition })
        if (settled.outcome !== 'settled') return expect.fail(settled.outcome)
        count++
        const held = ofSize(unit.benchHeight + fitted.drop.middle, stated(1e-9))
        expectNear(settled.effectiveHeight.middle, fitted.effectiveHeight.middle, held)
        expectNear(row.benchHeight - row.benchChange, unit.benchHeight + share(unit.edge), held)
        expectNear(row.frontLoad, settled.front.load, stated(1e-9))
      }),
      bounded(200),
    )
    expect(count).toBeGreaterThan(60)
  })
})

describe('a unit from the scales', () => {
  const readings = fc.record({
    frame: units,
    front: fc.double({ min: 0.1, max: 30, noNaN: true }),
    rear: fc.double({ min: 0.1, max: 30, noNaN: true }),
    given: fc.constantFrom('front and rear', 'total and front', 'total and rear', 'all'),
    drift: fc.double({ min: -0.19, max: 0.19, noNaN: true }),
  })

  test('answers the scales, whichever two are read', () => {
    fc.assert(
      fc.property(readings, ({ frame, front, rear, given, drift }) => {
        const { wheelbase, edge, benchHeight, frontRoller, rearRoller } = frame
        const read = { front: front + frontRoller.mass, rear: rear + rearRoller.mass }
        const total = read.front + read.rear
        const scales = {
          'front and rear': read,
          'total and front': { total, front: read.front },
          'total and rear': { total, rear: read.rear },
          all: { ...read, total: total + drift },
        }[given]
        const unit = unitFromScales({
          ...scales,
          rollers: { front: frontRoller, rear: rearRoller },
          wheelbase,
          edge,
          benchHeight,
        })
        const loads = levelLoads(unit)
        expectNear(loads.front, read.front * GRAVITY, ofSize(total * GRAVITY, stated(1e-11)))
        expectNear(loads.rear, read.rear * GRAVITY, ofSize(total * GRAVITY, stated(1e-11)))
        expectNear(unit.body.mass, front + rear, ofSize(total, stated(1e-11)))
      }),
      bounded(200),
    )
  })

  test('knows the box, hung on empty', () => {
    fc.assert(
      fc.property(unitWith(rollers), fc.double({ min: 0.5, max: 3, noNaN: true }), (frame, empty) => {
        const { wheelbase, edge, benchHeight, frontRoller, rearRoller } = frame
        const question = {
          front: frontRoller.mass + 9,
          rear: rearRoller.mass + 8,
          rollers: { front: frontRoller, rear: rearRoller },
          ...{ wheelbase, edge, benchHeight },
        }
        const bare = levelLoads(unitFromScales(question))
        const boxed = levelLoads(
          unitFromScales({ ...question, box: { empty, full: empty + 6, at: -0.5 * wheelbase } }),
        )
        // a box half a wheelbase ahead presses one and a half times its weight on the front and lifts the rear by half
        const size = ofSize(bare.front + bare.rear, stated(1e-11))
        expectNear(boxed.front - bare.front, 1.5 * empty * GRAVITY, size)
        expectNear(boxed.rear - bare.rear, -0.5 * empty * GRAVITY, size)
      }),
      bounded(60),
    )
  })

  const frame = {
    wheelbase: 0.2,
    edge: 0.11,
    benchHeight: 4 * mm,
    rollers: {
      front: { mass: 5.2, diameter: 0.058, length: 0.54, surface: { kind: 'smooth' } },
      rear: { mass: 4.4, diameter: 0.052, length: 0.54, surface: { kind: 'smooth' } },
    },
  } as const
  test.each([
    ['one reading alone', { total: 30 }, 'scales', /two of the readings/],
    ['three that disagree by 0.3 kg', { total: 30, front: 15, rear: 15.3 }, 'scales.total', /0.3 kg/],
    ['a roller heavier than its reading', { front: 5.1, rear: 14 }, 'scales.front', /5.2 kg/],
    ['a total that leaves the rear roller nothing', { total: 20, front: 16 }, 'scales.total', /rear/],
    ['a reading below zero', { total: -30, front: 15 }, 'scales.total', /more than 0 kg/],
  ])('refuses %s', (_, scales, quantity, words) => {
    const ask = () => unitFromScales({ ...frame, ...scales })
    expect(ask).toThrow(InputError)
    expect(ask).toThrow(expect.objectContaining({ quantity, message: expect.stringMatching(words) }))
  })
})
