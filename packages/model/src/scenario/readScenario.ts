import { numberProblem, type Problem } from '../quantities/index.ts'
import { fields } from './fields.ts'
import {
  type Findings,
  keepProblems,
  newFindings,
  readNumbers,
  readObject,
  type Values,
} from './partReader.ts'
import { makeFormulas } from './readLaw.ts'
import { readCondition, readNamed, readRoller, readTurf } from './readParts.ts'
import { readUnit } from './readUnit.ts'
import { type Scenario, turfNameProblems, unitNameProblems } from './scenario.ts'

export type ScenarioReading =
  | { readonly ok: true; readonly scenario: Scenario; readonly doubts: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] }

const PARTS = ['unit', 'units', 'rollers', 'turfs', 'turf', 'condition']

/**
 * A scenario from a file, a link or a book. Any number may carry a unit after its name (`diameter_mm`,
 * `speed_kmh`), never twice; without one it is SI. A fitted roller may be the name of one in the rack, and a unit
 * may say what the scales said (`scales`) in place of its body. With several `units` of one machine by name, `unit`
 * is the name of the one in hand.
 *
 * Throws  nothing: every problem comes back, path first; what reads but looks meant in another unit comes as a doubt
 */
export async function readScenario(value: unknown): Promise<ScenarioReading> {
  const written = typeof value === 'object' && value !== null && 'turfs' in value ? value.turfs : undefined
  const findings = newFindings(await makeFormulas(written))
  const object = readObject(value, '', findings)
  if (!object) return { ok: false, problems: findings.problems }
  const numbers = readNumbers(object, '', { numbers: fields.scenario, others: PARTS }, findings)
  const rollers = readNamed(object.rollers, 'rollers', readRoller, findings)
  const turfs = readNamed(object.turfs, 'turfs', readTurf, findings)
  const named = namesOf(object.rollers)
  const inHand = readInHand(object, { read: rollers, named }, findings)
  const condition = readCondition(object.condition, 'condition', findings)
  if (numbers?.effectiveHeight !== undefined)
    keepProblems(numberProblem(numbers.effectiveHeight, 'effectiveHeight', 'height', { above: 0 }), findings)
  keepProblems(turfNameProblems(object.turf, namesOf(object.turfs)), findings)
  if (findings.problems.length > 0 || !numbers || !inHand || !condition)
    return { ok: false, problems: findings.problems }
  return {
    ok: true,
    doubts: findings.doubts,
    scenario: { ...inHand, rollers, turfs, turf: object.turf as string, condition, ...numbers },
  }
}

/** The unit in hand: written out, or named among several. */
function readInHand(
  object: Values,
  rack: Parameters<typeof readUnit>[2],
  findings: Findings,
): Pick<Scenario, 'unit' | 'units' | 'unitName'> | undefined {
  if (object.units === undefined) {
    const unit = readUnit(object.unit, 'unit', rack, findings)
    return unit && { unit }
  }
  const units = readNamed(
    object.units,
    'units',
    (value, path, found) => readUnit(value, path, rack, found),
    findings,
  )
  if (!keepProblems(unitNameProblems(object.unit, namesOf(object.units)), findings)) return undefined
  const unitName = object.unit as string
  const unit = Object.hasOwn(units, unitName) ? units[unitName] : undefined
  return unit && { unit, units, unitName }
}

const namesOf = (value: unknown): string[] =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.keys(value) : []
