import { pressureAt, readScenario, type Scenario, sentence, settle, writeScenario } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectNear, identity } from '../../support/tolerance.ts'

const mm = 1e-3

const written = (law: unknown) => ({
  unit: {
    wheelbase_mm: 190,
    edge_mm: 105,
    benchHeight_mm: 4,
    frontRoller: 'smooth',
    rearRoller: 'smooth',
    body: { mass_kg: 19.4, at_mm: 92, height_mm: 70 },
  },
  rollers: { smooth: { mass_kg: 4.7, diameter_mm: 58, length_mm: 540, surface: { kind: 'smooth' } } },
  turfs: { green: { law, spread_mm: 2 } },
  turf: 'green',
  condition: { kind: 'standing' },
})

async function read(law: unknown): Promise<Scenario> {
  const reading = await readScenario(written(law))
  return reading.ok ? reading.scenario : expect.fail(reading.problems.map(sentence).join('; '))
}
async function problems(law: unknown): Promise<readonly string[]> {
  const reading = await readScenario(written(law))
  return reading.ok ? [] : reading.problems.map(sentence)
}

const layered = {
  kind: 'layered',
  upper: { kind: 'stiffening', softness_mm: 0.4, lockingDepth_mm: 2 },
  lower: {
    kind: 'layered',
    upper: { kind: 'linear', softness_mm: 0.1 },
    lower: { kind: 'power', softness: 2e-4, exponent: 0.8 },
  },
}
const measured = {
  kind: 'measured',
  points: [
    { sinkage_mm: 0.4, pressure_kPa: 4.1 },
    { sinkage_in: 0.04, pressure_psi: 2.2 },
    { sinkage: 0.0016, pressure: 33e3 },
  ],
}
const formula = {
  kind: 'formula',
  expression: 'k*z/(1 - z/H)',
  values: { k: 1.4e7, H: 0.003 },
  stretch: 1.25,
  deepest_mm: 20,
}
const nested = { kind: 'layered', upper: formula, lower: measured }

describe('laws of more than numbers', () => {
  test.each([
    ['layered', layered],
    ['measured', measured],
    ['formula', formula],
    ['formula over measured', nested],
  ])('%s: what is written reads back to the last bit, in any units', async (_, law) => {
    const scenario = await read(law)
    const settled = settle({ ...scenario, turf: scenario.turfs.green! })
    expect(settled.outcome).toBe('settled')
    for (const units of ['metric', 'US', 'SI'] as const) {
      const file = JSON.parse(JSON.stringify(writeScenario(scenario, { units })))
      const again = await readScenario(file)
      if (!again.ok) return expect.fail(again.problems.map(sentence).join('; '))
      expect(again.scenario, units).toEqual(scenario)
    }
  })

  test('a stretched law stays stretched', async () => {
    const { turfs } = await read(formula)
    const z = 1 * mm
    expectNear(pressureAt(turfs.green!.law, 1.25 * z), (1.4e7 * z) / (1 - z / 0.003), identity)
  })

  test('files keep the expression and its values, never the program', async () => {
    const file = writeScenario(await read(nested))
    expect(JSON.stringify(file)).not.toContain('program')
    expect(JSON.stringify(file)).toContain('k*z/(1 - z/H)')
  })

  test('a program found in a file is passed over and made again', async () => {
    const wrong = { steps: [0, 0], constants: [7], names: [], corners: [], stack: 1 }
    const { turfs } = await read({ ...formula, program: wrong })
    expect(turfs).toEqual((await read(formula)).turfs)
  })
})

describe('refuses, at the place in the file', () => {
  test('an expression that assigns, however deep it stands', async () => {
    const wrong = { ...formula, expression: 'z = 1' }
    expect(await problems({ kind: 'layered', upper: layered, lower: wrong })).toEqual([
      'turfs.green.law.lower.expression: expected names, numbers, brackets and + − × ÷ ^ alone, received "=" at character 3',
    ])
  })

  test('an expression that falls, and a value that is missing', async () => {
    const [said] = await problems({ kind: 'formula', expression: '1e7*z*(1-z/H)', values: { H: 0.01 } })
    expect(said).toMatch(/^turfs\.green\.law\.expression: expected pressure that grows with sinkage at z = 5/)
    expect(await problems({ kind: 'formula', expression: 'k*z' })).toEqual([
      'turfs.green.law.expression: expected z, pi or a name that has a value, received k',
    ])
    expect(await problems({ kind: 'formula' })).toEqual([
      'turfs.green.law.expression: expected an expression in z, received nothing',
    ])
  })

  test('every wrong row of a measured law', async () => {
    const points = [
      { sinkage_mm: 1, pressure_kPa: 5 },
      { sinkage_mm: 'two', pressure_kPa: 6 },
      { pressure: 7e3 },
    ]
    expect(await problems({ kind: 'measured', points })).toEqual([
      'turfs.green.law.points.1.sinkage_mm: expected a number, received "two"',
      'turfs.green.law.points.2.sinkage: expected a number, or sinkage_mm, received nothing',
    ])
    expect(
      await problems({
        kind: 'measured',
        points: [
          { sinkage_mm: 1, pressure_kPa: 5 },
          { sinkage_mm: 1, pressure_kPa: 6 },
        ],
      }),
    ).toEqual([
      'turfs.green.law.points.1.sinkage_mm: expected more than 1 mm: points go deeper one by one, received 1 mm',
    ])
  })

  test('a layer of no known kind, a layer that is missing, and layers without end', async () => {
    const [kind, lower] = await problems({ kind: 'layered', upper: { kind: 'sponge' } })
    expect(kind).toMatch(
      /^turfs\.green\.law\.upper\.kind: expected one of linear, power, .*formula, received "sponge"/,
    )
    expect(lower).toBe('turfs.green.law.lower: expected an object, received nothing')
    let deep: unknown = { kind: 'linear', softness_mm: 1 }
    for (let i = 0; i < 2000; i++)
      deep = { kind: 'layered', upper: deep, lower: { kind: 'linear', softness_mm: 1 } }
    const said = await problems(deep)
    expect(said).toHaveLength(1)
    expect(said[0]).toContain('layers nested at most')
  })
})
