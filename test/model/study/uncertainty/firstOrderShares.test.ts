import { describe, expect, test } from 'vitest'
import { normal, randomFrom } from '../../../../packages/model/src/numerics/index.ts'
import { firstOrderShares } from '../../../../packages/model/src/study/uncertainty/firstOrderShares.ts'
import { latinColumns } from '../../../../packages/model/src/study/uncertainty/latinColumns.ts'
import { expectNear, ofSize, stated } from '../../../support/tolerance.ts'

const layout = { blocks: 20, size: 2000 }
const columns = latinColumns(randomFrom(5), layout, { normal: 3, uniform: 1 })

// McKay, Beckman and Conover 1979, Technometrics 21:239-245 (from memory).
describe('Latin hypercubes', () => {
  const slicesOf = (column: Float64Array, block: number, share: (x: number) => number) =>
    Array.from(column.subarray(block * layout.size, (block + 1) * layout.size), x =>
      Math.floor(share(x) * layout.size),
    ).sort((a, b) => a - b)

  test('take every slice of every input once a block', () => {
    const all = Array.from({ length: layout.size }, (_, k) => k)
    for (const block of [0, 7, 19]) {
      for (const column of columns.normal) expect(slicesOf(column, block, normal.cdf)).toEqual(all)
      const share = (x: number) => (x / Math.sqrt(3) + 1) / 2
      for (const column of columns.uniform) expect(slicesOf(column, block, share)).toEqual(all)
    }
  })

  test('have mean 0 and variance 1, and no input goes with another', () => {
    const all = [...columns.normal, ...columns.uniform]
    const meanProduct = (a: Float64Array, b: Float64Array) =>
      a.reduce((sum, value, i) => sum + value * (b[i] ?? Number.NaN), 0) / a.length
    const one = new Float64Array(layout.blocks * layout.size).fill(1)
    all.forEach((a, i) => {
      expectNear(meanProduct(a, one), 0, ofSize(1, stated(1e-3)))
      expectNear(meanProduct(a, a), 1, stated(2e-3))
      // four standard errors of a correlation
      for (const b of all.slice(0, i))
        expectNear(meanProduct(a, b), 0, ofSize(1, stated(4 / Math.sqrt(a.length))))
    })
  })

  test('are normal to the last slice', () => {
    const column = Float64Array.from(columns.normal[0]?.subarray(0, layout.size) ?? []).sort()
    const place = normal.cdf(column[0]!) * layout.size
    for (const k of [0, 1, 19, 20, 500, 999, 1000, 1500, 1998, 1999])
      expectNear(
        column[k]!,
        normal.quantile((k + place) / layout.size),
        ofSize(1, stated(1e-6)),
        `slice ${k}`,
      )
  })
})

/** Var of a x + b x² + c x³ for moments 1, m₄, m₆ of a symmetric x of variance 1. */
const varianceOf = (a: number, b: number, c: number, m4: number, m6: number) =>
  a * a + 2 * a * c * m4 + c * c * m6 + b * b * (m4 - 1)

// First-order shares: Sobol’ 1993, by orthogonal polynomials as Sudret 2008 (from memory).
describe('shares of a cubic in four inputs', () => {
  const [x, p, q] = columns.normal
  const [u] = columns.uniform
  if (!x || !p || !q || !u) throw new Error('four columns')
  const heights = x.map(
    (t, i) =>
      2 * t +
      0.5 * t ** 2 +
      0.3 * t ** 3 + // by itself
      1.5 * u[i]! +
      u[i]! ** 2 +
      0.4 * u[i]! ** 3 +
      0.7 * t * u[i]! + // together
      1.1 * p[i]! -
      0.6 * q[i]! +
      0.5 * p[i]! * q[i]!,
  )
  // moments of the normal distribution 3, 15; of the uniform one over ±√3 9/5, 27/7
  const parts = {
    x: varianceOf(2, 0.5, 0.3, 3, 15),
    u: varianceOf(1.5, 1, 0.4, 9 / 5, 27 / 7),
    fit: 1.1 ** 2 + 0.6 ** 2 + 0.5 ** 2,
    together: 0.7 ** 2,
  }
  const whole = parts.x + parts.u + parts.fit + parts.together
  const sources = [
    { name: 'x', kind: 'normal', columns: [x] },
    { name: 'u', kind: 'uniform', columns: [u] },
    { name: 'fit', kind: 'fit', columns: [p, q] },
  ] as const
  const told = firstOrderShares(
    { layout, values: [], sources },
    heights,
    new Uint8Array(heights.length).fill(1),
    heights.slice().sort(),
  )

  test('are those of its variance, parameters of a fit taken together', () => {
    expect(told.hangsOn.map(({ name }) => name)).toEqual(['x', 'u', 'fit'])
    for (const { name, share } of told.hangsOn) {
      const exact = parts[name as keyof typeof parts] / whole
      expectNear(share.value, exact, ofSize(1, stated(0.01)), name)
      expect(Math.abs(share.value - exact), name).toBeLessThan(4 * share.standardError)
    }
    expectNear(told.interactions.value, parts.together / whole, ofSize(1, stated(0.01)))
  })

  test('effects are the mean slopes', () => {
    // E[h′] = 2 + 0.9 for the normal, E[h u] = 1.5 + 0.4 · 9/5 for the uniform
    expectNear(told.hangsOn[0]?.effect ?? Number.NaN, 2.9, stated(0.01))
    expectNear(told.hangsOn[1]?.effect ?? Number.NaN, 2.22, stated(0.01))
  })
})
