import {
  type BottomedOut,
  type Caution,
  type Metres,
  type NotConverged,
  numberProblem,
  refuse,
} from '../quantities/index.ts'
import { type SettledUnit, settle, type UnitQuestion } from './settle.ts'
import type { Unit } from './unit.ts'

export type BenchSetting = {
  readonly outcome: 'settled'
  readonly benchHeight: Metres
  /** What the edge must be raised by, from the present setting; negative: lowered. */
  readonly change: { readonly left: Metres; readonly right: Metres }
  /** How far the front roller must be moved down at each end for that. */
  readonly rollerTravel: { readonly left: Metres; readonly right: Metres }
  readonly cautions: readonly Caution[]
}

/** The setting that brings a settled unit to a wanted height: the drop itself holds (h_b − R_f)(1 − cos θ). */
export function benchFor(unit: Unit, settled: SettledUnit, wanted: Metres): Metres {
  const cosine = Math.cos(settled.pitch)
  return (wanted + settled.drop.middle - unit.benchHeight * (1 - cosine) - settled.unrecovered) / cosine
}

/**
 * Bench height that makes the unit cut at a wanted height on this turf.
 *
 *   h_b = wanted + drop − unrecovered;  roller travel = change/(1 − c/B)
 *
 * Holds   the sinkage does not hang on the bench height: heights of weights stay as given
 * Sign    change positive upwards
 * Units   [m]
 * Throws  InputError as settle; the wanted height must be finite
 * Source  derived (docs/physics.md §4)
 */
export function benchHeightFor(
  question: Omit<UnitQuestion, 'balance'> & { readonly effectiveHeight: Metres },
): BenchSetting | BottomedOut | NotConverged {
  const { unit, effectiveHeight } = question
  refuse(numberProblem(effectiveHeight, 'effectiveHeight', 'height'))
  const settled = settle(question)
  if (settled.outcome !== 'settled') return settled
  const benchHeight = benchFor(unit, settled, effectiveHeight)
  const change = benchHeight - unit.benchHeight
  const travel = change / (1 - unit.edge / unit.wheelbase)
  return {
    outcome: 'settled',
    benchHeight,
    change: { left: change, right: change },
    rollerTravel: { left: travel, right: travel },
    cautions: settled.cautions,
  }
}
