import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import {
  InputError,
  press,
  readScenario,
  type Scenario,
  sentence,
  settle,
  unitFromScales,
} from '@swardsink/model'
import { beforeAll, describe, expect, test } from 'vitest'
import { fileWith } from '../../support/arbitraryScenario.ts'
import { buildStale } from '../../support/servedPage.ts'

const program = fileURLToPath(new URL('../../../packages/model/bin/swardsink.js', import.meta.url))
const mm = 1e-3

beforeAll(() => buildStale('model'), 120_000)

const law = 'turfs.beech lawn (invented).law'
const scales = { 'unit.body': undefined, 'unit.scales': { total_kg: 27.8, front_kg: 5.1 } }

type Bad = {
  readonly changes: Readonly<Record<string, unknown>>
  /** What the library is asked, where the file's parts are made in code. */
  readonly ask: (scenario: Scenario) => unknown
  readonly quantity: string
  readonly sentence: string
}

const settled = (scenario: Scenario, change: Partial<Scenario['unit']>) => {
  const turf = scenario.turfs[scenario.turf] ?? expect.fail(scenario.turf)
  return settle({ unit: { ...scenario.unit, ...change }, turf, condition: { kind: 'standing' } })
}

const bads: Readonly<Record<string, Bad>> = {
  'a mass below zero': {
    changes: { 'rollers.waisted.mass_kg': -5.2 },
    ask: scenario => settled(scenario, { frontRoller: { ...scenario.unit.frontRoller, mass: -5.2 } }),
    quantity: 'unit.frontRoller.mass',
    sentence: 'rollers.waisted.mass_kg: expected at least 0 kg, received -5.2 kg',
  },
  'a land wider than the pitch': {
    changes: { 'rollers.waisted.surface.land_mm': 13.5 },
    ask: scenario =>
      settled(scenario, {
        frontRoller: {
          ...scenario.unit.frontRoller,
          surface: { kind: 'grooved', pitch: 13 * mm, land: 13.5 * mm, depth: 4.5 * mm },
        },
      }),
    quantity: 'unit.frontRoller.surface.land',
    sentence: 'rollers.waisted.surface.land_mm: expected at most the pitch, 13 mm, received 13.5 mm',
  },
  'a locking depth above the softness': {
    changes: { [`${law}.lockingDepth_mm`]: 0.4 },
    ask: ({ unit }) =>
      settle({
        unit,
        turf: { law: { kind: 'stiffening', softness: 0.44 * mm, lockingDepth: 0.4 * mm } },
        condition: { kind: 'standing' },
      }),
    quantity: 'turf.law.lockingDepth',
    sentence: `${law}.lockingDepth_mm: expected more than 0.44 mm, the softness, received 0.4 mm`,
  },
  'an edge behind the rear roller': {
    changes: { 'unit.edge_mm': 190 },
    ask: scenario => settled(scenario, { edge: 190 * mm }),
    quantity: 'unit.edge',
    sentence: 'unit.edge_mm: expected more than 0 mm and less than 188 mm, the wheelbase, received 190 mm',
  },
  'a roller heavier than its scale says': {
    changes: scales,
    ask: ({ unit }) =>
      unitFromScales({
        total: 27.8,
        front: 5.1,
        rollers: { front: unit.frontRoller, rear: unit.rearRoller },
        wheelbase: unit.wheelbase,
        edge: unit.edge,
        benchHeight: unit.benchHeight,
      }),
    quantity: 'scales.front',
    sentence: "unit.scales.front_kg: expected more than the front roller's own 5.2 kg, received 5.1 kg",
  },
}

describe.each(Object.entries(bads))('%s', (_, { changes, ask, quantity, sentence: said }) => {
  test('is refused by the library, by name', async () => {
    const reading = await readScenario(fileWith())
    if (!reading.ok) return expect.fail(JSON.stringify(reading.problems))
    expect(() => ask(reading.scenario)).toThrow(InputError)
    expect(() => ask(reading.scenario)).toThrow(expect.objectContaining({ quantity }))
  })

  test('is a problem of the file, at its place in the file', async () => {
    const reading = await readScenario(fileWith(changes))
    if (reading.ok) return expect.fail('read')
    expect(reading.problems.map(sentence)).toEqual([said])
  })

  test('is one sentence of the command line and exit code 1', () => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [program, 'settle', '-'], {
      encoding: 'utf8',
      input: JSON.stringify(fileWith(changes)),
    })
    expect([status, stdout, stderr]).toEqual([1, '', `${said}\n`])
  })
})

test('a load that bottoms the turf out is an outcome with a sentence, not a mistake', async () => {
  const reading = await readScenario(fileWith())
  if (!reading.ok) return expect.fail(JSON.stringify(reading.problems))
  const { unit, turfs, turf, condition } = reading.scenario
  const here = turfs[turf] ?? expect.fail(turf)
  const pressed = press({ roller: unit.rearRoller, turf: here, load: 5e5, condition })
  expect(pressed).toMatchObject({
    outcome: 'bottomed out',
    where: 'roller',
    load: 5e5,
    lockingDepth: 5.2 * mm,
  })
  if (pressed.outcome === 'settled') return expect.fail('settled')
  expect(sentence(pressed)).toMatch(
    /^the turf bottoms out under the roller: 500000 N would press it to within 1 % of its locking depth, 5.2 mm/,
  )
  const heavy = settle({ unit: { ...unit, body: { ...unit.body, mass: 9000 } }, turf: here, condition })
  expect(heavy.outcome).toBe('bottomed out')
})
