import {
  catalogue,
  type LawName,
  laws,
  type PressureLaw,
  type QuantityName,
  sinkageAt,
  softnessOf,
  turfProblems,
} from '@swardsink/model'

type Listed = {
  readonly parameters: readonly { readonly name: string; readonly quantity: QuantityName }[]
  readonly layers?: readonly string[]
  readonly table?: {
    readonly name: string
    readonly columns: readonly { readonly name: string; readonly quantity: QuantityName }[]
  }
  readonly written?: true
}
const listed = (kind: LawName): Listed => laws[kind]

/** Pressures at which a law is read off when it becomes a table: those that rollers press with. */
const READ_OFF = [2.5e3, 5e3, 10e3, 20e3, 40e3]

const isSound = (law: PressureLaw): boolean => turfProblems({ law }, 'turf').length === 0

/** Numbers to try for a parameter that the law before had not: a middle one first, then the ends, then multiples. */
function candidates(quantity: QuantityName, softness: number): readonly number[] {
  const { low, high } = catalogue[quantity]
  const middle = low > 0 ? Math.sqrt(low * high) : (low + high) / 2
  const many = [10, 3, 30, 1]
  const lengths = many.map(times => times * softness)
  return quantity === 'lockingDepth' ? [...lengths, middle, high] : [1, middle, high, low, ...lengths]
}

/** Every way to choose one of each. */
function combinations(lists: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return lists.reduce<readonly (readonly number[])[]>(
    (found, list) => found.flatMap(chosen => list.map(one => [...chosen, one])),
    [[]],
  )
}

/**
 * A law of another kind that is as soft: what the two have in common is kept, the rest begins at something usual. A
 * measured law is read off the one before; layers begin as halves of it. null for a law that its reader writes, and for
 * one that cannot be as soft.
 */
export function lawOfKind(kind: LawName, from: PressureLaw): PressureLaw | null {
  if (kind === from.kind) return from
  const { parameters, layers = [], table, written } = listed(kind)
  if (written) return null
  const softness = softnessOf(from)
  if (table) {
    const rows = READ_OFF.flatMap(pressure => {
      const sinkage = sinkageAt(from, pressure)
      return Number.isFinite(sinkage) ? [{ sinkage, pressure }] : []
    })
    const law = { kind, [table.name]: rows } as unknown as PressureLaw
    return isSound(law) ? law : null
  }
  const half: PressureLaw = { kind: 'linear', softness: softness / Math.max(1, layers.length) }
  const inner = Object.fromEntries(layers.map(layer => [layer, half]))
  const before = from as unknown as Readonly<Record<string, unknown>>
  const choices = parameters.map(({ name, quantity }): readonly number[] => {
    if (name === 'softness') return [softness]
    const kept = before[name]
    return [...(typeof kept === 'number' ? [kept] : []), ...candidates(quantity, softness)]
  })
  for (const chosen of combinations(choices)) {
    const numbers = Object.fromEntries(parameters.map(({ name }, i) => [name, chosen[i]]))
    const law = { kind, ...numbers, ...inner } as unknown as PressureLaw
    if (isSound(law)) return law
  }
  return null
}

/** The expression a law begins with that its reader writes: even resistance, as soft as the law before. */
export function firstExpression(from: PressureLaw): {
  readonly expression: string
  readonly values: Readonly<Record<string, number>>
} {
  return { expression: 'k * z', values: { k: Number((10e3 / softnessOf(from)).toPrecision(4)) } }
}
