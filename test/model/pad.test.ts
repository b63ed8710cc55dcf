import { readFileSync } from 'node:fs'
import { GRAVITY, levelLoads, press, type Surface, settle, type Turf, type Unit } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import {
  crossing,
  demonstration,
  groovedDrop,
  padFor,
  type Size,
  sinksUnder,
} from '../support/referencePad.ts'
import { expectNear, ofSize, solver, stated } from '../support/tolerance.ts'

// Everything here: common practice, no source. The numbers are check values.
const mm = 1e-3
const standing = { kind: 'standing' } as const
const sizes: readonly Size[] = [
  { diameter: 51 * mm, length: 0.53 },
  { diameter: 51 * mm, length: 0.56 },
  { diameter: 58 * mm, length: 0.545 },
  { diameter: 64 * mm, length: 0.53 },
  { diameter: 64 * mm, length: 0.56 },
]
const exponents = [0.5, 0.7, 0.9, 1, 1.1, 1.3]
const near = 0.05 * mm

/** Part of a smooth roller's load that the grooved one must carry to lie as low as it does. */
function neededFraction(size: Size, pad: Turf): number {
  const depth = sinksUnder(demonstration.light.load, size, pad) + demonstration.grooved.drop
  const smoothLoad = crossing(load => sinksUnder(load, size, pad) - depth, 1, 100)
  return demonstration.grooved.load / smoothLoad
}

describe('a unit with three front rollers', () => {
  const size = { diameter: 58 * mm, length: 0.545 }
  const { total, light, heavy, grooved } = demonstration
  const unitWith = (mass: number, surface: Surface = { kind: 'smooth' }): Unit => {
    const wheelbase = 190 * mm
    const rear = { mass: 4.4, ...size, surface: { kind: 'smooth' } } as const
    const body = total - light.mass - rear.mass
    // 15 kg in front, 3 of them the roller's own
    const at = wheelbase * (1 - (light.load - light.mass) / body)
    const frontRoller = { mass, ...size, surface }
    return {
      wheelbase,
      edge: 105 * mm,
      benchHeight: 5 * mm,
      frontRoller,
      rearRoller: rear,
      body: { mass: body, at },
    }
  }

  test('puts on the front what its front roller weighs more, and nothing on the rear', () => {
    const first = levelLoads(unitWith(light.mass))
    expectNear(first.front, light.load * GRAVITY, solver)
    for (const { mass, load } of [heavy, grooved]) {
      const loads = levelLoads(unitWith(mass))
      expectNear(loads.front, load * GRAVITY, solver)
      expectNear(loads.rear, first.rear, solver)
    }
  })

  test('lies over its front axis as each roller lies alone', () => {
    const pad = padFor(0.9, size, 2.9 * mm)
    const surface: Surface = { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 6 * mm }
    const front = (unit: Unit) => {
      const how = { condition: standing, balance: 'level', arc: 'circle' } as const
      const settled = settle({ unit, turf: pad, ...how })
      return settled.outcome === 'settled' ? settled.front.sinkage : expect.fail(settled.outcome)
    }
    const before = front(unitWith(light.mass))
    expectNear(front(unitWith(heavy.mass)) - before, heavy.drop, ofSize(heavy.drop, stated(1e-6)))
    expectNear(front(unitWith(grooved.mass, surface)) - before, grooved.drop, {
      ...stated(0),
      absolute: near,
    })
  })
})

describe('two drops on one pad', () => {
  test('fix the bearing fraction at 0.83, whatever the exponent and the size', () => {
    for (const exponent of exponents)
      for (const size of sizes) {
        const pad = padFor(exponent, size)
        const what = `exponent ${exponent}, ${JSON.stringify(size)}`
        const found =
          sinksUnder(demonstration.heavy.load, size, pad) - sinksUnder(demonstration.light.load, size, pad)
        // a stiff law on a thin roller has the pad over the axle before it gives the drop
        if (!Number.isFinite(found)) {
          expect(exponent, what).toBeGreaterThan(0.9)
          continue
        }
        expectNear(found, demonstration.heavy.drop, stated(1e-6), what)
        const fraction = neededFraction(size, pad)
        expect(fraction, what).toBeGreaterThan(0.82)
        expect(fraction, what).toBeLessThan(0.84)
      }
  })

  test('without spread and floor the lands themselves must be that part of the face', () => {
    const size = sizes[2] ?? expect.fail()
    const pad = padFor(0.9, size)
    const wanted = neededFraction(size, pad)
    const deep = (part: number): Surface => ({
      kind: 'grooved',
      pitch: 12 * mm,
      land: part * 12 * mm,
      depth: 25 * mm,
    })
    const fitting = crossing(
      part => demonstration.grooved.drop - groovedDrop(size, pad, deep(part)),
      0.3,
      0.999,
    )
    const pressed = press({
      roller: { mass: 0, ...size, surface: deep(fitting) },
      turf: pad,
      load: demonstration.grooved.load * GRAVITY,
      condition: standing,
      arc: 'circle',
    })
    if (pressed.outcome !== 'settled') return expect.fail(pressed.outcome)
    expect(pressed.grooveFloor).toBe('free')
    expectNear(pressed.bearingFraction, fitting, stated(1e-9))
    // the roller ends on a land: one land of the face carries fully
    const land = (fitting * 12 * mm) / size.length
    expectNear(fitting + (1 - fitting) * land, wanted, stated(1e-6))
  })
})

describe('the table of docs/pad.md', () => {
  const page = readFileSync(new URL('../../docs/pad.md', import.meta.url), 'utf8')
  const rows = page
    .split('\n')
    .filter(line => /^\| \d/.test(line))
    .map(line => line.split('|').slice(1, -1).map(Number))
  const size = { diameter: 58 * mm, length: 0.545 }

  test('has grooves of the trade and exponents from end to end', () => {
    expect(rows.length).toBe(15)
    for (const [pitch = 0, land = 0, depth = 0, exponent = 0] of rows) {
      expect(pitch >= 8 && pitch <= 20 && land >= 3 && land <= 10 && depth >= 4 && depth <= 8).toBe(true)
      expect([0.5, 0.9, 1.3]).toContain(exponent)
    }
  })

  test.each(rows)('pitch %f land %f depth %f exponent %f: one pad, one groove, both drops', (...row) => {
    const [pitch = 0, land = 0, depth = 0, exponent = 0, softness = 0, spread = 0, ...printed] = row
    const [smoothDrop = 0, groovedSaid = 0, lightSinks = 0] = printed
    const turf: Turf = { law: { kind: 'power', softness: softness * mm, exponent }, spread: spread * mm }
    const surface: Surface = { kind: 'grooved', pitch: pitch * mm, land: land * mm, depth: depth * mm }
    const { light, heavy, grooved } = demonstration
    const first = sinksUnder(light.load, size, turf)
    const drops = [sinksUnder(heavy.load, size, turf) - first, groovedDrop(size, turf, surface)] as const
    const within = { name: 'within 0.05 mm', relative: 0, absolute: near }
    expectNear(drops[0], heavy.drop, within)
    expectNear(drops[1], grooved.drop, within)
    const toThePrint = (digit: number) => ({ name: 'as printed', relative: 0, absolute: 0.5001 * digit * mm })
    expectNear(drops[0], smoothDrop * mm, toThePrint(0.01))
    expectNear(drops[1], groovedSaid * mm, toThePrint(0.01))
    expectNear(first, lightSinks * mm, toThePrint(0.1))
    const asked = { turf, condition: standing, arc: 'circle' } as const
    const pressed = press({ roller: { mass: 0, ...size, surface }, load: grooved.load * GRAVITY, ...asked })
    if (pressed.outcome !== 'settled') return expect.fail(pressed.outcome)
    expect(pressed.bearingFraction).toBeGreaterThan(0.8)
    expect(pressed.bearingFraction).toBeLessThan(0.86)
    const kinds = pressed.cautions.map(({ kind }) => kind)
    expect(kinds).toContain('deep in the arc')
    expect(kinds).toContain('steep at the land')
    const deepest = (first + heavy.drop) / (size.diameter / 2)
    expect(first / (size.diameter / 2)).toBeGreaterThan(0.17)
    expect(deepest).toBeLessThan(0.42)
  })
})
