import type { Condition } from '../../contact/index.ts'
import { InputError, type Metres, numberProblem, refuse } from '../../quantities/index.ts'
import { type Unit, unitQuestionProblems } from '../../unit/index.ts'
import type { ComplianceFit } from '../fit/compliance/complianceFit.ts'
import type { Aim } from './aim.ts'
import { type Candidate, checkCandidates, type Parts, usualCandidates } from './candidate.ts'

export type NextQuestion = {
  readonly fit: ComplianceFit
  /** A ladder of loads on every foot at hand, and drops of the unit where drops were fitted, unless given. */
  readonly candidates?: readonly Candidate[]
  /** Rollers that candidates name, and the unit that loads them. */
  readonly scenario?: Parts
  /** Whose height is to be told; standing unless a condition is given. */
  readonly unit?: Unit
  readonly condition?: Condition
  /** Which turf the unit is to stand on, where a fit has one for each set. */
  readonly set?: string
  /** The height where there is a unit, else all numbers together. */
  readonly aim?: Aim
  /** Chooses several, one after the other, up to this cost. */
  readonly budget?: number
  /** Scatter of one reading; that of the readings fitted unless given. */
  readonly standardDeviation?: Metres
}

/** Checks a question; its candidates, given or usual. */
export function candidatesOf(question: NextQuestion): readonly Candidate[] {
  const { fit, scenario, unit, condition, budget, standardDeviation } = question
  const { outcome } = fit as { readonly outcome: string }
  if (outcome === 'failed')
    throw new InputError({ path: 'fit', expected: 'a fit that found a turf', received: outcome })
  refuse([
    ...(budget === undefined ? [] : numberProblem(budget, 'budget', 'ratio', { above: 0 })),
    ...(standardDeviation === undefined
      ? []
      : numberProblem(standardDeviation, 'standardDeviation', 'sinkage', { above: 0 })),
  ])
  const turf = Object.values(fit.turfs)[0]!
  if (unit) refuse(unitQuestionProblems({ unit, turf, condition: condition ?? STANDING }))
  const candidates = question.candidates ?? usualCandidates(fit, scenario)
  checkCandidates(candidates)
  return candidates
}

export const STANDING: Condition = { kind: 'standing' }
