import type { Scenario, Turf } from '@swardsink/model'
import type { Edited } from './editRack.ts'
import { added, freshName, renamed, without } from './naming.ts'

/** A green more, taken in hand. `after`: the one it stands behind. */
export function addTurf(
  scenario: Scenario,
  q: { readonly turf: Turf; readonly name: string; readonly after: string | null },
): Edited {
  const name = freshName(q.name, Object.keys(scenario.turfs))
  const turfs = added(scenario.turfs, q.turf, { name, after: q.after })
  return { name, scenario: { ...scenario, turfs } }
}

export function copyTurf(scenario: Scenario, name: string): Edited {
  const turf = scenario.turfs[name]
  return turf ? addTurf(scenario, { turf, name, after: name }) : { scenario, name }
}

export function renameTurf(scenario: Scenario, from: string, to: string): Scenario {
  const turf = scenario.turf === from ? to : scenario.turf
  return { ...scenario, turf, turfs: renamed(scenario.turfs, from, to) }
}

/** Takes a green out; where the unit stood on it, it then stands on the first of the others. The last one stays. */
export function takeOutTurf(scenario: Scenario, name: string): Scenario {
  const turfs = without(scenario.turfs, name)
  const [first] = Object.keys(turfs)
  if (first === undefined) return scenario
  return { ...scenario, turfs, turf: scenario.turf === name ? first : scenario.turf }
}
