/** Share of a column's length below which what is left of it counts as rounding. */
const NOTHING = 1e-7
/** Taken off twice, what is left is square to the columns to rounding. */
const PASSES = 2

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0)
const lengthOf = (a: readonly number[]) => Math.sqrt(dot(a, a))

/** What the columns cannot make of a vector: its part square to all of them; null where they make it whole. */
export function leftOf(
  vector: readonly number[],
  columns: readonly (readonly number[])[],
): readonly number[] | null {
  const square: (readonly number[])[] = []
  const taken = (from: readonly number[]) => {
    let left = from
    for (let pass = 0; pass < PASSES; pass++)
      for (const unit of square) {
        const along = dot(left, unit)
        left = left.map((x, i) => x - along * unit[i]!)
      }
    return lengthOf(left) > NOTHING * lengthOf(from) ? left : null
  }
  for (const column of columns) {
    const left = taken(column)
    if (left === null) continue
    const length = lengthOf(left)
    square.push(left.map(x => x / length))
  }
  return taken(vector)
}
