import {
  formulaLaw,
  type PressureLaw,
  pressPlate,
  sentence,
  softnessOf,
  type Turf,
  withSoftness,
  workTo,
} from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { metresOf, numberOf, referenceTable } from '../../support/referenceTables.ts'
import { expectNear, expectPrinted, identity, stated } from '../../support/tolerance.ts'

const mm = 1e-3
type Question = Parameters<typeof pressPlate>[0]
const settled = (question: Question) => {
  const pressed = pressPlate(question)
  return pressed.outcome === 'settled' ? pressed : expect.fail(sentence(pressed))
}
const linear = (softness: number): PressureLaw => ({ kind: 'linear', softness })
const laws: readonly PressureLaw[] = [
  linear(0.8 * mm),
  { kind: 'power', softness: 0.8 * mm, exponent: 0.45 },
  { kind: 'power', softness: 0.8 * mm, exponent: 1.6 },
  { kind: 'stiffening', softness: 0.8 * mm, lockingDepth: 3 * mm },
  { kind: 'logarithmic', softness: 0.8 * mm, lockingDepth: 3 * mm },
  {
    kind: 'layered',
    upper: { kind: 'stiffening', softness: 0.4 * mm, lockingDepth: 1 * mm },
    lower: { kind: 'power', softness: 0.4 * mm, exponent: 0.7 },
  },
  {
    kind: 'measured',
    points: [
      { sinkage: 0.4 * mm, pressure: 4e3 },
      { sinkage: 0.9 * mm, pressure: 11e3 },
      { sinkage: 1.4 * mm, pressure: 30e3 },
    ],
  },
]
const named = laws.map(law => [law.kind === 'power' ? `power ${law.exponent}` : law.kind, law] as const)

describe('published values', () => {
  // 1 + 2 (l/a) K₁/K₀(a/l), K₀ and K₁ the modified Bessel functions
  test.each([
    [1, '3.85925080'],
    [5, '1.43831002'],
    [20, '1.10247020'],
  ])('a round plate on the linear law, a/l = %d: %s', (ratio, bracket) => {
    const [l, s, z] = [1.7 * mm, 0.6 * mm, 0.9 * mm]
    const a = ratio * l
    const { load, pressure } = settled({
      plate: { diameter: 2 * a },
      turf: { law: linear(s), spread: l },
      sinkage: z,
    })
    expectNear(pressure, (10e3 * z) / s, identity)
    expectPrinted(load / (Math.PI * a * a * pressure), bracket)
  })

  // test/reference/data/round_plates.csv, by scipy's solve_bvp: test/reference/generate/round_plates.py
  test.each(
    referenceTable('round_plates').map(row => [`${row.law} ${row.spread} ${row.radius}`, row] as const),
  )('a round plate by scipy: %s', async (_, row) => {
    const extra = numberOf(row, 'extra')
    const softness = 1 * mm
    const written = await formulaLaw({
      expression: '10e3*(z/s + c*(z/s)^2)/(1 + c)',
      values: { s: softness, c: extra },
    })
    if (!written.ok) return expect.fail('refused')
    const law: PressureLaw =
      row.law === 'quadratic'
        ? written.law
        : row.law === 'linear'
          ? linear(softness)
          : {
              kind: row.law === 'stiffening' ? 'stiffening' : 'logarithmic',
              softness,
              lockingDepth: extra * mm,
            }
    const { load } = settled({
      plate: { diameter: 2 * metresOf(row, 'radius') },
      turf: { law, spread: metresOf(row, 'spread') },
      sinkage: metresOf(row, 'z'),
    })
    // kPa × mm² is a thousandth of a newton
    expectNear(load, numberOf(row, 'load') / 1e3, stated(1e-8))
  })
})

describe('limits', () => {
  test.each(named)('%s: the edge of a large round plate is a straight one', (_, law) => {
    const turf = { law, spread: 2 * mm }
    const z = 1 * mm
    const { edgeForce: straight } = settled({ plate: { width: 1, length: 1 }, turf, sinkage: z })
    expectNear(straight, Math.sqrt(2 * (4e-6 * 10e3) * (workTo(law, z) / (0.8 * mm))), stated(0.2))
    const misses = [0.5, 1, 2].map(
      diameter => settled({ plate: { diameter }, turf, sinkage: z }).edgeForce / straight - 1,
    )
    // what is left is the curvature: half of it at twice the size
    expect(misses[2]).toBeLessThan(3e-3)
    expectNear(misses[0]! / misses[1]!, 2, stated(1e-2))
    expectNear(misses[1]! / misses[2]!, 2, stated(5e-3))
  })

  test('a small plate deep inside the spread carries by its edge alone', () => {
    // K₁/K₀(x) → −1/(x ln(x/2) + γ x): the edge's part of the load goes to one
    const { edgeShare } = settled({
      plate: { diameter: 0.02 * mm },
      turf: { law: linear(0.8 * mm), spread: 5 * mm },
      sinkage: 1 * mm,
    })
    expect(edgeShare).toBeGreaterThan(0.9999)
  })

  test.each(named)('%s without spread: load over area is the pressure', (_, law) => {
    for (const plate of [{ diameter: 30 * mm }, { width: 20 * mm, length: 50 * mm }]) {
      const { meanPressure, pressure, edgeForce } = settled({ plate, turf: { law }, sinkage: 0.7 * mm })
      expectNear(meanPressure, pressure, identity)
      expect(edgeForce).toBe(0)
    }
  })

  test('a plate on the reference pressure sinks by the softness', () => {
    for (const law of laws) {
      const area = 0.02 * 0.05
      const { sinkage } = settled({
        plate: { width: 20 * mm, length: 50 * mm },
        turf: { law },
        load: 10e3 * area,
      })
      expectNear(sinkage, 0.8 * mm, stated(law.kind === 'measured' ? 0.1 : 1e-9), law.kind)
    }
  })
})

describe('dimensions', () => {
  const plates = [{ diameter: 25 * mm }, { width: 20 * mm, length: 50 * mm }] as const

  test.each(named)('%s: load and sinkage belong together, and the stiffness to both', (_, law) => {
    for (const plate of plates) {
      const at = (sinkage: number) => settled({ plate, turf: { law, spread: 2.5 * mm }, sinkage })
      const z = 0.77 * mm
      const { load, stiffness } = at(z)
      const back = settled({ plate, turf: { law, spread: 2.5 * mm }, load })
      expectNear(back.sinkage, z, stated(1e-9))
      const step = 1e-4 * z
      expectNear((at(z + step).load - at(z - step).load) / (2 * step), stiffness, stated(1e-7))
    }
  })

  test('rescaling the metre changes nothing', () => {
    const question = (size: number): Question => ({
      plate: { diameter: 25 * mm * size },
      turf: { law: { kind: 'power', softness: 0.8 * mm * size, exponent: 0.6 }, spread: 2 * mm * size },
      sinkage: 1 * mm * size,
    })
    expectNear(settled(question(37)).meanPressure, settled(question(1)).meanPressure, stated(1e-11))
  })

  test('more load sinks deeper, and so does softer turf', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...laws),
        fc.double({ min: 0.5, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (law, load, spread) => {
          const turf: Turf = { law, spread: spread * mm }
          const softer = withSoftness(turf, 1.15 * softnessOf(law))
          const depths = [
            [turf, load],
            [turf, 1.1 * load],
            [softer, load],
          ] as const
          const [one, heavier, soft] = depths.map(([on, load]) => {
            const pressed = pressPlate({ plate: { diameter: 25 * mm }, turf: on, load })
            return pressed.outcome === 'settled' ? pressed.sinkage : Number.POSITIVE_INFINITY
          }) as [number, number, number]
          // turf that has bottomed out goes no deeper
          for (const deeper of [heavier, soft])
            if (Number.isFinite(one)) expect(deeper).toBeGreaterThan(one)
            else if (deeper === heavier) expect(deeper).toBe(one)
        },
      ),
      { numRuns: 40 },
    )
  })
})

describe('outcomes and cautions', () => {
  const locking: Turf = {
    law: { kind: 'stiffening', softness: 0.8 * mm, lockingDepth: 3 * mm },
    spread: 1 * mm,
  }

  test('a load that presses the turf past its limit bottoms out, and says so', () => {
    const pressed = pressPlate({ plate: { diameter: 20 * mm }, turf: locking, load: 5e3 })
    expect(pressed.outcome).toBe('bottomed out')
    expect(sentence(pressed)).toMatch(/^the turf bottoms out under the plate: 5000 N/)
    expect(pressPlate({ plate: { diameter: 20 * mm }, turf: locking, sinkage: 2.99 * mm }).outcome).toBe(
      'bottomed out',
    )
  })

  test('the corners of a rectangle are left out, and it says so; without spread there are none', () => {
    const kinds = (turf: Turf) =>
      settled({ plate: { width: 20 * mm, length: 50 * mm }, turf, sinkage: 0.5 * mm }).cautions.map(
        ({ kind }) => kind,
      )
    expect(kinds(locking)).toEqual(['corners left out'])
    expect(kinds({ law: locking.law })).toEqual([])
  })

  test('past what was measured it is extrapolated', () => {
    const turf: Turf = { law: { kind: 'measured', points: [{ sinkage: 1 * mm, pressure: 12e3 }] } }
    const { cautions } = settled({ plate: { diameter: 30 * mm }, turf, sinkage: 1.2 * mm })
    expect(cautions.map(({ kind }) => kind)).toEqual(['extrapolated'])
  })
})

describe('refuses', () => {
  const turf: Turf = { law: linear(0.8 * mm) }
  const refused = (question: object) => () => pressPlate(question as Question)

  test.each([
    ['a plate without size', { plate: { diameter: 0 }, turf, load: 5 }, 'plate.diameter'],
    ['a rectangle without length', { plate: { width: 0.1 }, turf, load: 5 }, 'plate.length'],
    ['no plate', { plate: {}, turf, load: 5 }, 'plate: expected a diameter'],
    ['neither load nor sinkage', { plate: { diameter: 0.1 }, turf }, 'load: expected a number'],
    [
      'both',
      { plate: { diameter: 0.1 }, turf, load: 5, sinkage: 0.001 },
      'load: expected load or sinkage alone',
    ],
    [
      'a negative sinkage',
      { plate: { diameter: 0.1 }, turf, sinkage: -0.001 },
      'sinkage: expected more than',
    ],
  ])('%s', (_, question, said) => expect(refused(question)).toThrow(said))
})
