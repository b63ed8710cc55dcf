import {
  InputError,
  laws as kinds,
  type PressureLaw,
  pressureAt,
  sinkageAt,
  slopeAt,
  softnessOf,
  spreadAt,
  withSoftness,
  workTo,
} from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded, laws, turfs } from '../../support/arbitraries.ts'
import { referenceLaw } from '../../support/referenceLaws.ts'
import { doubleExponential } from '../../support/referenceQuadrature.ts'
import { expectNear, identity, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const parts = fc.double({ min: 0.001, max: 0.98, noNaN: true })

/** A depth inside the law: a part of the locking depth, or of five times the softness. */
const depthIn = (law: PressureLaw, part: number) =>
  part * Math.min(referenceLaw(law).limit, 5 * softnessOf(law))

const everyLaw = (runs: number, check: (law: PressureLaw, z: number) => void) =>
  fc.assert(
    fc.property(laws, parts, (law, part) => check(law, depthIn(law, part))),
    bounded(runs),
  )

describe('every law of pressure against sinkage', () => {
  test('carries 10 kPa at its softness', () => {
    everyLaw(300, law => expectNear(pressureAt(law, softnessOf(law)), 10e3, identity))
  })

  // Winkler 1867 (linear), Bernstein 1913 and Bekker 1956 (power), Kondner 1963 and Bandis 1983 (stiffening); from memory.
  test('is the equation it is called after', () => {
    everyLaw(500, (law, z) => {
      const second = referenceLaw(law)
      expectNear(pressureAt(law, z), second.pressure(z), stated(1e-11))
      expectNear(slopeAt(law, z), second.slope(z), stated(1e-11))
      expectNear(workTo(law, z), second.work(z), stated(1e-11))
    })
  })

  test('has the area under it for its work', () => {
    everyLaw(300, (law, z) =>
      expectNear(
        workTo(law, z),
        doubleExponential((_, x) => pressureAt(law, x), 0, z),
        stated(1e-11),
      ),
    )
  })

  test('has the inverse it says', () => {
    everyLaw(500, (law, z) => expectNear(sinkageAt(law, pressureAt(law, z)), z, stated(1e-11)))
  })

  test('carries nothing at the surface and more the deeper', () => {
    everyLaw(300, (law, z) => {
      expect(pressureAt(law, 0)).toBe(0)
      expect(workTo(law, 0)).toBe(0)
      expect(pressureAt(law, z)).toBeGreaterThan(pressureAt(law, 0.99 * z))
    })
  })

  test('keeps its other parameters when it is made softer', () => {
    fc.assert(
      fc.property(turfs, fc.double({ min: 0.3, max: 1.05, noNaN: true }), (turf, times) => {
        const softness = softnessOf(turf.law) * times
        const softer = withSoftness(turf, softness)
        expect(softer).toEqual({ ...turf, law: { ...turf.law, softness } })
      }),
      bounded(200),
    )
  })
})

describe('limits', () => {
  test('exponent one is the linear law', () => {
    fc.assert(
      fc.property(parts, part => {
        const z = part * 5 * mm
        const linear: PressureLaw = { kind: 'linear', softness: 0.7 * mm }
        const one: PressureLaw = { kind: 'power', softness: 0.7 * mm, exponent: 1 }
        for (const f of [pressureAt, slopeAt, workTo]) expectNear(f(one, z), f(linear, z), identity)
      }),
      bounded(100),
    )
  })

  test.each(['stiffening', 'logarithmic'] as const)('a %s law that locks far below is linear', kind => {
    const linear: PressureLaw = { kind: 'linear', softness: 0.7 * mm }
    const far: PressureLaw = { kind, softness: 0.7 * mm, lockingDepth: 1e6 }
    for (const z of [0.01 * mm, 0.7 * mm, 9 * mm])
      for (const f of [pressureAt, slopeAt, workTo]) expectNear(f(far, z), f(linear, z), stated(2e-8))
  })

  test('a shallow work is half of pressure times depth, to the last digits', () => {
    for (const kind of ['stiffening', 'logarithmic'] as const) {
      const law: PressureLaw = { kind, softness: 1 * mm, lockingDepth: 8 * mm }
      // Φ/(p z) = ½ − u/6 + … or ½ − u/12 + … at u = z/H
      expectNear((workTo(law, 1e-12) * 2) / (pressureAt(law, 1e-12) * 1e-12), 1, stated(1e-9))
    }
  })

  test('spread at the softness is the spread given; for the linear law it is so everywhere', () => {
    fc.assert(
      fc.property(turfs, parts, (turf, part) => {
        expectNear(spreadAt(turf, softnessOf(turf.law)), turf.spread ?? 0, identity)
        if (turf.law.kind === 'linear')
          expectNear(spreadAt(turf, depthIn(turf.law, part)), turf.spread ?? 0, identity)
      }),
      bounded(200),
    )
  })
})

describe('refuses', () => {
  const closing: PressureLaw = { kind: 'stiffening', softness: 1 * mm, lockingDepth: 3 * mm }
  test.each([
    ['a sinkage above the surface', () => pressureAt(closing, -1e-9), 'sinkage'],
    ['a sinkage at the locking depth', () => pressureAt(closing, 3 * mm), 'sinkage'],
    ['a sinkage that is no number', () => slopeAt(closing, Number.NaN), 'sinkage'],
    ['tension', () => sinkageAt(closing, -1), 'pressure'],
    [
      'a locking depth above the softness',
      () => pressureAt({ ...closing, lockingDepth: 0.9 * mm }, 0),
      'law.lockingDepth',
    ],
    ['a softness at the locking depth', () => withSoftness({ law: closing }, 3 * mm), 'law.lockingDepth'],
    ['a softness of nothing', () => pressureAt({ kind: 'linear', softness: 0 }, 0), 'law.softness'],
    [
      'an exponent of 0.1',
      () => pressureAt({ kind: 'power', softness: 1 * mm, exponent: 0.1 }, 0),
      'law.exponent',
    ],
  ])('%s', (_, ask, quantity) => {
    expect(ask).toThrow(InputError)
    expect(ask).toThrow(expect.objectContaining({ quantity }))
  })

  test('a law nobody knows, by naming those it does', () => {
    const unknown = JSON.parse('{ "kind": "constructor", "softness": 0.001 }') as PressureLaw
    expect(() => pressureAt(unknown, 0)).toThrow(
      new RegExp(`law.kind: expected one of ${Object.keys(kinds).join(', ')}`),
    )
  })
})
