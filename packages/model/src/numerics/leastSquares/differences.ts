import type { Residuals } from './question.ts'

/** The cube root of what is lost to rounding: where the errors of a central difference balance. */
const STEP = Number.EPSILON ** (1 / 3)
/** Widest step of the extrapolated differences, as a share of the parameter's size, and how it shrinks. */
const WIDEST = 1 / 64
const SHRINK = 4
const LEVELS = 6
/** Against a bound the differences are taken to one side: forward, at one and at two steps. */
const FORWARD = [-3 / 2, 2, -1 / 2] as const

export type DifferenceRoom = {
  readonly at: Float64Array
  readonly above: Float64Array
  readonly below: Float64Array
  /** Differences at every width of step, for the extrapolation. */
  readonly table: Float64Array
}

export const differenceRoom = (count: number, size: number): DifferenceRoom => ({
  at: new Float64Array(size),
  above: new Float64Array(count),
  below: new Float64Array(count),
  table: new Float64Array(count * LEVELS),
})

export type Differences = {
  readonly residuals: Residuals
  readonly room: DifferenceRoom
  readonly lower: Float64Array
  readonly upper: Float64Array
}

/**
 * Residuals on either side of p along one parameter, or on one side where a bound or the end of the model is in the
 * way; fills `into` with the slope and gives the number of evaluations, negative when there is no slope to be had.
 */
function slopeAlong(
  { residuals, room, lower, upper }: Differences,
  p: Float64Array,
  k: number,
  width: number,
  r: Float64Array,
  into: Float64Array,
  offset: number,
  stride: number,
): number {
  const { at, above, below } = room
  const { count } = residuals
  at.set(p)
  const high = p[k]! + width
  const low = p[k]! - width
  let evaluations = 0
  const answer = (value: number, out: Float64Array): boolean => {
    if (value > upper[k]! || value < lower[k]!) return false
    at[k] = value
    evaluations++
    return residuals.evaluate(at, out)
  }
  const up = answer(high, above)
  const down = answer(low, below)
  if (up && down) {
    const span = high - low
    for (let i = 0; i < count; i++) into[offset + i * stride] = (above[i]! - below[i]!) / span
    return evaluations
  }
  if (!up && !down) return -evaluations - 1
  const [none, one, two] = FORWARD
  const near = up ? above : below
  const far = up ? below : above
  const side = up ? high - p[k]! : low - p[k]!
  if (answer(p[k]! + 2 * side, far))
    for (let i = 0; i < count; i++)
      into[offset + i * stride] = (none * r[i]! + one * near[i]! + two * far[i]!) / side
  else for (let i = 0; i < count; i++) into[offset + i * stride] = (near[i]! - r[i]!) / side
  return evaluations
}

/**
 * ∂residual/∂p by central differences, row-major.
 *
 * Gives the number of evaluations, or a negative number when a parameter has no slope.
 */
export function coarseDifferences(
  question: Differences,
  p: Float64Array,
  sizes: Float64Array,
  r: Float64Array,
  jacobian: Float64Array,
): number {
  let evaluations = 0
  for (let k = 0; k < p.length; k++) {
    const used = slopeAlong(question, p, k, STEP * sizes[k]!, r, jacobian, k, p.length)
    if (used < 0) return used
    evaluations += used
  }
  return evaluations
}

/**
 * The same, extrapolated from steps of six widths to none; each column keeps the two neighbouring extrapolations that
 * agree best. No one width serves a parameter that enters a logarithm and one that enters an exponential alike.
 *
 *   D(h) = D + c h² + …,  D ≈ (16 D(h/4) − D(h))/15
 *
 * Source  Ridders 1982, Advances in Engineering Software 4:75-76.
 */
export function fineDifferences(
  question: Differences,
  p: Float64Array,
  sizes: Float64Array,
  r: Float64Array,
  jacobian: Float64Array,
): number {
  const { residuals, room } = question
  const { count, size } = residuals
  const { table } = room
  let evaluations = 0
  for (let k = 0; k < size; k++) {
    let width = WIDEST * sizes[k]!
    let best = Number.POSITIVE_INFINITY
    let worse = 0
    for (let level = 0; level < LEVELS && worse < 2; level++, width /= SHRINK) {
      const used = slopeAlong(question, p, k, width, r, table, level * count, 1)
      evaluations += Math.abs(used)
      if (used < 0) {
        if (level === LEVELS - 1 && best === Number.POSITIVE_INFINITY) return -evaluations - 1
        table.fill(Number.NaN, level * count, (level + 1) * count)
        continue
      }
      if (level < 2) continue
      const found = extrapolate(table, level, count, jacobian, k, size, best)
      if (found < best) {
        best = found
        worse = 0
      } else worse++
    }
    if (best === Number.POSITIVE_INFINITY) {
      const used = slopeAlong(question, p, k, STEP * sizes[k]!, r, jacobian, k, size)
      if (used < 0) return used
      evaluations += used
    }
  }
  return evaluations
}

/** Two extrapolations from three widths; the finer goes into its column if the two differ less than any pair before. */
function extrapolate(
  table: Float64Array,
  level: number,
  count: number,
  jacobian: Float64Array,
  k: number,
  size: number,
  best: number,
): number {
  const gain = SHRINK * SHRINK
  const one = (level - 2) * count
  const two = (level - 1) * count
  const three = level * count
  let differ = 0
  for (let i = 0; i < count; i++) {
    const wide = (gain * table[two + i]! - table[one + i]!) / (gain - 1)
    const fine = (gain * table[three + i]! - table[two + i]!) / (gain - 1)
    differ += (fine - wide) ** 2
  }
  if (!(differ < best)) return Number.POSITIVE_INFINITY
  for (let i = 0; i < count; i++)
    jacobian[i * size + k] = (gain * table[three + i]! - table[two + i]!) / (gain - 1)
  return differ
}
