import { patch, type Roller } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { metresOf, numberOf, type Row, referenceTable, tableTurf } from '../../support/referenceTables.ts'
import { expectNear, stated } from '../../support/tolerance.ts'

const table = referenceTable('patch')
const touched = table.filter(row => row.floor_touched === '1')
const mm = 1e-3

function solved(row: Row, cells: number) {
  const { turf, k } = tableTurf(row, 'spread_mm')
  const pitch = metresOf(row, 'pitch_mm')
  const surface = {
    kind: 'grooved',
    pitch,
    land: metresOf(row, 'land_mm'),
    depth: metresOf(row, 'depth_mm'),
  } as const
  const roller: Roller = { mass: 4.2, diameter: 2 * metresOf(row, 'radius_mm'), length: 0.5, surface }
  const found = patch({ roller, turf, sinkage: metresOf(row, 'sinkage_mm'), cells })
  if (found.outcome !== 'settled') return expect.fail(found.outcome)
  return { ...found, perPitch: (found.lineLoad * pitch) / (k * mm * mm) }
}

// Source: test/reference/data/patch.csv, scipy 1.10.1, full two-dimensional solutions with Richardson's extrapolation.
// Every eighth row and all with a touched floor at the full 256 × 256; the whole table on a quarter of that.
describe('published values of the full patch', () => {
  const few = table.filter((row, i) => row.floor_touched === '0' && i % 8 === 0)

  test.each([...touched, ...few])('at 256 cells: $law $pitch_mm/$land_mm l $spread_mm z $sinkage_mm', row => {
    const { perPitch, grooveFloor, cycles } = solved(row, 256)
    expectNear(perPitch, numberOf(row, 'load_per_pitch_over_k'), stated(5e-4))
    expect(grooveFloor).toBe(row.floor_touched === '1' ? 'touching' : 'free')
    expect(cycles).toBeLessThanOrEqual(10)
  })

  test('at 64 cells every row is as near as its own mesh error says', () => {
    for (const row of table) {
      const { perPitch, meshError } = solved(row, 64)
      // the table itself agrees to 1e-4, to 3e-4 for n = 0.7 with pitch 30 and spread up to 1 (its README)
      const loose = row.law === 'n=0.7' && row.pitch_mm === '30' && numberOf(row, 'spread_mm') <= 1
      expectNear(
        perPitch,
        numberOf(row, 'load_per_pitch_over_k'),
        stated(meshError + (loose ? 3e-4 : 1e-4)),
        JSON.stringify(row),
      )
    }
  })
})
