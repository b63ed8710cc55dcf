import { type Scenario, type Unit, unitsOf } from '@swardsink/model'
import type { Edited } from './editRack.ts'
import { added, freshName, renamed, without } from './naming.ts'

/** A single unit is given a name, so that there can be a second one. */
export function withNamedUnit(scenario: Scenario, name: string): Scenario {
  return scenario.unitName === undefined
    ? { ...scenario, unitName: name, units: { [name]: scenario.unit } }
    : scenario
}

/** A copy of a unit behind it. `name`: what a single unit is called from here on. */
export function copyUnit(
  scenario: Scenario,
  q: { readonly of: string | null; readonly name: string },
): Edited {
  const several = withNamedUnit(scenario, q.name)
  const units = unitsOf(several)
  const of = q.of ?? several.unitName ?? q.name
  const unit = units[of]
  if (!unit) return { scenario, name: of }
  const name = freshName(of, Object.keys(units))
  return { name, scenario: { ...several, units: added(units, unit, { name, after: of }) } }
}

export function renameUnit(scenario: Scenario, from: string, to: string): Scenario {
  const unitName = scenario.unitName === from ? to : scenario.unitName
  if (unitName === undefined) return scenario
  return { ...scenario, unitName, units: renamed(unitsOf(scenario), from, to) }
}

/** Takes a unit out; if it was in hand, the first of the others is. The last one stays, and has no name again. */
export function takeOutUnit(scenario: Scenario, name: string): Scenario {
  const units = without(unitsOf(scenario), name)
  const [first] = Object.keys(units)
  if (first === undefined) return scenario
  const { unitName } = scenario
  const inHand = unitName === name || unitName === undefined ? first : unitName
  return { ...scenario, units, unitName: inHand, unit: units[inHand] as Unit }
}

/** The unit of a name changed, whether it is in hand or not. */
export function changeUnit(scenario: Scenario, name: string, change: (unit: Unit) => Unit): Scenario {
  if (scenario.unitName === name || scenario.unitName === undefined)
    return { ...scenario, unit: change(scenario.unit) }
  const units = unitsOf(scenario)
  const unit = units[name]
  return unit ? { ...scenario, units: { ...units, [name]: change(unit) } } : scenario
}
