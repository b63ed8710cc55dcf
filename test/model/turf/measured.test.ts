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
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { derivative, doubleExponential } from '../../support/referenceQuadrature.ts'
import { expectNear, identity, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const kPa = 1e3
const standing = { kind: 'standing' } as const
const roller: Roller = { mass: 6.4, diameter: 62 * mm, length: 0.54, surface: { kind: 'smooth' } }
type Measured = Extract<PressureLaw, { kind: 'measured' }>
const through = (...points: readonly (readonly [number, number])[]): Measured => ({
  kind: 'measured',
  points: points.map(([z, p]) => ({ sinkage: z * mm, pressure: p * kPa })),
})
const gauge = through([0.31, 2.4], [0.62, 6.1], [1.05, 14.8], [1.36, 24.2], [1.61, 41])

const sampled = (law: PressureLaw, deepest: number, count: number): Measured => ({
  kind: 'measured',
  points: Array.from({ length: count }, (_, i) => {
    const sinkage = (deepest * (i + 1)) / count
    return { sinkage, pressure: pressureAt(law, sinkage) }
  }),
})

describe('limits', () => {
  test('passes through its points and through zero', () => {
    expect(pressureAt(gauge, 0)).toBe(0)
    for (const { sinkage, pressure } of gauge.points) {
      expectNear(pressureAt(gauge, sinkage), pressure, identity)
      expectNear(sinkageAt(gauge, pressure), sinkage, identity)
    }
  })

  test('points of a straight line are the linear law', () => {
    const line = through([0.2, 4], [0.5, 10], [1.3, 26])
    const linear: PressureLaw = { kind: 'linear', softness: 0.5 * mm }
    for (const z of [0.1 * mm, 0.7 * mm, 3 * mm]) {
      expectNear(pressureAt(line, z), pressureAt(linear, z), identity)
      expectNear(slopeAt(line, z), slopeAt(linear, z), identity)
      expectNear(workTo(line, z), workTo(linear, z), identity)
    }
    expectNear(softnessOf(line), 0.5 * mm, identity)
    const loadOf = (law: PressureLaw) => {
      const loaded = loadAt({ roller, turf: { law, spread: 2 * mm }, sinkage: 0.9 * mm, condition: standing })
      return loaded.outcome === 'settled' ? loaded.load : expect.fail(loaded.outcome)
    }
    expectNear(loadOf(line), loadOf(linear), stated(1e-11))
  })

  test('more and more points of a law become the law, with the square of the spacing and better', () => {
    const law: PressureLaw = { kind: 'stiffening', softness: 0.6 * mm, lockingDepth: 3 * mm }
    const loadOf = (of: PressureLaw) => {
      const loaded = loadAt({
        roller,
        turf: { law: of, spread: 1 * mm },
        sinkage: 1.1 * mm,
        condition: standing,
      })
      return loaded.outcome === 'settled' ? loaded.load : expect.fail(loaded.outcome)
    }
    const errors = [5, 20, 80, 320].map(count =>
      Math.abs(loadOf(sampled(law, 1.5 * mm, count)) / loadOf(law) - 1),
    )
    // four times as many points, sixteen times as near and better
    for (let i = 1; i < errors.length; i++) expect(errors[i]! * 16).toBeLessThan(errors[i - 1]!)
    expect(errors.at(-1)).toBeLessThan(1e-9)
  })

  test('past the last point the last slope goes on, and the result says so', () => {
    const last = 1.61 * mm
    const slope = slopeAt(gauge, last)
    expect(slope).toBeGreaterThan(0)
    expectNear(pressureAt(gauge, 2 * mm), 41 * kPa + slope * 0.39 * mm, identity)
    const pressed = (load: number) => press({ roller, turf: { law: gauge }, load, condition: standing })
    expect(pressed(60).cautions.map(({ kind }) => kind)).not.toContain('extrapolated')
    const caution = pressed(900).cautions.find(({ kind }) => kind === 'extrapolated')
    expect(caution?.limit).toBe(41 * kPa)
    expect(sentence(caution ?? expect.fail('no caution'))).toContain('known up to 41 kPa')
  })
})

// Method: Fritsch and Carlson 1980, SIAM Journal on Numerical Analysis 17(2):238-246: no piece turns back.
describe('monotone cubics', () => {
  const increments = fc.array(
    fc.tuple(fc.double({ min: 0.01, max: 1, noNaN: true }), fc.double({ min: 0.01, max: 30, noNaN: true })),
    { minLength: 1, maxLength: 12 },
  )
  const lawOf = (steps: readonly (readonly [number, number])[]): Measured => {
    let [z, p] = [0, 0]
    return through(
      ...steps.map(([dz, dp]) => {
        z += dz
        p += dp
        return [z, p] as const
      }),
    )
  }

  test('rise wherever their points rise, past the last one too', () => {
    fc.assert(
      fc.property(increments, steps => {
        const law = lawOf(steps)
        const deepest = 1.3 * (law.points.at(-1)?.sinkage ?? 0)
        let before = 0
        for (let i = 1; i <= 200; i++) {
          const pressure = pressureAt(law, (deepest * i) / 200)
          expect(pressure).toBeGreaterThan(before)
          expect(slopeAt(law, (deepest * i) / 200)).toBeGreaterThanOrEqual(0)
          before = pressure
        }
      }),
      { numRuns: 60 },
    )
  })

  test('give a pressure and its sinkage back', () => {
    fc.assert(
      fc.property(increments, fc.double({ min: 0.001, max: 1.5, noNaN: true }), (steps, part) => {
        const law = lawOf(steps)
        const pressure = part * (law.points.at(-1)?.pressure ?? 0)
        expectNear(pressureAt(law, sinkageAt(law, pressure)), pressure, stated(1e-11))
      }),
      { numRuns: 200 },
    )
  })

  test('do not overshoot after a sudden rise', () => {
    const step = through([1, 1], [1.1, 20], [2, 20.5])
    for (let z = 1.1; z <= 2; z += 0.01) {
      expect(pressureAt(step, z * mm)).toBeGreaterThanOrEqual(20 * kPa * (1 - 1e-12))
      expect(pressureAt(step, z * mm)).toBeLessThanOrEqual(20.5 * kPa * (1 + 1e-12))
    }
  })
})

describe('dimensions', () => {
  test('slope and work belong to the pressure', () => {
    for (const z of [0.17, 0.5, 0.93, 1.5, 2.4].map(z => z * mm)) {
      expectNear(
        derivative(x => pressureAt(gauge, x), z, 1e-3 * mm),
        slopeAt(gauge, z),
        stated(1e-9),
      )
      const corners = [0, ...gauge.points.map(({ sinkage }) => sinkage)].filter(depth => depth < z)
      const work = corners.reduce(
        (sum, from, i) => sum + doubleExponential(x => pressureAt(gauge, x), from, corners[i + 1] ?? z),
        0,
      )
      expectNear(workTo(gauge, z), work, stated(1e-12))
    }
  })

  test('another softness stretches the points', () => {
    const { law } = withSoftness({ law: gauge }, 3 * softnessOf(gauge))
    expectNear(pressureAt(law, 2.7 * mm), pressureAt(gauge, 0.9 * mm), identity)
    expectNear(softnessOf(law), 3 * softnessOf(gauge), identity)
  })
})

describe('refuses', () => {
  const problems = (law: unknown) => turfProblems({ law: law as PressureLaw }, 'turf').map(sentence)

  test('points that fall or repeat', () => {
    expect(problems(through([1, 5], [1, 6], [2, 4]))).toEqual([
      'turf.law.points.1.sinkage: expected more than 1 mm: points go deeper one by one, received 1 mm',
      'turf.law.points.2.pressure: expected more than 6 kPa: a deeper point bears more, received 4 kPa',
    ])
  })

  test('a pressure at no sinkage, and a sinkage above the turf', () => {
    expect(problems(through([0, 5], [1, 6]))).toHaveLength(1)
    expect(problems(through([-1, 5]))).toHaveLength(1)
  })

  test('no points, and what is no list of points', () => {
    for (const points of [[], [{ sinkage: 0, pressure: 0 }], undefined, 'none', [null, 7]])
      expect(problems({ kind: 'measured', points }).length, JSON.stringify(points)).toBeGreaterThan(0)
    expect(problems({ kind: 'measured', points: [{ sinkage: Number.NaN, pressure: 1 }] })).toHaveLength(1)
  })
})
