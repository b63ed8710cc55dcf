import { describe, expect, test } from 'vitest'
import { lackOfFit } from '../../../../packages/model/src/study/fit/judge/lackOfFit.ts'
import { loadCell } from '../../../support/publishedReadings.ts'
import { expectNear, expectPrinted, identity, stated } from '../../../support/tolerance.ts'
import { fittedLine } from './fittedLine.ts'

const one = () => 1
const load = (x: number) => x / 1e6
const square = (x: number) => load(x) ** 2
const rows = loadCell.loads.map(along => ({ along }))
const line = fittedLine({ rows, measured: loadCell.deflections, terms: [one, load] })
const bent = fittedLine({ rows, measured: loadCell.deflections, terms: [one, load, square] })

describe('published values', () => {
  test('a straight line does not follow the load cell of the NIST handbook, §4.6.1.5', () => {
    // Printed there: residual SD 0.0021712694, 38 degrees, F 214.7464 against 2.15. Its last digits are its program's
    // rounding: its R script for the same data gives 0.002171.
    const found = lackOfFit(line)
    if (found.kind !== 'tested') return expect.fail(found.kind)
    expectNear(found.ratio, 214.7464, stated(5e-6))
    expect([found.lack.degreesOfFreedom, found.pureError.degreesOfFreedom, found.places]).toEqual([
      18, 20, 20,
    ])
    expect(found.probability).toBeLessThan(1e-6)
    expect(found.sentence).toContain('does not follow the readings')
  })

  test('a parabola does: F 0.8107 with 17 and 20 degrees (§4.6.1.6, from memory)', () => {
    const found = lackOfFit(bent)
    if (found.kind !== 'tested') return expect.fail(found.kind)
    expectPrinted(found.ratio, '0.8107')
    expect([found.lack.degreesOfFreedom, found.pureError.degreesOfFreedom]).toEqual([17, 20])
    expect(found.sentence).toContain('no lack of fit')
  })

  test('the parabola has the residual deviation that NIST certifies for this set', () => {
    expectPrinted(bent.fit.residualStandardDeviation! * 1e3, '0.205177424076')
  })
})

describe('limits', () => {
  test('lack of fit and pure error make up the sum of squares', () => {
    const found = lackOfFit(line)
    if (found.kind !== 'tested') return expect.fail(found.kind)
    expectNear(
      found.pureError.sumOfSquares + found.lack.sumOfSquares,
      line.fit.sumOfSquares,
      stated(1e-9),
      'together',
    )
  })

  test('weights that are all alike change nothing', () => {
    const weighted = fittedLine({
      rows,
      measured: loadCell.deflections,
      terms: [one, load],
      weights: rows.map(() => 7),
    })
    const [found, plain] = [lackOfFit(weighted), lackOfFit(line)]
    if (found.kind !== 'tested' || plain.kind !== 'tested') return expect.fail(found.kind)
    expectNear(found.ratio, plain.ratio, stated(1e-9))
  })

  test('with the noise known, repeats are also held against it', () => {
    const sd = 0.00021
    const known = fittedLine({
      rows,
      measured: loadCell.deflections,
      terms: [one, load, square],
      weights: rows.map(() => sd ** -2),
      known: true,
    })
    const found = lackOfFit(known)
    if (found.kind !== 'tested') return expect.fail(found.kind)
    expectNear(found.pureError.sumOfSquares, 20 * (found.pureError.standardDeviation ** 2 / 1), identity)
    expect(found.repeatsAgainstNoise).toBeGreaterThan(0.2)
    expect(found.repeatsAgainstNoise).toBeLessThan(0.8)
  })
})

describe('what cannot be judged', () => {
  const kindOf = (loads: readonly number[], measured: readonly number[], terms = [one, load]) =>
    lackOfFit(fittedLine({ rows: loads.map(along => ({ along })), measured, terms })).kind

  test('is said: no repeats, repeats that are copies, no load to spare', () => {
    expect(kindOf([1e6, 2e6, 3e6, 4e6], [1, 2.1, 2.9, 4])).toBe('no repeats')
    expect(kindOf([1e6, 1e6, 2e6, 3e6], [1, 1, 2.1, 2.9])).toBe('repeats agree exactly')
    expect(kindOf([1e6, 1e6, 2e6, 2e6], [1, 1.1, 2.1, 2.2])).toBe('no places to spare')
  })

  test('readings of another foot, set or kind are no repeats', () => {
    const measured = [1, 1.1, 2.1, 2.9]
    const at = [1e6, 1e6, 2e6, 3e6]
    for (const other of [{ foot: 'roller' }, { set: 'B' }, { kind: 'drop' }]) {
      const fit = fittedLine({
        rows: at.map((along, i) => ({ along, ...(i === 1 ? other : {}) })),
        measured,
        terms: [one, load],
      })
      expect(lackOfFit(fit).kind).toBe('no repeats')
    }
  })
})
