/** Step in a logarithm: five points leave its fourth power, and rounding over it. */
export const STEP = 1e-3

/** How far the outermost point of a one-sided difference lies, in steps. */
export const FARTHEST = 4

/** Five points and their weights over so many parts of a step; one-sided where the function ends on one side. */
const PARTS = 12
const RULES = [
  {
    places: [-2, -1, 1, 2],
    weights: [1, -8, 8, -1],
  },
  {
    places: [0, -1, -2, -3, -4],
    weights: [25, -48, 36, -16, 3],
  },
  {
    places: [0, 1, 2, 3, 4],
    weights: [-25, 48, -36, 16, -3],
  },
] as const

/**
 * Slope of a function at zero from five points a step apart; NaN where it is told on neither side.
 *
 *   (f₋₂ − 8 f₋₁ + 8 f₁ − f₂)/12h;  (25 f₀ − 48 f₋₁ + 36 f₋₂ − 16 f₋₃ + 3 f₋₄)/12h
 *
 * Source  Abramowitz and Stegun, table 25.2 (from memory)
 */
export function difference(step: number, at: (steps: number) => number): number {
  for (const { places, weights } of RULES) {
    let sum = 0
    for (let i = 0; i < places.length && !Number.isNaN(sum); i++) sum += weights[i]! * at(places[i]!)
    if (Number.isFinite(sum)) return sum / (PARTS * step)
  }
  return Number.NaN
}
