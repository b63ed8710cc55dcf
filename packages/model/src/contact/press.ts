import { increasingRoot } from '../numerics/index.ts'
import {
  type BottomedOut,
  type Caution,
  type Metres,
  type Newtons,
  type NewtonsPerMetre,
  type NotConverged,
  numberProblem,
  type Pascals,
  refuse,
} from '../quantities/index.ts'
import { isGrooved, type Roller, rollerProblems } from '../roller/index.ts'
import {
  type Curve,
  curveOf,
  REFERENCE_PRESSURE,
  shearOf,
  softnessOf,
  spreadAt,
  type Turf,
  turfProblems,
} from '../turf/index.ts'
import { type Arc, arcProblems } from './arc.ts'
import { type Condition, conditionProblems } from './condition.ts'
import { contactCautions } from './contactCautions.ts'
import { meanMatWork } from './hangingMat.ts'
import { quickAccuracy } from './quickGroove.ts'
import { type RollerOnTurf, rollerOnTurf } from './rollerOnTurf.ts'
import { isOnSprings, springPlace, springShare } from './springColumn.ts'
import type { Pressing } from './wholeRoller.ts'

export type ContactQuestion = {
  readonly roller: Roller
  readonly turf: Turf
  readonly condition: Condition
  readonly arc?: Arc
}

export type PressedSettled = {
  readonly outcome: 'settled'
  readonly sinkage: Metres
  /** Per length of face; free ends left out. */
  readonly lineLoad: NewtonsPerMetre
  readonly lengthAhead: Metres
  readonly lengthBehind: Metres
  /** Width of the smooth roller that would carry the same at the same sinkage. */
  readonly contactWidth: Metres
  readonly bearingFraction: number
  readonly meanPressure: Pascals
  readonly peakPressure: Pascals
  /** Line force where turf leaves the metal: on each land edge under the axis, or where it leaves a smooth roller. */
  readonly edgeForce: NewtonsPerMetre
  readonly grooveFloor: 'free' | 'touching'
  /** How far the mat stands up into the groove under the axis. */
  readonly relief: Metres
  /** Rolling resistance of the whole roller; 0 when standing. */
  readonly resistance: Newtons
  /** dW/dz, N/m. */
  readonly stiffness: number
  /** How far the model may be off in load at equal sinkage, relative; 0 where it is exact for its turf. */
  readonly accuracy: number
  readonly cautions: readonly Caution[]
}

export type Pressed = PressedSettled | BottomedOut | NotConverged

export function contactProblems({ roller, turf, condition, arc }: ContactQuestion) {
  return [
    ...rollerProblems(roller, 'roller'),
    ...turfProblems(turf, 'turf'),
    ...conditionProblems(condition, 'condition'),
    ...(arc === undefined ? [] : arcProblems(arc, 'arc')),
  ]
}

/** Work in the turf under the lowest line of the whole roller, per length of travel, J/m; its free ends count. */
export function workSpent(
  curve: Curve,
  shear: number,
  { surface, length }: Roller,
  sinkage: Metres,
  beyondEnd: Metres,
): number {
  const work = curve.work(sinkage)
  if (!isGrooved(surface)) return work * (length + 2 * beyondEnd)
  const { land } = surface
  return meanMatWork(curve, shear, surface, sinkage) * (length - land) + work * (land + 2 * beyondEnd)
}

/** What a pressing tells, as data. */
export function describePressing(question: ContactQuestion, pressing: Pressing): PressedSettled {
  const { roller, turf, condition } = question
  const { sinkage, leading, trailing, lineLoad, smoothLineLoad, grooves, beyondEnd } = pressing
  const curve = curveOf(turf.law)
  const bearingFraction = lineLoad / smoothLineLoad
  const lost = condition.kind === 'standing' ? 0 : 1 - (turf.rebound ?? 1)
  const touching = grooves?.lowest.touching ?? false
  const quick = grooves && shearOf(turf) > 0
  return {
    outcome: 'settled',
    sinkage,
    lineLoad,
    lengthAhead: leading.reach,
    lengthBehind: trailing.reach,
    contactWidth: bearingFraction * roller.length,
    bearingFraction,
    meanPressure: lineLoad / (leading.reach + trailing.reach),
    peakPressure: curve.pressure(sinkage),
    edgeForce: grooves ? grooves.lowest.edgeForce : leading.edgeForce,
    grooveFloor: touching ? 'touching' : 'free',
    relief: grooves ? sinkage - grooves.lowest.lowest : 0,
    resistance: lost === 0 ? 0 : lost * workSpent(curve, shearOf(turf), roller, sinkage, beyondEnd),
    stiffness: pressing.stiffness,
    accuracy: quick ? quickAccuracy(spreadAt(turf, sinkage) / leading.reach, touching, lost > 0) : 0,
    cautions: contactCautions(question, pressing),
  }
}

/** Tolerance on ln(load): the quadratures under it are good to about 1e-13. */
const BALANCED = 1e-12

/** Sinkage at which linear springs of the same softness would carry the load: the start of the search. */
export function firstGuess({ roller, turf }: ContactQuestion, load: Newtons): Metres {
  const k = REFERENCE_PRESSURE / softnessOf(turf.law)
  const R = roller.diameter / 2
  return ((3 * load) / (4 * k * roller.length * Math.sqrt(2 * R))) ** (2 / 3)
}

/** ln of the depth at which the search starts: the answer itself where a load is a closed form of it. */
function startFor(question: ContactQuestion, load: Newtons, { from = 0, limit }: RollerOnTurf): number {
  const guess = Math.log(Math.min(firstGuess(question, load), (limit - from) / 2))
  if (from > 0 || !isOnSprings(question)) return guess
  const { roller, turf } = question
  return springPlace(curveOf(turf.law), roller.diameter / 2, load / springShare(question), guess)
}

/** The pressing that carries a load, searched in the logarithm of the depth it is pressed by; unchecked. */
export function findPressing<Found extends Pressing = Pressing>(
  question: ContactQuestion,
  load: Newtons,
  where = 'roller',
  on: RollerOnTurf<Found> = rollerOnTurf(question) as RollerOnTurf<Found>,
  tolerance = BALANCED,
): Found | BottomedOut | NotConverged {
  const { from = 0, limit: deepest } = on
  let pressing: Found | undefined
  const root = increasingRoot({
    evaluate: x => {
      const by = Math.exp(x)
      pressing = on.at(from + by)
      return { value: Math.log(pressing.load / load), slope: (pressing.stiffness * by) / pressing.load }
    },
    start: startFor(question, load, on),
    tolerance,
    ...(Number.isFinite(deepest) ? { high: Math.log(deepest - from) } : {}),
  })
  if (root.outcome === 'converged' && pressing) return pressing
  const { pole, limit } = curveOf(question.turf.law)
  if (root.outcome === 'beyond' && deepest === limit)
    return { outcome: 'bottomed out', where, load, lockingDepth: pole, cautions: [] }
  return {
    outcome: 'not converged',
    where,
    iterations: root.iterations,
    residual: root.residual,
    cautions: [],
  }
}

/**
 * One roller pressed on turf by a load.
 *
 *   W(z₀) = load; W as in rollerOnTurf
 *
 * Holds   sinkage small against the radius; grooved rollers with spread to the accuracy the result states
 * Sign    sinkage positive into the turf, load positive down
 * Units   load [N] → sinkage [m], pressures [Pa], line load [N/m]
 * Throws  InputError when roller, turf, condition or load make no sense
 * Source  derived (docs/physics.md §3)
 */
export function press(question: ContactQuestion & { readonly load: Newtons }): Pressed {
  refuse([...contactProblems(question), ...numberProblem(question.load, 'load', 'load', { above: 0 })])
  const found = findPressing(question, question.load)
  return 'outcome' in found ? found : describePressing(question, found)
}

export type Loaded =
  | {
      readonly outcome: 'settled'
      readonly load: Newtons
      readonly lineLoad: NewtonsPerMetre
      readonly accuracy: number
      readonly cautions: readonly Caution[]
    }
  | BottomedOut

/**
 * Load that presses a roller to a sinkage: the inverse of press.
 *
 * Units   sinkage [m] → load [N], line load [N/m], free ends left out of the line load
 * Throws  InputError as press; the sinkage must be at least 0
 */
export function loadAt(question: ContactQuestion & { readonly sinkage: Metres }): Loaded | NotConverged {
  const { sinkage } = question
  refuse([...contactProblems(question), ...numberProblem(sinkage, 'sinkage', 'sinkage', { atLeast: 0 })])
  if (sinkage === 0) return { outcome: 'settled', load: 0, lineLoad: 0, accuracy: 0, cautions: [] }
  const on = rollerOnTurf(question)
  const { pole, limit } = curveOf(question.turf.law)
  if (sinkage > on.limit)
    return on.limit === limit
      ? { outcome: 'bottomed out', where: 'roller', lockingDepth: pole, cautions: [] }
      : {
          outcome: 'not converged',
          where: 'roller',
          iterations: 0,
          residual: sinkage / on.limit - 1,
          cautions: [],
        }
  const pressing = on.at(sinkage)
  const { lineLoad, accuracy, cautions } = describePressing(question, pressing)
  return { outcome: 'settled', load: pressing.load, lineLoad, accuracy, cautions }
}
