import { describe, expect, test } from 'vitest'
import {
  covarianceOf,
  leastSquares,
  type Residuals,
  randomFrom,
} from '../../../../packages/model/src/numerics/index.ts'
import { bootstrapFits } from '../../../../packages/model/src/study/fit/judge/bootstrapFits.ts'
import { expectNear, ofSize, stated } from '../../../support/tolerance.ts'

/** A curve that rises to b1 at the rate b2: as bent as laws of turf are. */
function rising(xs: readonly number[], ys: readonly number[], counts?: readonly number[]): Residuals {
  const root = xs.map((_, i) => Math.sqrt(counts?.[i] ?? 1))
  return {
    count: xs.length,
    size: 2,
    evaluate: ([b1, b2], residuals) => {
      xs.forEach((x, i) => {
        residuals[i] = root[i]! * (ys[i]! + b1! * Math.expm1(-b2! * x))
      })
      return b2! > 0
    },
    jacobian: ([b1, b2], jacobian) => {
      xs.forEach((x, i) => {
        jacobian[2 * i] = root[i]! * Math.expm1(-b2! * x)
        jacobian[2 * i + 1] = -root[i]! * b1! * x * Math.exp(-b2! * x)
      })
      return true
    },
  }
}

const random = randomFrom(8)
const COUNT = 160
const xs = Array.from({ length: COUNT }, (_, i) => 0.2 + 0.025 * i)
const ys = xs.map(x => -3 * Math.expm1(-0.7 * x) + 0.1 * random.normal())
const residuals = rising(xs, ys)
const start = Float64Array.of(2.5, 0.9)
const solved = leastSquares({ residuals, start })
const covariance = covarianceOf(solved)!
const errors = [0, 1].map(j => Math.sqrt((covariance[3 * j]! * solved.sumOfSquares) / (COUNT - 2)))

const columns = (values: Float64Array, size: number) =>
  Array.from({ length: size }, (_, j) => Array.from(values).filter((_, i) => i % size === j))
const deviation = (numbers: readonly number[]) => {
  const mean = numbers.reduce((sum, x) => sum + x, 0) / numbers.length
  return Math.sqrt(numbers.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (numbers.length - 1))
}

describe('each refit', () => {
  test('is where the general solver ends with the same readings', () => {
    const seed = 21
    const { values, fitted } = bootstrapFits({ residuals, solved, resample: 'readings', draws: 30, seed })
    expect(fitted).toBe(30)
    const again = randomFrom(seed)
    for (let draw = 0; draw < 30; draw++) {
      const counts = new Array<number>(COUNT).fill(0)
      for (let i = 0; i < COUNT; i++) counts[again.integer(COUNT)]!++
      const { p } = leastSquares({ residuals: rising(xs, ys, counts), start })
      for (const j of [0, 1])
        expectNear(values[2 * draw + j]!, p[j]!, ofSize(errors[j]!, stated(1e-4)), `draw ${draw}`)
    }
  })

  test('costs two or three looks at the model', () => {
    const { evaluations } = bootstrapFits({ residuals, solved, resample: 'residuals', draws: 500, seed: 1 })
    expect(evaluations / 500).toBeLessThan(3)
  })
})

describe('the scatter of the refits', () => {
  test.each(['residuals', 'readings'] as const)('drawn from %s is that of the covariance', resample => {
    const { values, failed } = bootstrapFits({ residuals, solved, resample, draws: 4000, seed: 2 })
    // 160 readings leave their own scatter of scatter: 1/√320 of it, more where only some of them count
    columns(values, 2).forEach((column, j) => {
      expectNear(deviation(column), errors[j]!, stated(0.15))
    })
    expect(failed).toEqual({ 'no answer': 0, 'not converged': 0, 'not determined': 0 })
  })

  test('drawn by groups is not fooled by readings written twice', () => {
    const twice = <T>(list: readonly T[]) => list.flatMap(one => [one, one])
    const doubled = rising(twice(xs), twice(ys))
    const fit = leastSquares({ residuals: doubled, start })
    const groups = Int32Array.from(twice(xs), (_, i) => i >> 1)
    const of = (resample: 'readings' | { groups: Int32Array }) =>
      deviation(
        columns(
          bootstrapFits({ residuals: doubled, solved: fit, resample, draws: 2000, seed: 3 }).values,
          2,
        )[0]!,
      )
    expectNear(of({ groups }) / of('readings'), Math.SQRT2, stated(0.06))
  })
})

describe('what fails', () => {
  test('is counted: draws whose readings do not fix the parameters', () => {
    const few = rising([1, 1, 3], [1.5, 1.6, 2.6])
    const fit = leastSquares({ residuals: few, start })
    const found = bootstrapFits({ residuals: few, solved: fit, resample: 'readings', draws: 2000, seed: 5 })
    // all three of one load: (2/3)³ + (1/3)³ = 1/3 of the draws
    const lost = found.failed['not determined'] + found.failed['no answer'] + found.failed['not converged']
    expect(lost + found.fitted).toBe(2000)
    expect(Math.abs(found.failed['not determined'] / 2000 - 1 / 3)).toBeLessThan(0.04)
  })

  test('is refused where it cannot be right: no derivatives, groups of another length, a robust fit', () => {
    const { jacobian: _, ...bare } = residuals
    const ask = { solved, resample: 'readings', draws: 10, seed: 1 } as const
    expect(() => bootstrapFits({ ...ask, residuals: bare })).toThrow('residuals.jacobian')
    expect(() => bootstrapFits({ ...ask, residuals, resample: { groups: new Int32Array(3) } })).toThrow(
      'groups',
    )
    const robust = leastSquares({ residuals, start, loss: { kind: 'huber', at: 1.5 } })
    expect(() => bootstrapFits({ ...ask, residuals, solved: robust })).toThrow('plain squares')
  })
})

test('says how far it has come', () => {
  const seen: number[] = []
  bootstrapFits({
    residuals,
    solved,
    resample: 'residuals',
    draws: 250,
    seed: 1,
    onStep: done => seen.push(done),
  })
  expect(seen).toEqual([100, 200])
})
