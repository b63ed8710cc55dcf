import { gaussLegendre } from '../numerics/index.ts'

/**
 * A rule for ∫₀¹ f(s) ds whose nodes crowd towards s = 1, where pressure vanishes like a power of the distance:
 * s = 1 − q³ turns (1 − s)ⁿ into q^(3n+2), which the rule takes to 2e-9 for exponents from 0.2 on.
 *
 * Source  docs/physics.md §3.1; the substitution is the project's own.
 */
export type ArcNodes = { readonly places: Float64Array; readonly weights: Float64Array }

const known = new Map<number, ArcNodes>()

function graded(points: number): ArcNodes {
  const found = known.get(points)
  if (found) return found
  const { nodes, weights } = gaussLegendre(points)
  const places = nodes.map(q => 1 - q ** 3)
  const rule = { places, weights: weights.map((w, i) => 3 * w * nodes[i]! ** 2) }
  known.set(points, rule)
  return rule
}

/** More nodes the nearer the lowest line comes to the pole of a locking law: [part of the pole, nodes]. */
const LADDER = [
  [0.5, 16],
  [0.8, 32],
  [0.95, 64],
] as const
const MOST = 160

export function arcNodes(partOfPole: number): ArcNodes {
  for (const [part, points] of LADDER) if (partOfPole <= part) return graded(points)
  return graded(MOST)
}
