/** A matrix of at most `size` columns, stored column after column, and what Householder's reflections make of it. */
export type PivotedQr = {
  /** At least as many as columns: short matrices are filled up with rows of zeros. */
  readonly rows: number
  /** Afterwards R above the diagonal, the reflecting vectors on and below it. */
  readonly a: Float64Array
  readonly diagonal: Float64Array
  /** Which column came to stand at each place. */
  readonly pivot: Int32Array
  readonly left: Float64Array
}

/** A column's remaining length is worked out anew once it has shrunk so far that its downdating has lost its digits. */
const STALE = 1e-4

export const pivotedQr = (rows: number, size: number): PivotedQr => ({
  rows: Math.max(rows, size),
  a: new Float64Array(Math.max(rows, size) * size),
  diagonal: new Float64Array(size),
  pivot: new Int32Array(size),
  left: new Float64Array(2 * size),
})

function lengthFrom(a: Float64Array, from: number, to: number): number {
  let sum = 0
  for (let i = from; i < to; i++) sum += a[i]! * a[i]!
  return Math.sqrt(sum)
}

function swapColumns({ a, rows, pivot, left }: PivotedQr, size: number, one: number, other: number): void {
  for (let i = 0; i < rows; i++) {
    const held = a[one * rows + i]!
    a[one * rows + i] = a[other * rows + i]!
    a[other * rows + i] = held
  }
  const column = pivot[one]!
  pivot[one] = pivot[other]!
  pivot[other] = column
  left[other] = left[one]!
  left[size + other] = left[size + one]!
}

/**
 * Factorises the first columns in place, the longest remaining column first.
 *
 *   A P = Q R,  |R₀₀| ≥ |R₁₁| ≥ …
 *
 * Source  Businger and Golub 1965, Numerische Mathematik 7:269-276; the downdated lengths after LINPACK.
 */
export function factorise(qr: PivotedQr, columns: number): void {
  const { rows, a, diagonal, pivot, left } = qr
  for (let j = 0; j < columns; j++) {
    pivot[j] = j
    left[j] = lengthFrom(a, j * rows, (j + 1) * rows)
    left[columns + j] = left[j]!
  }
  for (let k = 0; k < columns; k++) {
    let longest = k
    for (let j = k + 1; j < columns; j++) if (left[j]! > left[longest]!) longest = j
    if (longest !== k) swapColumns(qr, columns, k, longest)
    const at = k * rows
    const length = lengthFrom(a, at + k, at + rows)
    if (length === 0) {
      diagonal[k] = 0
      continue
    }
    const mirror = a[at + k]! > 0 ? -length : length
    a[at + k] = a[at + k]! - mirror
    diagonal[k] = mirror
    const half = -mirror * a[at + k]!
    for (let j = k + 1; j < columns; j++) {
      const other = j * rows
      let sum = 0
      for (let i = k; i < rows; i++) sum += a[at + i]! * a[other + i]!
      sum /= half
      for (let i = k; i < rows; i++) a[other + i] = a[other + i]! - sum * a[at + i]!
      if (left[j] === 0) continue
      const share = a[other + k]! / left[j]!
      const rest = Math.max(0, 1 - share * share)
      const kept = left[j]! / left[columns + j]!
      if (rest * kept * kept <= STALE) {
        left[j] = lengthFrom(a, other + k + 1, other + rows)
        left[columns + j] = left[j]!
      } else left[j] = left[j]! * Math.sqrt(rest)
    }
  }
}

/** Mirrors v in the plane of the reflection that made column k. */
function mirrored({ rows, a, diagonal }: PivotedQr, k: number, v: Float64Array): void {
  if (diagonal[k] === 0) return
  const at = k * rows
  let sum = 0
  for (let i = k; i < rows; i++) sum += a[at + i]! * v[i]!
  sum /= -diagonal[k]! * a[at + k]!
  for (let i = k; i < rows; i++) v[i] = v[i]! - sum * a[at + i]!
}

/** Turns v (as long as the rows) into Qᵀ v. */
export function turn(qr: PivotedQr, columns: number, v: Float64Array): void {
  for (let k = 0; k < columns; k++) mirrored(qr, k, v)
}

/** Turns v into Q v: the same reflections from the last to the first. */
export function turnBack(qr: PivotedQr, columns: number, v: Float64Array): void {
  for (let k = columns - 1; k >= 0; k--) mirrored(qr, k, v)
}

/** How many columns stand on their own: those whose diagonal is more than a share of the first. */
export function rankOf({ diagonal }: PivotedQr, columns: number, share: number): number {
  let rank = 0
  const least = share * Math.abs(columns > 0 ? diagonal[0]! : 0)
  while (rank < columns && Math.abs(diagonal[rank]!) > least) rank++
  return rank
}

/** Solves R x = b over the leading `rank` places, in place; the places after them are set to zero. */
export function backSubstitute(qr: PivotedQr, columns: number, rank: number, x: Float64Array): void {
  const { rows, a, diagonal } = qr
  x.fill(0, rank, columns)
  for (let j = rank - 1; j >= 0; j--) {
    const value = x[j]! / diagonal[j]!
    x[j] = value
    for (let i = 0; i < j; i++) x[i] = x[i]! - a[j * rows + i]! * value
  }
}
