import { chiSquared, fDistribution } from '../../../numerics/index.ts'
import type { Judged } from './judged.ts'
import { takenUp } from './takenUp.ts'

/** Whether a few more terms in the fit would take up more of the residuals than chance gives them. */
export type AddedTerms =
  | {
      readonly kind: 'tested'
      /** F, or χ² over its degrees of freedom with the noise known. */
      readonly ratio: number
      /** Terms that the fit could not have taken up already. */
      readonly above: number
      /** null: noise known. */
      readonly below: number | null
      readonly probability: number
    }
  | { readonly kind: 'not tested'; readonly why: string }

/**
 * The F test of further columns c, a value a reading each, beside the derivatives of the fit.
 *
 *   Q = squares of the residuals along (I − H) c;  F = (Q/q)/[(rᵀr − Q)/(ν − q)]
 *
 * Columns that stand beside are taken up first and cost their degrees of freedom.
 *
 * Holds   exactly for laws linear in their parameters
 * Source  added-variable test: Cook and Weisberg 1982, Residuals and Influence in Regression, §2.2 (from memory)
 */
export function addedTerms(
  { fit, derivatives, scatter }: Judged,
  terms: readonly (readonly number[])[],
  beside: readonly (readonly number[])[] = [],
): AddedTerms {
  if (derivatives === null) return { kind: 'not tested', why: 'the derivatives of the fit are not known' }
  const roots = fit.weights.map(Math.sqrt)
  const weighted = (column: readonly number[]) => column.map((value, i) => value * roots[i]!)
  const fitted = (derivatives[0] ?? []).map((_, j) => weighted(derivatives.map(row => row[j]!)))
  const residuals = weighted(fit.residuals)
  const others = beside.map(weighted)
  const first = takenUp(residuals, fitted, others)
  const { squares, columns } = takenUp(residuals, [...fitted, ...others], terms.map(weighted))
  if (columns === 0)
    return { kind: 'not tested', why: 'the readings lie at too few places to tell it from the fit itself' }
  if (fit.noise === 'known' && scatter !== null) {
    const all = squares / scatter ** 2
    const probability = chiSquared.survival(all, columns)
    return { kind: 'tested', ratio: all / columns, above: columns, below: null, probability }
  }
  const below = fit.degreesOfFreedom - first.columns - columns
  const rest = fit.sumOfSquares - first.squares - squares
  if (below < 1 || !(rest > 0))
    return { kind: 'not tested', why: 'too few readings beyond what the fit takes up' }
  const ratio = squares / columns / (rest / below)
  const probability = fDistribution.survival(ratio, columns, below)
  return { kind: 'tested', ratio, above: columns, below, probability }
}
