/** Cubics between knots, one after another: value and slope at each knot. */
export type Knots = {
  readonly places: readonly number[]
  readonly values: readonly number[]
  readonly slopes: readonly number[]
}

/** Slopes at both ends of an interval, in units of its secant, may lie this far from 0 together. */
const RADIUS = 3
/** An end slope is kept within this many times, and this part of, the secant beside it. */
const END = 3

/** Slope at an end by the parabola through three points, held so that the curve neither starts nor ends flat. */
function endSlope(near: number, far: number, nearWidth: number, farWidth: number): number {
  const parabola = near + ((near - far) * nearWidth) / (nearWidth + farWidth)
  return Math.min(Math.max(parabola, near / END), near * END)
}

/**
 * Slopes at increasing points such that the cubics between them increase too.
 *
 *   three-point slopes; where (α, β) = slopes/secant lies outside the circle of radius 3 it is drawn back onto it
 *
 * Holds   both lists strictly increasing, two points at least
 * Source  Fritsch and Carlson 1980, SIAM Journal on Numerical Analysis 17(2):238-246; the lower bound on end slopes is
 *         the project's own: a law that went on from a flat end would never rise again.
 */
export function monotoneSlopes(places: readonly number[], values: readonly number[]): number[] {
  const widths = places.slice(1).map((place, i) => place - places[i]!)
  const secants = widths.map((width, i) => (values[i + 1]! - values[i]!) / width)
  const last = secants.length - 1
  const slopes = places.map((_, i) => {
    if (last === 0) return secants[0]!
    if (i === 0) return endSlope(secants[0]!, secants[1]!, widths[0]!, widths[1]!)
    if (i > last) return endSlope(secants[last]!, secants[last - 1]!, widths[last]!, widths[last - 1]!)
    // the slope of the parabola through this point and its neighbours
    return (widths[i]! * secants[i - 1]! + widths[i - 1]! * secants[i]!) / (widths[i - 1]! + widths[i]!)
  })
  for (let i = 0; i <= last; i++) {
    const alpha = slopes[i]! / secants[i]!
    const beta = slopes[i + 1]! / secants[i]!
    const size = Math.hypot(alpha, beta)
    if (size <= RADIUS) continue
    slopes[i] = (RADIUS / size) * slopes[i]!
    slopes[i + 1] = (RADIUS / size) * slopes[i + 1]!
  }
  return slopes
}
