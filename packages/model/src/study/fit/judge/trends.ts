import { normal, studentT } from '../../../numerics/index.ts'
import type { Judged } from './judged.ts'
import { leftOf } from './leftOf.ts'
import { type Runs, runsOf } from './runs.ts'

/** How the residuals lie along something: their signs, and a test for what the fit could still have taken up. */
export type Trend = {
  /** Signs of the mean residual at each place, from the lowest up: "+", "−", or "·" within one standard error. */
  readonly pattern: string
  readonly places: number
  /** Of the places' signs; null when all are one. */
  readonly runs: Runs | null
  readonly test:
    | {
        readonly kind: 'tested'
        readonly shape: 'bend' | 'drift'
        /** Student's t of what one more term would take up, and its degrees of freedom (null: noise known). */
        readonly t: number
        readonly degreesOfFreedom: number | null
        /** Both sides. */
        readonly probability: number
      }
    | { readonly kind: 'not tested'; readonly why: string }
}

/** Places nearer than this, relative, are one. */
const SAME = 1e-6

/** Mean weighted residual of each place, in standard errors, from the lowest place up. */
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
  return means.map(({ sum, count }) => sum / Math.sqrt(count))
}

const signOf = (mean: number) => (Math.abs(mean) < 1 ? '·' : mean > 0 ? '+' : '−')

/** A bend in the logarithm where all places are positive, as loads are. */
function shapeAlong(along: readonly number[], shape: 'bend' | 'drift'): readonly number[] {
  const scaled = along.every(at => at > 0) && shape === 'bend' ? along.map(Math.log) : along
  const middle = scaled.reduce((sum, at) => sum + at, 0) / scaled.length
  return scaled.map(at => (shape === 'bend' ? (at - middle) ** 2 : at - middle))
}

/**
 * The t test of one more term in the fit: c is the term's column, weighted, r the weighted residuals.
 *
 *   c⊥ = (I − H) c,  t = c⊥ᵀr/(|c⊥| s₁),  s₁² = (rᵀr − (c⊥ᵀr)²/|c⊥|²)/(ν − 1)
 *
 * Source  added-variable test: Cook and Weisberg 1982, Residuals and Influence in Regression, §2.2 (from memory)
 */
function testOf(
  { fit, derivatives, scatter }: Judged,
  along: readonly number[],
  shape: 'bend' | 'drift',
): Trend['test'] {
  if (derivatives === null) return { kind: 'not tested', why: 'the derivatives of the fit are not known' }
  const roots = fit.weights.map(Math.sqrt)
  const residuals = fit.residuals.map((residual, i) => residual * roots[i]!)
  const columns = (derivatives[0] ?? []).map((_, j) => derivatives.map((row, i) => row[j]! * roots[i]!))
  const term = shapeAlong(along, shape).map((value, i) => value * roots[i]!)
  const left = leftOf(term, columns)
  if (left === null)
    return { kind: 'not tested', why: 'the readings lie at too few places to tell it from the fit itself' }
  const length = Math.hypot(...left)
  const taken = left.reduce((sum, x, i) => sum + x * residuals[i]!, 0) / length
  if (fit.noise === 'known' && scatter !== null) {
    const t = taken / scatter
    return { kind: 'tested', shape, t, degreesOfFreedom: null, probability: twoSided(t, null) }
  }
  const dof = fit.degreesOfFreedom - 1
  const rest = fit.sumOfSquares - taken ** 2
  if (dof < 1 || !(rest > 0))
    return { kind: 'not tested', why: 'too few readings beyond what the fit takes up' }
  const t = taken / Math.sqrt(rest / dof)
  return { kind: 'tested', shape, t, degreesOfFreedom: dof, probability: twoSided(t, dof) }
}

const twoSided = (t: number, dof: number | null) =>
  2 * (dof === null ? normal.cdf(-Math.abs(t)) : studentT.cdf(-Math.abs(t), dof))

/** How standardised residuals lie along the load (a bend) or the order of reading (a drift). */
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
    test: testOf(judged, along, shape),
  }
}
