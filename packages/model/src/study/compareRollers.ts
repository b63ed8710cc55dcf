import { type Arc, type Condition, type Headland, headland, type PressedSettled } from '../contact/index.ts'
import {
  type BottomedOut,
  describe,
  type Metres,
  type Newtons,
  type NotConverged,
  numberProblem,
  type Problem,
  refuse,
} from '../quantities/index.ts'
import { type Roller, rollerProblems } from '../roller/index.ts'
import type { Turf } from '../turf/index.ts'
import { benchFor, type SettledUnit, settleSound, type Unit, unitQuestionProblems } from '../unit/index.ts'
import { type Position, rollerAt, sameRoller, swapRoller } from './swapRoller.ts'

export type CompareQuestion = {
  readonly unit: Unit
  readonly rollers: Readonly<Record<string, Roller>>
  readonly turf: Turf
  readonly condition: Condition
  /** Height to hold; that of the fitted roller unless given. */
  readonly effectiveHeight?: Metres
  /** Which roller is changed; 'front' unless given. */
  readonly position?: Position
  /** Radius of a headland turn: adds how far each roller slides on it. */
  readonly headlandRadius?: Metres
  readonly arc?: Arc
}

type Compared = Pick<
  PressedSettled,
  'meanPressure' | 'peakPressure' | 'bearingFraction' | 'relief' | 'grooveFloor' | 'accuracy'
> & {
  readonly outcome: 'settled'
  readonly frontLoad: Newtons
  readonly rearLoad: Newtons
  /** Of the roller compared, and of the one at the other end. */
  readonly sinkage: Metres
  readonly otherSinkage: Metres
  readonly drop: Metres
  /** With the bench left as it is. */
  readonly effectiveHeight: Metres
  /** Effective height minus that of the fitted roller; null when the fitted one has no answer. */
  readonly change: Metres | null
  /** Bench height that holds the height, measured with this roller fitted; null when there is no height to hold. */
  readonly benchHeight: Metres | null
  /** What the adjuster must raise the edge by, from the old setting. */
  readonly benchChange: Metres | null
  /** On the headland turn, where one is asked for. */
  readonly sliding?: Headland
  readonly cautions: SettledUnit['cautions']
}

export type ComparedRoller = {
  readonly name: string
  readonly fitted: boolean
  readonly roller: Roller
} & (Compared | BottomedOut | NotConverged)

function questionProblems(question: CompareQuestion): Problem[] {
  const { rollers, effectiveHeight, position, headlandRadius } = question
  const names = Object.keys(rollers)
  return [
    ...unitQuestionProblems(question),
    ...(names.length === 0 ? [{ path: 'rollers', expected: 'at least one roller', received: 'none' }] : []),
    ...names.flatMap(name => rollerProblems(rollers[name]!, `rollers.${name}`)),
    ...(effectiveHeight === undefined
      ? []
      : numberProblem(effectiveHeight, 'effectiveHeight', 'height', { above: 0 })),
    ...(headlandRadius === undefined
      ? []
      : numberProblem(headlandRadius, 'headlandRadius', 'turnRadius', { above: 0 })),
    ...(position === undefined || position === 'front' || position === 'rear'
      ? []
      : [{ path: 'position', expected: 'one of front, rear', received: describe(position) }]),
  ]
}

/**
 * Every roller of a rack on the same unit and turf, with the bench left alone and with the bench height that would
 * hold the height.
 *
 *   change = h_e(roller) − h_e(fitted);  bench change = bench height − (h_b + ½ΔD share)
 *
 * Sign    change positive when the roller cuts higher
 * Units   [m], [N], [Pa]
 * Throws  InputError when unit, turf, condition or a roller make no sense
 * Source  derived (docs/physics.md §4)
 */
export function compareRollers(question: CompareQuestion): ComparedRoller[] {
  refuse(questionProblems(question))
  const { unit, rollers, turf, condition, position = 'front', headlandRadius: radius, arc } = question
  const shared = { turf, condition, ...(arc ? { arc } : {}) }
  const fittedRoller = rollerAt(unit, position)
  const fitted = settleSound({ unit, ...shared })
  const fittedHeight = fitted.outcome === 'settled' ? fitted.effectiveHeight.middle : null
  const wanted = question.effectiveHeight ?? fittedHeight
  return Object.entries(rollers).map(([name, roller]) => {
    const named = { name, fitted: sameRoller(roller, fittedRoller), roller }
    const swapped = swapRoller(unit, position, roller)
    const settled = settleSound({ unit: swapped, ...shared })
    if (settled.outcome !== 'settled') return { ...named, ...settled }
    const [changed, other] =
      position === 'front' ? [settled.front, settled.rear] : [settled.rear, settled.front]
    const { meanPressure, peakPressure, bearingFraction, relief, grooveFloor, accuracy } = changed
    const benchHeight = wanted === null ? null : benchFor(swapped, settled, wanted).middle
    return {
      ...named,
      outcome: 'settled',
      frontLoad: settled.front.load,
      rearLoad: settled.rear.load,
      sinkage: changed.sinkage,
      otherSinkage: other.sinkage,
      drop: settled.drop.middle,
      effectiveHeight: settled.effectiveHeight.middle,
      change: fittedHeight === null ? null : settled.effectiveHeight.middle - fittedHeight,
      benchHeight,
      benchChange: benchHeight === null ? null : benchHeight - swapped.benchHeight,
      meanPressure,
      peakPressure,
      bearingFraction,
      relief,
      grooveFloor,
      accuracy,
      ...(radius === undefined ? {} : { sliding: headland({ roller, load: changed.load, radius }) }),
      cautions: settled.cautions,
    }
  })
}
