import { press, pressPlate, readScenario, sentence, settle, type Turf, writeScenario } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded, scenarios, units } from '../../support/arbitraries.ts'

/** Linear springs, fitted between 5 and 20 kPa. */
const turf: Turf = { law: { kind: 'linear', softness: 1e-3 }, fittedFrom: 5e3, fittedTo: 20e3 }
const kindsUnder = (pressure: number) =>
  pressPlate({ plate: { diameter: 0.05 }, turf, load: (pressure * Math.PI * 0.05 ** 2) / 4 }).cautions.map(
    ({ kind }) => kind,
  )

describe('outside the pressures a turf was fitted at', () => {
  test('a plate is marked above them and below them, and nowhere between', () => {
    expect(kindsUnder(20.2e3)).toEqual(['extrapolated'])
    expect(kindsUnder(19.8e3)).toEqual([])
    expect(kindsUnder(5.05e3)).toEqual([])
    expect(kindsUnder(4.95e3)).toEqual(['below the fitted pressures'])
  })

  test('a roller is marked by the pressure under its axis', () => {
    const roller = { mass: 5, diameter: 0.06, length: 0.5, surface: { kind: 'smooth' } } as const
    const under = (load: number) =>
      press({ roller, turf, load, condition: { kind: 'standing' } }).cautions.map(({ kind }) => kind)
    expect(under(300)).toContain('extrapolated')
    expect(under(100)).toEqual([])
    expect(under(5)).toEqual(['below the fitted pressures'])
  })

  test('a unit says under which roller', () => {
    fc.assert(
      fc.property(units, unit => {
        const narrow = { ...turf, fittedFrom: 0, fittedTo: 1 }
        const settled = settle({ unit, turf: narrow, condition: { kind: 'standing' } })
        const places = settled.cautions.filter(({ kind }) => kind === 'extrapolated').map(one => one.where)
        expect(places).toEqual(['front roller', 'rear roller'])
      }),
      bounded(20),
    )
  })

  test('the sentence tells both pressures', () => {
    const [caution] = pressPlate({ plate: { diameter: 0.05 }, turf, load: 1 }).cautions
    expect(caution && sentence(caution)).toMatch(/from 5 kPa up; it is pressed with 0.509 kPa/)
  })

  test('a range that ends below where it starts is refused', () => {
    expect(() =>
      pressPlate({ plate: { diameter: 0.05 }, turf: { ...turf, fittedTo: 4e3 }, load: 1 }),
    ).toThrow('turf.fittedTo: expected at least 5 kPa, received 4 kPa')
  })

  test('a file keeps them', async () => {
    const scenario = fc.sample(scenarios, { seed: 7, numRuns: 1 })[0]!
    const fitted = { ...scenario, turfs: { ...scenario.turfs, fitted: turf } }
    const read = await readScenario(JSON.parse(JSON.stringify(writeScenario(fitted))))
    expect(read.ok && read.scenario.turfs.fitted).toEqual(turf)
  })
})
