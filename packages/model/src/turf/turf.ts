import type { Metres, Seconds } from '../quantities/units.ts'
import type { PressureLaw } from './laws/laws.ts'

/** Turf as a compliant layer: how it answers pressure, how far it carries sideways, how it comes back. */
export type Turf = {
  readonly law: PressureLaw
  /** How far turf carries load sideways past an edge; 0 unless given (independent springs). */
  readonly spread?: Metres
  /** Part of the sinkage that comes back at once, 0 to 1; 1 unless given. */
  readonly rebound?: number
  /** Part of the sinkage that stays for good, at most 1 − rebound; 0 unless given. */
  readonly lasting?: number
  /** Time constant of what comes back slowly; 0 unless given (all that can come back is back). */
  readonly recoveryTime?: Seconds
  /** Thickness of the soft layer, if known: only for cautions. */
  readonly thickness?: Metres
}
