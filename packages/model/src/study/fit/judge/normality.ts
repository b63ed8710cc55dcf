import { normal } from '../../../numerics/index.ts'

/** How straight the residuals lie on normal paper: a hint, no proof. */
export type Normality =
  | {
      readonly kind: 'tested'
      /** Squared correlation of the ordered residuals with normal scores. */
      readonly straightness: number
      /** Probability of a plot so crooked when the scatter is normal. */
      readonly probability: number
    }
  | { readonly kind: 'not tested'; readonly why: string }

/** Fewer than these show nothing; more than these are beyond the range the approximation was made for. */
const FEWEST = 8
const MOST = 5000
/** Blom's plotting positions. */
const BLOM = 3 / 8

/**
 * Shapiro and Francia's test of normal scatter.
 *
 *   W′ = corr(x₍ᵢ₎, Φ⁻¹((i − ⅜)/(n + ¼)))²; ln(1 − W′) is nearly normal
 *
 * Holds   8 to 5,000 numbers. Residuals of a fit lie straighter than the scatter itself, and rounding by a gauge
 *         makes them crooked without doing harm: a hint.
 * Source  Shapiro and Francia 1972, JASA 67:215-216; Royston 1993, The Statistician 42:37-43 (from memory)
 */
export function normalityOf(numbers: readonly number[]): Normality {
  const n = numbers.length
  if (n < FEWEST || n > MOST)
    return { kind: 'not tested', why: `told from ${FEWEST} to ${MOST} residuals; there are ${n}` }
  const sorted = [...numbers].sort((a, b) => a - b)
  const scores = sorted.map((_, i) => normal.quantile((i + 1 - BLOM) / (n + 1 - 2 * BLOM)))
  const straightness = correlation(sorted, scores) ** 2
  if (!Number.isFinite(straightness)) return { kind: 'not tested', why: 'all residuals are alike' }
  const u = Math.log(n)
  const v = Math.log(u)
  const mean = -1.2725 + 1.0521 * (v - u)
  const deviation = 1.0308 - 0.26758 * (v + 2 / u)
  return {
    kind: 'tested',
    straightness,
    probability: 1 - normal.cdf((Math.log(1 - straightness) - mean) / deviation),
  }
}

function correlation(a: readonly number[], b: readonly number[]): number {
  const meanOf = (list: readonly number[]) => list.reduce((sum, x) => sum + x, 0) / list.length
  const [ma, mb] = [meanOf(a), meanOf(b)]
  let [ab, aa, bb] = [0, 0, 0]
  a.forEach((x, i) => {
    ab += (x - ma) * (b[i]! - mb)
    aa += (x - ma) ** 2
    bb += (b[i]! - mb) ** 2
  })
  return ab / Math.sqrt(aa * bb)
}
