import {
  type LawName,
  laws,
  type PressureLaw,
  type QuantityName,
  type Scenario,
  softnessOf,
  type Turf,
  withSoftness,
} from '@swardsink/model'
import { lineOf } from './lineOf.ts'
import {
  type ChoiceSettable,
  type Line,
  notBelowZero,
  positive,
  type QuantitySettable,
  type Refusal,
  share,
} from './settable.ts'

/** The turf the unit stands on. The reader of scenarios has checked that the name is in the list. */
export function presentTurf(scenario: Scenario): Turf {
  const turf = scenario.turfs[scenario.turf]
  if (!turf) throw new Error(`no turf called ${scenario.turf}`)
  return turf
}

type Listed = {
  readonly parameters: readonly { readonly name: string; readonly quantity: QuantityName }[]
} & {
  readonly layers?: readonly string[]
}
const listed: readonly Listed[] = Object.values(laws)

/** Every parameter that some law has, whatever laws there are. */
const lawParameters: Readonly<Record<string, QuantityName>> = Object.fromEntries(
  listed.flatMap(({ parameters }) => parameters.map(({ name, quantity }) => [name, quantity])),
)
const layerNames: readonly string[] = [...new Set(listed.flatMap(({ layers = [] }) => layers))]

const lines: Readonly<Record<string, Line>> = {
  softness: { low: 0.05e-3, high: 2e-3, usual: [0.07e-3, 1e-3], scale: 'logarithmic' },
  lockingDepth: { low: 0.5e-3, high: 20e-3, usual: [2e-3, 12e-3], scale: 'logarithmic' },
  spread: { low: 0, high: 10e-3, usual: [1e-3, 6e-3], scale: 'linear' },
  recoveryTime: { low: 0, high: 10, usual: [0, 2], scale: 'linear' },
  thickness: { low: 5e-3, high: 0.1, usual: [10e-3, 50e-3], scale: 'linear' },
}

type TurfField = {
  readonly quantity: QuantityName
  /** Said of turf that does not mention it; null where it is then not known. */
  readonly unsaid: number | null
  readonly refuse: (turf: Turf, value: number) => Refusal | null
}

/** Sums of decimals such as 0.7 + 0.3 may pass 1 by rounding. */
const ROUNDING = 1e-12
const lastingAgainst = (lasting: number, rebound: number): Refusal | null =>
  lasting <= 1 - rebound + ROUNDING ? null : { reason: 'lasting against rebound', lasting, rebound }

const turfFields = {
  spread: { quantity: 'spread', unsaid: 0, refuse: (_, value) => notBelowZero(value) },
  rebound: {
    quantity: 'ratio',
    unsaid: 1,
    refuse: (turf, value) => share(value) ?? lastingAgainst(turf.lasting ?? 0, value),
  },
  lasting: {
    quantity: 'ratio',
    unsaid: 0,
    refuse: (turf, value) => share(value) ?? lastingAgainst(value, turf.rebound ?? 1),
  },
  recoveryTime: { quantity: 'time', unsaid: 0, refuse: (_, value) => notBelowZero(value) },
  thickness: { quantity: 'thickness', unsaid: null, refuse: (_, value) => positive(value) },
} as const satisfies Record<string, TurfField>

export const TURF_FIELDS = Object.keys(turfFields) as readonly (keyof typeof turfFields)[]

/** Which turf is meant, and the name of its settings. */
type Place = { readonly path: string; readonly name: (scenario: Scenario) => string }

const present: Place = { path: 'turf', name: ({ turf }) => turf }
const ofName = (name: string): Place => ({ path: `turfs.${name}`, name: () => name })

function turfAt(place: Place, scenario: Scenario): Turf | null {
  const name = place.name(scenario)
  return Object.hasOwn(scenario.turfs, name) ? (scenario.turfs[name] ?? null) : null
}

/** A green whose numbers a reader changes is no longer the one that was fitted to readings, and says so no more. */
export function byHand({ source: _, fittedFrom: _from, fittedTo: _to, ...turf }: Turf): Turf {
  return turf
}

function changeTurf(place: Place, scenario: Scenario, turf: Turf): Scenario {
  return { ...scenario, turfs: { ...scenario.turfs, [place.name(scenario)]: turf } }
}

function fieldOf(place: Place, name: keyof typeof turfFields): QuantitySettable {
  const { quantity, unsaid, refuse }: TurfField = turfFields[name]
  return {
    kind: 'quantity',
    name: `${place.path}.${name}`,
    quantity,
    line: lines[name] ?? lineOf(quantity),
    value(scenario) {
      const turf = turfAt(place, scenario)
      return turf ? (turf[name] ?? unsaid) : null
    },
    set(scenario, value) {
      const turf = turfAt(place, scenario)
      if (!turf) return scenario
      // spread is fitted along with a law; how turf comes back never is
      return changeTurf(place, scenario, { ...(name === 'spread' ? byHand(turf) : turf), [name]: value })
    },
    refuse(scenario, value) {
      const turf = turfAt(place, scenario)
      return turf ? refuse(turf, value) : null
    },
    ...(unsaid === null
      ? {
          isOpen: (scenario: Scenario) => turfAt(place, scenario) !== null,
          unset(scenario: Scenario) {
            const turf = turfAt(place, scenario)
            if (!turf) return scenario
            const { [name]: _, ...rest } = turf
            return changeTurf(place, scenario, rest)
          },
        }
      : {}),
  }
}

/** The law that stands at a path of layers; null where there is none. */
function lawAt(law: PressureLaw, layers: readonly string[]): PressureLaw | null {
  const [first, ...rest] = layers
  if (first === undefined) return law
  const within = Object.hasOwn(law, first)
    ? (law as unknown as Record<string, PressureLaw>)[first]
    : undefined
  return within ? lawAt(within, rest) : null
}

function withLawAt(law: PressureLaw, layers: readonly string[], next: PressureLaw): PressureLaw {
  const [first, ...rest] = layers
  if (first === undefined) return next
  const within = (law as unknown as Record<string, PressureLaw>)[first] as PressureLaw
  return { ...law, [first]: withLawAt(within, rest, next) } as PressureLaw
}

const has = (law: PressureLaw, name: string): boolean =>
  laws[law.kind].parameters.some(parameter => parameter.name === name)

const valueIn = (law: PressureLaw, name: string): number | null => {
  if (name === 'softness') return softnessOf(law)
  const value = has(law, name) ? (law as unknown as Record<string, unknown>)[name] : null
  return typeof value === 'number' ? value : null
}

const withValue = (law: PressureLaw, name: string, value: number): PressureLaw =>
  name === 'softness' ? withSoftness({ law }, value).law : ({ ...law, [name]: value } as PressureLaw)

function refuseParameter(law: PressureLaw, name: string, value: number): Refusal | null {
  if (name !== 'softness' && name !== 'lockingDepth') return null
  const lockingDepth = name === 'lockingDepth' ? value : valueIn(law, 'lockingDepth')
  const softness = name === 'softness' ? value : softnessOf(law)
  if (value <= 0) return { reason: 'more than zero' }
  return lockingDepth === null || lockingDepth > softness
    ? null
    : { reason: 'locking depth against softness', lockingDepth, softness }
}

/** A parameter of a turf's law, or of a layer of it. Softness is one of every law: other laws are stretched to it. */
function parameterOf(place: Place, layers: readonly string[], name: string): QuantitySettable {
  const quantity = lawParameters[name] ?? 'softness'
  const at = (scenario: Scenario): PressureLaw | null => {
    const turf = turfAt(place, scenario)
    return turf && lawAt(turf.law, layers)
  }
  return {
    kind: 'quantity',
    name: [place.path, ...layers, name].join('.'),
    quantity,
    line: lines[name] ?? lineOf(quantity),
    value(scenario) {
      const law = at(scenario)
      return law && valueIn(law, name)
    },
    set(scenario, value) {
      const [turf, law] = [turfAt(place, scenario), at(scenario)]
      if (!turf || !law || valueIn(law, name) === null) return scenario
      const next = withLawAt(turf.law, layers, withValue(law, name, value))
      return changeTurf(place, scenario, { ...byHand(turf), law: next })
    },
    refuse(scenario, value) {
      const law = at(scenario)
      return law && refuseParameter(law, name, value)
    },
  }
}

function settableAt(place: Place, path: readonly string[]): QuantitySettable | undefined {
  const field = path.at(-1) ?? ''
  const layers = path.slice(0, -1)
  if (layers.some(layer => !layerNames.includes(layer))) return undefined
  const own = layers.length === 0 ? TURF_FIELDS.find(one => one === field) : undefined
  if (own) return fieldOf(place, own)
  return Object.hasOwn(lawParameters, field) ? parameterOf(place, layers, field) : undefined
}

const parameterNames = Object.keys(lawParameters)

export const turfChoice: ChoiceSettable = {
  kind: 'choice',
  name: 'turf',
  named: true,
  options: scenario => Object.keys(scenario.turfs),
  value: scenario => scenario.turf,
  set: (scenario, turf) => ({ ...scenario, turf }),
}

/** What can be set of the turf the unit stands on, its law's parameters first. */
export const presentSettables = [
  ...parameterNames.map(name => parameterOf(present, [], name)),
  ...TURF_FIELDS.map(name => fieldOf(present, name)),
  turfChoice,
]

/** What can be set of any turf: `turf.upper.softness`, `turfs.chapel green.spread`, `turfs.chapel green.lower.exponent`. */
export function namedTurfSettable(name: string): QuantitySettable | undefined {
  if (name.startsWith('turf.')) return settableAt(present, name.split('.').slice(1))
  const parts = name.split('.')
  if (parts[0] !== 'turfs' || parts.length < 3) return undefined
  let start = parts.length - 1
  while (start > 2 && layerNames.includes(parts[start - 1] ?? '')) start--
  // a file has the parameters inside `law`: that is understood, too
  const end = parts[start - 1] === 'law' && start > 2 ? start - 1 : start
  return settableAt(ofName(parts.slice(1, end).join('.')), parts.slice(start))
}

/** The paths of every number of a law, with its layers. */
function pathsIn(law: PressureLaw): readonly string[] {
  const { parameters, layers = [] }: Listed = laws[law.kind as LawName]
  const within = layers.flatMap(layer => {
    const inner = lawAt(law, [layer])
    return inner ? pathsIn(inner).map(path => `${layer}.${path}`) : []
  })
  const own = parameters.map(({ name }) => name)
  return [...(own.includes('softness') ? own : ['softness', ...own]), ...within]
}

/** The names of everything that can be set of one turf. */
export function turfSettableNames(scenario: Scenario, turf: string): readonly string[] {
  const law = scenario.turfs[turf]?.law
  if (!law) return []
  return [...pathsIn(law), ...TURF_FIELDS].map(path => `turfs.${turf}.${path}`)
}
