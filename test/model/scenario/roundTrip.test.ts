import { readScenario, type Scenario, scenarioProblems, writeScenario } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded, scenarios } from '../../support/arbitraries.ts'

const systems = ['metric', 'US', 'SI'] as const

/** Without the prototypes and missing members a generator leaves behind. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

const read = async (value: unknown): Promise<Scenario> => {
  const reading = await readScenario(value)
  return reading.ok ? reading.scenario : expect.fail(JSON.stringify(reading.problems))
}

describe('a scenario written and read again', () => {
  test.each(systems)('is the same to the last bit in %s units', async units => {
    await fc.assert(
      fc.asyncProperty(scenarios, async scenario => {
        const sound = plain(scenario) as Scenario
        fc.pre(scenarioProblems(sound).length === 0)
        const text = JSON.stringify(writeScenario(sound, { units }))
        expect(plain(await read(JSON.parse(text)))).toEqual(sound)
      }),
      bounded(150),
    )
  })

  test('is metric unless asked otherwise', async () => {
    await fc.assert(
      fc.asyncProperty(scenarios, async scenario => {
        fc.pre(scenarioProblems(scenario).length === 0)
        expect(writeScenario(scenario)).toEqual(writeScenario(scenario, { units: 'metric' }))
      }),
      bounded(20),
    )
  })

  test('keeps every unit suffix it writes to one a number', () => {
    fc.assert(
      fc.property(scenarios, scenario => {
        for (const units of systems) {
          const { unit } = plain(writeScenario(scenario, { units })) as { unit: Record<string, unknown> }
          const names = Object.keys(unit).map(key => key.split('_')[0])
          expect(new Set(names).size).toBe(names.length)
        }
      }),
      bounded(30),
    )
  })
})
