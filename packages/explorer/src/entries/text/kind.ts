import type { Scenario } from '@swardsink/model'
import type { Kind, LiveValue } from '../../book/index.ts'
import { givenTo, giverOf, giversOf } from '../given.ts'
import { answer, type SettledInput, settledInput, settleOnce } from '../settled.ts'
import { namesIn } from './prose.ts'
import { isValueName, liveValue } from './values.ts'

export type TextSettings = { readonly text: string }
export type TextInput = {
  readonly names: readonly string[]
  readonly scenario: Scenario
  readonly settled: SettledInput
  /** What other entries give. */
  readonly given: TextResult
}
export type TextResult = Readonly<Record<string, LiveValue>>

/** Prose with live values inside it. */
export const text: Kind<'text', TextSettings, TextInput, TextResult> = {
  kind: 'text',
  read: fields => ({ text: fields.text('text', '') }),
  problems: (settings, _, entries) =>
    namesIn(settings.text)
      .filter(name => !isValueName(name) && !giverOf(name, entries))
      .map(name => ({ path: 'text', expected: 'the name of a value', received: name })),
  needs: (settings, entries) => giversOf(namesIn(settings.text), entries),
  input({ settings, scenario, entries, offered }) {
    const names = namesIn(settings.text)
    return { names, scenario, settled: settledInput(scenario), given: givenTo(names, { entries, offered }) }
  },
  compute: ({ names, scenario, settled: input, given }) =>
    answer<TextResult>(() => {
      if (names.length === 0) return { result: {}, cautions: [] }
      const settled = settleOnce(input)
      if (settled.outcome !== 'settled') return settled
      const result = Object.fromEntries(
        names.flatMap(name => {
          const value = liveValue(name, { scenario, settled, input })
          return value ? [[name, value]] : []
        }),
      )
      return { result: { ...result, ...given }, cautions: [] }
    }),
  section: '§4',
  check: 'test/model/reference/twoRollers.test.ts',
}
