/** B₂ₖ/2k of the asymptotic series. */
const SERIES = [1 / 12, -1 / 120, 1 / 252, -1 / 240, 1 / 132, -691 / 32760]
/** From here on six terms leave less than 1e-15. */
const FAR = 10

/**
 * Digamma ψ(x) = d ln Γ/dx.
 *
 *   ψ(x) = ψ(x + 1) − 1/x;  far out ln x − 1/2x − Σ B₂ₖ/(2k x²ᵏ)
 *
 * Holds   x > 0
 * Source  Abramowitz and Stegun, Handbook of Mathematical Functions, 6.3.5 and 6.3.18 (from memory)
 */
export function digamma(x: number): number {
  let shifted = x
  let sum = 0
  for (; shifted < FAR; shifted++) sum -= 1 / shifted
  const square = 1 / (shifted * shifted)
  let tail = 0
  for (let k = SERIES.length - 1; k >= 0; k--) tail = (tail + SERIES[k]!) * square
  return sum + Math.log(shifted) - 1 / (2 * shifted) - tail
}
