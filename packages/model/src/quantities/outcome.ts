import type { Caution } from './caution.ts'
import type { Metres, Newtons } from './units.ts'

/** The turf would have to be pressed beyond what its law answers: a physical fact, not a mistake. */
export type BottomedOut = {
  readonly outcome: 'bottomed out'
  /** Which roller: 'roller' when it is alone. */
  readonly where: string
  /** The load that is too much; absent when a sinkage was asked for. */
  readonly load?: Newtons
  readonly lockingDepth: Metres
  readonly cautions: readonly Caution[]
}

export type NotConverged = {
  readonly outcome: 'not converged'
  readonly where: string
  readonly iterations: number
  /** What is left of the balance, relative. */
  readonly residual: number
  readonly cautions: readonly Caution[]
}
