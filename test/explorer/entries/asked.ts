import type { Caution, Scenario } from '@swardsink/model'
import { fieldsOf } from '../../../packages/explorer/src/book/fields.ts'
import type { Answer, Kind } from '../../../packages/explorer/src/book/index.ts'
import { readerFor } from '../../../packages/explorer/src/words/index.ts'

export const reader = readerFor({ units: 'metric', figureText: 13 })

/** What a kind asks for with these settings, the others usual. */
export function asked<Settings extends object, Input, Result>(
  kind: Kind<string, Settings, Input, Result>,
  scenario: Scenario,
  settings: Partial<Settings> = {},
  answers: Readonly<Record<string, unknown>> = {},
) {
  const complete: Settings = { ...kind.read(fieldsOf({}, 'entry', [])), ...settings }
  return {
    settings: complete,
    input: kind.input({ settings: complete, scenario, answers, entries: [], offered: {} }),
  }
}

export function answered<Result>(answer: { outcome: string; result?: Result } | undefined): Result {
  if (answer?.outcome !== 'answered' || answer.result === undefined) throw new Error(JSON.stringify(answer))
  return answer.result
}

/** What rides on an answer, or on there being none. */
export const cautionsOf = <Result>(answer: Answer<Result>): readonly Caution[] =>
  'cautions' in answer ? answer.cautions : []

/** What a view draws from. */
export function shownOf<Settings extends object, Result>(
  settings: Settings,
  result: Result,
  scenario: Scenario,
) {
  return { id: 'it', settings, result, scenario, now: scenario, held: {}, stale: false, edition: 1, reader }
}
