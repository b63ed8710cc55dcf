import type { Condition, PressureLaw, Roller, Scenario, Surface, Turf, Unit } from '@swardsink/model'
import fc from 'fast-check'

const mm = 1e-3

/** Cases are the same in every run: a failure can be looked at again. */
export const bounded = (numRuns: number) => ({ seed: 20_250_311, numRuns })

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
/** Evenly in the logarithm. */
export const across = (low: number, high: number) => between(Math.log(low), Math.log(high)).map(Math.exp)

export const exponents = between(0.2, 2)
export const softnesses = across(0.07 * mm, 15 * mm)
const lockingOver = across(1.1, 20)

export const laws: fc.Arbitrary<PressureLaw> = fc.oneof(
  softnesses.map((softness): PressureLaw => ({ kind: 'linear', softness })),
  fc
    .tuple(softnesses, exponents)
    .map(([softness, exponent]): PressureLaw => ({ kind: 'power', softness, exponent })),
  fc
    .tuple(softnesses, lockingOver, fc.constantFrom('stiffening' as const, 'logarithmic' as const))
    .map(([softness, over, kind]): PressureLaw => ({ kind, softness, lockingDepth: softness * over })),
)

/** A part of one: none, all, or between. */
const parts = fc.oneof(fc.constant(0), fc.constant(1), between(0.001, 1))

/** Laws that answer any load: no locking depth. */
export const openLaws = laws.filter(law => law.kind === 'linear' || law.kind === 'power')

export const turfOn = (
  law: fc.Arbitrary<PressureLaw>,
  spread: fc.Arbitrary<number> = fc.oneof(fc.constant(0), across(0.1 * mm, 8 * mm)),
): fc.Arbitrary<Turf> =>
  fc
    .record({
      law,
      spread,
      rebound: parts,
      part: parts,
      recoveryTime: fc.oneof(fc.constant(0), across(0.01, 10)),
      source: fc.option(fc.string(), { nil: undefined }),
    })
    .map(({ part, source, ...turf }) => ({
      ...turf,
      lasting: part * (1 - turf.rebound),
      ...(source === undefined ? {} : { source }),
    }))

export const turfs = turfOn(laws)
export const springs = turfOn(laws, fc.constant(0))

export const smooth: fc.Arbitrary<Surface> = fc.constant({ kind: 'smooth' })
export const grooved: fc.Arbitrary<Surface> = fc
  .record({ pitch: across(6 * mm, 40 * mm), part: between(0.15, 0.9), depth: across(1 * mm, 12 * mm) })
  .map(({ pitch, part, depth }) => ({ kind: 'grooved', pitch, land: part * pitch, depth }))

export const rollerWith = (surface: fc.Arbitrary<Surface>): fc.Arbitrary<Roller> =>
  fc.record({
    mass: across(0.5, 30),
    diameter: across(44 * mm, 160 * mm),
    length: across(150 * mm, 900 * mm),
    surface,
  })
export const rollers = rollerWith(fc.oneof(smooth, grooved))

export const standing: Condition = { kind: 'standing' }
export const conditions: fc.Arbitrary<Condition> = fc.oneof(
  fc.constant(standing),
  fc.record({ kind: fc.constant('mowing' as const), speed: between(0.4, 3) }),
  fc.record({ kind: fc.constant('mowing' as const), speed: between(0.4, 3), recovery: fc.boolean() }),
)

export const unitWith = (front: fc.Arbitrary<Roller>, rear = rollerWith(smooth)): fc.Arbitrary<Unit> =>
  fc
    .record({
      wheelbase: across(150 * mm, 500 * mm),
      edge: between(0.2, 0.8),
      benchHeight: between(2 * mm, 30 * mm),
      frontRoller: front,
      rearRoller: rear,
      mass: across(6, 50),
      at: between(0.25, 0.75),
      height: between(20 * mm, 250 * mm),
      box: fc.option(between(0.5, 6), { nil: undefined }),
    })
    .map(({ mass, at, height, edge, box, ...unit }) => ({
      ...unit,
      edge: edge * unit.wheelbase,
      body: { mass, at: at * unit.wheelbase, height },
      ...(box === undefined
        ? {}
        : { loads: [{ name: 'grass box', mass: box, at: 0.1 * unit.wheelbase, height }] }),
    }))
export const units = unitWith(rollers)

const names = fc.stringMatching(/^[A-Za-z][A-Za-z0-9 ,()-]{0,14}$/)

export const scenarios: fc.Arbitrary<Scenario> = fc
  .record({
    unit: units,
    rollers: fc.dictionary(names, rollers, { minKeys: 1, maxKeys: 3 }),
    turfs: fc.dictionary(names, turfs, { minKeys: 1, maxKeys: 3 }),
    condition: conditions,
    effectiveHeight: fc.option(between(1 * mm, 30 * mm), { nil: undefined }),
    others: fc.option(fc.dictionary(names, units, { maxKeys: 2 }), { nil: undefined }),
    unitName: names,
  })
  .map(({ effectiveHeight, others, unitName, ...rest }) => ({
    ...rest,
    ...(others === undefined ? {} : { units: { ...others, [unitName]: rest.unit }, unitName }),
    turf: Object.keys(rest.turfs)[0]!,
    ...(effectiveHeight === undefined ? {} : { effectiveHeight }),
  }))
