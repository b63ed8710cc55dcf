import { type Arc, type Condition, conditionProblems } from '../contact/index.ts'
import type { Problem } from '../quantities/index.ts'
import { type Turf, turfProblems } from '../turf/index.ts'
import { tippingProblems } from './balance.ts'
import { partProblems, type Unit } from './unit.ts'

/** What is asked of a unit on its turf. */
export type UnitQuestion = {
  readonly unit: Unit
  readonly turf: Turf
  readonly condition: Condition
  /** 'tilted' unless 'level' is asked: whether the loads follow the unit as it leans. */
  readonly balance?: 'tilted' | 'level'
  readonly arc?: Arc
}

/** Every problem of a unit: its parts, and whether it would stand. */
export function unitProblems(unit: Unit, path: string): Problem[] {
  const problems = partProblems(unit, path)
  return problems.length > 0 ? problems : tippingProblems(unit, path)
}

export const unitQuestionProblems = ({ unit, turf, condition }: UnitQuestion): Problem[] => [
  ...unitProblems(unit, 'unit'),
  ...turfProblems(turf, 'turf'),
  ...conditionProblems(condition, 'condition'),
]
