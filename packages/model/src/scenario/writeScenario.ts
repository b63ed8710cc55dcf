import { catalogue, type UnitName, type UnitSystem, units } from '../quantities/index.ts'
import type { Roller } from '../roller/index.ts'
import type { PressureLaw, Turf } from '../turf/index.ts'
import type { Unit } from '../unit/index.ts'
import { type Field, fields, lawFields } from './fields.ts'
import { type Scenario, unitsOf } from './scenario.ts'

type Units = UnitSystem | 'SI'
type Written = Record<string, unknown>

const MOST_DIGITS = 17

/** The shortest number that reads back as the value exactly; undefined when none does. */
function shownExactly(value: number, factor: number): number | undefined {
  const shown = value / factor
  for (let digits = 1; digits <= MOST_DIGITS; digits++) {
    const short = Number(shown.toPrecision(digits))
    if (short * factor === value) return short
  }
  return undefined
}

function writeNumber(value: number, { name, quantity }: Field, system: Units): [string, number] {
  if (system === 'SI') return [name, value]
  const { factor, unit: word } = catalogue[quantity][system]
  const suffix = (Object.keys(units) as UnitName[]).find(key => units[key].word === word && word !== '')
  const shown = suffix ? shownExactly(value, factor) : undefined
  return shown === undefined ? [name, value] : [`${name}_${suffix}`, shown]
}

const writeNumbers = (values: object, list: readonly Field[], system: Units): Written =>
  Object.fromEntries(
    list.flatMap(field => {
      const value = (values as Record<string, unknown>)[field.name]
      return typeof value === 'number' ? [writeNumber(value, field, system)] : []
    }),
  )

const writeRoller = (roller: Roller, system: Units): Written => ({
  ...writeNumbers(roller, fields.roller, system),
  surface: {
    kind: roller.surface.kind,
    ...writeNumbers(roller.surface, roller.surface.kind === 'grooved' ? fields.grooved : [], system),
  },
})

function writeLaw(law: PressureLaw, system: Units): Written {
  const { numbers, layers, table, written } = lawFields(law.kind)
  const values = law as unknown as Record<string, unknown>
  const rows = table && (values[table.name] as readonly object[])
  return {
    kind: law.kind,
    ...(written ? { expression: values.expression, values: values.values } : {}),
    ...writeNumbers(law, numbers, system),
    ...Object.fromEntries(layers.map(name => [name, writeLaw(values[name] as PressureLaw, system)])),
    ...(table && rows ? { [table.name]: rows.map(row => writeNumbers(row, table.columns, system)) } : {}),
  }
}

const writeTurf = (turf: Turf, system: Units): Written => ({
  law: writeLaw(turf.law, system),
  ...writeNumbers(turf, fields.turf, system),
  ...(turf.source === undefined ? {} : { source: turf.source }),
})

type Rack = Scenario['rollers']

/** A fitted roller as the name it has in the rack, where it is still the roller of that name; else written out. */
function writeFitted(roller: Roller, name: string | undefined, rack: Rack, system: Units): Written | string {
  const named = name !== undefined && Object.hasOwn(rack, name) ? rack[name] : undefined
  const same = named && JSON.stringify(writeRoller(named, 'SI')) === JSON.stringify(writeRoller(roller, 'SI'))
  return same && name !== undefined ? name : writeRoller(roller, system)
}

const writeUnit = (unit: Unit, rack: Rack, system: Units): Written => ({
  ...writeNumbers(unit, fields.unit, system),
  frontRoller: writeFitted(unit.frontRoller, unit.fitted?.front, rack, system),
  rearRoller: writeFitted(unit.rearRoller, unit.fitted?.rear, rack, system),
  body: writeNumbers(unit.body, fields.body, system),
  ...(unit.cylinder ? { cylinder: writeNumbers(unit.cylinder, fields.cylinder, system) } : {}),
  ...(unit.loads
    ? { loads: unit.loads.map(load => ({ name: load.name, ...writeNumbers(load, fields.load, system) })) }
    : {}),
})

const mapValues = <Part>(list: Readonly<Record<string, Part>>, write: (part: Part) => Written): Written =>
  Object.fromEntries(Object.entries(list).map(([name, part]) => [name, write(part)]))

/** A scenario as readScenario reads it back, to the last bit: numbers in the units asked, 'metric' unless given. */
export function writeScenario(scenario: Scenario, options: { readonly units?: Units } = {}): Written {
  const { units: system = 'metric' } = options
  const { unit, unitName, rollers, turfs, turf, condition } = scenario
  return {
    ...(unitName === undefined
      ? { unit: writeUnit(unit, rollers, system) }
      : { units: mapValues(unitsOf(scenario), one => writeUnit(one, rollers, system)), unit: unitName }),
    rollers: mapValues(rollers, roller => writeRoller(roller, system)),
    turfs: mapValues(turfs, one => writeTurf(one, system)),
    turf,
    condition:
      condition.kind === 'standing'
        ? { kind: 'standing' }
        : {
            kind: 'mowing',
            ...writeNumbers(condition, fields.mowing, system),
            ...(condition.recovery === undefined ? {} : { recovery: condition.recovery }),
          },
    ...writeNumbers(scenario, fields.scenario, system),
  }
}
