import { describe, InputError, type Metres, type Newtons, type Pascals } from '../../../quantities/index.ts'
import type { Reading } from '../../../readings/index.ts'
import type { LawName, Turf } from '../../../turf/index.ts'
import type { Fit, FittedParameter } from '../fit.ts'
import type { LeftOut } from './rows.ts'

/** A reading beside what the fitted turf answers. */
export type FittedReading = {
  /** Line of the table it stood in. */
  readonly row: number
  readonly set: string
  readonly kind: 'sinkage' | 'drop'
  readonly foot: Reading['foot']
  /** On the foot alone; null where the whole unit was set down. */
  readonly load: Newtons | null
  readonly measured: Metres
  /** With the datum of its set; null without an answer. */
  readonly predicted: Metres | null
  /** Greatest under the foot, or under both rollers of the unit. */
  readonly pressure: Pascals | null
}

export type Span = { readonly low: number; readonly high: number }

/** What a fit of turf to readings says, as plain data. Residuals, weights and leverage are in the order of `readings`. */
export type ComplianceFit = Fit & {
  readonly outcome: 'converged' | 'stopped'
  readonly law: LawName
  /** By set. */
  readonly turfs: Readonly<Record<string, Turf>>
  /** The turf that all sets share; null where a parameter has a value for each. */
  readonly turf: Turf | null
  readonly readings: readonly FittedReading[]
  /** Readings that were not fitted, each with its reason. */
  readonly leftOut: readonly LeftOut[]
  /** Of the fitted readings; results outside the pressures are marked as extrapolated. */
  readonly pressures: Span | null
  readonly loads: Span | null
  /** Parameters of the turf that have a value for each set. */
  readonly perSet: readonly string[]
  readonly notes: readonly string[]
}

/** A search that found no turf that answers every reading. */
export type ComplianceFailed = {
  readonly outcome: 'failed'
  /** As a sentence. */
  readonly why: string
  readonly law: LawName
  /** Where it began, and what was held. */
  readonly parameters: readonly FittedParameter[]
  readonly leftOut: readonly LeftOut[]
  readonly notes: readonly string[]
}

/**
 * The fitted turf: of a set, or the one all sets share.
 *
 * Throws  InputError when there is no such set, or when none is named and each has its own
 */
export function turfOf(fit: Pick<ComplianceFit, 'turfs' | 'turf'>, set?: string): Turf {
  const names = Object.keys(fit.turfs)
  const found = set === undefined ? fit.turf : Object.hasOwn(fit.turfs, set) ? fit.turfs[set] : undefined
  if (found) return found
  throw new InputError({
    path: 'set',
    expected: `one of ${names.map(name => JSON.stringify(name)).join(', ')}`,
    received: describe(set),
  })
}
