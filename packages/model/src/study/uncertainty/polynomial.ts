import { backSubstitute, factorise, pivotedQr, rankOf, turn } from '../../numerics/index.ts'

/** A product of coordinates: their numbers, repeated for powers; none for the constant. */
export type Term = readonly number[]

/** A sum of terms. */
export type Polynomial = { readonly terms: readonly Term[]; readonly coefficients: Float64Array }

/** All products of a degree of some coordinates. */
export function termsOfDegree(coordinates: readonly number[], degree: number): Term[] {
  if (degree === 0) return [[]]
  return coordinates.flatMap((first, at) =>
    termsOfDegree(coordinates.slice(at), degree - 1).map(rest => [first, ...rest]),
  )
}

/** A term at every point. */
function columnOf(term: Term, points: readonly Float64Array[], count: number): Float64Array {
  const column = new Float64Array(count).fill(1)
  for (const k of term) {
    const factor = points[k]!
    for (let i = 0; i < count; i++) column[i] = column[i]! * factor[i]!
  }
  return column
}

/** Columns that add less than this part of the first are left out. */
const RANK = 1e-10

/** The polynomial nearest to values at points, in least squares. */
export function fitPolynomial(
  terms: readonly Term[],
  points: readonly Float64Array[],
  values: Float64Array,
): Polynomial {
  const size = terms.length
  const qr = pivotedQr(values.length, size)
  terms.forEach((term, j) => {
    qr.a.set(columnOf(term, points, values.length), j * qr.rows)
  })
  factorise(qr, size)
  const right = new Float64Array(qr.rows)
  right.set(values)
  turn(qr, size, right)
  const solution = right.slice(0, size)
  backSubstitute(qr, size, rankOf(qr, size, RANK), solution)
  const coefficients = new Float64Array(size)
  for (let k = 0; k < size; k++) coefficients[qr.pivot[k]!] = solution[k]!
  return { terms, coefficients }
}

/** The polynomial at every point, term by term: no column but the sums is written. */
export function evaluatePolynomial(
  { terms, coefficients }: Polynomial,
  points: readonly Float64Array[],
  count: number,
): Float64Array {
  const sums = new Float64Array(count)
  terms.forEach((term, t) => {
    const c = coefficients[t]!
    if (c === 0) return
    const [p, q, r, s] = term.map(k => points[k]!)
    if (!p) for (let i = 0; i < count; i++) sums[i] = sums[i]! + c
    else if (!q) for (let i = 0; i < count; i++) sums[i] = sums[i]! + c * p[i]!
    else if (!r) for (let i = 0; i < count; i++) sums[i] = sums[i]! + c * p[i]! * q[i]!
    else if (!s) for (let i = 0; i < count; i++) sums[i] = sums[i]! + c * p[i]! * q[i]! * r[i]!
    else for (let i = 0; i < count; i++) sums[i] = sums[i]! + c * p[i]! * q[i]! * r[i]! * s[i]!
  })
  return sums
}
