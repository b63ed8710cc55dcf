/** Share of a column's length below which what is left of it counts as rounding. */
const NOTHING = 1e-7
/** Taken off twice, what is left is square to the columns to rounding. */
const PASSES = 2

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0)

/** Unit vectors square to each other that span the columns, without those that the ones before make whole. */
function squared(columns: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const square: (readonly number[])[] = []
  for (const column of columns) {
    let left = column
    for (let pass = 0; pass < PASSES; pass++)
      for (const unit of square) {
        const along = dot(left, unit)
        left = left.map((x, i) => x - along * unit[i]!)
      }
    const length = Math.sqrt(dot(left, left))
    if (length > NOTHING * Math.sqrt(dot(column, column))) square.push(left.map(x => x / length))
  }
  return square
}

/** The squares of residuals that further columns would take up beside those already fitted, and how many do. */
export function takenUp(
  residuals: readonly number[],
  fitted: readonly (readonly number[])[],
  further: readonly (readonly number[])[],
): { readonly squares: number; readonly columns: number } {
  const before = squared(fitted)
  const more = squared([...before, ...further]).slice(before.length)
  return { squares: more.reduce((sum, unit) => sum + dot(unit, residuals) ** 2, 0), columns: more.length }
}
