import { gaussLegendre } from '../../numerics/index.ts'
import type { Curve } from './lawKind.ts'

/** An exponent at zero above this brings a mat to rest so far off that rest and nearly rest are one. */
export const RESTS_BELOW = 0.95

const { nodes, weights } = gaussLegendre(12)
/** Far below a depth of the law's own scale, in doublings: there it is a power law as far as a double can tell. */
const DOUBLINGS = 60

/**
 * Distance over which turf comes to rest beside an edge, for a law without a closed form.
 *
 *   √(G/2) ∫₀ᶻ du/√Φ(u), in ln u, added up by doublings of the depth; below the first by the local exponent
 *
 * Holds   an exponent below one at zero
 */
export function restReachOf(
  curve: Pick<Curve, 'pressure' | 'work'>,
  scale: number,
): (sinkage: number, shear: number) => number {
  const least = scale * 2 ** -DOUBLINGS
  const work = curve.work(least)
  const local = (least * curve.pressure(least)) / work - 1
  // ∫₀ᶻ √(G/2) du/√Φ to the bottom of each doubling, for G/2 = 1
  const reached = [(2 * least) / ((1 - local) * Math.sqrt(work))]
  const add = (from: number, to: number) => {
    const length = Math.log(to / from)
    let sum = 0
    for (let i = 0; i < nodes.length; i++) {
      const depth = from * Math.exp(length * nodes[i]!)
      sum += (weights[i]! * depth) / Math.sqrt(curve.work(depth))
    }
    return length * sum
  }
  return (sinkage, shear) => {
    const doubling = Math.max(0, Math.floor(Math.log2(sinkage / least)))
    while (reached.length <= doubling) {
      const from = least * 2 ** (reached.length - 1)
      reached.push(reached.at(-1)! + add(from, 2 * from))
    }
    return Math.sqrt(shear / 2) * (reached[doubling]! + add(least * 2 ** doubling, sinkage))
  }
}
