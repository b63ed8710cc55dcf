import {
  loadAt,
  type PressureLaw,
  press,
  type Roller,
  settle,
  softnessOf,
  type Turf,
  type Unit,
} from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { across, bounded, conditions, laws, rollers, turfOn, units } from '../../support/arbitraries.ts'
import { expectNear, ofSize, solver, stated } from '../../support/tolerance.ts'

/**
 * Rescaling metre, kilogram and second changes nothing. The model keeps two numbers with dimensions, the 10 kPa at which
 * softness is told and g, so the three units cannot be stretched by writing other numbers for those. But everything it
 * computes is made of lengths, forces, pressures and times, a mass enters as the force m g alone and a second only with
 * speed and recovery: stretching all lengths by a (forces by a² at the same pressure), all pressures by b (another
 * softness and spread give b times the curve, forces by b) and all times by t is therefore the same freedom as
 * stretching metre, kilogram and second one by one. An answer that hung on a unit somewhere, by a step, a tolerance or a
 * threshold in metres or newtons, would fail here.
 */

const REFERENCE_PRESSURE = 10e3

const longerLaw = (law: PressureLaw, a: number): PressureLaw =>
  'lockingDepth' in law
    ? { ...law, softness: law.softness * a, lockingDepth: law.lockingDepth * a }
    : ({ ...law, softness: softnessOf(law) * a } as PressureLaw)

/** Another softness, so that the same sinkage takes b times the pressure. */
function stifferLaw(law: PressureLaw, b: number): PressureLaw {
  switch (law.kind) {
    case 'linear':
      return { ...law, softness: law.softness / b }
    case 'power':
      return { ...law, softness: law.softness * b ** (-1 / law.exponent) }
    case 'stiffening':
      return { ...law, softness: 1 / (b * (1 / law.softness - 1 / law.lockingDepth) + 1 / law.lockingDepth) }
    case 'logarithmic': {
      const M = (-b * REFERENCE_PRESSURE) / Math.log1p(-law.softness / law.lockingDepth)
      return { ...law, softness: -law.lockingDepth * Math.expm1(-REFERENCE_PRESSURE / M) }
    }
    default:
      throw new Error(`no other softness known for ${law.kind}`)
  }
}

type Scale = { a: number; b: number; t: number }
const scales: fc.Arbitrary<Scale> = fc.record({
  a: across(1e-3, 1e3),
  b: across(0.5, 2),
  t: across(1e-3, 1e3),
})

function scaledTurf(turf: Turf, { a, b, t }: Scale): Turf {
  const law = longerLaw(stifferLaw(turf.law, b), a)
  // G = l² p_r/s is to grow by b a: l² by b a s′/s
  const spread = (turf.spread ?? 0) * Math.sqrt((b * a * softnessOf(law)) / softnessOf(turf.law))
  return { ...turf, law, spread, recoveryTime: (turf.recoveryTime ?? 0) * t }
}

const scaledRoller = (roller: Roller, { a, b }: Scale): Roller => ({
  ...roller,
  mass: roller.mass * a * a * b,
  diameter: roller.diameter * a,
  length: roller.length * a,
  surface:
    roller.surface.kind === 'smooth'
      ? roller.surface
      : {
          kind: 'grooved',
          pitch: roller.surface.pitch * a,
          land: roller.surface.land * a,
          depth: roller.surface.depth * a,
        },
})

const scaledUnit = (unit: Unit, scale: Scale): Unit => {
  const { a, b } = scale
  const weight = {
    mass: (unit.body.mass ?? 0) * a * a * b,
    at: unit.body.at * a,
    height: (unit.body.height ?? 0) * a,
  }
  return {
    wheelbase: unit.wheelbase * a,
    edge: unit.edge * a,
    benchHeight: unit.benchHeight * a,
    frontRoller: scaledRoller(unit.frontRoller, scale),
    rearRoller: scaledRoller(unit.rearRoller, scale),
    body: weight,
    loads: (unit.loads ?? []).map(load => ({
      name: load.name,
      mass: (load.mass ?? 0) * a * a * b,
      at: load.at * a,
      height: (load.height ?? 0) * a,
    })),
  }
}

const arcs = fc.constantFrom('parabola' as const, 'circle' as const)

describe('dimensions', () => {
  test('one roller: forces go with a² b, lengths with a, pressures with b', () => {
    const cases = fc.record({
      roller: rollers,
      turf: turfOn(laws),
      condition: conditions,
      arc: arcs,
      load: fc.double({ min: 5, max: 400, noNaN: true }),
      scale: scales,
    })
    let settled = 0
    fc.assert(
      fc.property(cases, ({ scale, ...one }) => {
        const { a, b } = scale
        const other = { ...one, roller: scaledRoller(one.roller, scale), turf: scaledTurf(one.turf, scale) }
        const here = press(one)
        const there = press({ ...other, load: one.load * a * a * b })
        expect(there.outcome).toBe(here.outcome)
        if (here.outcome !== 'settled' || there.outcome !== 'settled') return
        settled++
        const what = JSON.stringify({ one, scale })
        const near = stated(1e-9)
        expectNear(there.sinkage, here.sinkage * a, near, what)
        expectNear(there.lineLoad, here.lineLoad * a * b, near, what)
        expectNear(there.peakPressure, here.peakPressure * b, near, what)
        expectNear(there.meanPressure, here.meanPressure * b, near, what)
        expectNear(there.lengthAhead, here.lengthAhead * a, near, what)
        expectNear(there.relief, here.relief * a, ofSize(here.sinkage * a, stated(1e-8)), what)
        expectNear(there.resistance, here.resistance * a * a * b, near, what)
        expect(there.grooveFloor).toBe(here.grooveFloor)
        const loaded = loadAt({ ...other, sinkage: here.sinkage * a })
        if (loaded.outcome === 'settled') expectNear(loaded.load, one.load * a * a * b, stated(1e-9), what)
      }),
      bounded(250),
    )
    expect(settled).toBeGreaterThan(150)
  })

  test('a unit: angles stay, lengths go with a, loads with a² b, whatever the second', () => {
    const cases = fc.record({
      unit: units,
      turf: turfOn(laws),
      condition: conditions,
      arc: arcs,
      scale: scales,
    })
    let settled = 0
    fc.assert(
      fc.property(cases, ({ unit, turf, condition, arc, scale }) => {
        const { a, b, t } = scale
        const here = settle({ unit, turf, condition, arc })
        const faster =
          condition.kind === 'mowing' ? { ...condition, speed: (condition.speed * a) / t } : condition
        const there = settle({
          unit: scaledUnit(unit, scale),
          turf: scaledTurf(turf, scale),
          condition: faster,
          arc,
        })
        expect(there.outcome).toBe(here.outcome)
        if (here.outcome !== 'settled' || there.outcome !== 'settled') return
        settled++
        const what = JSON.stringify({ unit, turf, condition, scale })
        expectNear(there.front.load, here.front.load * a * a * b, stated(1e-9), what)
        expectNear(there.rear.load, here.rear.load * a * a * b, stated(1e-9), what)
        expectNear(there.pitch, here.pitch, ofSize(1, solver), what)
        const size = ofSize((here.drop.middle + unit.benchHeight) * a, stated(1e-9))
        expectNear(there.drop.middle, here.drop.middle * a, size, what)
        expectNear(there.effectiveHeight.middle, here.effectiveHeight.middle * a, size, what)
        expectNear(
          there.unrecovered,
          here.unrecovered * a,
          ofSize(here.front.sinkage * a, stated(1e-8)),
          what,
        )
      }),
      bounded(200),
    )
    expect(settled).toBeGreaterThan(100)
  })
})
