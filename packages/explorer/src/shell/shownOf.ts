import type { Scenario } from '@swardsink/model'
import type { Entry, Held } from '../book/index.ts'
import type { Shown } from '../entries/view.ts'
import type { EntryState } from '../flow/index.ts'
import type { Reader } from '../words/index.ts'

/** What an entry's view draws from; null while there is no answer yet. */
export function shownOf(q: {
  readonly entry: Entry
  readonly state: EntryState
  readonly now: Scenario
  readonly held: Readonly<Record<string, Held>>
  readonly reader: Reader
}): Shown | null {
  const { state, entry, now, held, reader } = q
  if (state.resultFor === null) return null
  const refused = Object.keys(held).length > 0
  return {
    id: entry.id,
    settings: entry.settings,
    result: state.result,
    scenario: state.resultFor,
    now,
    held,
    stale: state.stale || refused,
    edition: state.edition,
    reader,
  }
}
