import { InputError, press, pressureAt, type Roller, turfFromBekker } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectNear, expectPrinted, identity, solver } from '../../support/tolerance.ts'

// Source: Wong, Theory of Ground Vehicles, table 2.3, as copied in open code citing the 2008 edition;
// p in kPa, z in m, k_c in kN/m^(n+1), k_φ in kN/m^(n+2).
const terrains = {
  'dry sand (LLL)': [1.1, 0.99, 1528.43],
  'sandy loam 15 % water (LLL)': [0.7, 5.27, 1515.04],
  'sandy loam 11 % (Michigan)': [0.9, 52.53, 1127.97],
  'clayey soil 38 % (Thailand)': [0.5, 13.19, 692.15],
  'LETE sand': [0.79, 102, 5301],
  'Rubicon sandy loam 43 %': [0.66, 6.9, 752],
  'Grenville loam 24 %': [1.01, 0.06, 5880],
} as const

type Terrain = keyof typeof terrains
const kilo = 1e3

const turfOn = (name: Terrain, width: number) => {
  const [exponent, kc, kPhi] = terrains[name]
  return turfFromBekker({ kc: kc * kilo, kPhi: kPhi * kilo, exponent, width })
}

describe('published values of soils', () => {
  test.each(Object.keys(terrains) as Terrain[])('%s: p = (k_c/b + k_φ) zⁿ', name => {
    const [n, kc, kPhi] = terrains[name]
    for (const width of [0.05, 0.3, 1])
      for (const z of [0.001, 0.02, 0.2]) {
        const { law, spread } = turfOn(name, width)
        expectNear(pressureAt(law, z) / kilo, (kc / width + kPhi) * z ** n, identity)
        expect(spread).toBe(0)
      }
  })

  // Source: Wong, 3rd ed., example 2.2 (from memory): 135 kN on 7.2 m²; more digits derived.
  test('a vehicle of 135 kN on 7.2 m² sinks 0.227 m on tracks 1 m wide and 0.226 m on tracks 0.8 m wide', () => {
    const sinks = (width: number) => {
      const { law } = turfFromBekker({ kc: 4.37 * kilo, kPhi: 196.73 * kilo, exponent: 1.6, width })
      const target = (135 * kilo) / 7.2
      let low = 0
      let high = 1
      for (let turn = 0; turn < 60; turn++) {
        const middle = (low + high) / 2
        if (pressureAt(law, middle) < target) low = middle
        else high = middle
      }
      return low
    }
    expectPrinted(sinks(1), '0.227')
    expectPrinted(sinks(0.8), '0.226')
    expectPrinted(sinks(1), '0.226983')
    expectPrinted(sinks(0.8), '0.226216')
  })
})

/** Bekker's own formulas for a rigid wheel: for comparison, never in the model. */
function bekker(name: Terrain, load: number, width: number, diameter: number) {
  const [n, kc, kPhi] = terrains[name]
  const stiffness = (kc + width * kPhi) * kilo
  const z = ((3 * load) / ((3 - n) * stiffness * Math.sqrt(diameter))) ** (2 / (2 * n + 1))
  return { z, resistance: (stiffness * z ** (n + 1)) / (n + 1) }
}

// Source: reference values of this project, derived: Bekker's formula and the exact integral beside it.
describe('published values of a rigid wheel that gets nothing back', () => {
  const cases = [
    ['dry sand (LLL)', 100, 0.5, 0.0762, '11.1175', '10.9520', '28.7194', '27.8287'],
    ['LETE sand', 100, 0.5, 0.0762, '1.2433', '1.2798', '9.6871', '10.2014'],
    ['Rubicon sandy loam 43 %', 100, 0.5, 0.0762, '3.0625', '3.2014', '15.4830', '16.6664'],
    ['sandy loam 15 % water (LLL)', 1000, 0.2, 0.6, '13.0161', '13.5454', '113.0078', '120.9313'],
  ] as const

  test.each(cases)(
    '%s, %f N, width %f m, diameter %f m',
    (name, load, width, diameter, zBekker, z, fBekker, f) => {
      const roller: Roller = { mass: 4.2, diameter, length: width, surface: { kind: 'smooth' } }
      const turf = { ...turfOn(name, width), rebound: 0 }
      const pressed = press({ roller, turf, load, condition: { kind: 'mowing', speed: 1.2 } })
      if (pressed.outcome !== 'settled') return expect.fail(pressed.outcome)
      expectPrinted(pressed.sinkage * 1e3, z)
      expectPrinted(pressed.resistance, f)
      expect(pressed.lengthBehind).toBe(0)
      const formula = bekker(name, load, width, diameter)
      expectPrinted(formula.z * 1e3, zBekker)
      expectPrinted(formula.resistance, fBekker)
    },
  )

  test("for exponent one Bekker's formula is the exact integral", () => {
    const load = 130
    const soil = { kc: 2e3, kPhi: 9e5, exponent: 1, width: 0.4 }
    const roller: Roller = { mass: 4.2, diameter: 0.07, length: 0.4, surface: { kind: 'smooth' } }
    const turf = { ...turfFromBekker(soil), rebound: 0 }
    const pressed = press({ roller, turf, load, condition: { kind: 'mowing', speed: 1.2 } })
    if (pressed.outcome !== 'settled') return expect.fail(pressed.outcome)
    const stiffness = soil.kc + soil.width * soil.kPhi
    expectNear(pressed.sinkage, ((3 * load) / (2 * stiffness * Math.sqrt(0.07))) ** (2 / 3), solver)
    expectNear(pressed.resistance, (stiffness * pressed.sinkage ** 2) / 2, identity)
  })
})

describe('refuses', () => {
  const soil = { kc: 1e3, kPhi: 1e6, exponent: 1, width: 0.1 }
  test.each([
    ['a width of nothing', { ...soil, width: 0 }, 'width'],
    ['a stiffness below zero', { ...soil, kPhi: -2e4 }, 'kc/width + kPhi'],
    ['an exponent beyond 2', { ...soil, exponent: 2.1 }, 'law.exponent'],
    ['a number that is none', { ...soil, kc: Number.NaN }, 'kc'],
  ])('%s', (_, wrong, quantity) => {
    expect(() => turfFromBekker(wrong)).toThrow(InputError)
    expect(() => turfFromBekker(wrong)).toThrow(expect.objectContaining({ quantity }))
  })
})

test('the load of a plate as wide as the turf was made for counts its edges in', () => {
  // Bekker's form is the linear form with spread in other words: k_c = 2 l k_φ
  const [width, kPhi, spread] = [0.06, 1e6, 0.004]
  const { law } = turfFromBekker({ kc: 2 * spread * kPhi, kPhi, exponent: 1, width })
  expectNear(pressureAt(law, 0.002) * width, kPhi * 0.002 * (width + 2 * spread), identity)
})
