import type { Loss } from '../../../numerics/index.ts'
import type { Reading } from '../../../readings/index.ts'
import type { Scenario } from '../../../scenario/index.ts'
import type { LawName, PressureLaw } from '../../../turf/index.ts'
import type { Noise } from '../fit.ts'

/** A parameter that is fitted: one value for all sets, or one a set. */
export type Free = string | { readonly name: string; readonly per: 'set' }

export type ComplianceQuestion = {
  readonly readings: readonly Reading[]
  /** The kind of a law, or a law whose numbers stand where they are not free. */
  readonly law: LawName | PressureLaw
  /** Names as in the law: softness, exponent, lockingDepth, upper.softness, values of a formula; and spread. */
  readonly free: readonly Free[]
  readonly noise: Noise
  /** 'per set': the sinkages of a set are from an unknown zero too; drops always are. */
  readonly datum?: 'per set'
  /** By name, SI; the model's own limits hold besides. */
  readonly bounds?: Readonly<Record<string, { readonly lower?: number; readonly upper?: number }>>
  /** By name, SI: where a free number starts, and where one that is not free stands. */
  readonly start?: Readonly<Record<string, number>>
  readonly loss?: Loss
  /** The rollers that readings name, and the unit that loads them. */
  readonly scenario?: Pick<Scenario, 'unit' | 'rollers'>
  /** Of the intervals; 0.95 unless given. */
  readonly level?: number
  readonly restarts?: number
  readonly seed?: number
}
