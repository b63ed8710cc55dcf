import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../../packages/model/src/numerics/index.ts'
import type { Fit } from '../../../../packages/model/src/study/fit/fit.ts'
import { compareFits } from '../../../../packages/model/src/study/fit/judge/compareFits.ts'
import { nestedTest } from '../../../../packages/model/src/study/fit/judge/nestedTest.ts'
import { loadCell } from '../../../support/publishedReadings.ts'
import { expectNear, stated } from '../../../support/tolerance.ts'
import { fittedLine } from './fittedLine.ts'

const rows = loadCell.loads.map(along => ({ along }))
const of = (
  terms: readonly ((x: number) => number)[],
  names: readonly string[],
  aicc: number | null,
): Fit => ({
  ...fittedLine({ rows, measured: loadCell.deflections, terms, names }).fit,
  aicc,
})
const one = () => 1
const load = (x: number) => x / 1e6
const line = of([one, load], ['datum', 'softness'], 10)
const bent = of([one, load, x => load(x) ** 2], ['datum', 'softness', 'exponent'], 2)

describe('nested laws', () => {
  const compared = compareFits([
    { name: 'linear', law: 'linear', fit: line },
    { name: 'power', law: 'power', fit: bent },
  ])

  test('are compared by F, which for one more parameter is the square of its t', () => {
    const [found] = compared.nested
    const { value, standardError } = bent.parameters[2]!
    expectNear(found!.statistic, (value / standardError!) ** 2, stated(1e-6))
    expect([found!.smaller, found!.larger, found!.above, found!.below]).toEqual(['linear', 'power', 1, 37])
    expect(compared.sentences.join(' ')).toContain('power follows the readings better than linear')
  })

  test('are not nested when the smaller has something free that the larger has not', () => {
    const other = of([one, load], ['datum', 'spread'], 10)
    const found = compareFits([
      { name: 'linear', law: 'linear', fit: other },
      { name: 'power', law: 'power', fit: bent },
    ])
    expect(found.nested).toEqual([])
  })

  test('with the noise known are compared by χ², in units of the variance', () => {
    const variance = 4e-8
    const known = (fit: Fit) => ({ ...fit, noise: 'known' }) as const
    const [found] = compareFits([
      { name: 'linear', law: 'linear', fit: known(line), variance },
      { name: 'power', law: 'power', fit: known(bent), variance },
    ]).nested
    expectNear(found!.statistic, (line.sumOfSquares - bent.sumOfSquares) / variance, stated(1e-12))
    expect(found!.below).toBeNull()
  })

  // Self and Liang 1987, JASA 82:605-610 (from memory).
  test('at the edge count half the probability, and are then right one time in twenty', () => {
    // A bend that cannot be negative, of which there is none: the larger law is as often at its edge as not.
    const random = randomFrom(12)
    const xs = Array.from({ length: 20 }, (_, i) => i / 19 - 0.5)
    const bend = xs.map(x => x * x - xs.reduce((sum, y) => sum + y * y, 0) / 20)
    const length = Math.hypot(...bend)
    const tries = 6000
    let called = 0
    for (let k = 0; k < tries; k++) {
      const y = xs.map(() => random.normal())
      const mean = y.reduce((sum, v) => sum + v, 0) / 20
      const all = y.reduce((sum, v) => sum + (v - mean) ** 2, 0)
      const along = Math.max(0, y.reduce((sum, v, i) => sum + v * bend[i]!, 0) / length)
      const found = nestedTest({
        smaller: { name: 'linear', sumOfSquares: all, degreesOfFreedom: 19 },
        larger: { name: 'stiffening', sumOfSquares: all - along ** 2, degreesOfFreedom: 18 },
        within: 'no bend',
        atEdge: true,
        variance: null,
      })!
      if (found.probability < 0.05) called++
    }
    // the standard deviation of the rate is 0.0028
    expect(Math.abs(called / tries - 0.05), `${called}`).toBeLessThan(0.009)
  })
})

// AICc: Hurvich and Tsai 1989, Biometrika 76:297-307 (from memory).
describe('the table', () => {
  const named = (name: string, aicc: number | null, outcome: Fit['outcome'] = 'converged') => ({
    name,
    law: 'stiffening' as const,
    fit: { ...bent, aicc, outcome, why: 'failed: the model has no answer' },
  })
  const compared = compareFits([
    named('b', -20),
    named('a', -21.5),
    named('c', -9),
    named('d', null, 'failed'),
  ])

  test('is in the order of AICc, with differences, and keeps what failed', () => {
    expect(compared.laws.map(({ name, difference }) => [name, difference])).toEqual([
      ['a', 0],
      ['b', 1.5],
      ['c', 12.5],
      ['d', null],
    ])
    expect(compared.laws[3]).toMatchObject({ outcome: 'failed', sumOfSquares: null, standardDeviation: null })
  })

  test('never names one law without its lead, and says which are not told apart', () => {
    expect(compared.sentences[0]).toBe('Least AICc: a; above it b by 1.5, c by 12.5.')
    expect(compared.alike).toEqual([['a', 'b']])
    expect(compared.sentences[1]).toBe('These readings do not tell a from b.')
    expect(compared.sentences.at(-1)).toBe('d: failed: the model has no answer.')
  })

  test('says what likelihood stands behind it', () => {
    expect(compared.likelihood).toBe('normal, variance estimated')
    expect(compared.readings).toBe(40)
  })
})
