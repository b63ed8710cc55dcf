import { type Roller, refit, type Scenario, type Unit, unitsOf } from '@swardsink/model'

export type Position = 'front' | 'rear'

export const POSITIONS = ['front', 'rear'] as const
const part = { front: 'frontRoller', rear: 'rearRoller' } as const

export const rollerIn = (unit: Unit, position: Position): Roller => unit[part[position]]

const sameRoller = (a: Roller, b: Roller): boolean => JSON.stringify(a) === JSON.stringify(b)

/** The rack's name of a fitted roller. A unit that was written out knows no names: there it is known by its numbers. */
function nameIn(unit: Unit, { rollers }: Scenario, position: Position): string | null {
  const roller = rollerIn(unit, position)
  const name = unit.fitted?.[position]
  const named = name !== undefined && Object.hasOwn(rollers, name) ? rollers[name] : undefined
  if (name !== undefined && named && sameRoller(named, roller)) return name
  return Object.entries(rollers).find(([, one]) => sameRoller(one, roller))?.[0] ?? null
}

/** The name in the rack of a roller of the unit in hand, if it is one of the rack. */
export function fittedName(scenario: Scenario, position: Position = 'front'): string | null {
  return nameIn(scenario.unit, scenario, position)
}

/** The unit with the names its rollers have in the rack written down, so that they keep them from here on. */
function named(unit: Unit, scenario: Scenario): Unit {
  const front = nameIn(unit, scenario, 'front')
  const rear = nameIn(unit, scenario, 'rear')
  const { fitted: _, ...rest } = unit
  if (front === null && rear === null) return rest
  return { ...rest, fitted: { ...(front === null ? {} : { front }), ...(rear === null ? {} : { rear }) } }
}

/** Every unit of the machine, the one in hand among them, changed alike. */
export function mapUnits(scenario: Scenario, change: (unit: Unit) => Unit): Scenario {
  if (scenario.unitName === undefined) return { ...scenario, unit: change(scenario.unit) }
  const units = Object.fromEntries(
    Object.entries(unitsOf(scenario)).map(([name, unit]) => [name, change(unit)]),
  )
  return { ...scenario, units, unit: units[scenario.unitName] ?? change(scenario.unit) }
}

/** Where a roller of the rack is fitted; `unit` is null where the one unit has no name. */
export function placesOf(
  scenario: Scenario,
  name: string,
): readonly { readonly unit: string | null; readonly position: Position }[] {
  const several = Object.entries(unitsOf(scenario))
  const units: readonly (readonly [string | null, Unit])[] =
    several.length > 0 ? several : [[null, scenario.unit]]
  return units.flatMap(([unit, one]) =>
    POSITIONS.filter(position => nameIn(one, scenario, position) === name).map(position => ({
      unit,
      position,
    })),
  )
}

/** Changes a roller of the rack, and every unit that has it fitted: it is one and the same roller. */
export function changeRackRoller(scenario: Scenario, name: string, next: Roller): Scenario {
  const changed = mapUnits(scenario, unit => {
    const known = named(unit, scenario)
    return {
      ...known,
      ...(known.fitted?.front === name ? { frontRoller: next } : {}),
      ...(known.fitted?.rear === name ? { rearRoller: next } : {}),
    }
  })
  return { ...changed, rollers: { ...scenario.rollers, [name]: next } }
}

/** Changes a roller of the unit in hand; one of the rack is changed there, too. */
export function changeFitted(scenario: Scenario, position: Position, change: Partial<Roller>): Scenario {
  const name = fittedName(scenario, position)
  const next: Roller = { ...rollerIn(scenario.unit, position), ...change }
  if (name !== null) return changeRackRoller(scenario, name, next)
  return { ...scenario, unit: { ...scenario.unit, [part[position]]: next } }
}

/**
 * Fits a roller of the rack and re-sets nothing: one of another diameter moves the bench line, and with it the bench
 * height. A roller that would take the edge below the bench line is not fitted.
 */
export function fitRoller(scenario: Scenario, position: Position, name: string): Scenario {
  const roller = Object.hasOwn(scenario.rollers, name) ? scenario.rollers[name] : undefined
  if (!roller) return scenario
  const unit = named(scenario.unit, scenario)
  const same = roller.diameter === rollerIn(unit, position).diameter
  const next = same ? { ...unit, [part[position]]: roller } : refit({ unit, position, roller })
  if (next.benchHeight <= 0) return scenario
  return { ...scenario, unit: { ...next, fitted: { ...unit.fitted, [position]: name } } }
}
