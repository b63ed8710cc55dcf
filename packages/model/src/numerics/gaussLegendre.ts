/** Nodes and weights of a rule on [0, 1]. */
export type Rule = { readonly nodes: Float64Array; readonly weights: Float64Array }

const rules = new Map<number, Rule>()
const TURNS = 100

/**
 * Gauss-Legendre rule of n points on [0, 1], by Newton's method on the Legendre recurrence.
 *
 *   ∫₀¹ f dx ≈ Σ wᵢ f(xᵢ), exact for polynomials of degree 2n − 1
 *
 * Source  Abramowitz and Stegun, Handbook of Mathematical Functions, 25.4.29 and table 25.4.
 */
export function gaussLegendre(points: number): Rule {
  const known = rules.get(points)
  if (known) return known
  const nodes = new Float64Array(points)
  const weights = new Float64Array(points)
  for (let i = 0; i < points; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (points + 0.5)) // Tricomi's first guess
    let slope = 0
    for (let turn = 0; turn < TURNS; turn++) {
      let last = 1
      let value = x
      for (let k = 2; k <= points; k++) {
        const next = ((2 * k - 1) * x * value - (k - 1) * last) / k
        last = value
        value = next
      }
      slope = (points * (x * value - last)) / (x * x - 1)
      const step = value / slope
      x -= step
      if (Math.abs(step) <= Number.EPSILON) break
    }
    nodes[points - 1 - i] = (1 + x) / 2
    weights[points - 1 - i] = 1 / ((1 - x * x) * slope * slope)
  }
  const rule = { nodes, weights }
  rules.set(points, rule)
  return rule
}
