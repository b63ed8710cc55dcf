import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../../packages/model/src/numerics/index.ts'
import { acrossSets } from '../../../../packages/model/src/study/fit/judge/acrossSets.ts'
import { expectNear, stated } from '../../../support/tolerance.ts'

const named = (values: readonly number[]) => values.map((value, i) => ({ set: `S${i + 1}`, value }))
const bounds = (interval: { kind: string }) => {
  if (interval.kind !== 'interval') return expect.fail(JSON.stringify(interval))
  return interval as unknown as { low: number; high: number }
}

/** As many numbers as asked with exactly this mean and standard deviation. */
function numbersWith(count: number, mean: number, deviation: number): number[] {
  const steps = Array.from({ length: count }, (_, i) => i - (count - 1) / 2)
  const own = Math.sqrt(steps.reduce((sum, x) => sum + x * x, 0) / (count - 1))
  return steps.map(x => mean + (deviation * x) / own)
}

describe('published values', () => {
  test('195 readings of a heat flow meter: mean 9.261460 within 9.258242 and 9.264679 (NIST/SEMATECH, §1.3.5.2)', () => {
    const { interval } = acrossSets({
      estimates: named(numbersWith(195, 9.26146, 0.02278881)),
      scale: 'difference',
    })
    // mean and deviation are printed to six decimals too
    expectNear(bounds(interval).low, 9.258242, stated(1.1e-7))
    expectNear(bounds(interval).high, 9.264679, stated(1.1e-7))
  })

  test('one more of five: 2.776 · √1.2 deviations away, by the table of Student’s t (from memory)', () => {
    const { newSet, interval } = acrossSets({
      estimates: named(numbersWith(5, 10, 2)),
      scale: 'difference',
    })
    expectNear(bounds(newSet).high - 10, 2.776 * Math.sqrt(1.2) * 2, stated(2e-4))
    expectNear(bounds(interval).high - 10, (2.776 * 2) / Math.sqrt(5), stated(2e-4))
  })
})

describe('a ratio', () => {
  const values = [0.5, 0.7, 0.9, 1.4, 0.6, 1.1]

  test('is the median of logarithms, and turning it over turns its ends over', () => {
    const found = acrossSets({ estimates: named(values), scale: 'ratio' })
    const over = acrossSets({ estimates: named(values.map(v => 1 / v)), scale: 'ratio' })
    expectNear(found.median, Math.exp(values.reduce((sum, v) => sum + Math.log(v), 0) / 6), stated(1e-12))
    expectNear(bounds(found.interval).low, 1 / bounds(over.interval).high, stated(1e-12))
    expectNear(bounds(found.newSet).high, 1 / bounds(over.newSet).low, stated(1e-12))
  })

  test('scales with its unit, bootstrap and all', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1e4, noNaN: true }), unit => {
        const bootstrap = { draws: 300, seed: 4 }
        const one = acrossSets({ estimates: named(values), scale: 'ratio', bootstrap })
        const other = acrossSets({ estimates: named(values.map(v => unit * v)), scale: 'ratio', bootstrap })
        for (const key of ['interval', 'newSet'] as const)
          expectNear(bounds(other[key]).low, unit * bounds(one[key]).low, stated(1e-9), key)
        expectNear(
          bounds(other.studentised!.interval).high,
          unit * bounds(one.studentised!.interval).high,
          stated(1e-9),
        )
      }),
      { numRuns: 20 },
    )
  })
})

describe('an error that sets share', () => {
  const estimates = named([1, 2, 3, 4, 5])

  test('adds its variance whole, however many sets there are', () => {
    const own = acrossSets({ estimates, scale: 'difference' })
    const both = acrossSets({
      estimates,
      scale: 'difference',
      shared: { variance: 1e6, degreesOfFreedom: null },
    })
    // so large an error, and known: the normal distribution
    expectNear(bounds(both.interval).high - 3, 1.959964 * 1e3, stated(1e-5))
    expect(bounds(own.interval).high - 3).toBeLessThan(2)
  })

  // Degrees of freedom of a sum of variances: Satterthwaite 1946 (from memory).
  test('covers what it should: sets with scatter and an error in common', () => {
    const random = randomFrom(17)
    const tries = 4000
    let held = 0
    for (let k = 0; k < tries; k++) {
      const common = 0.4 * random.normal()
      const { interval } = acrossSets({
        estimates: named(Array.from({ length: 6 }, () => common + random.normal())),
        scale: 'difference',
        shared: { variance: 0.16, degreesOfFreedom: null },
      })
      const { low, high } = bounds(interval)
      if (low < 0 && 0 < high) held++
    }
    expect(Math.abs(held / tries - 0.95), `${held}`).toBeLessThan(0.015)
  })

  test('reaches into the bootstrap too, which would not show it', () => {
    const ask = { estimates: named(numbersWith(8, 10, 2)), scale: 'difference' } as const
    const bootstrap = { draws: 400, seed: 1 }
    const own = bounds(acrossSets({ ...ask, bootstrap }).studentised!.interval)
    const shared = { variance: 4, degreesOfFreedom: null }
    const both = bounds(acrossSets({ ...ask, bootstrap, shared }).studentised!.interval)
    expectNear(both.high - 10, Math.hypot(own.high - 10, 1.959964 * 2), stated(1e-6))
    expectNear(10 - both.low, Math.hypot(10 - own.low, 1.959964 * 2), stated(1e-6))
  })
})

// Studentised: Hall 1988, Annals of Statistics 16:927-953; joined with an error in common in squares: Zou and Donner 2008
// (both from memory).
describe('the bootstrap', () => {
  const of = (count: number, seed = 3) =>
    acrossSets({
      estimates: named(numbersWith(count, 10, 2)),
      scale: 'difference',
      bootstrap: { draws: 2000, seed },
    })

  test('is the same from the same seed, and another from another', () => {
    expect(of(12)).toEqual(of(12))
    expect(of(12).studentised!.interval).not.toEqual(of(12, 4).studentised!.interval)
  })

  test('counts the draws that held one set only', () => {
    // four alike of four: 4/256 of 2,000 is 31 with a deviation of 5.5
    const { failed } = of(4).studentised!
    expect(of(4).studentised!.interval.kind).toBe('undetermined')
    expect(Math.abs(failed - 31)).toBeLessThan(20)
    expect(of(30).studentised!.failed).toBe(0)
  })

  test('by percentiles is offered from 30 sets on, studentised from 6', () => {
    expect(of(29).percentile!.interval).toMatchObject({ kind: 'undetermined' })
    expect(of(30).percentile!.interval).toMatchObject({ kind: 'interval' })
    expect(of(5).studentised!.interval).toMatchObject({ kind: 'undetermined' })
    expect(of(6).studentised!.interval).toMatchObject({ kind: 'interval' })
  })

  test('comes near Student’s t for many sets', () => {
    const { interval, studentised } = of(60)
    const [t, b] = [bounds(interval), bounds(studentised!.interval)]
    expectNear(b.high - b.low, t.high - t.low, stated(0.06))
  })
})

describe('refuses', () => {
  test('to speak of a population from one set', () => {
    const { interval, spread } = acrossSets({ estimates: named([1]), scale: 'ratio' })
    expect(interval).toMatchObject({ kind: 'undetermined', why: expect.stringContaining('one set') })
    expect(spread).toBeNull()
  })

  test('a ratio of nothing, a set named twice, no sets', () => {
    expect(() => acrossSets({ estimates: named([1, 0]), scale: 'ratio' })).toThrow('estimates.1.value')
    expect(() => acrossSets({ estimates: [], scale: 'ratio' })).toThrow('at least one set')
    const twice = [...named([1]), ...named([2])]
    expect(() => acrossSets({ estimates: twice, scale: 'ratio' })).toThrow('every set once')
  })
})
