/** Room for the normal equations of p parameters, kept from step to step. */
export type StepRoom = {
  readonly size: number
  readonly square: Float64Array
  readonly step: Float64Array
  readonly scale: Float64Array
}

export type Step = {
  /** Whether the equations fix every parameter that any counted reading moves with. */
  readonly determined: boolean
  /** Greatest part of the step in units of the parameter's standard error, all others held. */
  readonly size: number
}

type Question = {
  readonly jacobian: Float64Array
  readonly residuals: Float64Array
  /** How often each residual counts. */
  readonly counts: Float64Array
  /** 1 where a parameter stays. */
  readonly held: Uint8Array
}

export const stepRoom = (size: number): StepRoom => ({
  size,
  square: new Float64Array(size * size),
  step: new Float64Array(size),
  scale: new Float64Array(size),
})

/** What is left of a pivot, its column of length one, that still counts. */
const PIVOT = 1e-13

/**
 * One step of Gauss and Newton with counted residuals; fills room.step.
 *
 *   (JᵀMJ) δ = −JᵀMr, columns made of length one, by Cholesky's root
 *
 * A parameter that no counted residual moves with, such as one of a set that was not drawn, stays where it is.
 */
export function normalStep(room: StepRoom, { jacobian: J, residuals: r, counts, held }: Question): Step {
  const { size: p, square: A, step, scale } = room
  const n = r.length
  A.fill(0)
  step.fill(0)
  let squares = 0
  let counted = 0
  for (let i = 0; i < n; i++) {
    const m = counts[i]!
    if (m === 0) continue
    const row = i * p
    const ri = r[i]!
    squares += m * ri * ri
    counted += m
    for (let j = 0; j < p; j++) {
      const x = J[row + j]!
      if (x === 0) continue
      const mx = m * x
      step[j]! -= mx * ri
      for (let k = 0; k <= j; k++) A[j * p + k]! += mx * J[row + k]!
    }
  }
  let moving = 0
  for (let j = 0; j < p; j++) {
    const length = held[j] === 1 ? 0 : Math.sqrt(A[j * p + j]!)
    scale[j] = length
    if (length > 0) moving++
  }
  for (let j = 0; j < p; j++)
    for (let k = 0; k <= j; k++) {
      const by = scale[j]! * scale[k]!
      A[j * p + k] = by > 0 ? A[j * p + k]! / by : j === k ? 1 : 0
    }
  for (let j = 0; j < p; j++) step[j] = scale[j]! > 0 ? step[j]! / scale[j]! : 0
  if (!solve(A, step, p)) return { determined: false, size: Number.POSITIVE_INFINITY }
  const deviation = Math.sqrt(squares / Math.max(1, counted - moving)) || 1
  let greatest = 0
  for (let j = 0; j < p; j++) {
    // the step so far is in columns of length one: its size over the scatter is in standard errors
    greatest = Math.max(greatest, Math.abs(step[j]!) / deviation)
    step[j] = scale[j]! > 0 ? step[j]! / scale[j]! : 0
  }
  return { determined: true, size: greatest }
}

/** Cholesky's root of A in its lower half, then the solution in place of b; false where A is not definite. */
function solve(A: Float64Array, b: Float64Array, p: number): boolean {
  for (let j = 0; j < p; j++) {
    for (let k = 0; k <= j; k++) {
      let sum = A[j * p + k]!
      for (let l = 0; l < k; l++) sum -= A[j * p + l]! * A[k * p + l]!
      if (k < j) A[j * p + k] = sum / A[k * p + k]!
      else if (sum > PIVOT) A[j * p + j] = Math.sqrt(sum)
      else return false
    }
  }
  for (let j = 0; j < p; j++) {
    let sum = b[j]!
    for (let k = 0; k < j; k++) sum -= A[j * p + k]! * b[k]!
    b[j] = sum / A[j * p + j]!
  }
  for (let j = p - 1; j >= 0; j--) {
    let sum = b[j]!
    for (let k = j + 1; k < p; k++) sum -= A[k * p + j]! * b[k]!
    b[j] = sum / A[j * p + j]!
  }
  return true
}
