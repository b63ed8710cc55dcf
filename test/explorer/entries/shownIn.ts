import type { Scenario } from '@swardsink/model'
import { fieldsOf } from '../../../packages/explorer/src/book/fields.ts'
import type { Kind } from '../../../packages/explorer/src/book/index.ts'
import { reader, shownOf } from './asked.ts'

export { reader }

/** What an entry of a kind shows in a scenario, with the usual settings or some of its own. */
export function shownIn<Settings extends object, Input, Result>(
  kind: Kind<string, Settings, Input, Result>,
  scenario: Scenario,
  fields: Readonly<Record<string, unknown>> = {},
) {
  const settings = kind.read(fieldsOf(fields, 'entry', []))
  const input = kind.input({ settings, scenario, answers: {}, entries: [], offered: {} })
  const answer = kind.refine ? kind.refine(input, () => {}) : kind.compute(input)
  if (answer.outcome !== 'answered') throw new Error(JSON.stringify(answer))
  const shown = shownOf(settings, answer.result, scenario)
  return { shown, input, cautions: answer.cautions }
}
