import type { Scenario } from '@swardsink/model'
import type { Kind } from '../../book/index.ts'
import { answer, type SettledInput, settledInput, settleOnce } from '../settled.ts'
import { namesIn } from './prose.ts'
import { isValueName, type LiveValue, liveValue } from './values.ts'

export type TextSettings = { readonly text: string }
export type TextInput = {
  readonly names: readonly string[]
  readonly scenario: Scenario
  readonly settled: SettledInput
}
export type TextResult = Readonly<Record<string, LiveValue>>

/** Prose with live values inside it. */
export const text: Kind<'text', TextSettings, TextInput, TextResult> = {
  kind: 'text',
  read: fields => ({ text: fields.text('text', '') }),
  problems: settings =>
    namesIn(settings.text)
      .filter(name => !isValueName(name))
      .map(name => ({ path: 'text', expected: 'the name of a value', received: name })),
  needs: () => [],
  input: ({ settings, scenario }) => ({
    names: namesIn(settings.text),
    scenario,
    settled: settledInput(scenario),
  }),
  compute: ({ names, scenario, settled: input }) =>
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
      return { result, cautions: [] }
    }),
  section: '§4',
  check: 'test/model/reference/twoRollers.test.ts',
}
