import type { Caution } from '../../quantities/index.ts'

/** Where a parameter lies, at a stated level of confidence, or why that cannot be said. */
export type Interval =
  | { readonly kind: 'interval'; readonly low: number; readonly high: number; readonly level: number }
  /** The data bound it from one side only. */
  | { readonly kind: 'at least'; readonly low: number; readonly level: number; readonly why: string }
  | { readonly kind: 'at most'; readonly high: number; readonly level: number; readonly why: string }
  | { readonly kind: 'undetermined'; readonly why: string }

export type FittedParameter = {
  readonly name: string
  /** The set it belongs to, where there is one a set. */
  readonly set?: string
  readonly value: number
  /** null where there is none: held, at a bound, or not determined by the data; `interval` says why. */
  readonly standardError: number | null
  readonly interval: Interval
  readonly state: 'free' | 'fixed' | 'at bound'
}

/** How the scatter of one reading is known: given, or taken from the residuals. */
export type Noise =
  | { readonly kind: 'known'; readonly standardDeviation: number }
  | { readonly kind: 'estimated' }

/** What a least-squares fit says, as plain data. */
export type Fit = {
  readonly outcome: 'converged' | 'stopped' | 'failed'
  /** Why it ended, as a sentence. */
  readonly why: string
  /** All of them, held ones too, in the order they were named. */
  readonly parameters: readonly FittedParameter[]
  /** Of the free parameters, in their order; null where the data do not determine them. */
  readonly covariance: readonly (readonly number[])[] | null
  readonly correlation: readonly (readonly number[])[] | null
  /** Measured minus fitted, in the unit of the readings. */
  readonly residuals: readonly number[]
  /** The weight of each reading: 1/variance, relative when the noise is estimated. */
  readonly weights: readonly number[]
  /** How much each reading pulls its own fitted value, 0 to 1. */
  readonly leverage: readonly number[]
  readonly noise: 'known' | 'estimated'
  /** Of a reading of weight 1; null without degrees of freedom. */
  readonly residualStandardDeviation: number | null
  /** Weighted. */
  readonly sumOfSquares: number
  readonly degreesOfFreedom: number
  /** null when all readings are equal. */
  readonly r2: number | null
  /** null when there are too few readings for its correction. */
  readonly aicc: number | null
  readonly iterations: number
  readonly evaluations: number
  readonly cautions: readonly Caution[]
}
