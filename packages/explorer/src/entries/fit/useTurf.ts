import type { Scenario } from '@swardsink/model'
import { addTurf } from '../../book/index.ts'
import type { Reader } from '../../words/index.ts'
import { fittedTurf } from './here.ts'
import type { Fitted } from './kind.ts'

/** Marks a turf as one of this entry's, so that it is renewed, not added again, when the fit has changed. */
const markOf = (id: string): string => `[${id}]`

/** The scenario with the fitted turf in hand, under the name of its set. */
export function withFittedTurf(
  { fit, curve }: Pick<Fitted, 'fit' | 'curve'>,
  q: { readonly id: string; readonly now: Scenario; readonly reader: Reader },
): { readonly scenario: Scenario; readonly name: string } {
  const { now, reader, id } = q
  const { turf: said, counted, laws } = reader.words.fit
  const set = curve.set ?? onlySet(fit.readings.map(reading => reading.set))
  const count = fit.readings.filter(reading => curve.set === null || reading.set === curve.set).length
  const source = `${said.source({ count: counted(count), set, law: laws[fit.law] ?? fit.law })} ${markOf(id)}`
  const turf = { ...fittedTurf(fit, curve.set, now), source }
  const name = set === '' ? said.fitted : set
  const mine = Object.entries(now.turfs).find(
    ([key, one]) => key.startsWith(name) && one.source?.endsWith(markOf(id)),
  )?.[0]
  if (mine !== undefined)
    return { name: mine, scenario: { ...now, turf: mine, turfs: { ...now.turfs, [mine]: turf } } }
  const added = addTurf(now, { turf, name, after: null })
  return { name: added.name, scenario: { ...added.scenario, turf: added.name } }
}

/** The name of the one set there is; empty where there are several. */
function onlySet(sets: readonly string[]): string {
  const [first = '', ...rest] = new Set(sets)
  return rest.length === 0 ? first : ''
}
