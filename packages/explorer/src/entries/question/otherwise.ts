import type { Scenario } from '@swardsink/model'
import { setQuantity, settable } from '../../book/index.ts'
import type { Change } from './settings.ts'

export type Otherwise =
  | { readonly ok: true; readonly scenario: Scenario }
  | { readonly ok: false; readonly reason: string }

const refused = (reason: string): Otherwise => ({ ok: false, reason })

/** A copy of the values with one of them made different; the scenario handed in stays as it is. */
export function otherwise(scenario: Scenario, change: Change): Otherwise {
  const of = settable(change.name)
  if (!of) return refused('question change unknown')
  if (of.kind === 'choice') {
    if (!('to' in change) || typeof change.to !== 'string' || !of.options(scenario).includes(change.to))
      return refused('question change no choice')
    return { ok: true, scenario: of.set(scenario, change.to) }
  }
  const now = of.value(scenario)
  if (now === null) return refused('question change not here')
  const value = 'by' in change ? now + change.by : 'times' in change ? now * change.times : change.to
  if (typeof value !== 'number') return refused('question change no number')
  const set = setQuantity(scenario, { of, value })
  return set.ok ? set : refused('question change impossible')
}
