import { isGrooved, type Surface } from '../roller/index.ts'
import { curveOf, shearOf, softnessOf, type Turf } from '../turf/index.ts'

/** How a turf repeats another: every depth D times as deep, every load so much more in ln W. */
export type Likeness = { readonly depth: number; readonly lnLoad: number }

/** Rounding of two pressures and their ratio. */
const SAME = 1e-12
/** Depths at which two laws are compared, in softnesses: three, for two meet by chance. */
const COMPARED = [0.2, 0.5, 0.9]

/** The one ratio of two pressures at all the depths compared; undefined when there are several. */
function commonRatio(pressure: (part: number) => number, base: (part: number) => number): number | undefined {
  const ratios = COMPARED.map(part => pressure(part) / base(part))
  const [first] = ratios
  return first !== undefined && ratios.every(ratio => Math.abs(ratio / first - 1) <= SAME) ? first : undefined
}

/**
 * Whether a roller on one turf answers as on another, but for its scales.
 *
 *   p(z) = P p₁(z), G = P G₁      W(z) = P W₁(z)
 *   p(z) = p₁(z/D), no spread     W(z) = √D W₁(z/D), smooth, on a parabola
 *
 * So it is over softness without spread for every law, and with spread for the linear one. Asked of the curves, not of
 * the kind of law: a law that is added to the list is told by itself.
 *
 * Source  derived (docs/physics.md §7.4)
 */
export function likenessOf(
  turf: Turf,
  base: Turf,
  { surface, arc = 'parabola' }: { readonly surface: Surface; readonly arc?: 'parabola' | 'circle' },
): Likeness | undefined {
  const curve = curveOf(turf.law)
  const before = curveOf(base.law)
  const unit = softnessOf(base.law)
  const shear = shearOf(turf)
  const shearBefore = shearOf(base)
  const scaled = commonRatio(
    part => curve.pressure(part * unit),
    part => before.pressure(part * unit),
  )
  if (
    scaled !== undefined &&
    curve.limit === before.limit &&
    Math.abs(shear - scaled * shearBefore) <= SAME * shear
  )
    return { depth: 1, lnLoad: Math.log(scaled) }
  if (shear > 0 || shearBefore > 0 || isGrooved(surface) || arc !== 'parabola') return undefined
  const depth = softnessOf(turf.law) / unit
  const stretched = commonRatio(
    part => curve.pressure(part * depth * unit),
    part => before.pressure(part * unit),
  )
  return stretched !== undefined && Math.abs(stretched - 1) <= SAME
    ? { depth, lnLoad: Math.log(depth) / 2 }
    : undefined
}
