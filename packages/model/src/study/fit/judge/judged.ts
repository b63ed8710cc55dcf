import type { Pascals } from '../../../quantities/index.ts'
import type { Fit } from '../fit.ts'

/** Loads are one and the same when they agree to this many digits: a load worked out twice is. */
const DIGITS = 9

/** What is known of one reading besides its number. */
export type JudgedRow = {
  /** Line of the table it stood in, or its place in the list. */
  readonly row: number
  readonly set: string
  /** What pressed, in words that tell one foot from another. */
  readonly foot: string
  /** What was read: readings of different kinds are never replicates of each other. */
  readonly kind: string
  /** What the curve runs along: load, pressure or x. */
  readonly along: number
  /** Mean pressure under the foot, where it is known. */
  readonly pressure?: Pascals
}

/** A fit beside the readings it was made from. */
export type Judged = {
  readonly fit: Fit
  /** Standard deviation of a reading of weight 1; null without degrees of freedom to see it by. */
  readonly scatter: number | null
  /** One a residual, in their order. */
  readonly rows: readonly JudgedRow[]
  /** The word for what the rows run along: "load", "pressure". */
  readonly alongWord: string
  readonly measured: readonly number[]
  /** Of each fitted value by each free parameter, a row a reading; null where they are not known. */
  readonly derivatives: readonly (readonly number[])[] | null
}

/** Those that were fitted and did not end at a bound: the columns of covariance and derivatives. */
export const freeOf = ({ parameters }: Fit) => parameters.filter(({ state }) => state === 'free')

/** Readings are repeats of each other where this is the same. */
export const placeOf = ({ set, foot, kind, along }: JudgedRow): string =>
  JSON.stringify([set, foot, kind, Number(along.toPrecision(DIGITS))])
