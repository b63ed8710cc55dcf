import {
  type BottomedOut,
  type Caution,
  type Metres,
  type NotConverged,
  numberProblem,
  refuse,
} from '../quantities/index.ts'
import { type SettledUnit, type Sides, settle } from './settle.ts'
import type { Unit } from './unit.ts'
import type { UnitQuestion } from './unitQuestion.ts'

export type BenchSetting = {
  readonly outcome: 'settled'
  readonly benchHeight: Metres
  /** What the edge must be raised by, from the present setting; negative: lowered. */
  readonly change: { readonly left: Metres; readonly right: Metres }
  /** How far the front roller must be moved down at each end for that. */
  readonly rollerTravel: { readonly left: Metres; readonly right: Metres }
  readonly cautions: readonly Caution[]
}

/** The setting that brings a settled unit to a wanted height, along the edge: the drop itself holds (h_b − R_f)(1 − cos θ). */
export function benchFor(unit: Unit, settled: SettledUnit, wanted: Metres): Sides {
  const cosine = Math.cos(settled.pitch)
  const at = (side: keyof Sides) => unit.benchHeight + (wanted - settled.effectiveHeight[side]) / cosine
  return { left: at('left'), middle: at('middle'), right: at('right') }
}

/**
 * Bench height that makes the unit cut at a wanted height on this turf.
 *
 *   h_b = wanted + drop − unrecovered;  roller travel = change/(1 − c/B)
 *
 * Holds   the sinkage does not hang on the bench height: heights of weights stay as given
 * Sign    change positive upwards
 * Units   [m]
 * Throws  InputError as settle; the wanted height must be more than 0
 * Source  derived (docs/physics.md §4)
 */
export function benchHeightFor(
  question: Omit<UnitQuestion, 'balance'> & { readonly effectiveHeight: Metres },
): BenchSetting | BottomedOut | NotConverged {
  const { unit, effectiveHeight } = question
  refuse(numberProblem(effectiveHeight, 'effectiveHeight', 'height', { above: 0 }))
  const settled = settle(question)
  if (settled.outcome !== 'settled') return settled
  const setting = benchFor(unit, settled, effectiveHeight)
  const change = { left: setting.left - unit.benchHeight, right: setting.right - unit.benchHeight }
  const travel = (amount: Metres) => amount / (1 - unit.edge / unit.wheelbase)
  return {
    outcome: 'settled',
    benchHeight: setting.middle,
    change,
    rollerTravel: { left: travel(change.left), right: travel(change.right) },
    cautions: settled.cautions,
  }
}
