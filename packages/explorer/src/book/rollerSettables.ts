import type { QuantityName, Roller, Scenario } from '@swardsink/model'
import {
  changeFitted,
  changeRackRoller,
  fitRoller,
  fittedName,
  type Position,
  rollerIn,
} from './fittedRollers.ts'
import {
  type ChoiceSettable,
  type Line,
  notBelowZero,
  positive,
  type QuantitySettable,
  type Refusal,
  type Settable,
  whole,
} from './settable.ts'

type Grooves = Extract<Roller['surface'], { kind: 'grooved' }>

/** A surface to begin with when a smooth roller is given grooves. */
const FIRST_GROOVES: Grooves = { kind: 'grooved', pitch: 0.012, land: 0.005, depth: 0.006 }

/** Where a roller stands: fitted on the unit in hand, or in the rack. */
type Place = {
  readonly path: string
  roller(scenario: Scenario): Roller | null
  change(scenario: Scenario, change: Partial<Roller>): Scenario
}

const fittedAt = (position: Position): Place => ({
  path: position === 'front' ? 'frontRoller' : 'rearRoller',
  roller: scenario => rollerIn(scenario.unit, position),
  change: (scenario, change) => changeFitted(scenario, position, change),
})

const ofRack = (name: string): Place => {
  const roller = ({ rollers }: Scenario) => (Object.hasOwn(rollers, name) ? (rollers[name] ?? null) : null)
  return {
    path: `rollers.${name}`,
    roller,
    change(scenario, change) {
      const now = roller(scenario)
      return now ? changeRackRoller(scenario, name, { ...now, ...change }) : scenario
    },
  }
}

type Field = {
  readonly quantity: QuantityName
  readonly line: Line
  readonly plausible?: readonly [number, number]
  /** Said of a roller that does not mention it. */
  readonly unsaid?: number
  readonly refuse: (roller: Roller, value: number) => Refusal | null
}

const linear = (low: number, high: number, usual: readonly [number, number]): Line => ({
  low,
  high,
  usual,
  scale: 'linear',
})

const fields = {
  mass: { quantity: 'mass', line: linear(2, 12, [4, 9]), refuse: (_, value) => positive(value) },
  diameter: {
    quantity: 'diameter',
    line: linear(0.04, 0.1, [0.05, 0.076]),
    refuse: (roller, value) => positive(value) ?? refuseDepth(groovesOf(roller)?.depth ?? 0, value),
  },
  length: { quantity: 'length', line: linear(0.3, 0.9, [0.45, 0.76]), refuse: (_, value) => positive(value) },
  sections: {
    quantity: 'count',
    line: linear(1, 10, [1, 3]),
    unsaid: 1,
    refuse: (_, value) => whole(value),
  },
  buildUp: {
    quantity: 'height',
    line: linear(0, 3e-3, [0, 1e-3]),
    plausible: [0, 5e-3],
    unsaid: 0,
    refuse: (_, value) => notBelowZero(value),
  },
  runout: {
    quantity: 'height',
    line: linear(0, 1e-3, [0, 0.25e-3]),
    plausible: [0, 2e-3],
    unsaid: 0,
    refuse: (_, value) => notBelowZero(value),
  },
} as const satisfies Record<string, Field>

const grooveFields = {
  pitch: {
    quantity: 'pitch',
    line: linear(0.004, 0.04, [0.008, 0.032]),
    refuse: (roller, pitch) => positive(pitch) ?? refuseLand(groovesOf(roller)?.land ?? 0, pitch),
  },
  land: {
    quantity: 'land',
    line: linear(0.001, 0.02, [0.003, 0.01]),
    refuse: (roller, land) =>
      positive(land) ?? refuseLand(land, groovesOf(roller)?.pitch ?? Number.POSITIVE_INFINITY),
  },
  depth: {
    quantity: 'grooveDepth',
    line: linear(0.001, 0.02, [0.004, 0.01]),
    refuse: (roller, depth) => positive(depth) ?? refuseDepth(depth, roller.diameter),
  },
} as const satisfies Record<string, Field>

export type RollerField = keyof typeof fields | keyof typeof grooveFields

/** The numbers of a roller in the order a reader goes through them. */
export const ROLLER_FIELDS = [...Object.keys(fields), ...Object.keys(grooveFields)] as readonly RollerField[]

function refuseLand(land: number, pitch: number): Refusal | null {
  return land < pitch ? null : { reason: 'land against pitch', land, pitch }
}

function refuseDepth(depth: number, diameter: number): Refusal | null {
  return depth < diameter / 2 ? null : { reason: 'groove deeper than the roller', depth, diameter }
}

function groovesOf({ surface }: Roller): Grooves | null {
  return surface.kind === 'grooved' ? surface : null
}

function numberOf(place: Place, name: RollerField): QuantitySettable {
  const isGroove = Object.hasOwn(grooveFields, name)
  const all: Readonly<Record<string, Field>> = { ...fields, ...grooveFields }
  const { refuse, unsaid, ...shown } = all[name] as Field
  const read = (roller: Roller | null): number | null => {
    if (!roller) return null
    const part: Readonly<Record<string, unknown>> | null = isGroove ? groovesOf(roller) : roller
    const value = part?.[name]
    return typeof value === 'number' ? value : part ? (unsaid ?? null) : null
  }
  return {
    kind: 'quantity',
    name: `${place.path}.${name}`,
    ...shown,
    value: scenario => read(place.roller(scenario)),
    set(scenario, value) {
      const roller = place.roller(scenario)
      const grooves = roller && groovesOf(roller)
      if (!isGroove) return place.change(scenario, { [name]: value })
      return grooves ? place.change(scenario, { surface: { ...grooves, [name]: value } }) : scenario
    },
    refuse(scenario, value) {
      const roller = place.roller(scenario)
      return roller ? refuse(roller, value) : null
    },
  }
}

function surfaceOf(place: Place): ChoiceSettable {
  return {
    kind: 'choice',
    name: `${place.path}.surface`,
    options: scenario => (place.roller(scenario) ? ['smooth', 'grooved'] : []),
    value: scenario => place.roller(scenario)?.surface.kind ?? '',
    set(scenario, option) {
      const roller = place.roller(scenario)
      if (!roller) return scenario
      const grooves = groovesOf(roller) ?? fitting(FIRST_GROOVES, roller)
      return place.change(scenario, { surface: option === 'grooved' ? grooves : { kind: 'smooth' } })
    },
  }
}

/** Grooves to begin with that a small roller can have. */
function fitting({ pitch, land, depth }: Grooves, { diameter, length }: Roller): Grooves {
  const narrow = Math.min(1, length / land)
  return {
    kind: 'grooved',
    pitch: narrow * pitch,
    land: Math.min(land, length),
    depth: Math.min(depth, diameter / 4),
  }
}

const settablesAt = (place: Place): readonly Settable[] => [
  ...ROLLER_FIELDS.map(name => numberOf(place, name)),
  surfaceOf(place),
]

function choiceOf(position: Position): ChoiceSettable {
  return {
    kind: 'choice',
    name: fittedAt(position).path,
    named: true,
    options: scenario => Object.keys(scenario.rollers),
    value: scenario => fittedName(scenario, position) ?? '',
    set: (scenario, option) => fitRoller(scenario, position, option),
  }
}

export const fittedSettables: readonly Settable[] = [
  ...settablesAt(fittedAt('front')),
  choiceOf('front'),
  ...settablesAt(fittedAt('rear')),
  choiceOf('rear'),
]

/** What can be set of one roller of the rack. */
export function rackSettable(name: string): Settable | undefined {
  const dot = name.lastIndexOf('.')
  const field = name.slice(dot + 1)
  const place = ofRack(name.slice('rollers.'.length, Math.max(dot, 'rollers.'.length)))
  if (!name.startsWith('rollers.') || dot <= 'rollers'.length) return undefined
  if (field === 'surface') return surfaceOf(place)
  const known = ROLLER_FIELDS.find(one => one === field)
  return known && numberOf(place, known)
}

export const rackNames = ({ rollers }: Scenario): readonly string[] =>
  Object.keys(rollers).flatMap(roller => settablesAt(ofRack(roller)).map(({ name }) => name))
