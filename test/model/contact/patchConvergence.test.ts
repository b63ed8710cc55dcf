import { loadAt, type PressureLaw, patch, type Roller, type Surface } from '@swardsink/model'
import { describe, expect, test } from 'vitest'

const mm = 1e-3
const softness = 0.6 * mm
const roller = (surface: Surface): Roller => ({ mass: 5.2, diameter: 58 * mm, length: 0.55, surface })
const smooth = roller({ kind: 'smooth' })
const grooved = roller({ kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 5 * mm })

const law = (exponent: number): PressureLaw => ({ kind: 'power', softness, exponent })
const sinkage = 0.9 * mm

/** Slope of the straight line through the points. */
function slopeOf(points: readonly (readonly [number, number])[]): number {
  const mean = (of: 0 | 1) => points.reduce((sum, point) => sum + point[of], 0) / points.length
  const [x0, y0] = [mean(0), mean(1)]
  const over = points.reduce((sum, [x, y]) => sum + (x - x0) * (y - y0), 0)
  return over / points.reduce((sum, [x]) => sum + (x - x0) ** 2, 0)
}

const sizes = Array.from({ length: 57 }, (_, i) => 64 + 8 * i)

/** Error of the smooth roller's line load on every size against §3.2's closed balance, and what the mesh says of it. */
function errorsOf(turf: { readonly law: PressureLaw; readonly spread: number }) {
  const exact = loadAt({ roller: smooth, turf, sinkage, condition: { kind: 'standing' } })
  if (exact.outcome !== 'settled') return expect.fail(exact.outcome)
  return sizes.map(cells => {
    const found = patch({ roller: smooth, turf, sinkage, cells })
    if (found.outcome !== 'settled') return expect.fail(found.outcome)
    return {
      cells,
      error: Math.abs(found.lineLoad / exact.lineLoad - 1),
      told: found.meshError,
      cycles: found.cycles,
    }
  })
}

// The contact line falls between grid lines, now here and now there: the order is the mean slope of many sizes.
describe('a smooth roller, against the closed balance of docs/physics.md §3.2', () => {
  const spreads = [0.5, 1, 2, 3.4, 5].map(spread => spread * mm)
  const laws: readonly { readonly name: string; readonly one: PressureLaw }[] = [
    ...[0.4, 0.7, 1, 1.4, 1.9].map(exponent => ({ name: `exponent ${exponent}`, one: law(exponent) })),
    { name: 'stiffening', one: { kind: 'stiffening', softness, lockingDepth: 4 * mm } },
    { name: 'logarithmic', one: { kind: 'logarithmic', softness, lockingDepth: 4 * mm } },
  ]

  test.each(laws)('error falls as the square of the cell, $name', ({ one }) => {
    const slopes = spreads.map(spread =>
      slopeOf(errorsOf({ law: one, spread }).map(({ cells, error }) => [Math.log(cells), Math.log(error)])),
    )
    const mean = slopes.reduce((sum, slope) => sum + slope, 0) / slopes.length
    expect(mean, slopes.join(', ')).toBeLessThan(-1.7)
    expect(mean, slopes.join(', ')).toBeGreaterThan(-2.3)
  })

  test.each(laws)('error is never more than the mesh says, $name', ({ one }) => {
    for (const spread of spreads)
      for (const { cells, error, told } of errorsOf({ law: one, spread }))
        expect(error, `${cells} cells, spread ${spread}`).toBeLessThanOrEqual(told)
  })
})

// Method: truncated Newton multigrid, Gräser and Kornhuber 2009 (from memory), whose cycles do not grow with the mesh.
describe('cycles on the finest mesh', () => {
  const turfs = [
    { law: law(1), spread: 2 * mm },
    { law: law(0.7), spread: 2 * mm },
    { law: law(1.4), spread: 4 * mm },
    { law: { kind: 'stiffening', softness, lockingDepth: 4 * mm } as const, spread: 1 * mm },
  ]
  const cyclesAt = (cells: number) =>
    turfs.map(turf => {
      const found = patch({ roller: grooved, turf, sinkage, cells })
      return found.outcome === 'settled' ? found.cycles : expect.fail(found.outcome)
    })

  test('do not grow from 64 to 512 cells: eight or fewer on each', () => {
    const counts = [64, 128, 256, 512].map(cyclesAt)
    expect(Math.max(...counts.flat()), JSON.stringify(counts)).toBeLessThanOrEqual(8)
  })
})
