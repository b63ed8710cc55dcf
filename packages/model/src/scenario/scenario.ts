import { type Condition, conditionProblems } from '../contact/index.ts'
import { describe, type Metres, numberProblem, type Problem } from '../quantities/index.ts'
import { type Roller, rollerProblems } from '../roller/index.ts'
import { type Turf, turfProblems } from '../turf/index.ts'
import { type Unit, unitProblems } from '../unit/index.ts'

/** What a file says: a unit, a rack of rollers, a list of turfs, the turf in hand and how the unit is used. */
export type Scenario = {
  readonly unit: Unit
  readonly rollers: Readonly<Record<string, Roller>>
  readonly turfs: Readonly<Record<string, Turf>>
  /** Name of the turf in hand. */
  readonly turf: string
  readonly condition: Condition
  /** Height to hold. */
  readonly effectiveHeight?: Metres
}

/** The name of the turf in hand must be one of the list. */
export const turfNameProblems = (turf: unknown, names: readonly string[], path = 'turf'): Problem[] =>
  typeof turf === 'string' && names.includes(turf)
    ? []
    : [
        {
          path,
          expected: `one of ${names.map(name => JSON.stringify(name)).join(', ') || 'the turfs'}`,
          received: describe(turf),
        },
      ]

/** Every problem of a scenario, path first; none when it is sound. */
export function scenarioProblems(scenario: Scenario): Problem[] {
  const { unit, rollers, turfs, turf, condition, effectiveHeight } = scenario
  const none = (list: object, path: string): Problem[] =>
    Object.keys(list).length > 0 ? [] : [{ path, expected: 'at least one, by name', received: 'none' }]
  return [
    ...unitProblems(unit, 'unit'),
    ...none(rollers, 'rollers'),
    ...Object.entries(rollers).flatMap(([name, roller]) => rollerProblems(roller, `rollers.${name}`)),
    ...none(turfs, 'turfs'),
    ...Object.entries(turfs).flatMap(([name, one]) => turfProblems(one, `turfs.${name}`)),
    ...turfNameProblems(turf, Object.keys(turfs)),
    ...conditionProblems(condition, 'condition'),
    ...(effectiveHeight === undefined
      ? []
      : numberProblem(effectiveHeight, 'effectiveHeight', 'height', { above: 0 })),
  ]
}
