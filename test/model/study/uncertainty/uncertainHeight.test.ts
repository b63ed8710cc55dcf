import {
  type HeightQuestion,
  InputError,
  type NoHeight,
  settle,
  type UncertainHeight,
  uncertainHeight,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { normal as gauss } from '../../../../packages/model/src/numerics/index.ts'
import { heightInputs, partsAt } from '../../../../packages/model/src/study/uncertainty/heightInput.ts'
import { expectNear, identity, ofSize, stated } from '../../../support/tolerance.ts'
import { normal, ofUnit, relative, smooth, softness, springs, uniform, unitWith } from './unitAtEllerby.ts'

const mm = 1e-3
const standing = { kind: 'standing' } as const

const answered = (told: UncertainHeight | NoHeight): UncertainHeight =>
  told.outcome === 'answered' ? told : expect.fail(told.outcome)

const askedOn = (soil: string, more: Partial<HeightQuestion> = {}): HeightQuestion => {
  const { turf, scatter } = springs[soil] ?? expect.fail(soil)
  return {
    unit: unitWith(smooth),
    turf,
    condition: standing,
    scatter: { ...scatter, ...ofUnit },
    draws: 20_000,
    seed: 1,
    ...more,
  }
}

/** A unit that stands the same on both rollers whatever the softness: it never leans. */
const balanced = {
  ...unitWith(smooth),
  rearRoller: unitWith(smooth).frontRoller,
  body: { mass: 18.2, at: 101 * mm },
  loads: [],
}
const exponent = 0.8
const onPower = { law: { kind: 'power', softness, exponent } } as const

const middleOf = (question: Parameters<typeof settle>[0]): number => {
  const settled = settle(question)
  return settled.outcome === 'settled' ? settled.effectiveHeight.middle : expect.fail(settled.outcome)
}

describe('limits', () => {
  test('a softness that scatters log-normally makes the drop log-normal, by n/(n + ½)', () => {
    const sigma = 0.25
    const told = answered(
      uncertainHeight({
        unit: balanced,
        turf: onPower,
        condition: standing,
        scatter: { softness: relative(sigma) },
        draws: 100_000,
        seed: 7,
      }),
    )
    const drop = balanced.benchHeight - middleOf({ unit: balanced, turf: onPower, condition: standing })
    const spread = (sigma * exponent) / (exponent + 1 / 2)
    for (const { probability, value, standardError } of told.quantiles) {
      const exact = balanced.benchHeight - drop * Math.exp(-spread * gauss.quantile(probability))
      // one input in slices of five thousand: the quantiles are those of the slices
      expectNear(value, exact, ofSize(drop, stated(1e-4)), `quantile ${probability}`)
      expect(Math.abs(value - exact)).toBeLessThan(6 * standardError + 1e-5 * drop)
    }
    const mean = drop * Math.exp(spread ** 2 / 2)
    expectNear(told.mean?.value ?? Number.NaN, balanced.benchHeight - mean, ofSize(drop, stated(1e-5)))
    const deviation = mean * Math.sqrt(Math.expm1(spread ** 2))
    expectNear(told.standardDeviation?.value ?? Number.NaN, deviation, stated(2e-4))
    expectNear(told.hangsOn?.[0]?.share.value ?? Number.NaN, 1, stated(2e-3))
  })

  test.each(Object.keys(springs))('small scatter on %s law adds up as the errors of a sum do', soil => {
    const { scatter, unit, turf, condition, ...question } = askedOn(soil)
    const part = 0.01
    const small = Object.fromEntries(
      Object.entries(scatter).map(([name, one]) => [
        name,
        one.kind === 'normal'
          ? normal(part * one.standardDeviation)
          : one.kind === 'uniform'
            ? uniform(part * one.halfWidth)
            : relative(part * one.relative),
      ]),
    )
    const told = answered(uncertainHeight({ unit, turf, condition, scatter: small, ...question }))
    const steps = new Map(
      heightInputs({ unit, turf, condition }).flatMap(input => {
        const one = small[input.name]
        if (!one) return []
        const deviation =
          one.kind === 'normal'
            ? one.standardDeviation
            : one.kind === 'uniform'
              ? one.halfWidth / Math.sqrt(3)
              : one.relative * input.nominal
        const at = (by: number) =>
          middleOf(
            partsAt({ unit, turf, condition }, [input], () => input.nominal + by) ?? expect.fail(input.name),
          )
        return [[input.name, (at(deviation) - at(-deviation)) / 2] as const]
      }),
    )
    const whole = Math.hypot(...steps.values())
    expectNear(told.standardDeviation?.value ?? Number.NaN, whole, stated(0.01))
    for (const { name, share } of told.hangsOn ?? [])
      expectNear(share.value, ((steps.get(name) ?? Number.NaN) / whole) ** 2, ofSize(1, stated(0.01)), name)
    expect(told.interactions?.value).toBeLessThan(0.005)
  })

  test('an input without scatter of its own hangs nothing on it', () => {
    const told = answered(uncertainHeight(askedOn('linear', { scatter: { softness: relative(0) } })))
    expect(told.hangsOn).toBeNull()
    expectNear(told.mean?.value ?? Number.NaN, told.nominal ?? Number.NaN, stated(1e-12))
  })
})

describe('what it hangs on', () => {
  test('a bench height alone scatters as it is set, evenly', () => {
    const half = 0.2 * mm
    const told = answered(uncertainHeight(askedOn('linear', { scatter: { benchHeight: uniform(half) } })))
    expectNear(told.standardDeviation?.value ?? Number.NaN, half / Math.sqrt(3), stated(1e-3))
    expect(told.hangsOn?.map(({ name }) => name)).toEqual(['benchHeight'])
    expectNear(told.hangsOn?.[0]?.effect ?? Number.NaN, half / Math.sqrt(3), stated(1e-3))
  })

  test('effects have the sign of settle: softer cuts lower, a higher bench higher', () => {
    const told = answered(uncertainHeight(askedOn('stiffening')))
    const effectOf = (name: string) =>
      told.hangsOn?.find(one => one.name === name)?.effect ?? expect.fail(name)
    expect(effectOf('softness')).toBeLessThan(0)
    expect(effectOf('scales.front')).toBeLessThan(0)
    expect(effectOf('benchHeight')).toBeGreaterThan(0)
  })

  test('shares and interactions make one', () => {
    const told = answered(uncertainHeight(askedOn('power')))
    const sum = (told.hangsOn ?? []).reduce((all, { share }) => all + share.value, 0)
    const { value = Number.NaN, standardError = Number.NaN } = told.interactions ?? {}
    expect(Math.abs(sum + value - 1)).toBeLessThan(3 * standardError)
    const shares = (told.hangsOn ?? []).map(({ share }) => share.value)
    expect(shares).toEqual([...shares].sort((a, b) => b - a))
  })
})

describe('the error of limited draws', () => {
  // Replicated hypercubes: Iman 1981 (from memory).
  test('is what twenty blocks say it is: forty seeds scatter by as much', () => {
    const runs = Array.from({ length: 40 }, (_, seed) =>
      answered(
        uncertainHeight(
          askedOn('power', { draws: 2000, seed, wanted: { height: 3.2 * mm, tolerance: 0.1 * mm } }),
        ),
      ),
    )
    const told = {
      mean: runs.map(run => run.mean ?? expect.fail()),
      deviation: runs.map(run => run.standardDeviation ?? expect.fail()),
      median: runs.map(run => run.quantiles[2] ?? expect.fail()),
      within: runs.map(run => run.wanted?.within ?? expect.fail()),
      share: runs.map(run => run.hangsOn?.[1]?.share ?? expect.fail()),
    }
    for (const [what, estimates] of Object.entries(told)) {
      const values = estimates.map(({ value }) => value)
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length
      const seen = Math.sqrt(
        values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1),
      )
      const said = Math.sqrt(
        estimates.reduce((sum, one) => sum + one.standardError ** 2, 0) / estimates.length,
      )
      // forty runs tell a deviation to a ninth of itself
      expect(seen / said, what).toBeGreaterThan(0.6)
      expect(seen / said, what).toBeLessThan(1.5)
    }
  })

  test('one seed gives one answer, another gives another', () => {
    const once = uncertainHeight(askedOn('power', { draws: 2000 }))
    expect(uncertainHeight(askedOn('power', { draws: 2000 }))).toEqual(once)
    expect(uncertainHeight(askedOn('power', { draws: 2000, seed: 2 }))).not.toEqual(once)
  })
})

describe('draws without an answer', () => {
  test('are counted by reason, and the shares of all draws make one', () => {
    const told = answered(
      uncertainHeight(
        askedOn('stiffening', {
          turf: { law: { kind: 'stiffening', softness, lockingDepth: 1.9 * mm } },
          scatter: { softness: relative(0.2), lockingDepth: normal(0.4 * mm) },
          wanted: { height: 3.8 * mm, tolerance: 0.1 * mm },
        }),
      ),
    )
    const missing = told.unanswered.reduce((sum, { count }) => sum + count, 0)
    expect(told.draws.answered + missing).toBe(told.draws.made)
    expect(new Set(told.unanswered.map(({ why }) => why))).toEqual(new Set(['bottomed out', 'not possible']))
    const { within, below, above } = told.wanted ?? expect.fail()
    expectNear(within.value + below.value + above.value + missing / told.draws.made, 1, identity)
    expect(told.histogram.counts.reduce((sum, count) => sum + count, 0)).toBe(told.draws.answered)
  })

  test('leave shares that make one: what is told is told of the draws that are answered', () => {
    const told = answered(
      uncertainHeight(
        askedOn('linear', { scatter: { softness: normal(0.3 * mm), benchHeight: uniform(0.2 * mm) } }),
      ),
    )
    expect(told.unanswered[0]?.share).toBeGreaterThan(0.01)
    const sum = (told.hangsOn ?? []).reduce((all, { share }) => all + share.value, 0)
    expectNear(sum, 1, stated(0.01))
  })

  test('exponents that the law does not take are named', () => {
    const told = answered(
      uncertainHeight(askedOn('power', { scatter: { exponent: normal(0.4) }, draws: 10_000 })),
    )
    const [reason] = told.unanswered
    expect(reason).toMatchObject({ why: 'not possible', where: 'turf.law' })
    // beyond 0.2 and 2 of a normal about 0.8
    const share = gauss.cdf((0.2 - exponent) / 0.4) + gauss.cdf((exponent - 2) / 0.4)
    expectNear(reason?.share ?? Number.NaN, share, ofSize(1, stated(2e-3)))
  })

  test('a unit that would tip is told apart', () => {
    const told = answered(
      uncertainHeight(askedOn('linear', { scatter: { 'body.at': normal(60 * mm) }, draws: 4000 })),
    )
    const [first, ...others] = told.unanswered
    expect(first?.why).toBe('would tip')
    // next to tipping a load of nearly nothing is hard to settle
    expect(others.every(({ why, count }) => why === 'not converged' && count < 40)).toBe(true)
  })

  test('when there is none at all, that is the outcome', () => {
    const told = uncertainHeight(
      askedOn('stiffening', {
        turf: { law: { kind: 'stiffening', softness: 0.05 * mm, lockingDepth: 0.06 * mm } },
        unit: {
          ...unitWith(smooth),
          loads: [{ name: 'ballast', mass: 4000, at: 101 * mm, height: 90 * mm }],
        },
        scatter: { benchHeight: uniform(0.1 * mm) },
        draws: 100,
      }),
    )
    expect(told).toMatchObject({ outcome: 'no answer', draws: { made: 100, answered: 0 } })
    expect(told.unanswered).toMatchObject([{ why: 'bottomed out', count: 100 }])
  })
})

describe('refuses', () => {
  test.each<[string, Partial<HeightQuestion>, string]>([
    [
      'an input that is not there',
      { scatter: { firmness: relative(0.1) } },
      'scatter.firmness: expected one of softness',
    ],
    ['a log-normal error of a scale', { scatter: { 'scales.front': relative(0.1) } }, 'scatter.scales.front'],
    ['a scatter below zero', { scatter: { softness: relative(-0.1) } }, 'scatter.softness.relative'],
    ['a scatter of no kind', { scatter: { softness: { kind: 'even' } as never } }, 'scatter.softness.kind'],
    ['no scatter', { scatter: {} }, 'scatter: expected at least one input'],
    ['too few draws', { draws: 10 }, 'draws: expected at least 100'],
    ['half a draw', { draws: 1000.5 }, 'draws: expected a whole number'],
    ['a tolerance of nothing', { wanted: { height: 4 * mm, tolerance: 0 } }, 'wanted.tolerance'],
    ['a seed that is no whole number', { seed: 0.5 }, 'seed'],
  ])('%s', (_what, more, words) => {
    expect(() => uncertainHeight(askedOn('power', more))).toThrow(InputError)
    expect(() => uncertainHeight(askedOn('power', more))).toThrow(words)
  })
})

test('an uncertain height survives JSON, and says how far it has come', () => {
  const steps: number[] = []
  const told = uncertainHeight(askedOn('stiffening', { draws: 10_000, onStep: done => steps.push(done) }))
  expect(JSON.parse(JSON.stringify(told))).toEqual(told)
  expect(steps.at(-1)).toBe(1)
  expect(steps).toEqual([...steps].sort((a, b) => a - b))
})
