/** Points a value is read through: a polynomial of fifth degree over evenly spaced anchors. */
export const STENCIL = 6

/** Weights of the polynomial through 0, 1, … STENCIL − 1, at t. */
export function lagrange(t: number): number[] {
  return Array.from({ length: STENCIL }, (_, i) => {
    let weight = 1
    for (let k = 0; k < STENCIL; k++) if (k !== i) weight *= (t - k) / (i - k)
    return weight
  })
}

export type Anchors = { readonly low: number; readonly step: number; readonly values: Float64Array }

/** Evenly spaced anchors from low to high, no further apart than a step. */
export function evenly(low: number, high: number, step: number, least = STENCIL): Anchors {
  const count = Math.max(least, Math.ceil((high - low) / step) + 1)
  const width = (high - low) / (count - 1)
  return { low, step: width, values: Float64Array.from({ length: count }, (_, i) => low + i * width) }
}

/** Where a value lies among the anchors: the first of its stencil and its place after that. */
export function placeAmong(
  { low, step, values }: Anchors,
  value: number,
): { first: number; t: number; below: number } {
  const at = step > 0 ? (value - low) / step : 0
  const below = Math.min(Math.max(Math.floor(at), 0), values.length - 2)
  const first = Math.min(Math.max(below - (STENCIL / 2 - 1), 0), values.length - STENCIL)
  return { first, t: at - first, below }
}
