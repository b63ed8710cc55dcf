import { type Fit, fitCurve } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { type NistSet, nistRows, nistSets } from '../../../support/nistSets.ts'

/** The fit as anyone would ask for it: readings, model, start; no derivatives, nothing tuned. */
function fitOf(set: NistSet, start: readonly number[]): Fit {
  const rows = nistRows(set.name)
  const names = start.map((_, k) => `b${k + 1}`)
  const b = start.map(() => 0)
  return fitCurve<readonly number[]>({
    model: (x, parameters) => {
      for (let k = 0; k < names.length; k++) b[k] = parameters[names[k]!]!
      return set.model(x, b)
    },
    x: rows.map(row => row.x),
    y: rows.map(row => row.y),
    start: Object.fromEntries(names.map((name, k) => [name, start[k]!])),
    noise: { kind: 'estimated' },
  })
}

/** How many digits agree, as the collection scores it. */
const digits = (found: number | null, certified: number): number =>
  found === null ? 0 : Math.min(11, -Math.log10(Math.abs(found / certified - 1)))

const SIX = 6
const FOUR = 4

/**
 * Lanczos1 was generated to 14 digits: what its residuals are made of is the rounding of its readings and of the
 * exponentials, so that their sum of squares, 1e-25, and the standard deviations with it, hold two digits in double
 * precision. Its parameters hold ten.
 */
const ROUNDING: Readonly<Record<string, number>> = { Lanczos1: 1.5 }

// Source: NIST, Statistical Reference Datasets, nonlinear regression (public domain); test/reference/README.md says
// how the readings and the certified values came here. `${name} from start 1` and 2 are NIST's.
describe('published values: certified fits from both starts of NIST', () => {
  test('are twenty-seven sets', () => expect(nistSets).toHaveLength(27))

  const cases = nistSets.flatMap(set => set.starts.map((start, i) => [set.name, i + 1, set, start] as const))
  test.each(cases)('%s from start %i', (name, _, set, start) => {
    const fit = fitOf(set, start)
    expect(fit.outcome).toBe('converged')
    fit.parameters.forEach(({ value, standardError }, k) => {
      expect(digits(value, set.certified[k]!), `b${k + 1}`).toBeGreaterThan(SIX)
      expect(digits(standardError, set.deviations[k]!), `deviation of b${k + 1}`).toBeGreaterThan(
        ROUNDING[name] ?? FOUR,
      )
    })
    if (!ROUNDING[name]) expect(digits(fit.sumOfSquares, set.sumOfSquares)).toBeGreaterThan(8)
  })

  test('what scatters by rounding alone is told to be that small', () => {
    const set = nistSets.find(({ name }) => name === 'Lanczos1')!
    const fit = fitOf(set, set.starts[0]!)
    expect(fit.sumOfSquares).toBeLessThan(2 * set.sumOfSquares)
  })
})

describe('limits', () => {
  test('starts ten times off end at the certified values, or say that they did not converge, or are higher up', () => {
    let right = 0
    let tried = 0
    for (const set of nistSets.filter(({ certified }) => certified.length <= 4))
      for (const start of set.starts)
        for (const factor of [0.1, 10]) {
          const fit = fitOf(
            set,
            start.map(value => value * factor),
          )
          tried++
          if (fit.outcome !== 'converged' || fit.sumOfSquares > 1.01 * set.sumOfSquares) continue
          fit.parameters.forEach(({ value }, k) => {
            expect(digits(value, set.certified[k]!), `${set.name} b${k + 1}`).toBeGreaterThan(FOUR)
          })
          right++
        }
    expect(right).toBeGreaterThan(0.9 * tried)
  })
})
