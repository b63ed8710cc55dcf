import { gaussLegendre } from '../../numerics/index.ts'
import type { Curve } from './lawKind.ts'

/** An exponent at zero above this brings a mat to rest so far off that rest and nearly rest are one. */
export const RESTS_BELOW = 0.95

const { nodes, weights } = gaussLegendre(4)
/** Far below a depth of the law's own scale, in doublings: there it is a power law as far as a double can tell. */
const DOUBLINGS = 60
/** Knots to a doubling; a cubic in logarithms between them is good to 1e-9. */
const KNOTS = 16
const STEP = Math.LN2 / KNOTS

/**
 * Distance over which turf comes to rest beside an edge, for a law without a closed form.
 *
 *   √(G/2) ∫₀ᶻ du/√Φ(u), added up knot by knot in ln u; below the first by the local exponent
 *
 * Holds   an exponent below one at zero; to 1e-9
 */
export function restReachOf(
  curve: Pick<Curve, 'pressure' | 'work'>,
  scale: number,
): (sinkage: number, shear: number) => number {
  const least = scale * 2 ** -DOUBLINGS
  const work = curve.work(least)
  const local = (least * curve.pressure(least)) / work - 1
  const lnLeast = Math.log(least)
  // ∫₀ᶻ du/√Φ at the knots, and how it grows, both in logarithms
  const reaches: number[] = []
  const growths: number[] = []
  let reached = (2 * least) / ((1 - local) * Math.sqrt(work))
  const note = () => {
    const depth = Math.exp(lnLeast + reaches.length * STEP)
    reaches.push(Math.log(reached))
    growths.push(depth / (Math.sqrt(curve.work(depth)) * reached))
  }
  note()
  const extend = () => {
    const from = lnLeast + (reaches.length - 1) * STEP
    for (let i = 0; i < nodes.length; i++) {
      const depth = Math.exp(from + STEP * nodes[i]!)
      reached += (STEP * weights[i]! * depth) / Math.sqrt(curve.work(depth))
    }
    note()
  }
  return (sinkage, shear) => {
    const at = Math.max(0, (Math.log(sinkage) - lnLeast) / STEP)
    const knot = Math.floor(at)
    while (reaches.length < knot + 2) extend()
    const t = at - knot
    const rise = reaches[knot + 1]! - reaches[knot]!
    const left = growths[knot]! * STEP
    const right = growths[knot + 1]! * STEP
    const cubic = t * (left + t * (3 * rise - 2 * left - right + t * (left + right - 2 * rise)))
    return Math.sqrt(shear / 2) * Math.exp(reaches[knot]! + cubic)
  }
}
