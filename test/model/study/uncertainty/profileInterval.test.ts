import { type CurveQuestion, fitCurve, InputError, profileCurve, profileInterval } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { nistRows, nistSets } from '../../../support/nistSets.ts'
import { puromycin } from '../../../support/publicReadings.ts'
import { numberOf, referenceTable } from '../../../support/referenceTables.ts'
import { expectNear, expectPrinted, stated } from '../../../support/tolerance.ts'

type Named = Readonly<Record<string, number>>

function questionOf(name: string): CurveQuestion<readonly number[]> {
  if (name === 'Puromycin')
    return {
      model: ([x = 0], { b1 = 0, b2 = 0 }: Named) => (b1 * x) / (b2 + x),
      x: puromycin.x.map(x => [x]),
      y: puromycin.y,
      start: { b1: 200, b2: 0.05 },
      noise: { kind: 'estimated' },
    }
  const set = nistSets.find(other => other.name === name)!
  const rows = nistRows(name)
  return {
    model: (x, parameters) => set.model(x, Object.values(parameters)),
    x: rows.map(({ x }) => x),
    y: rows.map(({ y }) => y),
    start: Object.fromEntries(set.starts[1]!.map((value, k) => [`b${k + 1}`, value])),
    noise: { kind: 'estimated' },
  }
}

// test/reference/data/profiles.csv, by scipy's least_squares and brentq: test/reference/generate/profiles.py
describe('published values: profiles by scipy', () => {
  const rows = referenceTable('profiles')
  test('are twenty-seven', () => expect(rows).toHaveLength(27))

  test.each(rows.map(row => [row.set!, row.parameter!, row.level!, row.noise!, row] as const))(
    '%s %s at %s, noise %s',
    (name, parameter, level, noise, row) => {
      const asked: CurveQuestion<readonly number[]> = {
        ...questionOf(name),
        level: Number(level),
        noise:
          noise === 'known'
            ? { kind: 'known', standardDeviation: numberOf(row, 'deviation') }
            : { kind: 'estimated' },
      }
      // the model reads its parameters in their order, so the one held must not move to the end
      const names = Object.keys(asked.start)
      const question = {
        ...asked,
        model: (x: readonly number[], p: Named) =>
          asked.model(x, Object.fromEntries(names.map(each => [each, p[each]!]))),
      }
      const interval = profileCurve(question, fitCurve(question), parameter)
      if (interval.kind !== 'interval') expect.fail(interval.kind)
      expectNear(interval.low, numberOf(row, 'low'), stated(1e-7))
      expectNear(interval.high, numberOf(row, 'high'), stated(1e-7))
    },
  )

  // Source: what R's confint of nls prints for Puromycin, by splines through the profile (from memory).
  test('Puromycin by R: 197.3 to 229.3, and 0.0469 to 0.0862', () => {
    const question = questionOf('Puromycin')
    const fit = fitCurve(question)
    const ends = ['b1', 'b2'].map(name => profileCurve(question, fit, name))
    const [vm, k] = ends
    if (vm?.kind !== 'interval' || k?.kind !== 'interval') expect.fail('no interval')
    expectPrinted(vm.low, '197.3')
    expectPrinted(vm.high, '229.3')
    expectPrinted(k.low, '0.0469')
    expectPrinted(k.high, '0.0862')
  })
})

describe('limits', () => {
  const base = {
    best: 10,
    value: 2,
    standardError: 0.5,
    level: 0.95,
    dof: 10,
    noise: { kind: 'known', standardDeviation: 1 },
  } as const

  test('a parabola has the straight model’s interval', () => {
    const interval = profileInterval({ ...base, solve: v => 10 + ((v - 2) / 0.5) ** 2 })
    if (interval.kind !== 'interval') expect.fail(interval.kind)
    // Abramowitz and Stegun, table 26.5 (from memory): 1.959964
    expectNear(interval.low, 2 - 1.959964 * 0.5, stated(1e-6))
    expectNear(interval.high, 2 + 1.959964 * 0.5, stated(1e-6))
  })

  test('a sum that levels off bounds from one side only', () => {
    const interval = profileInterval({
      ...base,
      solve: v => 10 + (v < 2 ? (2 - v) ** 2 * 9 : 1 - Math.exp(2 - v)),
    })
    expect(interval.kind).toBe('at least')
    const mirrored = profileInterval({
      ...base,
      solve: v => 10 + (v > 2 ? (v - 2) ** 2 * 9 : 1 - Math.exp(v - 2)),
    })
    expect(mirrored.kind).toBe('at most')
  })

  test('a bound that is reached before the end leaves that side open', () => {
    const interval = profileInterval({ ...base, solve: v => 10 + ((v - 2) / 0.5) ** 2, lower: 1.5 })
    if (interval.kind !== 'at most') expect.fail(interval.kind)
    expect(interval.why).toContain('its bound 1.5')
  })

  test('where the model has no answer the side is open as far as it has one', () => {
    const interval = profileInterval({ ...base, solve: v => (v > 2.5 ? null : 10 + ((v - 2) / 0.5) ** 2) })
    if (interval.kind !== 'at least') expect.fail(interval.kind)
    expect(interval.why).toContain('no answer')
  })

  test('the end before which the model stops having answers is found', () => {
    const interval = profileInterval({ ...base, solve: v => (v > 3.1 ? null : 10 + ((v - 2) / 0.5) ** 2) })
    if (interval.kind !== 'interval') expect.fail(interval.kind)
    expectNear(interval.high, 2 + 1.959964 * 0.5, stated(1e-6))
  })

  test('a flat sum determines nothing', () => {
    const interval = profileInterval({ ...base, solve: () => 10 })
    if (interval.kind !== 'undetermined') expect.fail(interval.kind)
    expect(interval.why).toContain('given up')
  })

  test('a smaller sum of squares beside the fit is told', () => {
    const interval = profileInterval({ ...base, solve: v => 10 - (v - 2) })
    if (interval.kind !== 'undetermined') expect.fail(interval.kind)
    expect(interval.why).toContain('smaller sum of squares')
  })

  test('no degrees of freedom, or nothing left of the residuals, leave no scatter', () => {
    const noise = { kind: 'estimated' } as const
    const solve = (v: number) => (v - 2) ** 2
    expect(profileInterval({ ...base, noise, dof: 0, solve }).kind).toBe('undetermined')
    expect(profileInterval({ ...base, noise, best: 0, solve }).kind).toBe('undetermined')
  })

  test('a curve with nothing else to search is profiled by its sum alone', () => {
    const question: CurveQuestion = {
      model: (x, { slope = 0 }) => slope * x,
      x: [1, 2, 3, 4],
      y: [1.1, 1.9, 3.2, 3.9],
      start: { slope: 1 },
      noise: { kind: 'estimated' },
    }
    const fit = fitCurve(question)
    const interval = profileCurve(question, fit, 'slope')
    const straight = fit.parameters[0]!.interval
    if (interval.kind !== 'interval' || straight.kind !== 'interval') expect.fail('no interval')
    expectNear(interval.low, straight.low, stated(1e-8))
    expectNear(interval.high, straight.high, stated(1e-8))
  })
})

describe('refuses', () => {
  const question = questionOf('Puromycin')
  test('a parameter that was not fitted', () => {
    expect(() => profileCurve(question, fitCurve(question), 'b9')).toThrow(InputError)
  })
  test('the profile of a robust fit', () => {
    const robust = { ...question, loss: { kind: 'huber', at: 1.345 } as const }
    expect(() => profileCurve(robust, fitCurve(robust), 'b1')).toThrow(InputError)
  })
  test('a level of one', () => {
    expect(() =>
      profileInterval({
        solve: () => 1,
        best: 1,
        value: 1,
        standardError: 1,
        level: 1,
        dof: 1,
        noise: { kind: 'estimated' },
      }),
    ).toThrow(InputError)
  })
})
