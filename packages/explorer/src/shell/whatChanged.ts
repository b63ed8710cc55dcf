import type { Scenario } from '@swardsink/model'
import { type Held, settable, settableNames } from '../book/index.ts'
import { type Reader, settableWords } from '../words/index.ts'

/** The value an old figure is still for, and the one that now stands: what a pale figure says of itself. */
export function whatChanged(
  was: Scenario,
  q: {
    readonly now: Scenario
    readonly held: Readonly<Record<string, Held>>
    readonly reader: Reader
  },
): { readonly what: string; readonly was: string; readonly now: string } | null {
  const { now, held, reader } = q
  for (const name of settableNames(was)) {
    const of = settable(name)
    if (of?.kind !== 'quantity') continue
    const before = of.value(was)
    if (before === null) continue
    const what = settableWords(name, reader.words).name
    const refused = held[of.name]
    if (refused) {
      const shown = refused.value === null ? refused.text : reader.format(refused.value, of.quantity)
      return { what, was: reader.format(before, of.quantity), now: shown }
    }
    const after = of.value(now)
    if (after !== null && after !== before)
      return { what, was: reader.format(before, of.quantity), now: reader.format(after, of.quantity) }
  }
  return null
}
