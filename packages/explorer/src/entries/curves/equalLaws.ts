import { type LawName, laws, type PressureLaw, softnessOf, type Turf, withSoftness } from '@swardsink/model'

export type NamedLaw = { readonly kind: LawName; readonly turf: Turf }

/** Exponent of the example: what a thick elastic layer looks like (docs/physics.md §5). */
const EXPONENT = 0.7
/** Locking depth of the examples over the softness, where the turf in hand has none. */
const LOCKING = 6
/** Of the layers: how the softness is shared, and where the upper one locks. */
const UPPER = 0.7
const UPPER_LOCKING = 2
/** Readings of an invented gauge: parts of the softness, and Pa. */
const MEASURED = [
  [0.42, 3.2e3],
  [0.74, 6.6e3],
  [1, 10e3],
  [1.35, 15.8e3],
  [1.7, 23.5e3],
] as const

/**
 * A law as a reader might write it, with what the parser makes of it: the parser is not fetched for an example. A
 * test lets the parser make it again.
 */
export const WRITTEN: Extract<PressureLaw, { kind: 'formula' }> = {
  kind: 'formula',
  expression: 'k*(exp(z/h)-1)',
  values: { k: 5000, h: 0.0003 },
  program: {
    steps: [2, 0, 1, 0, 2, 1, 6, 0, 15, 0, 0, 0, 4, 0, 5, 0],
    constants: [1],
    names: ['k', 'h'],
    corners: [],
    stack: 3,
  },
}

type Example = (softness: number, lockingDepth: number) => PressureLaw

/** One law of each kind that sinks by the softness at 10 kPa. A kind without an example is left out. */
const examples: Partial<Readonly<Record<LawName, Example>>> = {
  linear: softness => ({ kind: 'linear', softness }),
  power: softness => ({ kind: 'power', softness, exponent: EXPONENT }),
  stiffening: (softness, lockingDepth) => ({ kind: 'stiffening', softness, lockingDepth }),
  logarithmic: (softness, lockingDepth) => ({ kind: 'logarithmic', softness, lockingDepth }),
  layered: softness => ({
    kind: 'layered',
    upper: {
      kind: 'stiffening',
      softness: UPPER * softness,
      lockingDepth: UPPER_LOCKING * UPPER * softness,
    },
    lower: { kind: 'linear', softness: (1 - UPPER) * softness },
  }),
  measured: softness => ({
    kind: 'measured',
    points: MEASURED.map(([part, pressure]) => ({ sinkage: part * softness, pressure })),
  }),
  formula: softness => withSoftness({ law: WRITTEN }, softness).law,
}

/** Every kind of law at the softness of this turf; the turf's own law stands for its kind. */
export function equalLaws(turf: Turf): readonly NamedLaw[] {
  const softness = softnessOf(turf.law)
  const lockingDepth = 'lockingDepth' in turf.law ? turf.law.lockingDepth : LOCKING * softness
  return (Object.keys(laws) as LawName[]).flatMap(kind => {
    if (kind === turf.law.kind) return [{ kind, turf }]
    const law = examples[kind]?.(softness, lockingDepth)
    return law ? [{ kind, turf: { ...turf, law } }] : []
  })
}
