import {
  loadAt,
  type PressureLaw,
  press,
  pressureAt,
  type Roller,
  sentence,
  sinkageAt,
  slopeAt,
  softnessOf,
  turfProblems,
  withSoftness,
  workTo,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { derivative, doubleExponential } from '../../support/referenceQuadrature.ts'
import { metresOf, numberOf, type Row, referenceTable } from '../../support/referenceTables.ts'
import { expectNear, identity, solver, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const standing = { kind: 'standing' } as const
const smooth: Roller = { mass: 6.4, diameter: 62 * mm, length: 0.54, surface: { kind: 'smooth' } }
const grooved: Roller = {
  ...smooth,
  surface: { kind: 'grooved', pitch: 11 * mm, land: 4 * mm, depth: 5 * mm },
}

const linear = (softness: number): PressureLaw => ({ kind: 'linear', softness })
const layered = (upper: PressureLaw, lower: PressureLaw): PressureLaw => ({ kind: 'layered', upper, lower })
const stiffening = (softness: number, lockingDepth: number): PressureLaw => ({
  kind: 'stiffening',
  softness,
  lockingDepth,
})
const power = (softness: number, exponent: number): PressureLaw => ({ kind: 'power', softness, exponent })

function layerOf(row: Row, name: 'upper' | 'lower'): PressureLaw {
  const softness = metresOf(row, `${name}_s`)
  const kind = row[name]
  if (kind === 'linear') return linear(softness)
  if (kind === 'power') return power(softness, numberOf(row, `${name}_extra`))
  const lockingDepth = metresOf(row, `${name}_extra`)
  return kind === 'stiffening'
    ? stiffening(softness, lockingDepth)
    : { kind: 'logarithmic', softness, lockingDepth }
}

// test/reference/data/layered.csv, by scipy's brentq and quad: test/reference/generate/layered.py
describe('published values: two layers by scipy’s root finder', () => {
  const rows = referenceTable('layered')
  test('are twenty', () => expect(rows).toHaveLength(20))

  test.each(rows.map(row => [`${row.upper} over ${row.lower} at ${row.z} mm`, row] as const))(
    '%s',
    (_, row) => {
      const law = layered(layerOf(row, 'upper'), layerOf(row, 'lower'))
      const z = metresOf(row, 'z')
      const kPa = 1e3
      expectNear(pressureAt(law, z), numberOf(row, 'pressure') * kPa, stated(1e-11))
      expectNear(workTo(law, z), numberOf(row, 'work'), stated(1e-11))
      expectNear(sinkageAt(law, numberOf(row, 'pressure') * kPa), z, stated(1e-11))
      const loaded = loadAt({ roller: smooth, turf: { law }, sinkage: z, condition: standing })
      if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
      expectNear(loaded.lineLoad / 2, numberOf(row, 'side_R31'), stated(1e-9))
    },
  )
})

describe('limits', () => {
  const pressing = (law: PressureLaw, roller: Roller, spread: number) => {
    const pressed = press({ roller, turf: { law, spread, rebound: 0.7 }, load: 170, condition: standing })
    return pressed.outcome === 'settled' ? pressed : expect.fail(sentence(pressed))
  }

  test('two equal linear layers are one of twice the softness', () => {
    const two = layered(linear(0.4 * mm), linear(0.4 * mm))
    for (const roller of [smooth, grooved])
      for (const spread of [0, 2 * mm]) {
        const [one, other] = [pressing(two, roller, spread), pressing(linear(0.8 * mm), roller, spread)]
        expectNear(one.sinkage, other.sinkage, solver)
        expectNear(one.stiffness, other.stiffness, solver)
        expectNear(one.relief, other.relief, solver)
      }
  })

  test('a layer of vanishing softness disappears', () => {
    for (const law of [power(0.7 * mm, 0.55), stiffening(0.7 * mm, 3 * mm)]) {
      const misses = [1e-3, 1e-4, 1e-5].map(part => {
        const thin = layered(law, linear(part * mm))
        return Math.abs(pressing(thin, smooth, 2 * mm).sinkage / pressing(law, smooth, 2 * mm).sinkage - 1)
      })
      expect(misses[0]).toBeLessThan(2e-3)
      // a tenth of the layer, a tenth of the change
      expectNear(misses[1]! / misses[2]!, 10, stated(1e-2))
    }
  })

  test('layers of one shape and ratio are one law: their depths add up', () => {
    const two = layered(stiffening(0.3 * mm, 1.5 * mm), stiffening(0.5 * mm, 2.5 * mm))
    const one = stiffening(0.8 * mm, 4 * mm)
    for (const z of [0.01 * mm, 1 * mm, 3.5 * mm]) {
      expectNear(pressureAt(two, z), pressureAt(one, z), identity)
      expectNear(slopeAt(two, z), slopeAt(one, z), identity)
      expectNear(workTo(two, z), workTo(one, z), identity)
    }
    for (const spread of [0, 3 * mm])
      expectNear(
        pressing(two, grooved, spread).sinkage,
        pressing(one, grooved, spread).sinkage,
        stated(1e-10),
      )
  })

  test('which layer lies above makes no difference, nor how they are bracketed', () => {
    const [a, b, c] = [linear(0.2 * mm), power(0.3 * mm, 0.7), stiffening(0.4 * mm, 2 * mm)]
    const z = 0.9 * mm
    const expected = pressureAt(layered(a, layered(b, c)), z)
    for (const law of [layered(layered(c, a), b), layered(b, layered(c, a))])
      expectNear(pressureAt(law, z), expected, identity)
  })
})

describe('dimensions', () => {
  const law = layered(power(0.5 * mm, 0.6), stiffening(0.3 * mm, 1 * mm))

  test('slope and work belong to the pressure', () => {
    for (const z of [0.02 * mm, 0.4 * mm, 1.2 * mm, 1.9 * mm]) {
      expectNear(
        derivative(x => pressureAt(law, x), z, 1e-3 * z),
        slopeAt(law, z),
        stated(1e-7),
      )
      expectNear(
        doubleExponential(x => pressureAt(law, x), 0, z),
        workTo(law, z),
        stated(1e-11),
      )
      expectNear(sinkageAt(law, pressureAt(law, z)), z, identity)
    }
  })

  test('softnesses add up, and another softness stretches every layer', () => {
    expectNear(softnessOf(law), 0.8 * mm, identity)
    const turf = withSoftness({ law }, 1.6 * mm)
    expectNear(softnessOf(turf.law), 1.6 * mm, identity)
    for (const z of [0.1 * mm, 1 * mm])
      expectNear(pressureAt(turf.law, 2 * z), pressureAt(law, z), identity, `${z}`)
  })

  test('rescaling the metre changes nothing', () => {
    const scaled = layered(power(50 * mm, 0.6), stiffening(30 * mm, 100 * mm))
    expectNear(pressureAt(scaled, 130 * mm), pressureAt(law, 1.3 * mm), identity)
  })
})

describe('locking', () => {
  const thatch = layered(stiffening(0.5 * mm, 1 * mm), linear(0.3 * mm))

  test('a layer pressed past 0.99 of its own depth bottoms out', () => {
    // k H²/(1 − z/H) at 0.99 H: 10 kPa (1 − 0.5)/0.5 × 0.99/0.01 = 990 kPa, at which the lower layer gives 29.7 mm
    const limit = 0.99 * mm + 0.3 * mm * 99
    const at = (sinkage: number) =>
      loadAt({ roller: smooth, turf: { law: thatch }, sinkage, condition: standing })
    expect(at(limit * (1 - 1e-9)).outcome).toBe('settled')
    expect(at(limit * (1 + 1e-9)).outcome).toBe('bottomed out')
  })

  test('is cautioned by the part of the layer’s own depth', () => {
    const z1 = 0.92 * mm
    const z = sinkageAt(thatch, pressureAt(stiffening(0.5 * mm, 1 * mm), z1))
    const loaded = loadAt({ roller: smooth, turf: { law: thatch }, sinkage: z, condition: standing })
    const caution = loaded.cautions.find(({ kind }) => kind === 'near locking')
    expectNear(caution?.value ?? Number.NaN, 0.92, identity)
  })

  test('too much load is an outcome with the load', () => {
    const law = layered({ kind: 'logarithmic', softness: 0.3 * mm, lockingDepth: 1 * mm }, linear(0.05 * mm))
    const pressed = press({ roller: smooth, turf: { law, spread: 1 * mm }, load: 4000, condition: standing })
    expect(pressed.outcome).toBe('bottomed out')
  })
})

describe('refuses', () => {
  const problems = (law: unknown) => turfProblems({ law: law as PressureLaw }, 'turf').map(sentence)

  test('a layer with problems of its own, at its place', () => {
    expect(problems(layered(linear(-1), power(1 * mm, 9)))).toEqual([
      'turf.law.upper.softness: expected more than 0 mm, received -1000 mm',
      'turf.law.lower.exponent: expected at least 0.2 and at most 2, received 9',
    ])
  })

  test('a missing layer', () => {
    expect(problems({ kind: 'layered', upper: linear(1 * mm) })).toEqual([
      'turf.law.lower: expected a law, received nothing',
    ])
  })

  test('layers without end', () => {
    let law = linear(1 * mm)
    for (let i = 0; i < 1000; i++) law = layered(law, linear(1 * mm))
    expect(problems(law)).toEqual(['turf.law: expected layers nested at most 6 deep, received more'])
    const ring: Record<string, unknown> = { kind: 'layered', upper: linear(1 * mm) }
    ring.lower = ring
    expect(problems(ring)).toHaveLength(1)
  })
})
