import type { Condition, LawName, Roller, Scenario, Turf, Unit } from '@swardsink/model'
import { fittedName, presentTurf } from '../../book/index.ts'
import { equalLaws } from './equalLaws.ts'

export const OVERS = ['rollers', 'turfs', 'laws', 'conditions'] as const
/** What is laid side by side. */
export type Over = (typeof OVERS)[number]

/** What one curve is called: by the reader, or by a word of the book. */
export type CurveName =
  | { readonly of: 'reader'; readonly name: string }
  | { readonly of: 'law'; readonly law: LawName }
  | { readonly of: 'condition'; readonly condition: Condition['kind'] }
  | { readonly of: 'fitted' }

/** One curve to be drawn: a roller on a turf, and the unit it stands in. */
export type CurveQuestion = {
  readonly name: CurveName
  readonly present: boolean
  readonly unit: Unit
  readonly turf: Turf
  readonly condition: Condition
}

/** A walking pace: what mowing is compared at where the unit stands. */
const WALKING_PACE = 1.2

function withFront(unit: Unit, frontRoller: Roller): Unit {
  return { ...unit, frontRoller }
}

function overRollers(scenario: Scenario): readonly CurveQuestion[] {
  const { unit, rollers, condition } = scenario
  const turf = presentTurf(scenario)
  const fitted = fittedName(scenario)
  const rack = Object.entries(rollers).map(([name, roller]) => ({
    name: { of: 'reader', name } as const,
    present: name === fitted,
    unit: withFront(unit, roller),
    turf,
    condition,
  }))
  return fitted === null ? [{ name: { of: 'fitted' }, present: true, unit, turf, condition }, ...rack] : rack
}

/** What is laid side by side, the case in hand among it. */
export function curveQuestions(over: Over, scenario: Scenario): readonly CurveQuestion[] {
  const { unit, turfs, turf: present, condition } = scenario
  switch (over) {
    case 'rollers':
      return overRollers(scenario)
    case 'turfs':
      return Object.entries(turfs).map(([name, turf]) => ({
        name: { of: 'reader', name },
        present: name === present,
        unit,
        turf,
        condition,
      }))
    case 'laws': {
      const turf = presentTurf(scenario)
      return equalLaws(turf).map(({ kind, turf: other }) => ({
        name: { of: 'law', law: kind },
        present: kind === turf.law.kind,
        unit,
        turf: other,
        condition,
      }))
    }
    case 'conditions': {
      const mowing: Condition =
        condition.kind === 'mowing' ? condition : { kind: 'mowing', speed: WALKING_PACE }
      return [{ kind: 'standing' } as const, mowing].map(one => ({
        name: { of: 'condition', condition: one.kind },
        present: one.kind === condition.kind,
        unit,
        turf: presentTurf(scenario),
        condition: one,
      }))
    }
  }
}
