/**
 * ∫ₐᵇ f dx by the double exponential rule: an independent second way for integrals whose ends are powers.
 * Takes the distances from both ends, so that f may be told how near an end it is without cancellation.
 *
 * Source  Takahasi and Mori 1974, from memory.
 */
export function doubleExponential(
  f: (x: number, fromLow: number, fromHigh: number) => number,
  low: number,
  high: number,
  step = 1 / 32,
): number {
  const length = high - low
  let sum = 0
  for (let i = -Math.ceil(4.5 / step); i <= Math.ceil(4.5 / step); i++) {
    const t = i * step
    const s = (Math.PI / 2) * Math.sinh(t)
    const near = 1 / (1 + Math.exp(-2 * s))
    const far = 1 / (1 + Math.exp(2 * s))
    const weight = ((Math.PI / 2) * Math.cosh(t)) / (2 * Math.cosh(s) ** 2)
    if (!(weight > 0)) continue
    const fromLow = length * near
    const fromHigh = length * far
    const value = f(fromLow < fromHigh ? low + fromLow : high - fromHigh, fromLow, fromHigh)
    // where an end is a pole the weight has died before
    if (Number.isFinite(value)) sum += weight * value
  }
  return sum * step * length
}

/** Central difference of order four. */
export const derivative = (f: (x: number) => number, at: number, step: number): number =>
  (8 * (f(at + step) - f(at - step)) - (f(at + 2 * step) - f(at - 2 * step))) / (12 * step)
