import { squares } from './descentRoom.ts'
import type { Residuals } from './question.ts'

/** Below this part of its typical size a parameter counts as zero. */
const SHARE = 1e-4
/** Steps from zero that are tried until the model answers to one: of a parameter nothing else is known. */
const STEPS = [1, 1e-2, 1e-4, 1e-6, 1e-9, 1e-12] as const
/** The second step is told by the answer to the first. */
const TURNS = 2

/** The change of one parameter that would move the residuals by as much as they are. */
function sizeFromZero(
  residuals: Residuals,
  start: Float64Array,
  k: number,
  inside: (v: number) => boolean,
): number {
  const here = new Float64Array(residuals.count)
  const there = new Float64Array(residuals.count)
  if (!residuals.evaluate(start, here)) return 1
  const length = Math.sqrt(squares(here))
  const moved = (step: number): number => {
    const trial = Float64Array.from(start)
    trial[k] = inside(start[k]! + step) ? start[k]! + step : start[k]! - step
    if (!inside(trial[k]!) || !residuals.evaluate(trial, there)) return Number.NaN
    return Math.sqrt(there.reduce((sum, value, i) => sum + (value - here[i]!) ** 2, 0))
  }
  for (const first of STEPS) {
    let step: number = first
    let by = moved(step)
    if (!(by > 0 && Number.isFinite(by)) || length === 0) continue
    for (let turn = 1; turn < TURNS; turn++) {
      const next = (step * length) / by
      const nextBy = moved(next)
      if (!(nextBy > 0 && Number.isFinite(nextBy))) break
      step = next
      by = nextBy
    }
    return (step * length) / by
  }
  return 1
}

/**
 * The size below which each parameter counts as zero: a part of its given size, or else of where it starts, or else,
 * when that is zero, of what would move the residuals by as much as they are. So no result hangs on the units.
 */
export function leastSizes(
  residuals: Residuals,
  start: Float64Array,
  scale: Float64Array | undefined,
  lower: Float64Array,
  upper: Float64Array,
): Float64Array {
  return start.map((value, k) => {
    const size =
      scale?.[k] ??
      (Math.abs(value) || sizeFromZero(residuals, start, k, v => v >= lower[k]! && v <= upper[k]!))
    return SHARE * size
  })
}
