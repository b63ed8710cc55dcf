import {
  cellOf,
  InputError,
  mapQuantities,
  mapToRows,
  press,
  type Roller,
  settle,
  sinkageMap,
  softnessOf,
  withSoftness,
} from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  bounded,
  openLaws,
  rollerWith,
  smooth,
  standing,
  turfOn,
  unitWith,
} from '../../support/arbitraries.ts'
import { expectNear, stated } from '../../support/tolerance.ts'
import { compareCells, masses, softnesses, soils, surfaces, unitOn, usages } from './cellByCell.ts'

const mm = 1e-3

describe('a map is settle, cell by cell', () => {
  for (const [name, surface] of Object.entries(surfaces))
    for (const [soil, turf] of Object.entries(soils))
      test.each(Object.keys(usages))(`${name} on ${soil}, %s`, usage => {
        const condition = usages[usage] ?? expect.fail(usage)
        for (const quantity of mapQuantities)
          expect(
            compareCells({ unit: unitOn(surface), turf, condition }, masses, softnesses, quantity),
          ).toBeGreaterThan(15)
      })

  test('the floor of shallow grooves and of discs is touched in some cells and not in others', () => {
    for (const name of ['grooved, shallow', 'spaced discs']) {
      const unit = unitOn(surfaces[name] ?? expect.fail(name))
      const turf = soils['power, spread'] ?? expect.fail()
      const floors = softnesses.map(softness => {
        const settled = settle({ unit, turf: withSoftness(turf, softness), condition: { kind: 'standing' } })
        return settled.outcome === 'settled' ? settled.front.grooveFloor : settled.outcome
      })
      expect(new Set(floors), name).toEqual(new Set(['free', 'touching']))
    }
  })

  test('on the true circle too', () => {
    const turf = soils['stiffening, spread'] ?? expect.fail()
    const unit = unitOn(surfaces.grooved ?? expect.fail())
    const asked = { unit, turf, condition: { kind: 'standing' }, arc: 'circle' } as const
    for (const quantity of mapQuantities)
      expect(compareCells(asked, masses, softnesses, quantity)).toBeGreaterThan(15)
  })

  test('for any unit standing on turf that does not lock', () => {
    let settled = 0
    fc.assert(
      fc.property(
        unitWith(rollerWith(smooth)),
        turfOn(openLaws),
        fc.constant(standing),
        fc.constantFrom(...mapQuantities),
        (unit, turf, condition, quantity) => {
          const s = softnessOf(turf.law)
          const most = 'lockingDepth' in turf.law ? turf.law.lockingDepth / s : Number.POSITIVE_INFINITY
          const around = [0.4, 0.9, 1.6].filter(times => times < most).map(times => s * times)
          const m = unit.frontRoller.mass
          settled += compareCells({ unit, turf, condition }, [0.6 * m, m, 1.5 * m], around, quantity)
        },
      ),
      bounded(60),
    )
    expect(settled).toBeGreaterThan(200)
  })
})

describe('a map of a lone roller is press, cell by cell', () => {
  test.each(Object.keys(surfaces))('%s', name => {
    const roller: Roller = { ...unitOn(surfaces[name] ?? expect.fail(name)).frontRoller }
    for (const turf of Object.values(soils)) {
      const condition = { kind: 'standing' } as const
      const map = sinkageMap({
        roller,
        carried: 60,
        turf,
        condition,
        masses,
        softnesses,
        quantity: 'sinkage',
      })
      softnesses.forEach((softness, row) => {
        masses.forEach((mass, column) => {
          const single = press({
            roller,
            turf: withSoftness(turf, softness),
            condition,
            load: 60 + mass * 9.80665,
          })
          const cell = cellOf(map, row, column)
          expect(cell.outcome).toBe(single.outcome)
          if (cell.outcome === 'settled' && single.outcome === 'settled')
            expectNear(cell.value, single.sinkage, stated(1e-6))
        })
      })
    }
  })
})

describe('cells without an answer', () => {
  const turf = soils['stiffening, spread'] ?? expect.fail()
  const question = {
    unit: unitOn({ kind: 'smooth' }),
    turf,
    condition: { kind: 'standing' },
    masses,
    softnesses: [0.5 * mm, 5.9 * mm, 6 * mm, 9 * mm],
    quantity: 'drop',
  } as const
  const map = sinkageMap(question)

  test('a row softer than the locking depth reads bottomed out', () => {
    for (const row of [2, 3])
      for (const column of masses.keys())
        expect(cellOf(map, row, column)).toEqual({ outcome: 'bottomed out' })
  })

  test('hold no number, in the map or in its rows', () => {
    const rows = mapToRows(map)
    expect(rows.length).toBe(map.values.length)
    rows.forEach(({ outcome, value }, i) => {
      expect(value === null).toBe(outcome !== 'settled')
      expect(Number.isNaN(map.values[i])).toBe(outcome !== 'settled')
    })
    expect(JSON.parse(JSON.stringify(rows))).toEqual(rows)
  })

  test('are asked for inside the map', () => {
    expect(() => cellOf(map, 4, 0)).toThrow(InputError)
    expect(() => cellOf(map, 0, -1)).toThrow(InputError)
  })
})

describe('refuses', () => {
  const unit = unitOn({ kind: 'smooth' })
  const turf = soils['linear, springs'] ?? expect.fail()
  const question = { unit, turf, condition: { kind: 'standing' }, quantity: 'drop' } as const
  test.each([
    ['no masses', { masses: [], softnesses }, 'masses'],
    ['a mass below zero', { masses: [3.2, -1], softnesses }, 'masses.1'],
    ['a softness of nothing', { masses, softnesses: [0] }, 'softnesses.0'],
  ])('%s', (_, axes, quantity) => {
    expect(() => sinkageMap({ ...question, ...axes })).toThrow(expect.objectContaining({ quantity }))
  })

  test('the drop of a lone roller', () => {
    expect(() =>
      sinkageMap({
        roller: unit.frontRoller,
        carried: 10,
        turf,
        condition: { kind: 'standing' },
        masses,
        softnesses,
        quantity: 'drop',
      }),
    ).toThrow(expect.objectContaining({ quantity: 'quantity' }))
  })
})
