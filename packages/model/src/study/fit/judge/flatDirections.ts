import { singularValues } from '../../../numerics/index.ts'
import type { FittedParameter } from '../fit.ts'
import { freeOf, type Judged } from './judged.ts'

/** A way in which the parameters can move together while the fitted values hardly do. */
export type FlatDirection = {
  readonly kind: 'unmoved' | 'flat' | 'together'
  /** Those that move, in the order of the fit; `part` is the relative change, the direction's length being one. */
  readonly moves: readonly { readonly name: string; readonly set?: string; readonly part: number }[]
  /** Standard error along the direction, relative (of logarithms); null: infinite, or no scatter to measure by. */
  readonly relativeError: number | null
}

/** Along a flat direction 95 % of the answers span more than half a factor either way. */
const FLAT = 0.25
/** Standard errors below this are told without remark, however the parameters hang together. */
const TOLD = 0.05
/** Columns of unit length hang together from this condition index on: of two, one makes the other's error five times. */
const STRONG = 10
/** A parameter that moves less than this part of the one that moves most stands still. */
const STILL = 0.2
/** Below this part of the greatest, a singular value is rounding. */
const ROUNDING = 1e-9

const meanSize = (numbers: readonly number[]) =>
  numbers.reduce((sum, x) => sum + Math.abs(x), 0) / numbers.length

const isDatum = ({ name }: FittedParameter) => /datum$/i.test(name)

/**
 * A relative change for all but datums, which may pass zero: there what a change of the other parameters by all of
 * themselves does to a reading is the measure.
 */
function sizesOf({ derivatives, measured }: Judged, free: readonly FittedParameter[]): readonly number[] {
  const typical = meanSize(measured)
  const own = free.map(({ value }) => Math.abs(value) || typical)
  const moved = free.map((parameter, j) =>
    isDatum(parameter) ? 0 : meanSize((derivatives ?? []).map(row => row[j]! * own[j]!)),
  )
  const most = Math.max(...moved) || typical
  return free.map((parameter, j) => (isDatum(parameter) ? most : own[j]!))
}

/**
 * Directions in which the readings hardly hold the parameters: those of the smallest singular values of the weighted
 * derivatives, each column times the size of its parameter, over the scatter.
 *
 *   A = √w ∂ŷ/∂ln θ/σ = U S Vᵀ;  standard error along v_k = 1/s_k
 *
 * Flat is a matter of the noise; together is one of the places the readings were taken at, and is told only where it
 * costs something.
 *
 * Source  Belsley, Kuh and Welsch 1980, Regression Diagnostics, §3.2: condition index (from memory)
 */
export function flatDirections(judged: Judged): readonly FlatDirection[] {
  const { fit, derivatives, measured, scatter } = judged
  const free = freeOf(fit)
  if (derivatives === null || free.length === 0 || measured.length === 0) return []
  const known = scatter !== null && scatter > 0
  const sizes = sizesOf(judged, free)
  const A = derivatives.flatMap((row, i) =>
    row.map((d, j) => (d * sizes[j]! * Math.sqrt(fit.weights[i]!)) / (known ? scatter : 1)),
  )
  const { values, directions } = singularValues(A, measured.length, free.length)
  const index = conditionIndices(A, measured.length, free.length)
  const greatest = values[0]!
  return Array.from(values).flatMap((value, k): FlatDirection[] => {
    const moves = movesOf(directions[k]!, free)
    if (!(value > ROUNDING * greatest))
      return [{ kind: moves.length === 1 ? 'unmoved' : 'flat', moves, relativeError: null }]
    const relativeError = known ? 1 / value : null
    if (relativeError !== null && relativeError > FLAT) return [{ kind: 'flat', moves, relativeError }]
    const strong = (index[k] ?? 1) > STRONG && moves.length > 1
    return strong && (relativeError ?? FLAT) > TOLD ? [{ kind: 'together', moves, relativeError }] : []
  })
}

function movesOf(direction: Float64Array, free: readonly FittedParameter[]): FlatDirection['moves'] {
  const most = Math.max(...direction.map(Math.abs))
  const sign = Math.sign(direction.find(part => Math.abs(part) >= STILL * most) ?? 1)
  return free.flatMap(({ name, set }, j) => {
    const part = sign * direction[j]!
    return Math.abs(part) >= STILL * most ? [{ name, ...(set === undefined ? {} : { set }), part }] : []
  })
}

/** Greatest singular value over each, all columns made of length one. */
function conditionIndices(A: readonly number[], rows: number, columns: number): readonly number[] {
  const lengths = Array.from({ length: columns }, (_, j) =>
    Math.hypot(...Array.from({ length: rows }, (_, i) => A[i * columns + j]!)),
  )
  const { values } = singularValues(
    A.map((a, i) => a / (lengths[i % columns]! || 1)),
    rows,
    columns,
  )
  return Array.from(values, value => (values[0]! > 0 ? values[0]! / value : 1))
}
