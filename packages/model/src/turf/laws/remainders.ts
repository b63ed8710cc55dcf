/** Below this the closed forms lose digits to cancellation; the series below is then good to 1e-15. */
const SMALL = 0.02

/** −ln(1 − x) − x = x²/2 + x³/3 + …, without cancellation near zero. */
export function logRemainder(x: number): number {
  if (x > SMALL || x < -SMALL) return -Math.log1p(-x) - x
  return (
    x *
    x *
    (1 / 2 + x * (1 / 3 + x * (1 / 4 + x * (1 / 5 + x * (1 / 6 + x * (1 / 7 + x * (1 / 8 + x / 9)))))))
  )
}

/** (1 − x) ln(1 − x) + x = x²/2 + x³/6 + x⁴/12 + …, without cancellation near zero. */
export function entropyRemainder(x: number): number {
  if (x > SMALL || x < -SMALL) return (1 - x) * Math.log1p(-x) + x
  return (
    x *
    x *
    (1 / 2 + x * (1 / 6 + x * (1 / 12 + x * (1 / 20 + x * (1 / 30 + x * (1 / 42 + x * (1 / 56 + x / 72)))))))
  )
}

/** Terms of the series below: while y² is small eight leave less than 1e-15. */
const SMALL_SQUARE = 0.02

/** 1 − (atan y)/y from y² = y²/3 − y⁴/5 + y⁶/7 − …, without cancellation near zero. */
export function atanLoss(square: number): number {
  if (square > SMALL_SQUARE) {
    const y = Math.sqrt(square)
    return 1 - Math.atan(y) / y
  }
  const x = square
  return (
    x *
    (1 / 3 - x * (1 / 5 - x * (1 / 7 - x * (1 / 9 - x * (1 / 11 - x * (1 / 13 - x * (1 / 15 - x / 17)))))))
  )
}
