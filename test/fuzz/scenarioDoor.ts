import {
  compareRollers,
  mapToRows,
  press,
  readScenario,
  type Scenario,
  sentence,
  settle,
  sinkageMap,
  unitsOf,
  writeScenario,
} from '@swardsink/model'
import fc from 'fast-check'
import { scenarios } from '../support/arbitraries.ts'
import { edited, edits, tears, torn } from './damage.ts'
import { door } from './door.ts'
import { must, mustBeFinite, mustBeSaid, mustBeSame } from './expectations.ts'

/** Everything the model answers for a scenario: an answer without a number that is none, or the reason in words. */
export function askEverything(scenario: Scenario): void {
  const { unit, turfs, turf: name, condition, rollers } = scenario
  const turf = turfs[name]
  must(turf !== undefined, 'a scenario without its turf')
  const settled = settle({ unit, turf, condition })
  must(sentence(settled).length > 0, 'an outcome without words')
  if (settled.outcome === 'settled') mustBeFinite(settled, 'settle')
  if (Object.keys(rollers).length > 0)
    for (const one of compareRollers({ unit, rollers, turf, condition }))
      if (one.outcome === 'settled') mustBeFinite(one, 'compareRollers')
  for (const roller of [unit.frontRoller, unit.rearRoller]) {
    const pressed = press({ roller, turf, load: 150, condition })
    if (pressed.outcome === 'settled') mustBeFinite(pressed, 'press')
  }
  for (const one of Object.values(unitsOf(scenario))) {
    const other = settle({ unit: one, turf, condition })
    if (other.outcome === 'settled') mustBeFinite(other, 'settle of another unit')
  }
}

/** A small map: every cell has a number or a reason. */
export function askMap({ unit, turfs, turf: name, condition }: Scenario): void {
  const turf = turfs[name]
  must(turf !== undefined, 'a scenario without its turf')
  const map = sinkageMap({
    unit,
    turf,
    condition,
    masses: [4, 9],
    softnesses: [0.2e-3, 1e-3, 4e-3],
    quantity: 'effectiveHeight',
  })
  for (const { outcome, value } of mapToRows(map))
    must(outcome !== 'settled' || Number.isFinite(value), `a cell of a map is settled and ${value}`)
}

/** Files of scenarios: sound ones changed and torn, and JSON that was never one. */
export const scenarioDoor = door({
  name: 'scenario files',
  arbitrary: fc.record({
    scenario: fc.oneof({ weight: 6, arbitrary: scenarios }, { weight: 1, arbitrary: fc.constant(null) }),
    other: fc.jsonValue(),
    units: fc.constantFrom('metric' as const, 'SI' as const),
    changes: edits(3),
    damage: fc.oneof({ weight: 4, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: tears }),
    map: fc.boolean(),
  }),
  within: 2,
  async check({ scenario, other, units, changes, damage, map }) {
    const file = scenario === null ? other : edited(writeScenario(scenario, { units }), changes)
    const text = torn(JSON.stringify(file), damage)
    let raw: unknown
    try {
      raw = JSON.parse(text)
    } catch {
      return
    }
    const read = await readScenario(raw)
    if (!read.ok) {
      mustBeSaid(read.problems, 'a scenario')
      return
    }
    const again = await readScenario(
      JSON.parse(JSON.stringify(writeScenario(read.scenario, { units: 'SI' }))),
    )
    must(
      again.ok,
      `a scenario that was read is not read again: ${again.ok ? '' : sentence(again.problems[0]!)}`,
    )
    mustBeSame(read.scenario, again.scenario, 'a scenario written and read')
    askEverything(read.scenario)
    if (map) askMap(read.scenario)
  },
})
