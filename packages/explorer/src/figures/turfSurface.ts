/** Depth of the turf at a distance from a roller's axis; the same length unit throughout. */
export type Depth = (distance: number) => number

const BISECTIONS = 40

/**
 * Depth of the surface under and beside a circle sunk into turf: the circle itself out to where its depth is the
 * spread times its slope, beyond that an exponential that runs on with the same slope.
 *
 * Holds   depth below the radius; a spread of zero leaves the circle where it meets the undisturbed surface.
 */
export function depthBeside(circle: { radius: number; depth: number; spread: number }): Depth {
  const { radius, spread } = circle
  const depth = Math.min(circle.depth, radius)
  if (depth <= 0) return () => 0
  const under = (d: number) => depth - (radius - Math.sqrt(Math.max(0, radius * radius - d * d)))
  const slope = (d: number) => d / Math.sqrt(Math.max(Number.MIN_VALUE, radius * radius - d * d))
  let low = 0
  let high = Math.sqrt(Math.max(0, 2 * radius * depth - depth * depth))
  for (let i = 0; i < BISECTIONS; i++) {
    const middle = (low + high) / 2
    if (under(middle) > spread * slope(middle)) low = middle
    else high = middle
  }
  const contact = low
  const left = under(contact)
  return distance => {
    const d = Math.abs(distance)
    if (d <= contact) return under(d)
    return spread > 0 ? left * Math.exp(-(d - contact) / spread) : 0
  }
}
