import {
  type Condition,
  loadAt,
  type Pressed,
  type PressureLaw,
  press,
  type Roller,
  type Turf,
} from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  bounded,
  conditions,
  grooved,
  laws,
  rollers,
  rollerWith,
  smooth,
  springs,
  standing,
  turfs,
} from '../../support/arbitraries.ts'
import { expectNear, identity, solver, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const loads = fc.double({ min: 5, max: 400, noNaN: true })

const settledOr = (pressed: Pressed) => (pressed.outcome === 'settled' ? pressed : undefined)

type Question = { roller: Roller; turf: Turf; condition: Condition }

/** Sinkage under a load on both sides of a limit; nothing to compare where the turf bottoms out. */
function compared(
  one: Question,
  other: Question,
  load: number,
  check: (a: number, b: number) => void,
): boolean {
  const a = settledOr(press({ ...one, load }))
  const b = settledOr(press({ ...other, load }))
  if (!a || !b) return false
  check(a.sinkage, b.sinkage)
  return true
}

/** Runs a comparison over many cases and makes sure that most of them were compared at all. */
function most<T>(cases: fc.Arbitrary<T>, runs: number, compare: (one: T) => boolean) {
  let count = 0
  fc.assert(
    fc.property(cases, one => {
      if (compare(one)) count++
    }),
    bounded(runs),
  )
  expect(count).toBeGreaterThan(runs / 2)
}

describe('limits', () => {
  test('turf that spreads load nowhere is a bed of springs', () => {
    most(fc.record({ roller: rollers, turf: springs, condition: conditions, load: loads }), 200, one =>
      compared(one, { ...one, turf: { ...one.turf, spread: 1e-9 } }, one.load, (a, b) =>
        // load grows by about 1.5 (l/a)² and by 2 l/L at the ends
        expectNear(b, a, stated(1e-5), JSON.stringify(one)),
      ),
    )
  })

  test('a spread too small to tell is none, however small', () => {
    const cases = fc.record({ roller: rollers, turf: springs, condition: conditions, load: loads })
    const tiny = fc.constantFrom(1e-11, 1e-13, 1e-20, 1e-124, 5e-324)
    most(fc.tuple(cases, tiny), 100, ([one, spread]) =>
      compared(one, { ...one, turf: { ...one.turf, spread } }, one.load, (a, b) =>
        expectNear(a, b, stated(1e-7)),
      ),
    )
  })

  test('a groove that is all land is no groove', () => {
    const cases = fc.record({ roller: rollerWith(grooved), turf: turfs, condition: conditions, load: loads })
    most(cases, 200, one => {
      const { surface } = one.roller
      if (surface.kind !== 'grooved') return false
      const flat = { ...one, roller: { ...one.roller, surface: { kind: 'smooth' } as const } }
      const { pitch } = surface
      const whole = { ...one, roller: { ...one.roller, surface: { ...surface, land: pitch } } }
      const nearly = { ...one, roller: { ...one.roller, surface: { ...surface, land: pitch * (1 - 1e-7) } } }
      return (
        compared(flat, whole, one.load, (a, b) => expectNear(b, a, identity)) &&
        compared(flat, nearly, one.load, (a, b) => expectNear(b, a, stated(1e-5), JSON.stringify(one)))
      )
    })
  })

  test('a groove without depth is no groove, and one with next to none hardly one', () => {
    const cases = fc.record({ roller: rollerWith(grooved), turf: turfs, condition: conditions, load: loads })
    most(cases, 200, one => {
      const { surface } = one.roller
      if (surface.kind !== 'grooved') return false
      const flat = { ...one, roller: { ...one.roller, surface: { kind: 'smooth' } as const } }
      const none = { ...one, roller: { ...one.roller, surface: { ...surface, depth: 0 } } }
      const hardly = { ...one, roller: { ...one.roller, surface: { ...surface, depth: 1e-12 } } }
      return (
        compared(flat, none, one.load, (a, b) => expectNear(b, a, identity)) &&
        compared(flat, hardly, one.load, (a, b) => expectNear(b, a, stated(1e-4), JSON.stringify(one)))
      )
    })
  })

  test.each(['stiffening', 'logarithmic'] as const)('turf that locks far below is linear: %s', kind => {
    const cases = fc.record({ roller: rollers, turf: turfs, condition: conditions, load: loads })
    most(cases, 100, one => {
      const softness = 1.3 * mm
      const linear: PressureLaw = { kind: 'linear', softness }
      const far: PressureLaw = { kind, softness, lockingDepth: 1e7 }
      const on = (law: PressureLaw) => ({ ...one, turf: { ...one.turf, law } })
      return compared(on(linear), on(far), one.load, (a, b) => expectNear(b, a, stated(1e-8)))
    })
  })

  test('exponent one is the linear law', () => {
    const cases = fc.record({ roller: rollers, turf: turfs, condition: conditions, load: loads })
    most(cases, 100, one => {
      const linear: PressureLaw = { kind: 'linear', softness: 0.9 * mm }
      const power: PressureLaw = { kind: 'power', softness: 0.9 * mm, exponent: 1 }
      const on = (law: PressureLaw) => ({ ...one, turf: { ...one.turf, law } })
      return compared(on(linear), on(power), one.load, (a, b) => expectNear(b, a, solver))
    })
  })

  test('mowing on turf that gives all of it back at once is standing', () => {
    most(fc.record({ roller: rollers, turf: turfs, load: loads }), 150, one => {
      const turf = { ...one.turf, rebound: 1, lasting: 0 }
      const mowing: Condition = { kind: 'mowing', speed: 1.3 }
      return compared(
        { ...one, turf, condition: standing },
        { ...one, turf, condition: mowing },
        one.load,
        (a, b) => expectNear(b, a, identity),
      )
    })
  })

  test('mowing on turf that gives nothing back has nothing behind the axis', () => {
    most(fc.record({ roller: rollerWith(smooth), law: laws, load: loads }), 80, ({ roller, law, load }) => {
      const pressed = settledOr(
        press({ roller, turf: { law, rebound: 0 }, load, condition: { kind: 'mowing', speed: 1.3 } }),
      )
      if (!pressed) return false
      expect(pressed.lengthBehind).toBe(0)
      const stood = loadAt({ roller, turf: { law }, sinkage: pressed.sinkage, condition: standing })
      if (stood.outcome !== 'settled') return false
      expectNear(stood.load, 2 * load, solver)
      return true
    })
  })
})

describe('press and loadAt', () => {
  test('are each other’s inverse', () => {
    most(fc.record({ roller: rollers, turf: turfs, condition: conditions, load: loads }), 300, one => {
      const pressed = settledOr(press(one))
      if (!pressed) return false
      const loaded = loadAt({ ...one, sinkage: pressed.sinkage })
      if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
      expectNear(loaded.load, one.load, solver)
      expectNear(loaded.lineLoad, pressed.lineLoad, solver)
      return true
    })
  })

  test('say the same of contact width, pressure and bearing fraction', () => {
    most(fc.record({ roller: rollers, turf: turfs, condition: conditions, load: loads }), 200, one => {
      const pressed = settledOr(press(one))
      if (!pressed) return false
      const { bearingFraction, contactWidth, lineLoad, meanPressure, lengthAhead, lengthBehind } = pressed
      const flat = { ...one, roller: { ...one.roller, surface: { kind: 'smooth' } as const } }
      const smoothLoad = loadAt({ ...flat, sinkage: pressed.sinkage })
      if (smoothLoad.outcome !== 'settled') return expect.fail(smoothLoad.outcome)
      expectNear(bearingFraction, lineLoad / smoothLoad.lineLoad, solver)
      expectNear(contactWidth, bearingFraction * one.roller.length, identity)
      expectNear(meanPressure * (lengthAhead + lengthBehind), lineLoad, identity)
      return true
    })
  })
})
