import { conditionProblems } from '../../contact/index.ts'
import { turfProblems } from '../../turf/index.ts'
import { partProblems, tippingProblems } from '../../unit/index.ts'
import { type Parts, partsAt } from './heightInput.ts'
import type { HeightSample, Varied } from './heightSample.ts'

/** Why a draw has no answer: it makes no unit or turf (and what of it is out of range), it tips, or the search ended so. */
export type NoAnswer = {
  readonly why: 'not possible' | 'would tip' | 'bottomed out' | 'not converged'
  /** The value that is out of range, or the roller. */
  readonly where: string
}

/** What is wrong with drawn parts, or nothing. */
export function unsound(parts: Parts | undefined, law = 'turf.law'): NoAnswer | undefined {
  if (!parts) return { why: 'not possible', where: law }
  const { unit, turf, condition } = parts
  const problem = [
    ...partProblems(unit, 'unit'),
    ...turfProblems(turf, 'turf'),
    ...conditionProblems(condition, 'condition'),
  ][0]
  if (problem) return { why: 'not possible', where: problem.path }
  const tipping = tippingProblems(unit, 'unit')[0]
  return tipping && { why: 'would tip', where: tipping.path }
}

/** The parts of one draw. */
export const partsOfDraw = ({ parts, inputs }: Varied, { values }: HeightSample, draw: number) =>
  partsAt(
    parts,
    inputs.map(({ input }) => input),
    k => values[k]![draw]!,
  )

function ends(column: Float64Array): [number, number] {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (let i = 0; i < column.length; i++) {
    low = Math.min(low, column[i]!)
    high = Math.max(high, column[i]!)
  }
  return [low, high]
}

/** Rows of the covering array below: enough for 126 inputs. */
const ROWS = 10

/** Subsets of five of nine rows, as bits. */
const subsets = Array.from({ length: 2 ** (ROWS - 1) }, (_, bits) => bits).filter(
  bits => bits.toString(2).replaceAll('0', '').length === ROWS / 2,
)

/**
 * Whether every draw makes a sound unit and turf, told from ten: each input at its least or its greatest, so that every
 * two of them meet in all four ways. What is asked of one number, or of two beside each other, then holds for all
 * draws. Whether a unit tips is left to its balance.
 *
 * Source  covering arrays of strength two: Kleitman and Spencer 1973, Discrete Mathematics 6:255-262 (from memory)
 */
export function allSound(varied: Varied, { values }: HeightSample): boolean {
  const inputs = varied.inputs.map(({ input }) => input)
  if (inputs.length > subsets.length) return false
  const ranges = values.map(ends)
  return Array.from({ length: ROWS }, (_, row) => row).every(row => {
    const isHigh = (k: number) => row > 0 && ((subsets[k]! >> (row - 1)) & 1) === 1
    const reason = unsound(partsAt(varied.parts, inputs, k => ranges[k]![isHigh(k) ? 1 : 0]))
    return !reason || reason.why === 'would tip'
  })
}
