import { describe, type Problem } from '../../quantities/index.ts'
import type { Curve, Inside, LawKind } from './lawKind.ts'
import type { PressureLaw } from './laws.ts'
import { series } from './series.ts'

export type LayeredLaw = {
  readonly kind: 'layered'
  readonly upper: PressureLaw
  readonly lower: PressureLaw
}

/** Layers may hold layers; deeper than this, or more layers in all, is a mistake. */
export const MOST_NESTED = 6
const MOST_LAYERS = 16

const isLayered = (law: PressureLaw): law is LayeredLaw =>
  law !== null && typeof law === 'object' && law.kind === 'layered'

/** The laws of the single layers, from the top; undefined when they are nested too deep. */
function leaves(law: PressureLaw, nested = 0): PressureLaw[] | undefined {
  if (!isLayered(law)) return [law]
  if (nested >= MOST_NESTED) return undefined
  const upper = leaves(law.upper, nested + 1)
  const lower = leaves(law.lower, nested + 1)
  return upper && lower && [...upper, ...lower]
}

function problems(law: LayeredLaw, path: string, inside: Inside): Problem[] {
  const layers = leaves(law)
  if (!layers) return [{ path, expected: `layers nested at most ${MOST_NESTED} deep`, received: 'more' }]
  if (layers.length > MOST_LAYERS)
    return [{ path, expected: `at most ${MOST_LAYERS} layers in all`, received: String(layers.length) }]
  return (['upper', 'lower'] as const).flatMap(name =>
    law[name] === undefined
      ? [{ path: `${path}.${name}`, expected: 'a law', received: describe(law[name]) }]
      : inside.problems(law[name], `${path}.${name}`),
  )
}

const curves = new WeakMap<LayeredLaw, Curve>()

/**
 * Thatch over rootzone: two laws in series.
 *
 *   z(p) = z₁(p) + z₂(p),  s = s₁ + s₂,  Φ = Φ₁ + Φ₂,  1/p′ = 1/p₁′ + 1/p₂′
 *
 * Holds   the same pressure in both layers; bottomed out when a locking layer passes 0.99 of its own depth
 * Source  springs in series
 */
export const layered: LawKind<LayeredLaw> = {
  kind: 'layered',
  equation: 'z(p) = z₁(p) + z₂(p)',
  source: 'springs in series',
  parameters: [],
  layers: ['upper', 'lower'],
  problems,
  softness: (law, { softness }) => softness(law.upper) + softness(law.lower),
  stretched: (law, factor, { stretched }) => ({
    ...law,
    upper: stretched(law.upper, factor),
    lower: stretched(law.lower, factor),
  }),
  curve: (law, inside) => {
    let known = curves.get(law)
    if (!known) {
      const layers = leaves(law) ?? []
      known = series(
        layers.map(inside.curve),
        layers.reduce((sum, layer) => sum + inside.softness(layer), 0),
      )
      curves.set(law, known)
    }
    return known
  },
}
