import { type AddedTerms, addedTerms } from './addedTerms.ts'
import type { Judged } from './judged.ts'
import { type Runs, runsOf } from './runs.ts'

/** How the residuals lie along something: their signs, and a test for what the fit could still have taken up. */
export type Trend = {
  /** Signs of the mean residual at each place, from the lowest up: "+", "−", or "·" within one standard error. */
  readonly pattern: string
  /** Or groups of neighbouring places, where there are many. */
  readonly places: number
  /** Of the places' signs; null when all are one. */
  readonly runs: Runs | null
  readonly test: AddedTerms
}

/** Places nearer than this, relative, are one. */
const SAME = 1e-6

/** More places than this are told together with their neighbours. */
const MOST_PLACES = 24

/** Mean weighted residual of each place, in standard errors, from the lowest place up; neighbours together if many. */
function meansAlong(along: readonly number[], standard: readonly number[]): readonly number[] {
  const order = along.map((_, i) => i).sort((a, b) => along[a]! - along[b]!)
  const means: { at: number; sum: number; count: number }[] = []
  for (const i of order) {
    const last = means.at(-1)
    if (last && Math.abs(along[i]! - last.at) <= SAME * Math.abs(last.at)) {
      last.sum += standard[i]!
      last.count++
    } else means.push({ at: along[i]!, sum: standard[i]!, count: 1 })
  }
  const groups = Math.min(MOST_PLACES, means.length)
  const sums = Array.from({ length: groups }, () => ({ sum: 0, count: 0 }))
  means.forEach(({ sum, count }, i) => {
    const group = sums[Math.floor((i * groups) / means.length)]!
    group.sum += sum
    group.count += count
  })
  return sums.map(({ sum, count }) => sum / Math.sqrt(count))
}

const signOf = (mean: number) => (Math.abs(mean) < 1 ? '·' : mean > 0 ? '+' : '−')

/** Along a load: anything that rises and bends with it, in its logarithm where there is one. In order: what drifts. */
function termsAlong(along: readonly number[], shape: 'bend' | 'drift'): readonly (readonly number[])[] {
  const scaled = along.every(at => at > 0) && shape === 'bend' ? along.map(Math.log) : along
  const middle = scaled.reduce((sum, at) => sum + at, 0) / scaled.length
  const rise = scaled.map(at => at - middle)
  return shape === 'bend' ? [rise, rise.map(x => x * x)] : [rise]
}

/** A column a set: its fitted values, by which it would be softer or firmer than the fit has it. None for one set. */
export function setColumns({ rows, measured, fit }: Judged): readonly (readonly number[])[] {
  const sets = [...new Set(rows.map(({ set }) => set))]
  if (sets.length < 2) return []
  return sets.map(one => rows.map(({ set }, i) => (set === one ? measured[i]! - fit.residuals[i]! : 0)))
}

/**
 * How standardised residuals lie along the load (a bend) or the order of reading (a drift). What sets differ by is taken
 * off first: one set read after another is no drift.
 */
export function trendAlong(
  judged: Judged,
  standard: readonly number[],
  along: readonly number[],
  shape: 'bend' | 'drift',
): Trend {
  const means = meansAlong(along, standard)
  return {
    pattern: means.map(signOf).join(' '),
    places: means.length,
    runs: runsOf(means),
    test: addedTerms(judged, termsAlong(along, shape), setColumns(judged)),
  }
}
