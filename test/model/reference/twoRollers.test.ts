import { type Roller, settle, type Turf, type Unit } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { metresOf, numberOf, type Row, referenceTable } from '../../support/referenceTables.ts'
import { expectNear, stated } from '../../support/tolerance.ts'

const table = referenceTable('two_rollers')
const mm = 1e-3
const close = stated(1e-7)

/** Pressure at which softness is told, in the table's N/mm². */
const REFERENCE = 0.01

function turfOf(row: Row): Turf {
  const exponent = numberOf(row, 'n')
  return {
    law: { kind: 'power', exponent, softness: (REFERENCE / numberOf(row, 'k')) ** (1 / exponent) * mm },
  }
}

function unitOf(row: Row): Unit {
  const roller = (end: 'f' | 'r'): Roller => ({
    mass: numberOf(row, `m${end}`),
    diameter: 2 * metresOf(row, `R${end}`),
    length: metresOf(row, `b${end}`),
    surface: { kind: 'smooth' },
  })
  return {
    wheelbase: metresOf(row, 'B'),
    edge: metresOf(row, 'c'),
    benchHeight: metresOf(row, 'he'),
    frontRoller: roller('f'),
    rearRoller: roller('r'),
    body: { mass: numberOf(row, 'mb'), at: metresOf(row, 'xg'), height: metresOf(row, 'hg') },
  }
}

function settledOf(row: Row, how: { balance: 'level' | 'tilted'; arc: 'parabola' | 'circle' }) {
  const settled = settle({ unit: unitOf(row), turf: turfOf(row), condition: { kind: 'standing' }, ...how })
  if (settled.outcome !== 'settled') return expect.fail(settled.outcome)
  return settled
}

// Source: test/reference/data/two_rollers.csv, scipy 1.10.1, fsolve on the whole unit; run again with scipy 1.17.1.
describe('published values of a unit on two rollers', () => {
  test('the table has five units', () => expect(table.length).toBe(5))

  test.each(table)('level statics, parabola: unit $case', row => {
    const { front, rear, drop } = settledOf(row, { balance: 'level', arc: 'parabola' })
    expectNear(front.load, numberOf(row, 'Wf'), close)
    expectNear(rear.load, numberOf(row, 'Wr'), close)
    expectNear(front.sinkage / mm, numberOf(row, 'zf'), close)
    expectNear(rear.sinkage / mm, numberOf(row, 'zr'), close)
    expectNear(drop.middle / mm, numberOf(row, 'drop'), close)
  })

  test.each(table)('level statics, true circle: unit $case', row => {
    const { front, rear, drop } = settledOf(row, { balance: 'level', arc: 'circle' })
    expectNear(front.sinkage / mm, numberOf(row, 'zf_arc'), close)
    expectNear(rear.sinkage / mm, numberOf(row, 'zr_arc'), close)
    expectNear(drop.middle / mm, numberOf(row, 'drop_arc'), close)
  })

  test.each(table)('tilted balance, true circle, drop by exact rotation: unit $case', row => {
    const { front, rear, drop, pitch } = settledOf(row, { balance: 'tilted', arc: 'circle' })
    expectNear(front.load, numberOf(row, 'Wf_full'), close)
    expectNear(rear.load, numberOf(row, 'Wr_full'), close)
    expectNear(front.sinkage / mm, numberOf(row, 'zf_full'), close)
    expectNear(rear.sinkage / mm, numberOf(row, 'zr_full'), close)
    expectNear((pitch * 180) / Math.PI, numberOf(row, 'pitch_deg'), close)
    expectNear(drop.middle / mm, numberOf(row, 'drop_full'), close)
  })
})
