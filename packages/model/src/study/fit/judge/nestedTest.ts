import { chiSquared, fDistribution } from '../../../numerics/index.ts'
import type { LawName } from '../../../turf/index.ts'

/** Whether the larger of two nested laws follows the readings better than chance would have it. */
export type NestedTest = {
  readonly smaller: string
  readonly larger: string
  /** What the smaller law is within the larger: "exponent 1", "locking depth without end". */
  readonly within: string
  /** F, or χ² with the noise known: of the squares the larger takes up, and its degrees of freedom. */
  readonly kind: 'F' | 'chi-squared'
  readonly statistic: number
  readonly above: number
  /** null: noise known. */
  readonly below: number | null
  /** Of so much by chance when the smaller law is right. */
  readonly probability: number
  /** Whether the smaller law lies at the very edge of the larger one: half the usual probability then. */
  readonly atEdge: boolean
}

type Nesting = {
  readonly smaller: LawName
  readonly larger: LawName
  /** What the larger has and the smaller has not. */
  readonly more: readonly string[]
  readonly within: string
  readonly atEdge: boolean
}

/** Which law of the list is a case of which. */
export const nestings: readonly Nesting[] = [
  { smaller: 'linear', larger: 'power', more: ['exponent'], within: 'exponent 1', atEdge: false },
  {
    smaller: 'linear',
    larger: 'stiffening',
    more: ['lockingDepth'],
    within: 'locking depth without end',
    atEdge: true,
  },
  {
    smaller: 'linear',
    larger: 'logarithmic',
    more: ['lockingDepth'],
    within: 'locking depth without end',
    atEdge: true,
  },
]

export type Compared = {
  readonly sumOfSquares: number
  readonly degreesOfFreedom: number
}

type Question = {
  readonly smaller: Compared & { readonly name: string }
  readonly larger: Compared & { readonly name: string }
  readonly within: string
  readonly atEdge: boolean
  /** Of a reading of weight 1 where the noise is known; null where the residuals tell it. */
  readonly variance: number | null
}

/**
 * The test of nested fits to the same readings.
 *
 *   F = [(SS₁ − SS₂)/(ν₁ − ν₂)]/[SS₂/ν₂];  noise known: χ² = (SS₁ − SS₂)/σ²
 *
 * A parameter that ends at its edge, as a locking depth without end, is as often pushed against it as away: of one such
 * parameter half the probability counts.
 *
 * Holds   exactly for laws linear in their parameters
 * Source  Seber and Wild 1989, Nonlinear Regression, §5.3; at the edge Self and Liang 1987, JASA 82:605-610 (from memory)
 */
export function nestedTest({ smaller, larger, within, atEdge, variance }: Question): NestedTest | null {
  const known = variance !== null
  const above = smaller.degreesOfFreedom - larger.degreesOfFreedom
  const below = larger.degreesOfFreedom
  if (above < 1 || (!known && (below < 1 || !(larger.sumOfSquares > 0)))) return null
  const gain = Math.max(0, smaller.sumOfSquares - larger.sumOfSquares)
  const statistic = known ? gain / variance : gain / above / (larger.sumOfSquares / below)
  const whole = known
    ? chiSquared.survival(statistic, above)
    : fDistribution.survival(statistic, above, below)
  return {
    smaller: smaller.name,
    larger: larger.name,
    within,
    kind: known ? 'chi-squared' : 'F',
    statistic,
    above,
    below: known ? null : below,
    probability: atEdge && above === 1 ? whole / 2 : whole,
    atEdge,
  }
}
