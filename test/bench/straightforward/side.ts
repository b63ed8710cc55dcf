import { gaussLegendre } from '../../../packages/model/src/numerics/index.ts'

/** Many more nodes than any kernel uses, crowded where pressure vanishes: x = a (1 − q³). */
const { nodes, weights } = gaussLegendre(64)

/**
 * One side of a smooth roller on springs, as it is written.
 *
 *   E = ∫₀ᵃ p(z − x²/2R) dx,  a = √(2Rz)
 */
export function sideLoad(pressure: (depth: number) => number, radius: number, sinkage: number): number {
  const a = Math.sqrt(2 * radius * sinkage)
  let sum = 0
  for (let i = 0; i < nodes.length; i++) {
    const q = nodes[i]!
    // z − x²/2R with x = a (1 − q³), without cancellation at the end of the arc
    const depth = sinkage * q ** 3 * (2 - q ** 3)
    sum += weights[i]! * 3 * q ** 2 * pressure(depth)
  }
  return a * sum
}

const HALVINGS = 100

/** Where an increasing load meets what is asked, by halving. */
export function halved(
  loadAt: (sinkage: number) => number,
  load: number,
  range: readonly [number, number],
): number {
  let [low, high] = range
  for (let turn = 0; turn < HALVINGS && high - low > 1e-14 * high; turn++) {
    const middle = (low + high) / 2
    if (loadAt(middle) > load) high = middle
    else low = middle
  }
  return (low + high) / 2
}

export type PlainRoller = { readonly radius: number; readonly length: number }

/** Sinkage of a standing smooth roller on springs under a load. */
export const sinkageUnder = (
  pressure: (depth: number) => number,
  { radius, length }: PlainRoller,
  load: number,
  deepest: number,
): number => halved(z => 2 * length * sideLoad(pressure, radius, z), load, [0, deepest])
