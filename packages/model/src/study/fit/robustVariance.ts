import type { Solved } from '../../numerics/index.ts'

/**
 * The variance by which (JᵀJ)⁻¹ is multiplied after a robust loss.
 *
 *   s² = (Σ ψ²/(n − p)) (κ/m)²,  m = mean ψ′,  κ = 1 + p var(ψ′)/(n m²),  ψ = ω r
 *
 * Source  Huber 1981, Robust Statistics, §7.6, equation 6.5 with its correction (from memory; R's rlm computes the same).
 */
export function robustVariance({ residuals, robust, loss }: Solved, parameters: number): number {
  const n = residuals.length
  if (!loss || !robust) return Number.NaN
  let squares = 0
  let sum = 0
  let sumOfSquares = 0
  for (let i = 0; i < n; i++) {
    squares += (robust[i]! * residuals[i]!) ** 2
    const u = (residuals[i]! / (loss.at * loss.spread)) ** 2
    const slope = u >= 1 ? 0 : loss.kind === 'huber' ? 1 : (1 - u) * (1 - 5 * u)
    sum += slope
    sumOfSquares += slope * slope
  }
  const mean = sum / n
  const variance = (sumOfSquares - n * mean * mean) / (n - 1)
  const correction = 1 + (parameters * variance) / (n * mean * mean)
  return (squares / (n - parameters)) * (correction / mean) ** 2
}
