import { laws, readScenario, type Scenario, scenarioProblems, settle } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  fitRoller,
  fittedName,
  presentTurf,
  type QuantitySettable,
  setQuantity,
  settable,
  settableNames,
} from '../../../packages/explorer/src/book/index.ts'
import { expectNear, identity, solver } from '../../support/tolerance.ts'
import { firstBook } from '../entries/firstBook.ts'

const { scenario: first } = await firstBook()

/** Ellerby Hollow (invented): a green of two layers, a box, a cylinder, two units. */
async function machine(): Promise<Scenario> {
  const smooth = { kind: 'smooth' }
  const unit = {
    wheelbase_mm: 190,
    edge_mm: 105,
    benchHeight_mm: 4.1,
    frontRoller: 'peg 1',
    rearRoller: 'rear',
    body: { mass_kg: 18.4, at_mm: 98 },
    loads: [{ name: 'grass box', mass_kg: 2.2, at_mm: -60 }],
  }
  const read = await readScenario({
    units: { left: unit, right: { ...unit, benchHeight_mm: 4.3 } },
    unit: 'left',
    rollers: {
      'peg 1': { mass_kg: 6.2, diameter_mm: 57, length_mm: 560, surface: smooth },
      'peg 2': { mass_kg: 9.4, diameter_mm: 61, length_mm: 560, surface: smooth },
      rear: { mass_kg: 4.2, diameter_mm: 51, length_mm: 560, surface: smooth },
    },
    turfs: {
      'mill green (invented)': {
        law: {
          kind: 'layered',
          upper: { kind: 'stiffening', softness_mm: 0.2, lockingDepth_mm: 3 },
          lower: { kind: 'power', softness_mm: 0.3, exponent: 0.8 },
        },
        rebound: 0.7,
      },
    },
    turf: 'mill green (invented)',
    condition: { kind: 'mowing', speed_kmh: 4 },
  })
  return read.ok ? read.scenario : expect.fail(JSON.stringify(read.problems))
}
const scenario = await machine()

function quantity(name: string): QuantitySettable {
  const of = settable(name)
  return of?.kind === 'quantity' ? of : expect.fail(`${name} is no quantity`)
}
function set(from: Scenario, name: string, value: number): Scenario {
  const done = setQuantity(from, { of: quantity(name), value })
  return done.ok ? done.scenario : expect.fail(JSON.stringify(done.refusal))
}
function refusalOf(from: Scenario, name: string, value: number) {
  const done = setQuantity(from, { of: quantity(name), value })
  return done.ok ? null : done.refusal
}

const quantities = (of: Scenario) =>
  settableNames(of)
    .map(name => settable(name) ?? expect.fail(name))
    .filter(one => one.kind === 'quantity')

describe('everything that can be set', () => {
  it('is found by its name and called by it', () => {
    for (const one of [first, scenario])
      for (const name of settableNames(one)) expect(settable(name)?.name).toBe(name)
  })

  it('reads back what was set, and leaves a scenario that is sound', () => {
    for (const from of [first, scenario])
      for (const of of quantities(from)) {
        const now = of.value(from)
        const value = now === null ? of.line.usual[1] : now
        const next = set(from, of.name, value)
        expectNear(of.value(next) ?? Number.NaN, value, identity, of.name)
        expect(scenarioProblems(next)).toEqual([])
      }
  })

  it('takes any number of its line or says why not, and never throws', () => {
    const all = [first, scenario].flatMap(from => quantities(from).map(of => ({ from, of })))
    fc.assert(
      fc.property(fc.constantFrom(...all), fc.double({ min: -0.5, max: 1.5, noNaN: true }), (one, part) => {
        const { low, high } = one.of.line
        const done = setQuantity(one.from, { of: one.of, value: low + part * (high - low) })
        expect(done.ok ? scenarioProblems(done.scenario) : []).toEqual([])
      }),
      { numRuns: 600 },
    )
  })

  it('can be forgotten again where it need not be known', () => {
    const open = quantities(scenario).filter(of => of.isOpen?.(scenario) && of.value(scenario) === null)
    expect(open.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['body.height', 'wantedHeight', 'turf.thickness', 'loads.grass box.height']),
    )
    for (const of of open) {
      const known = set(scenario, of.name, of.line.usual[1])
      expect(of.unset?.(known)).toEqual(scenario)
    }
  })

  it('has a parameter for every one that a law of the list has', () => {
    for (const { parameters } of Object.values(laws))
      for (const { name } of parameters) expect(settable(`turf.${name}`)?.name).toBe(`turf.${name}`)
  })

  it.each([
    ['turf.colour'],
    ['turfs.mill green (invented)'],
    ['turfs.mill green (invented).middle.softness'],
    ['rollers.peg 1'],
    ['rollers..mass'],
    ['rollers.peg 1.colour'],
    ['loads.grass box.colour'],
    ['constructor'],
    ['unit.constructor'],
  ])('is not %s', name => {
    const of = settable(name)
    if (of?.kind === 'quantity') expect(of.value(scenario)).toBeNull()
    else expect(of).toBeUndefined()
  })
})

describe('a roller of the rack', () => {
  it('is changed on every unit that has it fitted', () => {
    const next = set(scenario, 'rollers.peg 1.buildUp', 0.4e-3)
    expect(next.unit.frontRoller.buildUp).toBe(0.4e-3)
    expect(next.units?.right?.frontRoller.buildUp).toBe(0.4e-3)
    expect(next.unit.rearRoller).toEqual(scenario.unit.rearRoller)
  })

  it('stays the one fitted while its mass passes that of another', () => {
    const twins = set(set(first, 'rollers.peg 2.mass', 6.2), 'frontRoller.mass', 6.4)
    expect(twins.rollers['peg 1']?.mass).toBe(6.4)
    expect(twins.rollers['peg 2']?.mass).toBe(6.2)
    const back = set(set(twins, 'frontRoller.mass', 6.2), 'frontRoller.mass', 6)
    expect(fittedName(back)).toBe('peg 1')
    expect(back.rollers['peg 2']?.mass).toBe(6.2)
    expect(back.unit.frontRoller.mass).toBe(6)
  })

  it('fitted in place of a thinner one, lifts the edge on the bench as the rack says it does', () => {
    const next = fitRoller(scenario, 'front', 'peg 2')
    const { edge, wheelbase, benchHeight } = scenario.unit
    expectNear(next.unit.benchHeight, benchHeight + 2e-3 * (1 - edge / wheelbase), identity)
    expect(next.unit.fitted?.front).toBe('peg 2')
    const behind = fitRoller(scenario, 'rear', 'peg 1')
    expectNear(behind.unit.benchHeight, benchHeight + 3e-3 * (edge / wheelbase), identity)
    const again = fitRoller(next, 'front', 'peg 1')
    expectNear(again.unit.benchHeight, benchHeight, identity)
  })

  it('however thin and short can be given grooves', () => {
    for (const [name, value] of [
      ['rollers.peg 2.length', 3e-3],
      ['rollers.peg 2.diameter', 1e-3],
    ] as const) {
      const small = set(scenario, name, value)
      const surface = settable('rollers.peg 2.surface')
      if (surface?.kind !== 'choice') return expect.fail('no choice of surface')
      expect(scenarioProblems(surface.set(small, 'grooved'))).toEqual([])
    }
  })

  it('is refused where two rollers would touch', () => {
    expect(refusalOf(scenario, 'frontRoller.diameter', 0.34)).toEqual({
      reason: 'rollers touch',
      front: 0.34,
      rear: scenario.unit.rearRoller.diameter,
      wheelbase: scenario.unit.wheelbase,
    })
    expect(refusalOf(scenario, 'rollers.peg 1.diameter', 0.34)?.reason).toBe('rollers touch')
    expect(refusalOf(scenario, 'rollers.peg 2.diameter', 0.34)).toBeNull()
  })
})

describe('a green', () => {
  it('is as soft as its layers together, and each can be set', () => {
    const next = set(scenario, 'turf.upper.softness', 0.5e-3)
    expectNear(quantity('turf.softness').value(next) ?? Number.NaN, 0.8e-3, solver)
    expect(quantity('turfs.mill green (invented).law.upper.softness').value(next)).toBe(0.5e-3)
    expect(quantity('turf.lower.exponent').value(next)).toBe(0.8)
    expect(quantity('turf.exponent').value(next)).toBeNull()
  })

  it('cannot keep for good what is back at once', () => {
    expect(refusalOf(scenario, 'turf.lasting', 0.4)?.reason).toBe('lasting against rebound')
    expect(refusalOf(scenario, 'turf.rebound', 1.2)?.reason).toBe('a share')
    expect(refusalOf(set(scenario, 'turf.lasting', 0.3), 'turf.rebound', 0.8)?.reason).toBe(
      'lasting against rebound',
    )
  })
})

describe('scales', () => {
  it('that read more behind find a heavier body further back', () => {
    const next = set(scenario, 'scales.rear', 18)
    expectNear(quantity('scales.rear').value(next) ?? Number.NaN, 18, solver)
    expectNear(
      quantity('scales.front').value(next) ?? Number.NaN,
      quantity('scales.front').value(scenario) ?? Number.NaN,
      solver,
    )
    const settled = settle({ unit: next.unit, turf: presentTurf(next), condition: next.condition })
    expect(settled.outcome).toBe('settled')
  })
})
