import type { QuantityName } from '../../../quantities/index.ts'
import {
  type LawKind,
  type LawName,
  lawProblems,
  laws,
  lawWithSoftness,
  type PressureLaw,
  softnessOf,
  type Turf,
} from '../../../turf/index.ts'

/** A number of a turf that a fit may move: how it is named, and what stands there already. */
export type TurfParameter = {
  /** softness, upper.exponent, spread, or a named value of a written law. */
  readonly name: string
  /** null for a value of a written law: its unit is its writer's. */
  readonly quantity: QuantityName | null
  /** Of the law handed in; undefined where only the kind of the law was named. */
  readonly given: number | undefined
  /** It stretches a whole law, whose own numbers tell it unless it is free. */
  readonly stretches?: true
}

type Listed = Pick<LawKind<PressureLaw>, 'parameters' | 'layers' | 'table' | 'written'>

const listed = (kind: LawName): Listed => laws[kind]

/** A law told by its kind alone, to be filled with numbers. */
export const emptyLaw = (kind: LawName): PressureLaw => ({ kind }) as PressureLaw

/** Laws that are more than their kind and a few numbers: they have to be handed in whole. */
export const isWhole = (kind: LawName): boolean => {
  const { layers = [], table, written } = listed(kind)
  return layers.length > 0 || table !== undefined || written === true
}

/** Names of the turf itself: a value of a written law that is called so is asked for as values.softness. */
const TAKEN = ['softness', 'spread']
const valueName = (name: string): string => (TAKEN.includes(name) ? `values.${name}` : name)

const numbersOf = (law: PressureLaw) => law as unknown as Readonly<Record<string, number | undefined>>

function parametersOf(law: PressureLaw, before: string): TurfParameter[] {
  const { parameters, layers = [], table, written } = listed(law.kind)
  const stretches = layers.length > 0 || table !== undefined || written === true
  const inner = law as unknown as Readonly<Record<string, PressureLaw>>
  return [
    // laws without a softness of their own are stretched in depth as a whole
    ...(stretches
      ? [
          {
            name: `${before}softness`,
            quantity: 'softness' as const,
            given: softnessOf(law),
            stretches: true as const,
          },
        ]
      : []),
    ...parameters.map(({ name, quantity }) => ({
      name: before + name,
      quantity,
      given: numbersOf(law)[name],
    })),
    ...layers.flatMap(name => parametersOf(inner[name]!, `${before}${name}.`)),
    ...(law.kind === 'formula'
      ? Object.entries(law.values).map(([name, given]) => ({
          name: before + valueName(name),
          quantity: null,
          given,
        }))
      : []),
  ]
}

/** Every number of a turf that can be fitted, those of its law before its spread. */
export const turfParameters = (law: PressureLaw): TurfParameter[] => [
  ...parametersOf(law, ''),
  { name: 'spread', quantity: 'spread', given: 0 },
]

/** Numbers by the name of the parameter. */
export type Values = ReadonlyMap<string, number>

function lawWith(law: PressureLaw, values: Values, before: string): PressureLaw | undefined {
  const { parameters, layers = [], table, written } = listed(law.kind)
  const changed: Record<string, unknown> = { ...law }
  for (const { name } of parameters) {
    const value = values.get(before + name)
    if (value !== undefined) changed[name] = value
  }
  for (const name of layers) {
    const inner = lawWith(changed[name] as PressureLaw, values, `${before}${name}.`)
    if (!inner) return undefined
    changed[name] = inner
  }
  if (law.kind === 'formula')
    changed.values = Object.fromEntries(
      Object.entries(law.values).map(([name, value]) => [
        name,
        values.get(before + valueName(name)) ?? value,
      ]),
    )
  const plain = changed as unknown as PressureLaw
  if (layers.length === 0 && !table && !written) return plain
  const softness = values.get(`${before}softness`)
  if (softness === undefined) return plain
  // the softness of a law that makes no sense cannot be asked for
  return lawProblems(plain, 'law').length > 0 ? undefined : lawWithSoftness(plain, softness)
}

/** The turf at the values of its parameters; undefined where they make no law. */
export function turfWith(law: PressureLaw, values: Values): Turf | undefined {
  const changed = lawWith(law, values, '')
  if (!changed || lawProblems(changed, 'law').length > 0) return undefined
  const spread = values.get('spread') ?? 0
  return spread > 0 ? { law: changed, spread } : { law: changed }
}
