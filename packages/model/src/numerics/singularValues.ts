/** A matrix taken apart into directions of its columns and how much each direction moves the rows. */
export type Singular = {
  /** Greatest first. */
  readonly values: Float64Array
  /** Row k is the unit direction of value k, in the columns of the matrix. */
  readonly directions: readonly Float64Array[]
}

/** Columns count as square to each other below this cosine. */
const SQUARE = 1e-15
/** Each pass squares what is left; a handful is usual. */
const MOST_PASSES = 60

/**
 * Singular values and right directions of an n × p matrix, row-major.
 *
 *   A V = U Σ, found by turning pairs of columns until they are square to each other
 *
 * Small values keep their digits, which those of AᵀA would not.
 *
 * Source  one-sided Jacobi: Hestenes 1958, SIAM Journal 6:51-90 (from memory)
 */
export function singularValues(matrix: ArrayLike<number>, rows: number, columns: number): Singular {
  const A = Array.from({ length: columns }, (_, j) =>
    Float64Array.from({ length: rows }, (_, i) => matrix[i * columns + j]!),
  )
  const V = Array.from({ length: columns }, (_, j) =>
    Float64Array.from({ length: columns }, (_, i) => (i === j ? 1 : 0)),
  )
  for (let pass = 0, turned = true; turned && pass < MOST_PASSES; pass++) {
    turned = false
    for (let i = 0; i < columns - 1; i++)
      for (let j = i + 1; j < columns; j++) turned = turnPair(A, V, i, j) || turned
  }
  const lengths = A.map(column => Math.sqrt(dot(column, column)))
  const order = lengths.map((_, j) => j).sort((a, b) => lengths[b]! - lengths[a]!)
  return {
    values: Float64Array.from(order, j => lengths[j]!),
    directions: order.map(j => V[j]!),
  }
}

function turnPair(A: readonly Float64Array[], V: readonly Float64Array[], i: number, j: number): boolean {
  const [a, b] = [A[i]!, A[j]!]
  const along = dot(a, b)
  const [aa, bb] = [dot(a, a), dot(b, b)]
  if (Math.abs(along) <= SQUARE * Math.sqrt(aa * bb)) return false
  const zeta = (bb - aa) / (2 * along)
  const tangent = (zeta < 0 ? -1 : 1) / (Math.abs(zeta) + Math.hypot(1, zeta))
  const cosine = 1 / Math.hypot(1, tangent)
  rotate(a, b, cosine, cosine * tangent)
  rotate(V[i]!, V[j]!, cosine, cosine * tangent)
  return true
}

function rotate(a: Float64Array, b: Float64Array, cosine: number, sine: number): void {
  for (let k = 0; k < a.length; k++) {
    const [x, y] = [a[k]!, b[k]!]
    a[k] = cosine * x - sine * y
    b[k] = sine * x + cosine * y
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!
  return sum
}
