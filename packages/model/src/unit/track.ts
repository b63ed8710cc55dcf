import { type Condition, meanMatDepth } from '../contact/index.ts'
import type { Metres } from '../quantities/index.ts'
import { depressionAfter, type Turf } from '../turf/index.ts'
import type { Unit } from './unit.ts'

/**
 * Depression behind the front roller that the edge still meets.
 *
 *   v(c/speed) with z_m the front sinkage; behind a grooved roller the mean mat depth over one pitch
 *
 * Holds   standing, or with recovery left out: none
 * Source  docs/physics.md §2.3, §4
 */
export function unrecoveredAtEdge(
  question: { readonly unit: Unit; readonly turf: Turf; readonly condition: Condition },
  sinkage: Metres,
): Metres {
  const { unit, turf, condition } = question
  if (condition.kind === 'standing' || condition.recovery === false) return 0
  const left = depressionAfter(turf, 1, unit.edge / condition.speed)
  return left === 0 ? 0 : left * meanMatDepth(unit.frontRoller.surface, turf, sinkage)
}
