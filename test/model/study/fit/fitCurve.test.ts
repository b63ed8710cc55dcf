import { type CurveQuestion, type Fit, fitCurve, InputError } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { puromycin, stackLoss } from '../../../support/publicReadings.ts'
import { numberOf, referenceTable } from '../../../support/referenceTables.ts'
import { expectNear, expectPrinted, identity, stated } from '../../../support/tolerance.ts'

type Named = Readonly<Record<string, number>>

const uptake = (x: number, { Vm = 0, K = 0 }: Named) => (Vm * x) / (K + x)
const cells: CurveQuestion = {
  model: uptake,
  ...puromycin,
  start: { Vm: 200, K: 0.05 },
  noise: { kind: 'estimated' },
}
const of = (fit: Fit, name: string) => fit.parameters.find(parameter => parameter.name === name)!

describe('published values', () => {
  // Source: Bates and Watts 1988, Nonlinear Regression Analysis, §2.1 (from memory; R's nls gives the same).
  test('Puromycin: 212.7 and 0.06412, standard errors 6.947 and 0.00828', () => {
    const fit = fitCurve(cells)
    expectPrinted(of(fit, 'Vm').value, '212.7')
    expectPrinted(of(fit, 'K').value, '0.06412')
    expectPrinted(of(fit, 'Vm').standardError!, '6.947')
    expectPrinted(of(fit, 'K').standardError!, '0.00828')
    expectPrinted(fit.residualStandardDeviation!, '10.93')
    expect(fit.degreesOfFreedom).toBe(10)
  })

  // test/reference/data/curves.csv, by R's nls and AIC: test/reference/generate/curves.R
  test.each(['equal', '1/rate'])(
    'R says the same of it with %s weights, nine in ten intervals',
    weighting => {
      const fit = fitCurve({
        ...cells,
        level: 0.9,
        ...(weighting === 'equal' ? {} : { weights: puromycin.y.map(y => 1 / y) }),
      })
      for (const row of referenceTable('curves').filter(({ weights }) => weights === weighting)) {
        const { value, standardError, interval } = of(fit, row.parameter!)
        // nls stops at 1e-7 of a standard error
        const near = stated(1e-7)
        expectNear(value, numberOf(row, 'value'), near)
        expectNear(standardError!, numberOf(row, 'error'), near)
        if (interval.kind !== 'interval') expect.fail(interval.kind)
        expectNear(interval.low, numberOf(row, 'low'), near)
        expectNear(interval.high, numberOf(row, 'high'), near)
        expectNear(fit.correlation![0]![1]!, numberOf(row, 'correlation'), near)
        expectNear(fit.residualStandardDeviation!, numberOf(row, 'sigma'), near)
        expectNear(fit.aicc!, numberOf(row, 'aicc'), near)
      }
    },
  )
})

// test/reference/data/robust.csv, by MASS's rlm: test/reference/generate/robust.R
describe('published values: robust regressions of the stack loss', () => {
  const rows = referenceTable('robust')
  const losses = (kind: string, spread: number, given: boolean): Fit =>
    fitCurve<readonly number[]>({
      model: ([a = 0, w = 0, c = 0], { b0 = 0, air = 0, water = 0, acid = 0 }) =>
        b0 + air * a + water * w + acid * c,
      x: stackLoss.map(row => row.slice(0, 3)),
      y: stackLoss.map(row => row[3]),
      start: { b0: 0, air: 0, water: 0, acid: 0 },
      noise: { kind: 'estimated' },
      ...(kind === 'huber' && {
        loss: { kind: 'huber', at: 1.345, ...(given && { standardDeviation: spread }) },
      }),
      ...(kind === 'bisquare' && {
        loss: { kind: 'bisquare', at: 4.685, ...(given && { standardDeviation: spread }) },
      }),
    })

  // Standard errors after Huber 1981, Robust Statistics (from memory); rlm computes the same.
  test.each(['squares', 'huber', 'bisquare'])('%s', kind => {
    const own = rows.filter(({ loss }) => loss === kind)
    const spread = numberOf(own[0]!, 'spread')
    const fit = losses(kind, spread, true)
    expect(fit.outcome).toBe('converged')
    for (const row of own) {
      const { value, standardError } = of(fit, row.term!)
      expectNear(value, numberOf(row, 'value'), stated(1e-6), row.term)
      expectNear(standardError!, numberOf(row, 'error'), stated(1e-6), row.term)
    }
    expectNear(fit.residualStandardDeviation!, spread, stated(1e-9))
  })

  test.each(['huber', 'bisquare'])('%s, its scatter taken from the median of the residuals', kind => {
    const own = rows.filter(({ loss }) => loss === kind)
    const fit = losses(kind, 0, false)
    // rlm divides by 0.6745, here it is by all digits of it
    expectNear(fit.residualStandardDeviation!, numberOf(own[0]!, 'spread'), stated(2e-4))
    for (const row of own)
      expectNear(of(fit, row.term!).value, numberOf(row, 'value'), stated(2e-4), row.term)
  })

  // Source: Andrews 1974, Technometrics 16:523-531 (from memory): these four days do not follow the others.
  test('days 1, 3, 4 and 21 are the ones weighed down most', () => {
    const { weights } = losses('huber', 0, false)
    const lightest = [...weights.keys()].sort((i, j) => weights[i]! - weights[j]!).slice(0, 4)
    expect(lightest.map(i => i + 1).sort((i, j) => i - j)).toEqual([1, 3, 4, 21])
  })
})

describe('limits', () => {
  test('noise that is known sets the standard errors, whatever the residuals', () => {
    const estimated = fitCurve(cells)
    const s = estimated.residualStandardDeviation!
    const known = fitCurve({ ...cells, noise: { kind: 'known', standardDeviation: 2 * s } })
    expectNear(of(known, 'K').standardError!, 2 * of(estimated, 'K').standardError!, identity)
    expectNear(known.residualStandardDeviation!, s, identity)
    const { interval, value, standardError } = of(known, 'K')
    if (interval.kind !== 'interval') expect.fail(interval.kind)
    // Abramowitz and Stegun, table 26.5 (from memory): the normal's 1.95996
    expectNear((interval.high - value) / standardError!, 1.959964, stated(1e-6))
  })

  test('a reading of weight two is two readings', () => {
    const twice = fitCurve({
      ...cells,
      x: [...puromycin.x, puromycin.x[3]],
      y: [...puromycin.y, puromycin.y[3]],
      noise: { kind: 'known', standardDeviation: 1 },
    })
    const heavy = fitCurve({
      ...cells,
      weights: puromycin.x.map((_, i) => (i === 3 ? 2 : 1)),
      noise: { kind: 'known', standardDeviation: 1 },
    })
    expectNear(of(heavy, 'K').value, of(twice, 'K').value, stated(1e-9))
    expectNear(of(heavy, 'K').standardError!, of(twice, 'K').standardError!, stated(1e-9))
    expectNear(heavy.sumOfSquares, twice.sumOfSquares, stated(1e-9))
  })

  test('a parameter that is held is told with the others and not searched', () => {
    const free = fitCurve(cells)
    const held = fitCurve({ ...cells, start: { Vm: 200 }, held: { K: of(free, 'K').value } })
    expect(held.parameters.map(({ name, state }) => [name, state])).toEqual([
      ['Vm', 'free'],
      ['K', 'fixed'],
    ])
    expectNear(of(held, 'Vm').value, of(free, 'Vm').value, stated(1e-8))
    expect(of(held, 'Vm').standardError!).toBeLessThan(of(free, 'Vm').standardError!)
    expect(of(held, 'K').interval.kind).toBe('undetermined')
    expect(held.covariance).toHaveLength(1)
  })

  test('a parameter at its bound has no interval, and the others are judged without it', () => {
    const fit = fitCurve({ ...cells, upper: { Vm: 190 } })
    expect(of(fit, 'Vm')).toEqual({
      name: 'Vm',
      value: 190,
      standardError: null,
      interval: { kind: 'undetermined', why: 'it lies at its bound' },
      state: 'at bound',
    })
    expect(of(fit, 'K').standardError).toBeGreaterThan(0)
    expect(fit.covariance).toHaveLength(1)
  })

  test('leverages add up to the number of parameters, correlations to nothing above one', () => {
    const fit = fitCurve(cells)
    expectNear(
      fit.leverage.reduce((sum, h) => sum + h, 0),
      2,
      stated(1e-9),
    )
    expect(Math.abs(fit.correlation![0]![1]!)).toBeLessThan(1)
  })

  test('as many readings as parameters leave no scatter to judge by', () => {
    const fit = fitCurve({ ...cells, x: [0.1, 0.5], y: [100, 200] })
    expect(fit.residualStandardDeviation).toBeNull()
    expect(fit.aicc).toBeNull()
    for (const { standardError, interval } of fit.parameters) {
      expect(standardError).toBeNull()
      expect(interval.kind).toBe('undetermined')
    }
  })

  test('readings that are all alike leave nothing to explain', () => {
    const fit = fitCurve({
      model: (x: number, { a = 0, b = 0 }: Named) => a + b * x,
      x: [1, 2, 3, 4],
      y: [5, 5, 5, 5],
      start: { a: 1, b: 1 },
      noise: { kind: 'estimated' },
    })
    expect(fit.r2).toBeNull()
    expectNear(of(fit, 'a').value, 5, stated(1e-8))
  })

  test('a fit that did not reach a minimum says nothing of how sure it is', () => {
    const fit = fitCurve({
      ...cells,
      model: (x, { Vm = 0, K = 0, more = 0 }) => ((Vm + more) * x) / (K + x),
      start: { Vm: 100, K: 0.05, more: 100 },
    })
    expect(fit.outcome).toBe('stopped')
    expect(fit.covariance).toBeNull()
    for (const { standardError } of fit.parameters) expect(standardError).toBeNull()
  })

  test('slopes of the model’s own give the same fit with fewer evaluations', () => {
    const own = fitCurve({
      ...cells,
      jacobian: (x, { Vm = 0, K = 0 }) => ({ Vm: x / (K + x), K: (-Vm * x) / (K + x) ** 2 }),
    })
    const without = fitCurve(cells)
    expectNear(of(own, 'K').value, of(without, 'K').value, stated(1e-8))
    expectNear(of(own, 'K').standardError!, of(without, 'K').standardError!, stated(1e-8))
    expect(own.evaluations).toBeLessThan(without.evaluations / 2)
  })

  test('every fit survives being written and read', () => {
    for (const fit of [fitCurve(cells), fitCurve({ ...cells, x: [0.1, 0.5], y: [100, 200] })])
      expect(JSON.parse(JSON.stringify(fit))).toEqual(fit)
  })
})

describe('refuses', () => {
  test.each<[string, Partial<CurveQuestion>, string]>([
    ['fewer y than x', { y: [1] }, 'y'],
    ['a y that is not a number', { y: puromycin.y.map((y, i) => (i === 4 ? Number.NaN : y)) }, 'y.4'],
    ['no readings', { x: [], y: [] }, 'x'],
    ['nothing to search', { start: {} }, 'start'],
    ['a start that is not a number', { start: { Vm: 1, K: Number.POSITIVE_INFINITY } }, 'start.K'],
    ['a parameter both searched and held', { held: { K: 1 } }, 'held.K'],
    ['a bound of no parameter', { lower: { k: 0 } }, 'lower.k'],
    ['crossed bounds', { lower: { K: 1 }, upper: { K: 0 } }, 'lower.K'],
    ['a weight of nothing', { weights: puromycin.x.map((_, i) => i) }, 'weights.0'],
    ['noise of nothing', { noise: { kind: 'known', standardDeviation: 0 } }, 'noise.standardDeviation'],
    ['a level of one', { level: 1 }, 'level'],
    ['a loss that begins at nothing', { loss: { kind: 'huber', at: 0 } }, 'loss.at'],
    ['a model without an answer anywhere', { model: () => Number.NaN }, 'start'],
    ['slopes that leave one out', { jacobian: () => ({ Vm: 1 }) }, 'jacobian.K'],
  ])('%s', (_, more, path) => {
    let refused: unknown
    try {
      fitCurve({ ...cells, ...more })
    } catch (problem) {
      refused = problem
    }
    if (!(refused instanceof InputError)) expect.fail(`not refused: ${refused}`)
    expect(refused.quantity).toBe(path)
  })
})
