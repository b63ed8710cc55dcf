import { loadAt, type PressureLaw, type Roller } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { metresOf, numberOf, referenceTable, tableTurf } from '../../support/referenceTables.ts'
import { expectNear, stated } from '../../support/tolerance.ts'

const table = referenceTable('smooth_with_spread')
const mm = 1e-3

const roller = (radius: number): Roller => ({
  mass: 4.2,
  diameter: 2 * radius,
  length: 0.4,
  surface: { kind: 'smooth' },
})

// Source: test/reference/data/smooth_with_spread.csv, scipy 1.10.1; W_lev3 is the two-dimensional solution.
describe('published values of a smooth roller on turf that spreads load', () => {
  test('the table has 18 rows', () => expect(table.length).toBe(18))

  test.each(table)('line load, $law, l $l mm, z $z mm', row => {
    const { turf, k } = tableTurf(row, 'l')
    const question = {
      roller: roller(metresOf(row, 'R')),
      turf,
      sinkage: metresOf(row, 'z'),
      condition: { kind: 'standing' },
    } as const
    const loaded = loadAt(question)
    if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
    const perPitch = (loaded.lineLoad * metresOf(row, 's')) / (k * mm * mm)
    expectNear(perPitch, numberOf(row, 'W_closed_form'), stated(1e-6))
    // the finest grid of the table's own two-dimensional solution
    expectNear(perPitch, numberOf(row, 'W_lev3'), stated(6e-5))
    const loose = loadAt({ ...question, turf: { ...turf, spread: 0 } })
    if (loose.outcome !== 'settled') return expect.fail(loose.outcome)
    expectNear(
      (loose.lineLoad * metresOf(row, 's')) / (k * mm * mm),
      numberOf(row, 'W_strip'),
      // 48 points in an angle: at the rim the integrand goes as a power 1.4 of the distance
      stated(1e-6),
    )
  })

  test.each(table.filter(row => row.law === 'n=1'))(
    'exponent one is the linear law, l $l mm, z $z mm',
    row => {
      const linear: PressureLaw = { kind: 'linear', softness: 1 * mm }
      const loaded = loadAt({
        roller: roller(metresOf(row, 'R')),
        turf: { law: linear, spread: metresOf(row, 'l') },
        sinkage: metresOf(row, 'z'),
        condition: { kind: 'standing' },
      })
      if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
      const perPitch = (loaded.lineLoad * metresOf(row, 's')) / (10e3 * mm * mm)
      expectNear(perPitch, numberOf(row, 'W_closed_form'), stated(1e-6))
    },
  )
})
