import { type Arc, type PressureLaw, pressureAt, type Roller, type Turf, workTo } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { describeOnTrack, rollerOnTrack } from '../../../packages/model/src/contact/rollerOnTrack.ts'
import { rollerOnTurf } from '../../../packages/model/src/contact/rollerOnTurf.ts'
import type { Track } from '../../../packages/model/src/contact/trackCurve.ts'
import {
  across,
  bounded,
  exponents,
  grooved,
  laws,
  openLaws,
  rollers,
  softnesses,
  turfOn,
} from '../../support/arbitraries.ts'
import { derivative, doubleExponential } from '../../support/referenceQuadrature.ts'
import { expectNear, identity, ofSize, stated } from '../../support/tolerance.ts'
import { loadOfHangingMat } from './hangingMatByDifferences.ts'

const mm = 1e-3
const smooth: Roller = { mass: 4.2, diameter: 0.058, length: 0.53, surface: { kind: 'smooth' } }
const RADIUS = smooth.diameter / 2
const mowing = { kind: 'mowing', speed: 1.2 } as const
const parts = fc.double({ min: 0.02, max: 0.98, noNaN: true })
const arcs = fc.constantFrom<Arc>('parabola', 'circle')

/** A track that the turf can have been left with: at most 1 − λ of its depth remains. */
const trackOn = (turf: Turf, pressedTo: number, part: number): Track => ({
  pressedTo,
  depression: part * (1 - (turf.rebound ?? 1)) * pressedTo,
})

/** Pressing again and unloading, written out point by point from docs/physics.md §2.3. */
function pressures(law: PressureLaw, rebound: number, { pressedTo, depression }: Track) {
  const back = (pressedTo - depression) / pressedTo
  const again = (z: number) =>
    z <= depression ? 0 : pressureAt(law, z <= pressedTo ? (z - depression) / back : z)
  const equivalent = (z: number) => (z <= pressedTo ? (z - depression) / back : z)
  const unloading = (lowest: number) => (z: number) => {
    const bottom = lowest - rebound * equivalent(lowest)
    return z <= bottom ? 0 : pressureAt(law, (z - bottom) / rebound)
  }
  return { back, again, equivalent, unloading }
}

describe('a second method', () => {
  test('load and resistance of a smooth roller, added up along the arc', () => {
    fc.assert(
      fc.property(
        openLaws,
        parts,
        parts,
        across(0.3 * mm, 2 * mm),
        fc.double({ min: 0.05, max: 3, noNaN: true }),
        arcs,
        (law, rebound, part, pressedTo, deeper, arc) => {
          const turf: Turf = { law, rebound }
          const track = trackOn(turf, pressedTo, part)
          const sinkage = track.depression + deeper * (pressedTo - track.depression)
          const found = rollerOnTrack({ roller: smooth, turf, track, arc }).at(sinkage)
          const { again, equivalent, unloading } = pressures(law, rebound, track)
          const height = (x: number) =>
            arc === 'parabola'
              ? (x * x) / (2 * RADIUS)
              : (x * x) / (RADIUS + Math.sqrt(RADIUS * RADIUS - x * x))
          const slope = (x: number) =>
            arc === 'parabola' ? x / RADIUS : x / Math.sqrt(RADIUS * RADIUS - x * x)
          const reach = (h: number) =>
            arc === 'parabola' ? Math.sqrt(2 * RADIUS * h) : Math.sqrt(h * (2 * RADIUS - h))
          const end = reach(sinkage - track.depression)
          const corner = sinkage > pressedTo ? reach(sinkage - pressedTo) : 0
          const rear = reach(rebound * equivalent(sinkage))
          const p = (x: number) => again(sinkage - height(x))
          const back = unloading(sinkage)
          const ahead = (f: (x: number) => number) =>
            (corner > 0 ? doubleExponential(f, 0, corner) : 0) + doubleExponential(f, corner, end)
          const lineLoad = ahead(p) + doubleExponential(x => back(sinkage - height(x)), 0, rear)
          const drag =
            ahead(x => p(x) * slope(x)) -
            doubleExponential(x => back(sinkage - height(x)) * slope(x), 0, rear)
          expectNear(found.lineLoad, lineLoad, stated(1e-8), 'load')
          const told = describeOnTrack({ roller: smooth, turf, track, condition: mowing, arc }, found)
          expectNear(told.resistance, drag * smooth.length, stated(1e-7), 'resistance')
          expectNear(told.peakPressure, again(sinkage), identity)
        },
      ),
      bounded(60),
    )
  })

  // Beyond the track, on it, and for three laws; where the mat leaves falls between the nodes.
  test.each([
    [{ kind: 'linear', softness: 1 * mm }, 0.9 * mm],
    [{ kind: 'linear', softness: 1 * mm }, 1.9 * mm],
    [{ kind: 'power', softness: 1 * mm, exponent: 0.7 }, 1.8 * mm],
    [{ kind: 'stiffening', softness: 1 * mm, lockingDepth: 4 * mm }, 1.6 * mm],
  ] as const)('the mat ahead rests at the depression: %o at %d m', (law, sinkage) => {
    const turf: Turf = { law, rebound: 0.4, spread: 2 * mm }
    const track: Track = { pressedTo: 1.3 * mm, depression: 0.5 * mm }
    const { again } = pressures(law, 0.4, track)
    const shear = (turf.spread! ** 2 * 10e3) / law.softness
    const found = rollerOnTrack({ roller: smooth, turf, track }).at(sinkage).leading.load
    const meshes = [200, 400, 600].map(cells =>
      loadOfHangingMat({ pressure: again, shear, radius: RADIUS, sinkage, rest: track.depression, cells }),
    )
    expectNear(meshes[2]!, found, stated(5e-4))
    expectNear(meshes[0]!, found, stated(4e-3))
  })

  test('stiffness is the slope of the load', () => {
    const cases = fc.tuple(rollers, turfOn(laws, across(0.2 * mm, 3 * mm)), parts, parts, parts, arcs)
    fc.assert(
      fc.property(cases, ([roller, turf, part, first, second, arc]) => {
        fc.pre((turf.rebound ?? 1) > 1e-9)
        const depth = Math.min(0.2 * roller.diameter, 'lockingDepth' in turf.law ? turf.law.lockingDepth : 1)
        const track = trackOn(turf, 0.6 * first * depth, part)
        const on = rollerOnTrack({ roller, turf, track, arc })
        const sinkage = on.from + second * (0.9 * depth - on.from)
        const step = 1e-3 * (sinkage - on.from)
        const kinks = [
          track.pressedTo,
          on.touchFrom,
          track.pressedTo + ('depth' in roller.surface ? roller.surface.depth : 0),
        ]
        fc.pre(kinks.every(kink => Math.abs(kink - sinkage) > 3 * step))
        const slope = derivative(z => on.at(z).load, sinkage, step)
        // p′ is steep beside a narrow spread, as on fresh turf; in a gap the mat runs across the corner of the curve
        const tolerance = roller.surface.kind === 'grooved' ? stated(2e-2) : stated(1e-3)
        expectNear(on.at(sinkage).stiffness, slope, tolerance)
      }),
      bounded(150),
    )
  })
})

describe('closed forms', () => {
  test('as deep as before or less: (√μ + √λ) of the fresh leading side, (μ − λ) of its work', () => {
    const cases = fc.tuple(turfOn(laws), parts, parts, parts)
    fc.assert(
      fc.property(cases, ([turf, part, first, second]) => {
        const depth = 'lockingDepth' in turf.law ? 0.9 * turf.law.lockingDepth : 3 * mm
        const pressedTo = first * depth
        const track = trackOn(turf, pressedTo, part)
        const rebound = turf.rebound ?? 1
        const back = (pressedTo - track.depression) / pressedTo
        const fresh = second * pressedTo
        const found = rollerOnTrack({ roller: smooth, turf, track }).at(track.depression + back * fresh)
        const leading = rollerOnTurf({ roller: smooth, turf, condition: mowing }).at(fresh).leading.load
        const near = stated(1e-9)
        expectNear(found.lineLoad, (Math.sqrt(back) + Math.sqrt(rebound)) * leading, near)
        expectNear(found.lost * found.work, (back - rebound) * workTo(turf.law, fresh), {
          ...near,
          absolute: 1e-9 * found.work,
        })
      }),
      bounded(200),
    )
  })

  test('springs under grooves: lands and floors each by their own depth', () => {
    const law = { kind: 'power', softness: 1 * mm, exponent: 0.8 } as const
    const turf: Turf = { law, rebound: 0.3 }
    const track: Track = { pressedTo: 1.2 * mm, depression: 0.4 * mm }
    const surface = { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 0.3 * mm } as const
    const sinkage = 1.1 * mm
    const strip = (z: number) => rollerOnTrack({ roller: smooth, turf, track }).at(z).lineLoad
    const expected = (5 * strip(sinkage) + 7 * strip(sinkage - surface.depth)) / 12
    const { lineLoad } = rollerOnTrack({ roller: { ...smooth, surface }, turf, track }).at(sinkage)
    expectNear(lineLoad, expected, stated(1e-8))
  })
})

describe('limits', () => {
  const cases = fc.tuple(rollers, turfOn(openLaws), across(0.1 * mm, 2 * mm), across(0.1 * mm, 3 * mm))

  test('turf that has come back whole is fresh turf', () => {
    fc.assert(
      fc.property(cases, arcs, ([roller, turf, pressedTo, sinkage], arc) => {
        const on = rollerOnTrack({ roller, turf, track: { pressedTo, depression: 0 }, arc })
        const fresh = rollerOnTurf({ roller, turf, condition: mowing, arc })
        const deep = Math.min(sinkage, 0.2 * roller.diameter)
        // the corner of the track's curve is gone, but the quadratures are still split there
        const tolerance = roller.surface.kind === 'grooved' ? stated(1e-5) : stated(1e-6)
        expectNear(on.at(deep).load, fresh.at(deep).load, tolerance)
        expectNear(on.at(deep).lost, 1 - (turf.rebound ?? 1), ofSize(1, identity))
      }),
      bounded(150),
    )
  })

  test('full rebound keeps no memory: nothing is left and nothing is lost', () => {
    fc.assert(
      fc.property(cases, ([roller, turf, pressedTo, sinkage]) => {
        const elastic: Turf = { ...turf, rebound: 1, lasting: 0 }
        const track = { pressedTo, depression: 0 }
        const deep = Math.min(sinkage, 0.2 * roller.diameter)
        const found = rollerOnTrack({ roller, turf: elastic, track }).at(deep)
        expect(found.lost).toBeLessThan(1e-12)
      }),
      bounded(100),
    )
  })

  test('a track without depth is fresh turf, to the last bit', () => {
    const turf: Turf = { law: { kind: 'linear', softness: 1 * mm }, rebound: 0.5 }
    const on = rollerOnTrack({ roller: smooth, turf, track: { pressedTo: 0, depression: 0 } })
    const fresh = rollerOnTurf({ roller: smooth, turf, condition: mowing })
    expect(on.at(mm).load).toBe(fresh.at(mm).load)
  })

  test('turf that does not come back at all carries at once what it carried before', () => {
    const turf: Turf = { law: { kind: 'linear', softness: 1 * mm }, rebound: 0 }
    const on = rollerOnTrack({ roller: smooth, turf, track: { pressedTo: mm, depression: mm } })
    expect(on.at(mm * (1 - 1e-6)).load).toBe(0)
    const just = 1e-4 * mm
    // a strip of pressure p(z_m) as wide as one side of the contact
    const expected = 10e3 * Math.sqrt(2 * RADIUS * just) * smooth.length
    expectNear(on.at(mm + just).load, expected, stated(2e-4))
  })

  test('clear of the track it carries nothing', () => {
    const turf: Turf = { law: { kind: 'linear', softness: 1 * mm }, rebound: 0.5 }
    const on = rollerOnTrack({ roller: smooth, turf, track: { pressedTo: mm, depression: 0.4 * mm } })
    expectNear(on.from, 0.4 * mm, identity)
    expect(on.at(0.3 * mm).load).toBe(0)
  })
})

describe('properties', () => {
  const cases = fc.tuple(
    rollers,
    turfOn(openLaws),
    parts,
    across(0.1 * mm, 2 * mm),
    fc.double({ min: 0.01, max: 3, noNaN: true }),
  )

  test('work is never created', () => {
    fc.assert(
      fc.property(cases, arcs, ([roller, turf, part, pressedTo, deeper], arc) => {
        const track = trackOn(turf, pressedTo, part)
        const on = rollerOnTrack({ roller, turf, track, arc })
        const pressing = on.at(track.depression + deeper * (pressedTo - track.depression))
        expect(pressing.lost).toBeGreaterThanOrEqual(0)
        expect(pressing.lost).toBeLessThanOrEqual(1)
        const told = describeOnTrack({ roller, turf, track, condition: mowing, arc }, pressing)
        expect(told.resistance).toBeGreaterThanOrEqual(0)
      }),
      bounded(150),
    )
  })

  test('a track carries no more than fresh turf at the same sinkage, and more the deeper', () => {
    fc.assert(
      fc.property(cases, ([roller, turf, part, pressedTo, deeper]) => {
        const track = trackOn(turf, pressedTo, part)
        const on = rollerOnTrack({ roller, turf, track })
        const sinkage = track.depression + deeper * (pressedTo - track.depression)
        const load = on.at(sinkage).load
        const fresh = rollerOnTurf({ roller, turf, condition: mowing }).at(sinkage).load
        expect(load).toBeLessThanOrEqual(fresh * (1 + 1e-5))
        expect(on.at(1.01 * sinkage).load).toBeGreaterThan(load)
      }),
      bounded(150),
    )
  })

  test('lengths measured in another unit change nothing but their scale', () => {
    const scaled = fc.tuple(softnesses, exponents, grooved, parts, across(0.1, 10))
    fc.assert(
      fc.property(scaled, ([softness, exponent, surface, rebound, factor]) => {
        const load = (f: number) => {
          const turf: Turf = {
            law: { kind: 'power', softness: f * softness, exponent },
            spread: f * mm,
            rebound,
          }
          const track = trackOn(turf, f * mm, 0.5)
          const shape =
            surface.kind === 'grooved'
              ? { ...surface, pitch: f * surface.pitch, land: f * surface.land, depth: f * surface.depth }
              : surface
          const roller = { mass: 4, diameter: f * 0.06, length: f * 0.5, surface: shape }
          return rollerOnTrack({ roller, turf, track }).at(f * 1.3 * mm).load
        }
        expectNear(load(factor), factor ** 2 * load(1), stated(1e-8))
      }),
      bounded(60),
    )
  })
})
