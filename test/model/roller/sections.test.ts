import {
  compareRollers,
  headland,
  press,
  type Roller,
  readScenario,
  rollerProblems,
  type Scenario,
  type Turf,
  type Unit,
  writeScenario,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { sameRoller } from '../../../packages/model/src/study/swapRoller.ts'

const mm = 1e-3
const roller: Roller = {
  mass: 4.2,
  diameter: 0.058,
  length: 0.53,
  surface: { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 5 * mm },
}
const parted: Roller = { ...roller, sections: 3, buildUp: 0.4 * mm, runout: 0.05 * mm }
const turf: Turf = { law: { kind: 'linear', softness: 0.8 * mm }, spread: 2 * mm, rebound: 0.6 }
const unit: Unit = {
  wheelbase: 0.19,
  edge: 0.1,
  benchHeight: 5 * mm,
  frontRoller: roller,
  rearRoller: { ...roller, surface: { kind: 'smooth' } },
  body: { mass: 24, at: 0.1, height: 0.07 },
}
const condition = { kind: 'mowing', speed: 1.3 } as const

describe('sections', () => {
  test('never change the sinkage', () => {
    const pressed = (one: Roller) => press({ roller: one, turf, load: 150, condition })
    expect(pressed({ ...roller, sections: 3 })).toEqual(pressed(roller))
  })

  test('change how far a roller slides on a headland turn, as a comparison of rollers tells', () => {
    const rows = compareRollers({
      unit,
      rollers: { whole: roller, parted: { ...roller, sections: 3 } },
      turf,
      condition,
      headlandRadius: 2.5,
    })
    for (const row of rows) {
      if (row.outcome !== 'settled') return expect.fail(row.outcome)
      expect(row.sliding).toEqual(headland({ roller: row.roller, load: row.frontLoad, radius: 2.5 }))
    }
    const means = rows.map(row => (row.outcome === 'settled' ? row.sliding?.mean : undefined))
    expect(means[0]).toBeGreaterThan(2.9 * (means[1] ?? Number.NaN))
  })

  test('slide with the load of the roller that is compared, front or rear', () => {
    const [row] = compareRollers({
      unit,
      rollers: { other: unit.rearRoller },
      turf,
      condition,
      position: 'rear',
      headlandRadius: 2.5,
    })
    if (row?.outcome !== 'settled') return expect.fail(row?.outcome)
    expect(row.sliding).toEqual(headland({ roller: row.roller, load: row.rearLoad, radius: 2.5 }))
  })

  test('without a turn no sliding is told', () => {
    const [row] = compareRollers({ unit, rollers: { one: roller }, turf, condition })
    expect(row && 'sliding' in row).toBe(false)
  })
})

describe('what a roller carries with it', () => {
  test('tells it from another of the same sizes', () => {
    expect(sameRoller(roller, { ...roller, sections: 1, buildUp: 0, runout: 0 })).toBe(true)
    for (const key of ['sections', 'buildUp', 'runout'] as const) {
      const one = { ...roller, [key]: parted[key] }
      expect(sameRoller(roller, one)).toBe(false)
      expect(sameRoller(one, { ...one })).toBe(true)
    }
  })

  test('is written to a file and read back, in every system of units', async () => {
    const scenario: Scenario = { unit, rollers: { parted }, turfs: { plot: turf }, turf: 'plot', condition }
    for (const units of ['metric', 'US', 'SI'] as const) {
      const reading = await readScenario(JSON.parse(JSON.stringify(writeScenario(scenario, { units }))))
      if (!reading.ok) return expect.fail(JSON.stringify(reading.problems))
      expect(reading.scenario.rollers).toEqual({ parted })
    }
  })
})

describe('refuses', () => {
  test.each([
    ['sections', 0],
    ['sections', 2.5],
    ['sections', 1001],
    ['sections', 4_326_942_862_318_266],
    ['sections', Number.NaN],
    ['buildUp', -1 * mm],
    ['runout', -1 * mm],
    ['runout', Number.POSITIVE_INFINITY],
  ] as const)('%s of %d', (key, value) => {
    expect(rollerProblems({ ...roller, [key]: value }, 'roller').map(({ path }) => path)).toEqual([
      `roller.${key}`,
    ])
  })

  test('a turn without a radius', () => {
    expect(() =>
      compareRollers({ unit, rollers: { one: roller }, turf, condition, headlandRadius: 0 }),
    ).toThrow('headlandRadius')
  })
})
