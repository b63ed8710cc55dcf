import type { Roller, Scenario } from '@swardsink/model'
import { mapUnits } from './fittedRollers.ts'
import { added, freshName, renamed, without } from './naming.ts'

export type Edited = { readonly scenario: Scenario; readonly name: string }

/** A roller more in the rack, fitted nowhere. `after`: the one it stands behind. */
export function addRoller(
  scenario: Scenario,
  q: { readonly roller: Roller; readonly name: string; readonly after: string | null },
): Edited {
  const name = freshName(q.name, Object.keys(scenario.rollers))
  return {
    name,
    scenario: { ...scenario, rollers: added(scenario.rollers, q.roller, { name, after: q.after }) },
  }
}

export function copyRoller(scenario: Scenario, name: string): Edited {
  const roller = scenario.rollers[name]
  return roller ? addRoller(scenario, { roller, name, after: name }) : { scenario, name }
}

/** Another name in the rack, and on every unit that has the roller fitted. */
export function renameRoller(scenario: Scenario, from: string, to: string): Scenario {
  const called = (name: string | undefined) => (name === from ? to : name)
  const units = mapUnits(scenario, unit => {
    const { front, rear } = unit.fitted ?? {}
    if (front !== from && rear !== from) return unit
    const [inFront, behind] = [called(front), called(rear)]
    const fitted = {
      ...(inFront === undefined ? {} : { front: inFront }),
      ...(behind === undefined ? {} : { rear: behind }),
    }
    return { ...unit, fitted }
  })
  return { ...units, rollers: renamed(scenario.rollers, from, to) }
}

/** Takes a roller out of the rack. A unit that has it fitted keeps it; the last roller stays. */
export function takeOutRoller(scenario: Scenario, name: string): Scenario {
  const rollers = without(scenario.rollers, name)
  return Object.keys(rollers).length === 0 ? scenario : { ...scenario, rollers }
}
