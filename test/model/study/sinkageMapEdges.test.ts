import { mapQuantities, softnessOf } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded, conditions, turfs, units } from '../../support/arbitraries.ts'
import { compareCells, masses, soils, surfaces, unitOn } from './cellByCell.ts'

const mm = 1e-3

describe('a map is settle, cell by cell, where tables are hard to lay', () => {
  test('as near the locking depth as the turf goes', () => {
    for (const surface of Object.values(surfaces))
      for (const soil of ['stiffening, spread', 'logarithmic, springs']) {
        const asked = {
          unit: unitOn(surface),
          turf: soils[soil] ?? expect.fail(soil),
          condition: { kind: 'standing' },
        } as const
        compareCells(asked, masses, [0.94 * mm, 1.7 * mm, 3.2 * mm], 'sinkage')
      }
  })

  test('behind a front roller whose track is still open', () => {
    const turf = soils['power, spread'] ?? expect.fail()
    for (const surface of Object.values(surfaces)) {
      const asked = { unit: unitOn(surface), turf, condition: { kind: 'mowing', speed: 1.4 } } as const
      expect(compareCells(asked, masses, [0.94 * mm, 3.2 * mm], 'drop')).toBe(12)
    }
  })

  test('across the first touch of a groove floor', () => {
    const discs = unitOn(surfaces['spaced discs'] ?? expect.fail())
    const turf = soils['power, spread'] ?? expect.fail()
    const asked = { unit: discs, turf, condition: { kind: 'standing' } } as const
    const fine = Array.from({ length: 25 }, (_, i) => 0.08 * mm * 40 ** (i / 24))
    expect(compareCells(asked, masses, fine, 'sinkage')).toBe(150)
  })

  test('for any unit on any turf, standing or mowing', () => {
    let settled = 0
    fc.assert(
      fc.property(
        units,
        turfs,
        conditions,
        fc.constantFrom(...mapQuantities),
        (unit, turf, condition, quantity) => {
          const s = softnessOf(turf.law)
          const most = 'lockingDepth' in turf.law ? turf.law.lockingDepth / s : Number.POSITIVE_INFINITY
          const around = [0.4, 0.9, 1.6].filter(times => times < most).map(times => s * times)
          const m = unit.frontRoller.mass
          settled += compareCells({ unit, turf, condition }, [0.6 * m, m, 1.5 * m], around, quantity)
        },
      ),
      { ...bounded(60), endOnFailure: true },
    )
    expect(settled).toBeGreaterThan(200)
  })
})
