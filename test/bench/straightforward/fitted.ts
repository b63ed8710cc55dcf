export type PlainModel = (x: number, parameters: readonly number[]) => number

const TURNS = 50
const STEP = 1e-6
const CLOSE = 1e-10

/** Solves a few linear equations by elimination. */
function solved(matrix: number[][], right: number[]): number[] {
  const n = right.length
  for (let k = 0; k < n; k++)
    for (let i = k + 1; i < n; i++) {
      const factor = matrix[i]![k]! / matrix[k]![k]!
      for (let j = k; j < n; j++) matrix[i]![j]! -= factor * matrix[k]![j]!
      right[i]! -= factor * right[k]!
    }
  const x = new Array<number>(n).fill(0)
  for (let i = n - 1; i >= 0; i--) {
    let rest = right[i]!
    for (let j = i + 1; j < n; j++) rest -= matrix[i]![j]! * x[j]!
    x[i] = rest / matrix[i]![i]!
  }
  return x
}

/** Least squares by Gauss and Newton with differences, damped as Levenberg and Marquardt do. */
export function fitted(
  model: PlainModel,
  x: readonly number[],
  y: readonly number[],
  start: readonly number[],
): number[] {
  const squares = (p: readonly number[]) => x.reduce((sum, at, i) => sum + (y[i]! - model(at, p)) ** 2, 0)
  let p = [...start]
  let damping = 1e-3
  for (let turn = 0; turn < TURNS; turn++) {
    const n = p.length
    const A = Array.from({ length: n }, () => new Array<number>(n).fill(0))
    const b = new Array<number>(n).fill(0)
    x.forEach((at, i) => {
      const here = model(at, p)
      const slopes = p.map((value, j) => {
        const step = STEP * Math.max(Math.abs(value), STEP)
        return (model(at, p.with(j, value + step)) - here) / step
      })
      slopes.forEach((s, j) => {
        b[j]! += s * (y[i]! - here)
        slopes.forEach((t, k) => {
          A[j]![k]! += s * t
        })
      })
    })
    const damped = A.map((row, j) => row.map((value, k) => (j === k ? value * (1 + damping) : value)))
    const step = solved(damped, [...b])
    const next = p.map((value, j) => value + step[j]!)
    if (squares(next) > squares(p)) {
      damping *= 10
      continue
    }
    damping /= 10
    const still = step.every((by, j) => Math.abs(by) <= CLOSE * Math.abs(next[j]!))
    p = next
    if (still) break
  }
  return p
}
