import { type Roller, rollingAtSpeed } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { relaxingStrip } from '../../../packages/model/src/contact/relaxingStrip.ts'
import { across, bounded } from '../../support/arbitraries.ts'
import { doubleExponential } from '../../support/referenceQuadrature.ts'
import { numberOf, referenceTable } from '../../support/referenceTables.ts'
import { expectNear, expectPrinted, identity, stated } from '../../support/tolerance.ts'

const RADIUS = 0.028
const STIFFNESS = 4e6
const LOAD = 260
const roller: Roller = { mass: 4.2, diameter: 2 * RADIUS, length: 0.53, surface: { kind: 'smooth' } }
/** Half contact of the relaxed springs, standing. */
const a0 = Math.cbrt((3 * LOAD * RADIUS) / (2 * STIFFNESS))
const SPEED = 1.2

/** Rolling with r = k₁/k and Λ = speed · τ as multiples of k and a₀. */
function rolled(r: number, far: number, one: Roller = roller) {
  const relaxing = { stiffness: STIFFNESS, added: r * STIFFNESS, time: (far * a0) / SPEED }
  const found = rollingAtSpeed({ roller: one, relaxing, lineLoad: LOAD, speed: SPEED })
  if (found.outcome !== 'settled') return expect.fail(found.outcome)
  return found
}

/** (F/P) R/a₀. */
const resistance = (r: number, far: number) => (rolled(r, far).coefficient * RADIUS) / a0

const strip = (added: number, time: number) => relaxingStrip({ stiffness: 1, added, time }, 1, 1, 1)

describe('published values', () => {
  // Source: test/reference/data/rolling.csv, scipy 1.10.1
  test.each(referenceTable('rolling'))('table, r $added_over_lasting, Λ/a₀ $speed_x_time_over_a0', row => {
    const r = numberOf(row, 'added_over_lasting')
    const found = rolled(r, numberOf(row, 'speed_x_time_over_a0'))
    const z0 = (a0 * a0) / (2 * RADIUS)
    const table = stated(1e-6)
    expectNear(found.sinkage / z0, numberOf(row, 'sinkage_over_z0'), table)
    expectNear(found.lengthAhead / a0, numberOf(row, 'entry_over_a0'), table)
    expectNear(-found.lengthBehind / a0, numberOf(row, 'exit_over_a0'), table)
    expectNear((found.coefficient * RADIUS) / a0, numberOf(row, 'resistance_x_R_over_P_a0'), table)
  })

  // Source: closed forms derived for this project, per unit R, k and a
  test.each([
    [0.1, '0.914889156', '0.6794452771', '0.05309452765'],
    [1, '0.8331251662', '0.9594200188', '0.1044571074'],
    [10, '0.96926678', '1.271418331', '0.02364057941'],
  ])('standard linear solid, r 1, Λ/a %d', (far, behind, load, force) => {
    const found = strip(1, far)
    expectPrinted(found.lengthBehind, behind)
    expectPrinted(found.lineLoad, load)
    expectPrinted(found.resistance, force)
  })

  // k₁ τ kept while k₁ grows without bound; r = 1e10 leaves 1e-9 at most, told on the short end at Λ/a 5
  test.each([
    [0.1, '0.90498756', '0.67134581', '0.06213458'],
    [1, '0.41421356', '0.94280904', '0.44280904'],
    [5, '0.09901951', '2.85816912', '1.79084559'],
  ])('Kelvin and Voigt are the limit of a stiff damper, Λ/a %d', (far, behind, load, force) => {
    const found = strip(1e10, far / 1e10)
    expectNear(found.lengthBehind, Number(behind), stated(1e-7))
    expectPrinted(found.lineLoad, load)
    expectPrinted(found.resistance, force)
  })

  // Source: May, Morris, Atack 1959, J. Appl. Phys. 30:1713 report one peak; its place and height derived
  test.each([
    [0.25, '0.49'],
    [0.5, '0.43'],
    [1, '0.345'],
    [2, '0.25'],
    [4, '0.17'],
    [10, '0.09'],
  ])('resistance has one peak over speed, r %d at Λ/a₀ %s', (r, place) => {
    const steps = Array.from({ length: 400 }, (_, i) => 0.01 * 1.02 ** i)
    const values = steps.map(far => resistance(r, far))
    const turns = values.filter((value, i) => i > 0 && value > values[i - 1]! && value > values[i + 1]!)
    expect(turns.length).toBe(1)
    const h = 1e-4
    const rising = (far: number) => resistance(r, far * (1 + h)) - resistance(r, far * (1 - h))
    const half = 5 * 10 ** -((place.split('.')[1] ?? '').length + 1)
    expect(rising(Number(place) - half)).toBeGreaterThan(0)
    expect(rising(Number(place) + half)).toBeLessThan(0)
  })

  test('the peak at r 1 is 0.1317735', () => {
    const peak = Math.max(...Array.from({ length: 101 }, (_, i) => resistance(1, 0.335 + i * 0.0002)))
    expectPrinted(peak, '0.1317735')
  })

  test('Kelvin and Voigt peak at 0.443137 near Λ/a₀ 1.40', () => {
    const voigt = (far: number) => resistance(1e9, far / 1e9)
    const peak = Math.max(...Array.from({ length: 101 }, (_, i) => voigt(1.35 + i * 0.001)))
    expectPrinted(peak, '0.443137')
    expect(voigt(1.39)).toBeGreaterThan(voigt(1.3))
    expect(voigt(1.41)).toBeGreaterThan(voigt(1.5))
  })
})

describe('a second method', () => {
  /** The pressure as it is published, with its exponential: cancels when Λ is long. */
  const pressure = (r: number, far: number) => (x: number) =>
    (1 - x * x) / 2 + r * far * (x + far - (1 + far) * Math.exp(-(1 - x) / far))

  test.each([0.02, 0.3, 2, 15, 20, 25, 60])('the pressure integrated directly, Λ/a %d', far => {
    for (const r of [0.3, 1, 6]) {
      const { lineLoad, lengthBehind: b, resistance: force } = strip(r, far)
      const p = pressure(r, far)
      const direct = stated(1e-9)
      expect(Math.abs(p(-b))).toBeLessThan(1e-11 * (1 + r))
      expectNear(lineLoad, doubleExponential(p, -b, 1), direct)
      expectNear(
        force,
        doubleExponential(x => x * p(x), -b, 1),
        direct,
      )
    }
  })

  test('resistance is what the damper takes, with what is still stored where the turf leaves the roller', () => {
    fc.assert(
      fc.property(across(0.05, 20), across(0.01, 300), (r, far) => {
        const { lengthBehind: b, resistance: force } = strip(r, far)
        const relaxed = (x: number) => {
          const e = (1 - x) / far
          // (1 + Λ)(1 − e^−e) − (1 − x), its second-order part by series where it cancels
          const bent = e < 1e-3 ? e * e * (1 / 2 - e * (1 / 6 - e * (1 / 24 - e / 120))) : e + Math.expm1(-e)
          return r * far * (-Math.expm1(-e) - far * bent)
        }
        const lost = doubleExponential(x => relaxed(x) ** 2 / (r * far), -b, 1)
        const stored = (1 - b * b) ** 2 / 8 + relaxed(-b) ** 2 / (2 * r)
        expectNear(lost + stored, force, stated(1e-8))
      }),
      bounded(100),
    )
  })
})

describe('limits', () => {
  test('slow rolling is standing on what does not relax, without resistance', () => {
    const { sinkage, lengthAhead, lengthBehind, resistance: force } = rolled(1, 0)
    expectNear(sinkage, (a0 * a0) / (2 * RADIUS), identity)
    expectNear(lengthBehind, lengthAhead, identity)
    expect(force).toBe(0)
  })

  test('fast rolling sinks by (1 + r)^(−2/3) of that', () => {
    for (const r of [0.5, 1, 4])
      expectNear(rolled(r, 1e8).sinkage, ((1 + r) ** (-2 / 3) * (a0 * a0)) / (2 * RADIUS), stated(1e-7))
  })

  test('resistance goes as the speed when slow, as its inverse when fast', () => {
    expectNear(resistance(1, 2e-5) / resistance(1, 1e-5), 2, stated(1e-4))
    expectNear(resistance(1, 2e5) / resistance(1, 1e5), 0.5, stated(1e-4))
  })

  test('for Kelvin and Voigt it falls as the inverse root of the speed', () => {
    const voigt = (far: number) => resistance(1e12, far / 1e12)
    expectNear(voigt(4e4) / voigt(1e4), 0.5, stated(1e-2))
  })

  test('the rear edge retreats first, then returns', () => {
    const behind = (far: number) => rolled(1, far).lengthBehind / rolled(1, far).lengthAhead
    expect(behind(0.3)).toBeLessThan(behind(0.01))
    expect(behind(100)).toBeGreaterThan(behind(0.3))
    expect(behind(100)).toBeGreaterThan(0.99)
  })

  test('springs that do not relax roll freely', () => {
    expect(rolled(0, 1).resistance).toBe(0)
  })

  test('a grooved roller whose floor is free rolls like a smooth one with the load of its lands', () => {
    const grooved: Roller = {
      ...roller,
      surface: { kind: 'grooved', pitch: 0.012, land: 0.006, depth: 0.02 },
    }
    const relaxing = { stiffness: STIFFNESS, added: STIFFNESS, time: 0.003 }
    const found = rollingAtSpeed({ roller: grooved, relaxing, lineLoad: LOAD, speed: SPEED })
    const double = rollingAtSpeed({ roller, relaxing, lineLoad: 2 * LOAD, speed: SPEED })
    if (found.outcome !== 'settled' || double.outcome !== 'settled') return expect.fail()
    expectNear(found.sinkage, double.sinkage, identity)
    expectNear(found.resistance, double.resistance / 2, identity)
  })

  test('a groove without depth is no groove, and a shallow one bears on its floor', () => {
    const with_ = (depth: number) =>
      rolled(1, 0.5, { ...roller, surface: { kind: 'grooved', pitch: 0.012, land: 0.004, depth } })
    expectNear(with_(1e-9).sinkage, rolled(1, 0.5).sinkage, stated(1e-5))
    expect(with_(0.0004).sinkage).toBeLessThan(with_(0.02).sinkage)
    expect(with_(0.0004).sinkage).toBeGreaterThan(with_(1e-9).sinkage)
  })
})

describe('refuses', () => {
  const sound = {
    roller,
    relaxing: { stiffness: STIFFNESS, added: 0, time: 0 },
    lineLoad: LOAD,
    speed: SPEED,
  }
  test.each([
    ['relaxing.stiffness', { ...sound, relaxing: { ...sound.relaxing, stiffness: 0 } }],
    ['relaxing.added', { ...sound, relaxing: { ...sound.relaxing, added: -1 } }],
    ['relaxing.time', { ...sound, relaxing: { ...sound.relaxing, time: Number.NaN } }],
    ['lineLoad', { ...sound, lineLoad: 0 }],
    ['speed', { ...sound, speed: -1 }],
  ])('%s', (path, question) => {
    expect(() => rollingAtSpeed(question)).toThrow(path)
  })
})
