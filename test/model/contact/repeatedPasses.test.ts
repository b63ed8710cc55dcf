import { press, type Roller, repeatedPasses, type Turf } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { across, bounded, openLaws, turfOn } from '../../support/arbitraries.ts'
import { expectNear, identity, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const roller: Roller = { mass: 4.2, diameter: 0.058, length: 0.53, surface: { kind: 'smooth' } }
const power = { kind: 'power', softness: 1.4 * mm, exponent: 0.8 } as const
const question = { roller, load: 130, passes: 4, interval: 60 }

function passed(turf: Turf, changes: { passes?: number; interval?: number } = {}) {
  const found = repeatedPasses({ ...question, turf, ...changes })
  if (found.outcome !== 'settled') return expect.fail(found.outcome)
  return found.passes
}

describe('closed forms', () => {
  test('the sinkage goes towards z₁ ((1 + √λ)/(√μ + √λ))^(1/(n + ½))', () => {
    const turf: Turf = { law: power, rebound: 0.36, lasting: 0.4 }
    const all = passed(turf, { passes: 80 })
    const part = (1 + 0.6) / (Math.sqrt(0.6) + 0.6)
    expectNear(all.at(-1)!.sinkage / all[0]!.sinkage, part ** (1 / 1.3), stated(1e-9))
  })

  test('between passes the depression falls as an exponential towards what stays', () => {
    const turf: Turf = { law: power, rebound: 0.3, lasting: 0.1, recoveryTime: 45 }
    for (const { sinkage, left, later } of passed(turf)) {
      expectNear(left, 0.7 * sinkage, stated(1e-10))
      expectNear(later, sinkage * (0.1 + 0.6 * Math.exp(-60 / 45)), identity)
    }
  })
})

describe('limits', () => {
  test('the first pass is a pass over fresh turf', () => {
    const turf: Turf = { law: power, rebound: 0.3, lasting: 0.2, spread: 2 * mm }
    const alone = press({ roller, turf, load: 130, condition: { kind: 'mowing', speed: 1.2 } })
    const first = passed(turf)[0]!
    if (alone.outcome !== 'settled') return expect.fail(alone.outcome)
    expectNear(first.sinkage, alone.sinkage, stated(1e-10))
    expectNear(first.resistance, alone.resistance, stated(1e-9))
    expect(first.met).toBe(0)
  })

  test('turf that comes back between passes answers each of them alike', () => {
    const all = passed({ law: power, rebound: 0.5, recoveryTime: 1 }, { interval: 100 })
    for (const { sinkage } of all) expectNear(sinkage, all[0]!.sinkage, stated(1e-9))
  })

  test('a law that locks says so at the pass that reaches it', () => {
    const law = { kind: 'logarithmic', softness: 1.4 * mm, lockingDepth: 2 * mm } as const
    const found = repeatedPasses({ ...question, load: 900, turf: { law, rebound: 0.2 } })
    expect(found.outcome).toBe('bottomed out')
  })
})

describe('properties', () => {
  test('under one load no pass is shallower than the one before, and none costs more', () => {
    fc.assert(
      fc.property(turfOn(openLaws), across(20, 400), across(0.1, 100), (turf, load, interval) => {
        const found = repeatedPasses({ ...question, turf, load, interval })
        if (found.outcome !== 'settled') return expect.fail(found.outcome)
        found.passes.forEach((pass, i) => {
          expect(pass.met).toBeLessThanOrEqual(pass.sinkage)
          expect(pass.later).toBeLessThanOrEqual(pass.left * (1 + 1e-9) + 1e-15)
          const before = found.passes[i - 1]
          if (!before) return
          expect(pass.met).toBe(before.later)
          expect(pass.sinkage).toBeGreaterThanOrEqual(before.sinkage * (1 - 1e-9))
          expect(pass.resistance).toBeLessThanOrEqual(before.resistance * (1 + 1e-9) + 1e-12)
        })
      }),
      bounded(150),
    )
  })
})

describe('refuses', () => {
  const turf: Turf = { law: power, rebound: 0.5 }
  test.each([
    ['passes', { ...question, turf, passes: 1.5 }],
    ['passes', { ...question, turf, passes: 0 }],
    ['interval', { ...question, turf, interval: 0 }],
    ['load', { ...question, turf, load: -1 }],
    [
      'roller.surface.kind',
      {
        ...question,
        turf,
        roller: { ...roller, surface: { kind: 'grooved', pitch: 0.012, land: 0.005, depth: 0.004 } as const },
      },
    ],
  ])('%s', (path, bad) => {
    expect(() => repeatedPasses(bad)).toThrow(path)
  })
})
