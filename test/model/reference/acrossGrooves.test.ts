import { acrossGrooves } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { metresOf, numberOf, type Row, referenceTable, tableTurf } from '../../support/referenceTables.ts'
import { expectNear, ofSize, stated } from '../../support/tolerance.ts'

const table = referenceTable('across_grooves')
const mm = 1e-3

const inModel = (row: Row) => {
  const { turf, k } = tableTurf(row, 'spread_mm')
  const found = acrossGrooves({
    surface: {
      kind: 'grooved',
      pitch: metresOf(row, 'pitch_mm'),
      land: metresOf(row, 'land_mm'),
      depth: metresOf(row, 'depth_mm'),
    },
    turf,
    sinkage: metresOf(row, 'sinkage_mm'),
  })
  return { found, k }
}

// Source: test/reference/data/across_grooves.csv, scipy 1.10.1, quadrature of the first integral.
describe('published values of one period of land and gap', () => {
  test('the table has 400 rows with the floor free and touched', () => {
    expect(table.length).toBe(400)
    expect(new Set(table.map(row => row.floor_touched))).toEqual(new Set(['0', '1']))
  })

  test.each(['n=0.6', 'n=1', 'n=1.4', 'hyp Hs=15'])('mean pressure, law %s', law => {
    const rows = table.filter(row => row.law === law)
    expect(rows.length).toBeGreaterThan(90)
    for (const row of rows) {
      const { found, k } = inModel(row)
      expectNear(
        found.meanPressure / k,
        numberOf(row, 'mean_pressure_over_k'),
        stated(1e-7),
        JSON.stringify(row),
      )
    }
  })

  test.each(['n=0.6', 'n=1', 'n=1.4', 'hyp Hs=15'])('lowest sinkage of the mat, law %s', law => {
    for (const row of table.filter(row => row.law === law)) {
      const { found } = inModel(row)
      const lowest = numberOf(row, 'lowest_mat_sinkage_mm')
      // beside a mat nearly at rest the table's own search stops at 1e-13 of the logarithm: relative all the same
      expectNear(found.lowestSinkage / mm, lowest, stated(1e-7), JSON.stringify(row))
      expectNear(
        found.relief / mm,
        numberOf(row, 'sinkage_mm') - lowest,
        ofSize(numberOf(row, 'sinkage_mm'), stated(1e-7)),
        JSON.stringify(row),
      )
    }
  })

  test('the floor is touched where the table says so', () => {
    const differing = table.filter(
      row => (inModel(row).found.floor === 'touching') !== (row.floor_touched === '1'),
    )
    expect(differing).toEqual([])
  })
})
