import { InputError } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  covarianceOf,
  endings,
  type LeastSquaresQuestion,
  leastSquares,
  leverageOf,
  type Residuals,
} from '../../../../packages/model/src/numerics/index.ts'
import { bounded } from '../../../support/arbitraries.ts'
import { expectNear, identity, ofSize, stated } from '../../../support/tolerance.ts'

type Curve = (x: number, p: Float64Array) => number

const residualsOf = (
  curve: Curve,
  points: readonly (readonly [number, number])[],
  size: number,
  slopes?: (x: number, p: Float64Array) => number[],
): Residuals => ({
  count: points.length,
  size,
  evaluate(p, r) {
    for (let i = 0; i < points.length; i++) {
      r[i] = points[i]![1] - curve(points[i]![0], p)
      if (!Number.isFinite(r[i]!)) return false
    }
    return true
  },
  ...(slopes && {
    jacobian(p: Float64Array, jacobian: Float64Array) {
      points.forEach(([x], i) => {
        slopes(x, p).forEach((slope, k) => {
          jacobian[i * size + k] = -slope
        })
      })
      return true
    },
  }),
})

/** Scatter that is the same in every run. */
const wobble = (i: number) => (((i * 7919) % 13) - 6) / 60
const along = (count: number, f: (x: number) => number) =>
  Array.from({ length: count }, (_, i) => [i + 1, f(i + 1) + wobble(i)] as const)

const rise: Curve = (x, [a = 0, b = 0]) => a * (1 - Math.exp(-b * x))
const line: Curve = (x, [a = 0, b = 0]) => a + b * x
const solve = (residuals: Residuals, start: readonly number[], more: Partial<LeastSquaresQuestion> = {}) =>
  leastSquares({ residuals, start: Float64Array.from(start), ...more })

describe('published values: closed forms', () => {
  const points = along(12, x => 3 - 0.4 * x)
  const n = points.length
  const mean = points.reduce((sum, [x]) => sum + x, 0) / n
  const spread = points.reduce((sum, [x]) => sum + (x - mean) ** 2, 0)
  const height = points.reduce((sum, [, y]) => sum + y, 0) / n
  const slope = points.reduce((sum, [x, y]) => sum + (x - mean) * (y - height), 0) / spread
  const solved = solve(residualsOf(line, points, 2), [1, 1])

  test('a straight line has the slope and the intercept of the textbook', () => {
    expect(solved.outcome).toBe('converged')
    expectNear(solved.p[1]!, slope, stated(1e-9))
    expectNear(solved.p[0]!, height - slope * mean, stated(1e-9))
  })

  test('its covariance is 1/n + x̄²/Sxx, −x̄/Sxx, 1/Sxx', () => {
    const covariance = covarianceOf(solved)!
    expectNear(covariance[0]!, 1 / n + mean ** 2 / spread, stated(1e-9))
    expectNear(covariance[1]!, -mean / spread, stated(1e-9))
    expectNear(covariance[3]!, 1 / spread, stated(1e-9))
  })

  test('each reading pulls by 1/n + (x − x̄)²/Sxx', () => {
    const leverage = leverageOf(solved)
    for (const [i, [x]] of points.entries())
      expectNear(leverage[i]!, 1 / n + (x - mean) ** 2 / spread, stated(1e-9))
  })
})

// Method of the differences: Ridders 1982 (from memory), extrapolated from several steps.
describe('slopes', () => {
  const points = along(30, x => 5 * (1 - Math.exp(-0.2 * x)))
  const given = residualsOf(rise, points, 2, (x, [a = 0, b = 0]) => [
    1 - Math.exp(-b * x),
    a * x * Math.exp(-b * x),
  ])

  test('taken by differences end where the model’s own do, at a fifth of the evaluations saved', () => {
    const without = solve(residualsOf(rise, points, 2), [1, 1])
    const own = solve(given, [1, 1])
    expectNear(without.p[0]!, own.p[0]!, stated(1e-9))
    expectNear(without.p[1]!, own.p[1]!, stated(1e-9))
    for (const [i, value] of own.jacobian.entries())
      expectNear(without.jacobian[i]!, value, ofSize(10, stated(1e-10)))
    expect(own.evaluations).toBeLessThan(without.evaluations / 3)
  })

  test('are taken to one side at a bound, and are as good there', () => {
    const held = { upper: Float64Array.from([4, Number.POSITIVE_INFINITY]) }
    const without = solve(residualsOf(rise, points, 2), [1, 1], held)
    const own = solve(given, [1, 1], held)
    expect([...own.atBound]).toEqual([1, 0])
    expectNear(without.p[1]!, own.p[1]!, stated(1e-8))
    for (const [i, value] of own.jacobian.entries())
      expectNear(without.jacobian[i]!, value, ofSize(10, stated(1e-8)))
  })
})

describe('dimensions', () => {
  test('rescaling a parameter or the residuals changes nothing but the numbers', () => {
    const points = along(15, x => 5 * (1 - Math.exp(-0.2 * x)))
    const plain = solve(residualsOf(rise, points, 2), [2, 0.5])
    fc.assert(
      fc.property(
        fc.integer({ min: -9, max: 9 }),
        fc.integer({ min: -9, max: 9 }),
        fc.integer({ min: -9, max: 9 }),
        (i, j, k) => {
          // powers of two, so that not even the rounding differs
          const [a, b, y] = [2 ** i, 2 ** j, 2 ** k]
          const scaled = solve(
            residualsOf(
              (x, p) => y * rise(x, Float64Array.from([p[0]! / a, p[1]! / b])),
              points.map(([x, value]) => [x, y * value] as const),
              2,
            ),
            [2 * a, 0.5 * b],
          )
          expectNear(scaled.p[0]!, plain.p[0]! * a, identity)
          expectNear(scaled.p[1]!, plain.p[1]! * b, identity)
          expectNear(scaled.sumOfSquares, plain.sumOfSquares * y * y, identity)
          expect(scaled.iterations).toBe(plain.iterations)
        },
      ),
      bounded(60),
    )
  })

  test('a parameter that starts at zero needs no size to be given, in whatever unit', () => {
    for (const unit of [1e-6, 1e-3, 1, 1e4]) {
      const points = along(15, x => 2 * x).map(([x, y]) => [x, y * unit] as const)
      const solved = solve(residualsOf(line, points, 2), [0, 0])
      expect(solved.outcome).toBe('converged')
      expectNear(solved.p[1]! / unit, 2, stated(0.01))
    }
  })
})

describe('bounds', () => {
  const points = along(20, x => 2 * x - 1)

  test('are reached but never passed, and what is left free is fitted as if the others were held', () => {
    let outside = 0
    const watched = residualsOf(
      (x, p) => {
        if (p[0]! < 0) outside++
        return line(x, p)
      },
      points,
      2,
    )
    const solved = solve(watched, [1, 1], { lower: Float64Array.from([0, -10]) })
    const held = solve(
      residualsOf((x, [b = 0]) => b * x, points, 1),
      [1],
    )
    expect(outside).toBe(0)
    expect(solved.p[0]).toBe(0)
    expect([...solved.atBound]).toEqual([1, 0])
    expect(solved.outcome).toBe('converged')
    expectNear(solved.p[1]!, held.p[0]!, stated(1e-9))
  })

  test('that do not bind leave no trace', () => {
    const free = solve(residualsOf(line, points, 2), [1, 1])
    const wide = solve(residualsOf(line, points, 2), [1, 1], {
      lower: Float64Array.from([-100, -100]),
      upper: Float64Array.from([100, 100]),
    })
    expect([...wide.p]).toEqual([...free.p])
    expect([...wide.atBound]).toEqual([0, 0])
  })

  test('the residuals push a parameter against its bound, and the others not at all', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (a, b) => {
          const solved = solve(
            residualsOf(
              line,
              along(15, x => a + b * x),
              2,
            ),
            [0.1, 0.1],
            { lower: Float64Array.from([-1, -1]), upper: Float64Array.from([1, 1]) },
          )
          expect(solved.outcome).toBe('converged')
          for (const k of [0, 1]) {
            const push = -solved.residuals.reduce((sum, r, i) => sum + r * solved.jacobian[2 * i + k]!, 0)
            if (solved.atBound[k]) expect(push * solved.p[k]!).toBeGreaterThanOrEqual(0)
            else expectNear(push, 0, ofSize(1, stated(1e-5)))
          }
        },
      ),
      bounded(60),
    )
  })

  test('from which the residuals lead away are left again', () => {
    const solved = solve(residualsOf(line, points, 2), [-5, 2], { lower: Float64Array.from([-5, -5]) })
    expect([...solved.atBound]).toEqual([0, 0])
    expectNear(solved.p[0]!, -1, stated(0.05))
  })
})

// Where a search has arrived: Bates and Watts 1981, Technometrics 23:179-183 (from memory), the undamped step in units
// of what is left; that damped steps alone do not tell it, Transtrum and Sethna 2012, arXiv:1201.5885.
describe('endings', () => {
  test('two parameters of which only the sum counts are not determined', () => {
    const solved = solve(
      residualsOf(
        (x, [a = 0, b = 0]) => (a + b) * x,
        along(10, x => x),
        2,
      ),
      [1, 2],
    )
    expect(solved.why).toBe('undetermined')
    expect(solved.rank).toBe(1)
    expect(covarianceOf(solved)).toBeNull()
  })

  test('a parameter that changes nothing is not determined, and stays where it was', () => {
    const solved = solve(
      residualsOf(
        (x, [a = 0]) => a * x,
        along(10, x => x),
        2,
      ),
      [1, 7],
    )
    expect(solved.why).toBe('undetermined')
    expect(solved.p[1]).toBe(7)
  })

  test('a straight line’s slope does not tell how high and how fast a curve would level off', () => {
    const points = Array.from({ length: 20 }, (_, i) => [i + 1, 2 * (i + 1)] as const)
    const solved = solve(residualsOf(rise, points, 2), [10, 0.1], { lower: Float64Array.from([0, 0]) })
    expect(solved.outcome).toBe('stopped')
  })

  test('a plateau is left by another start', () => {
    // at a rate of thirty per unit the first reading is already at the ceiling: the rate's slope is nothing
    const points = along(10, x => 5 * (1 - Math.exp(-0.4 * x)))
    const alone = solve(residualsOf(rise, points, 2), [5, 40], { restarts: 0 })
    const helped = solve(residualsOf(rise, points, 2), [5, 40])
    expect(alone.outcome).toBe('stopped')
    expect(helped.outcome).toBe('converged')
    expect(helped.restarts).toBeGreaterThan(0)
    expectNear(helped.p[1]!, 0.4, stated(0.1))
  })

  test('other starts are drawn the same in every run, and otherwise by another seed', () => {
    const points = along(10, x => 5 * (1 - Math.exp(-0.4 * x)))
    const evaluations = (seed: number) => solve(residualsOf(rise, points, 2), [5, 40], { seed }).evaluations
    expect(evaluations(3)).toBe(evaluations(3))
    expect(evaluations(3)).not.toBe(evaluations(4))
  })

  test('a model without an answer at the start is tried from elsewhere', () => {
    const curve: Curve = (x, [a = 0]) => Math.log(a - 5) * x
    const solved = solve(
      residualsOf(
        curve,
        along(10, x => 2 * x),
        1,
      ),
      [1],
    )
    expect(solved.outcome).toBe('converged')
    expectNear(solved.p[0]!, 5 + Math.exp(2), stated(0.01))
  })

  test('a model without an answer anywhere fails', () => {
    const solved = solve(
      residualsOf(
        () => Number.NaN,
        along(5, x => x),
        1,
      ),
      [1],
    )
    expect(solved.outcome).toBe('failed')
    expect(solved.why).toBe('no answer at the start')
  })

  test('a model without slopes stops', () => {
    const residuals: Residuals = {
      ...residualsOf(
        line,
        along(9, x => x),
        2,
      ),
      jacobian: () => false,
    }
    expect(solve(residuals, [1, 1], { restarts: 0 }).why).toBe('no slopes')
  })

  test('readings that are met exactly end where nothing is left', () => {
    const points = Array.from({ length: 8 }, (_, i) => [i, 3 + i] as const)
    const solved = solve(
      residualsOf(line, points, 2, x => [1, x]),
      [1, 0.5],
    )
    expect(solved.outcome).toBe('converged')
    expectNear(solved.p[0]!, 3, stated(1e-10))
  })

  test('iterations that are used up are no answer', () => {
    const solved = solve(
      residualsOf(
        rise,
        along(10, x => 5 * (1 - Math.exp(-0.4 * x))),
        2,
      ),
      [50, 3],
      {
        most: 1,
        restarts: 0,
      },
    )
    expect(solved.why).toBe('too many iterations')
    expect(solved.outcome).toBe('stopped')
  })

  test('each has a sentence that begins with its outcome', () => {
    for (const { outcome, sentence } of Object.values(endings))
      expect(sentence.startsWith(outcome)).toBe(true)
  })
})

describe('refuses', () => {
  const residuals = residualsOf(
    line,
    along(5, x => x),
    2,
  )
  const start = Float64Array.from([1, 1])
  test.each<[string, Partial<LeastSquaresQuestion>]>([
    ['a start that is not a number', { start: Float64Array.from([1, Number.NaN]) }],
    ['a start of the wrong length', { start: Float64Array.from([1]) }],
    ['bounds of the wrong length', { lower: Float64Array.from([1]) }],
    ['crossed bounds', { lower: Float64Array.from([1, 1]), upper: Float64Array.from([2, 0]) }],
    ['a size of nothing', { scale: Float64Array.from([1, 0]) }],
    ['a loss that begins at nothing', { loss: { kind: 'huber', at: 0 } }],
    ['a tolerance of one', { tolerance: 1 }],
  ])('%s', (_, more) => {
    expect(() => leastSquares({ residuals, start, ...more })).toThrow(InputError)
  })
})
