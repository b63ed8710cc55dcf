import type { Ending } from './endings.ts'

/** What is made small: n residuals that hang on p parameters. */
export type Residuals = {
  readonly count: number
  readonly size: number
  /** Fills the weighted residuals, (measured − model) √weight; false where the model has no answer. */
  evaluate(p: Float64Array, residuals: Float64Array): boolean
  /** Fills ∂residual/∂p, row-major n × p, at the p last evaluated; without it differences are taken. */
  jacobian?(p: Float64Array, jacobian: Float64Array): boolean
}

/**
 * How much a residual counts. The robust ones count it less the further out it lies, in standard deviations of a
 * weighted residual: the given one, or without one the median of what is left, over 0.6745.
 */
export type Loss =
  | { readonly kind: 'squares' }
  | { readonly kind: 'huber' | 'bisquare'; readonly at: number; readonly standardDeviation?: number }

export type LeastSquaresQuestion = {
  readonly residuals: Residuals
  readonly start: Float64Array
  /** ±Infinity where there is none. */
  readonly lower?: Float64Array
  readonly upper?: Float64Array
  /** A typical size of each parameter, for those that may come near zero. */
  readonly scale?: Float64Array
  readonly loss?: Loss
  /** How many other starts may be tried when the first ends badly or suspiciously. */
  readonly restarts?: number
  readonly seed?: number
  /** Most iterations from one start. */
  readonly most?: number
  /** Relative: of a parameter, and of its standard error. */
  readonly tolerance?: number
}

export type Solved = {
  readonly outcome: 'converged' | 'stopped' | 'failed'
  readonly why: Ending
  readonly p: Float64Array
  /** Weighted, at p; without the weights of a robust loss, which are in `robust`. */
  readonly residuals: Float64Array
  readonly jacobian: Float64Array
  /** The weight that a robust loss left each residual, 0 to 1; null for squares. */
  readonly robust: Float64Array | null
  /** In standard deviations, where the robust loss begins, and what one is; null for squares. */
  readonly loss: { readonly kind: 'huber' | 'bisquare'; readonly at: number; readonly spread: number } | null
  /** 1 where a parameter lies at its bound and the residuals push it against that. */
  readonly atBound: Uint8Array
  /** Of the Jacobian's columns that are not at a bound. */
  readonly rank: number
  /** Of the weighted residuals, each times its robust weight. */
  readonly sumOfSquares: number
  readonly iterations: number
  readonly evaluations: number
  readonly restarts: number
}
