import { catalogue, type LawName, laws, parameterQuantity, type Scenario } from '@swardsink/model'
import { type Fields, isRecord, presentTurf } from '../../book/index.ts'

/** A law by its kind, or the law of the turf in hand, stretched as a whole. */
export type LawChoice = LawName | 'own'
export const ROLES = ['shared', 'per set', 'held'] as const
/** One value for all sets, one for each, or a value that is told beforehand. */
export type Role = (typeof ROLES)[number]
export const DATUMS = ['known', 'per set'] as const
export const NOISES = ['as given', 'estimated', 'known'] as const
export const LOSSES = ['squares', 'huber', 'bisquare'] as const
export const ALONGS = ['set', 'date', 'moisture'] as const

export type FitSettings = {
  /** Id of the entry with the readings; empty while there is none. */
  readonly readings: string
  readonly law: LawChoice
  /** By the name of the parameter; those not named have their usual role. */
  readonly roles: Readonly<Record<string, Role>>
  /** By name, SI: what a held parameter is held at. */
  readonly held: Readonly<Record<string, number>>
  readonly datum: (typeof DATUMS)[number]
  readonly noise: (typeof NOISES)[number]
  /** m, of one reading, where it is known. */
  readonly standardDeviation: number
  readonly loss: (typeof LOSSES)[number]
  /** Whose curve is drawn; empty: the first. */
  readonly set: string
  /** Under which foot; empty: the one with most readings. */
  readonly foot: string
  /** What the softness of sets is drawn along. */
  readonly along: (typeof ALONGS)[number]
  readonly compare: boolean
  readonly next: boolean
}

type Listed = {
  readonly layers?: readonly string[]
  readonly table?: unknown
  readonly written?: boolean
  readonly parameters: readonly { readonly name: string }[]
}
const listed = (kind: LawName): Listed => laws[kind]

/** Laws that are told by their kind and a few numbers; the others have to be there as a whole. */
export const LAWS: readonly LawChoice[] = [
  ...(Object.keys(laws) as LawName[]).filter(kind => {
    const { layers = [], table, written } = listed(kind)
    return layers.length === 0 && table === undefined && written !== true
  }),
  'own',
]

/** Names of what a law lets a fit move, those of its shape before the spread. */
export const parametersOf = (law: LawChoice): readonly string[] =>
  law === 'own' ? ['softness', 'spread'] : [...listed(law).parameters.map(({ name }) => name), 'spread']

const USUAL_ROLES: Readonly<Record<string, Role>> = { softness: 'per set', spread: 'held' }

/** What becomes of a parameter; with one set there is nothing to share it with. */
export function roleOf({ roles }: Pick<FitSettings, 'roles'>, name: string, sets: number): Role {
  const role = roles[name] ?? USUAL_ROLES[name] ?? 'shared'
  return role === 'per set' && sets < 2 ? 'shared' : role
}

/** Where a parameter is held that nobody gave a value: what a thin soft layer looks like (docs/physics.md §5). */
const USUAL_VALUES: Readonly<Record<string, number>> = {
  spread: 0,
  exponent: 0.7,
  softness: 0.5e-3,
  lockingDepth: 20e-3,
}

export function heldAt({ held }: Pick<FitSettings, 'held'>, name: string): number {
  const usual = held[name] ?? USUAL_VALUES[name]
  if (usual !== undefined) return usual
  const quantity = parameterQuantity(name)
  return quantity ? (catalogue[quantity].low + catalogue[quantity].high) / 2 : 1
}

/** Half of what a reader sees of a usual gauge. */
const STANDARD_DEVIATION = 0.05e-3

function records<Value>(
  fields: Fields,
  name: string,
  q: { readonly expected: string; readonly fits: (value: unknown) => value is Value },
): Readonly<Record<string, Value>> {
  const raw = fields.raw(name)
  if (raw === undefined) return {}
  if (isRecord(raw)) {
    const sound = Object.entries(raw).filter((pair): pair is [string, Value] => q.fits(pair[1]))
    if (sound.length < Object.keys(raw).length) fields.problem(name, q.expected)
    return Object.fromEntries(sound)
  }
  fields.problem(name, q.expected)
  return {}
}

export const readSettings = (fields: Fields): FitSettings => ({
  readings: fields.text('readings', ''),
  law: fields.oneOf('law', LAWS, 'power'),
  roles: records(fields, 'roles', {
    expected: `for each parameter one of ${ROLES.join(', ')}`,
    fits: (value): value is Role => ROLES.some(role => role === value),
  }),
  held: records(fields, 'held', {
    expected: 'for each parameter a number',
    fits: (value): value is number => Number.isFinite(value),
  }),
  datum: fields.oneOf('datum', DATUMS, 'known'),
  noise: fields.oneOf('noise', NOISES, 'as given'),
  standardDeviation: fields.number('standardDeviation', STANDARD_DEVIATION),
  loss: fields.oneOf('loss', LOSSES, 'squares'),
  set: fields.text('set', ''),
  foot: fields.text('foot', ''),
  along: fields.oneOf('along', ALONGS, 'set'),
  compare: fields.flag('compare', false),
  next: fields.flag('next', false),
})

/** The law of the turf in hand, for a fit that only stretches it. */
export const ownLaw = (scenario: Scenario) => presentTurf(scenario).law
