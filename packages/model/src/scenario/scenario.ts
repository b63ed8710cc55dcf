import { type Condition, conditionProblems } from '../contact/index.ts'
import { describe, type Metres, numberProblem, type Problem, refuse } from '../quantities/index.ts'
import { type Roller, rollerProblems } from '../roller/index.ts'
import { type Turf, turfProblems } from '../turf/index.ts'
import { type Unit, unitProblems } from '../unit/index.ts'

/** What a file says: a unit, a rack of rollers, a list of turfs, the turf in hand and how the unit is used. */
export type Scenario = {
  /** The unit in hand. */
  readonly unit: Unit
  /**
   * Units of one machine, by name, the one in hand among them. Of that one `unit` is what counts, so that whoever
   * changes it need not know of the others: `unitsOf` has them all as they stand.
   */
  readonly units?: Readonly<Record<string, Unit>>
  /** Name of the unit in hand; there if, and only if, `units` are. */
  readonly unitName?: string
  readonly rollers: Readonly<Record<string, Roller>>
  readonly turfs: Readonly<Record<string, Turf>>
  /** Name of the turf in hand. */
  readonly turf: string
  readonly condition: Condition
  /** Height to hold. */
  readonly effectiveHeight?: Metres
}

/** The name of what is in hand must be one of its list. */
const nameProblems = (
  name: unknown,
  q: { path: string; names: readonly string[]; list: string },
): Problem[] =>
  typeof name === 'string' && q.names.includes(name)
    ? []
    : [
        {
          path: q.path,
          expected: `one of ${q.names.map(one => JSON.stringify(one)).join(', ') || q.list}`,
          received: describe(name),
        },
      ]

export const turfNameProblems = (turf: unknown, names: readonly string[]): Problem[] =>
  nameProblems(turf, { path: 'turf', names, list: 'the turfs' })

export const unitNameProblems = (unit: unknown, names: readonly string[], path = 'unit'): Problem[] =>
  nameProblems(unit, { path, names, list: 'the units' })

/** The units of the machine by name, the one in hand as it now stands; none where the one unit has no name. */
export function unitsOf({ unit, units, unitName }: Scenario): Readonly<Record<string, Unit>> {
  return units === undefined || unitName === undefined ? {} : { ...units, [unitName]: unit }
}

/**
 * Takes another unit of the machine in hand; what was changed on the one put down stays with it.
 *
 * Throws  InputError when there is no unit of that name
 */
export function withUnitInHand(scenario: Scenario, name: string): Scenario {
  const units = unitsOf(scenario)
  refuse(unitNameProblems(name, Object.keys(units)))
  return { ...scenario, units, unitName: name, unit: units[name] as Unit }
}

function severalProblems({ unit, units, unitName }: Scenario): Problem[] {
  if (units === undefined && unitName === undefined) return []
  if (units === undefined) return [{ path: 'units', expected: 'units by name', received: 'nothing' }]
  const others = Object.entries(units).filter(([name]) => name !== unitName)
  return [
    ...unitNameProblems(unitName, Object.keys(units), 'unitName'),
    ...others.flatMap(([name, one]) => (one === unit ? [] : unitProblems(one, `units.${name}`))),
  ]
}

/** Every problem of a scenario, path first; none when it is sound. */
export function scenarioProblems(scenario: Scenario): Problem[] {
  const { unit, rollers, turfs, turf, condition, effectiveHeight } = scenario
  const none = (list: object, path: string): Problem[] =>
    Object.keys(list).length > 0 ? [] : [{ path, expected: 'at least one, by name', received: 'none' }]
  return [
    ...unitProblems(unit, 'unit'),
    ...severalProblems(scenario),
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
