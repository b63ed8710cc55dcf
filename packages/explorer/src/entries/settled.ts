import {
  type BottomedOut,
  type Caution,
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

/** Several entries ask for the same unit in one frame: the last few answers are kept. */
const known = new Map<string, Settled>()
const MOST_KNOWN = 16

/** The unit at rest on its turf. */
export function settleOnce(input: SettledInput): Settled {
  const key = JSON.stringify(input)
  let settled = known.get(key)
  if (!settled) {
    settled = settle(input)
    known.set(key, settled)
    const [oldest] = known.keys()
    if (known.size > MOST_KNOWN && oldest !== undefined) known.delete(oldest)
  }
  return settled
}

export function settledOf(scenario: Scenario): Settled {
  return settleOnce(settledInput(scenario))
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
  work: () => { readonly result: Result; readonly cautions: readonly Caution[] } | BottomedOut | NotConverged,
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
