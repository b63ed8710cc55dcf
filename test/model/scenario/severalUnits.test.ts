import {
  InputError,
  matchUnits,
  readScenario,
  type Scenario,
  scenarioProblems,
  settle,
  unitsOf,
  withUnitInHand,
  writeScenario,
} from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded, scenarios } from '../../support/arbitraries.ts'
import { fileWith } from '../../support/arbitraryScenario.ts'

const mm = 1e-3
const one = (fileWith() as { unit: Record<string, unknown> }).unit
const left = { ...one, benchHeight_mm: 5.1 }
const right = { ...one, benchHeight_mm: 5.6, rearRoller: 'plain' }
const several = (changes: Readonly<Record<string, unknown>> = {}) =>
  fileWith({ units: { left, right }, unit: 'left', ...changes })

async function read(file: unknown): Promise<Scenario> {
  const reading = await readScenario(file)
  return reading.ok ? reading.scenario : expect.fail(JSON.stringify(reading.problems))
}

async function sentences(file: unknown): Promise<readonly string[]> {
  const reading = await readScenario(file)
  return reading.ok
    ? []
    : reading.problems.map(({ path, expected, received }) => `${path}: ${expected}, not ${received}`)
}

describe('several units of one machine', () => {
  test('are read by name, and the one in hand is the one named', async () => {
    const scenario = await read(several())
    expect(Object.keys(unitsOf(scenario))).toEqual(['left', 'right'])
    expect(scenario.unitName).toBe('left')
    expect(scenario.unit).toEqual(scenario.units?.left)
    expect(scenario.unit.benchHeight).toBe(5.1 * mm)
    expect(scenario.units?.right?.rearRoller).toEqual(scenario.rollers.plain)
  })

  test('a unit written out on its own has no name and stands alone', async () => {
    const scenario = await read(fileWith())
    expect(unitsOf(scenario)).toEqual({})
    expect('units' in scenario).toBe(false)
    expect('unit' in writeScenario(scenario) && 'units' in writeScenario(scenario)).toBe(false)
  })

  test('keep what was changed on the one put down', async () => {
    const scenario = await read(several())
    const changed = { ...scenario, unit: { ...scenario.unit, benchHeight: 4e-3 } }
    const other = withUnitInHand(changed, 'right')
    expect(other.unit.benchHeight).toBe(5.6 * mm)
    expect(withUnitInHand(other, 'left').unit.benchHeight).toBe(4e-3)
    expect(unitsOf(other).left?.benchHeight).toBe(4e-3)
  })

  test('are written as they stand, also the one in hand', async () => {
    const scenario = await read(several())
    const changed = { ...scenario, unit: { ...scenario.unit, benchHeight: 4e-3 } }
    const again = await read(JSON.parse(JSON.stringify(writeScenario(changed))))
    expect(again.unit).toEqual(changed.unit)
    expect(again.units).toEqual(unitsOf(changed))
  })

  test('know their rollers by the names these have in the rack, also after writing', async () => {
    const scenario = await read(several())
    expect(scenario.unit.fitted).toEqual({ front: 'waisted' })
    expect(scenario.units?.right?.fitted).toEqual({ front: 'waisted', rear: 'plain' })
    const written = writeScenario(scenario) as { units: Record<string, Record<string, unknown>> }
    expect(written.units.right?.rearRoller).toBe('plain')
    expect(await read(JSON.parse(JSON.stringify(written)))).toEqual(scenario)
  })

  test('have a roller written out that is no longer the one of its name', async () => {
    const scenario = await read(several())
    const worn = { ...scenario.unit, frontRoller: { ...scenario.unit.frontRoller, diameter: 0.059 } }
    const again = await read(JSON.parse(JSON.stringify(writeScenario({ ...scenario, unit: worn }))))
    expect(again.unit.frontRoller).toEqual(worn.frontRoller)
    expect(again.unit.fitted).toBeUndefined()
    expect(again.rollers).toEqual(scenario.rollers)
  })

  test('cut at heights that can be matched', async () => {
    const scenario = await read(several())
    const turf = scenario.turfs[scenario.turf] ?? expect.fail('no turf')
    const heights = Object.fromEntries(
      Object.entries(unitsOf(scenario)).map(([name, unit]) => {
        const settled = settle({ unit, turf, condition: scenario.condition })
        return [name, settled.outcome === 'settled' ? settled.effectiveHeight.middle : expect.fail(name)]
      }),
    )
    // half a millimetre on the bench is about that on the turf, twice what is still no difference
    const { pairs, matched } = matchUnits({ heights })
    expect(matched).toBe(false)
    expect(pairs[0]?.difference).toBeGreaterThan(0.25e-3)
  })

  test('taking one in hand and then the other gives the same machine back', () => {
    fc.assert(
      fc.property(scenarios, scenario => {
        const { unitName } = scenario
        fc.pre(unitName !== undefined)
        for (const name of Object.keys(unitsOf(scenario)))
          expect(withUnitInHand(withUnitInHand(scenario, name), unitName ?? '')).toEqual(scenario)
      }),
      bounded(60),
    )
  })
})

describe('what is wrong with several units', () => {
  test.each([
    ['no unit in hand', { unit: undefined }, ['unit: one of "left", "right", not nothing']],
    ['a name that none has', { unit: 'middle' }, ['unit: one of "left", "right", not "middle"']],
    [
      'a name of what no object has of its own',
      { unit: 'constructor' },
      ['unit: one of "left", "right", not "constructor"'],
    ],
    [
      'one written out beside them',
      { unit: one },
      [expect.stringMatching(/^unit: one of "left", "right", not \{/)],
    ],
    [
      'none of them',
      { units: {} },
      ['units: at least one, by name, not none', 'unit: one of the units, not "left"'],
    ],
    [
      'a list in place of names',
      { units: [left] },
      [expect.stringMatching(/^units: an object, not \[/), 'unit: one of the units, not "left"'],
    ],
    [
      'a unit that is not in hand',
      { units: { left, right: { ...right, edge_mm: 300 } } },
      ['units.right.edge_mm: more than 0 mm and less than 188 mm, the wheelbase, not 300 mm'],
    ],
    [
      'a roller that is not in the rack',
      { units: { left, right: { ...right, frontRoller: 'stout' } } },
      ['units.right.frontRoller: a roller or one of "waisted", "plain", not "stout"'],
    ],
  ])('is told with its place: %s', async (_what, changes, expected) => {
    expect(await sentences(several(changes))).toEqual(expected)
  })

  test('a name without units is no unit', async () => {
    expect(await sentences(fileWith({ unit: 'left' }))).toEqual(['unit: an object, not "left"'])
  })

  test('is found in a scenario made in code, too', async () => {
    const scenario = await read(several())
    const { units: _, ...nameless } = scenario
    expect(scenarioProblems(nameless).map(({ path }) => path)).toEqual(['units'])
    expect(scenarioProblems({ ...scenario, unitName: 'middle' }).map(({ path }) => path)).toEqual([
      'unitName',
    ])
    const bad = { ...scenario.unit, benchHeight: -1 }
    const worse = { ...scenario, units: { ...scenario.units, right: bad } }
    expect(scenarioProblems(worse).map(({ path }) => path)).toEqual(['units.right.benchHeight'])
    expect(() => withUnitInHand(scenario, 'middle')).toThrow(InputError)
  })
})
