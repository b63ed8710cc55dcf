import type { Metres } from '../quantities/index.ts'
import type { Unit } from './unit.ts'

/** A wave in the cut that a roller out of true leaves: how far from the mean it goes either way, and how often. */
export type Runout = { readonly rise: Metres; readonly every: Metres }

/**
 * What rollers that do not run true do to the height of cut.
 *
 *   front ± runout (1 − c/B), rear ± runout c/B; each repeats every π D
 *
 * Holds   the eccentric roller's turf follows it at rest: no bounce
 * Units   [m]
 * Source  docs/physics.md §4
 */
export function runoutOf({ frontRoller, rearRoller, edge, wheelbase }: Unit): {
  readonly front: Runout
  readonly rear: Runout
} {
  const share = edge / wheelbase
  return {
    front: { rise: (frontRoller.runout ?? 0) * (1 - share), every: Math.PI * frontRoller.diameter },
    rear: { rise: (rearRoller.runout ?? 0) * share, every: Math.PI * rearRoller.diameter },
  }
}
