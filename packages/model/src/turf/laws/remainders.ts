/** Below this the closed forms lose digits to cancellation and the series is used. */
const SMALL = 0.02
const TERMS = 12

/** −ln(1 − x) − x = x²/2 + x³/3 + …, without cancellation near zero. */
export function logRemainder(x: number): number {
  if (Math.abs(x) > SMALL) return -Math.log1p(-x) - x
  let power = x
  let sum = 0
  for (let k = 2; k <= TERMS; k++) {
    power *= x
    sum += power / k
  }
  return sum
}

/** (1 − x) ln(1 − x) + x = x²/2 + x³/6 + x⁴/12 + …, without cancellation near zero. */
export function entropyRemainder(x: number): number {
  if (Math.abs(x) > SMALL) return (1 - x) * Math.log1p(-x) + x
  let power = x
  let sum = 0
  for (let k = 2; k <= TERMS; k++) {
    power *= x
    sum += power / (k * (k - 1))
  }
  return sum
}
