import { describe, expect, it } from 'vitest'
import { readingRows } from '../../../packages/explorer/src/entries/readingRows.ts'
import { expectNear, identity } from '../../support/tolerance.ts'

describe('readings in the answer of another entry', () => {
  it('are its rows, with what is not said left unknown', () => {
    expect(readingRows({ rows: [{ load: 100, sinkage: 1e-3, set: 'A' }] })).toEqual([
      { load: 100, pressure: null, sinkage: 1e-3, set: 'A', roller: null },
    ])
  })

  it('are read from what the model’s own reader makes of a table, too', () => {
    const foot = { kind: 'plate', diameter: 0.1 }
    const readings = [
      {
        set: 'A',
        foot: { kind: 'roller', name: 'peg 1' },
        load: 90,
        measured: { kind: 'sinkage', sinkage: 4e-4 },
      },
      { set: 'A', foot, load: 80, measured: { kind: 'sinkage', sinkage: 3e-4 } },
      { set: 'A', foot: { kind: 'roller', name: null }, load: 90, measured: { kind: 'drop', drop: 4e-4 } },
    ]
    const [roller, plate, ...others] = readingRows({ readings })
    expect(roller).toMatchObject({ load: 90, pressure: null, roller: 'peg 1' })
    expect(plate?.load).toBe(null)
    expectNear(plate?.pressure ?? 0, 80 / (Math.PI * 0.05 ** 2), identity)
    expect(others).toEqual([])
  })

  it.each([
    [null],
    [undefined],
    [7],
    [[]],
    [{}],
    [{ rows: 'many' }],
    [{ rows: [null, 3, { load: Number.NaN }] }],
  ])('are none in %j', answer => {
    expect(readingRows(answer)).toEqual([])
  })
})
