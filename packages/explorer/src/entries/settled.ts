import {
  type BottomedOut,
  type Condition,
  InputError,
  type NotConverged,
  type Scenario,
  type Settled,
  settle,
  type Turf,
  type Unit,
} from '@swardsink/model'
import { type Answer, type Failure, presentTurf } from '../book/index.ts'

/** What the unit at rest hangs on. */
export type SettledInput = { readonly unit: Unit; readonly turf: Turf; readonly condition: Condition }

export function settledInput(scenario: Scenario): SettledInput {
  return { unit: scenario.unit, turf: presentTurf(scenario), condition: scenario.condition }
}

const known = new WeakMap<Scenario, Settled>()

/** The unit of a scenario at rest on its turf. Several entries ask in one frame: worked out once. */
export function settledOf(scenario: Scenario): Settled {
  let settled = known.get(scenario)
  if (!settled) {
    settled = settle(settledInput(scenario))
    known.set(scenario, settled)
  }
  return settled
}

export function failureOf(outcome: BottomedOut | NotConverged): Failure {
  return outcome.outcome === 'bottomed out'
    ? {
        kind: 'bottomed out',
        where: outcome.where,
        load: outcome.load ?? null,
        lockingDepth: outcome.lockingDepth,
      }
    : {
        kind: 'not converged',
        where: outcome.where,
        iterations: outcome.iterations,
        residual: outcome.residual,
      }
}

/** An answer from a sum that may have none, and may be asked something that makes no sense. */
export function answer<Result>(
  work: () =>
    | { readonly result: Result; readonly cautions: Answer<Result>['cautions'] }
    | BottomedOut
    | NotConverged,
): Answer<Result> {
  try {
    const found = work()
    if ('outcome' in found) {
      return { outcome: 'no answer', why: failureOf(found), cautions: found.cautions }
    }
    return { outcome: 'answered', ...found }
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    const problem = { path: error.quantity, expected: error.expected, received: error.received }
    return { outcome: 'no answer', why: { kind: 'problems', problems: [problem] }, cautions: [] }
  }
}
