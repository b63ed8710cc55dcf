import type { PressedSettled, Pressing } from '../contact/index.ts'
import {
  type BottomedOut,
  type Caution,
  type Metres,
  type Newtons,
  type NotConverged,
  type Radians,
  refuse,
} from '../quantities/index.ts'
import { clipOf } from './clipOf.ts'
import { type Found, findSettled } from './findSettled.ts'
import { type Force, forcesOn, remainders } from './forces.ts'
import { withBuildUp } from './raised.ts'
import { unrecoveredAtEdge } from './track.ts'
import type { Unit } from './unit.ts'
import { type UnitQuestion, unitQuestionProblems } from './unitQuestion.ts'

/** Along the edge, from its left end to its right one. */
export type Sides = { readonly left: Metres; readonly middle: Metres; readonly right: Metres }

/** As it is in the middle; the load is the whole roller's. */
export type AxleSettled = PressedSettled & { readonly load: Newtons }

export type SettledUnit = {
  readonly outcome: 'settled'
  readonly front: AxleSettled
  readonly rear: AxleSettled
  /** Rear deeper positive. */
  readonly pitch: Radians
  /** Right side deeper positive. */
  readonly roll: Radians
  /** Bench height, as it was set, minus the height of the edge above undisturbed turf. */
  readonly drop: Sides
  /** What has stuck to the rollers lifts the edge by; in the drop already. */
  readonly lift: Metres
  readonly effectiveHeight: Sides
  /** Depression the front roller left and the edge still meets. */
  readonly unrecovered: Metres
  /** (z_f − z_r)/B: how the unit leans against its attitude on the bench. */
  readonly attitude: number
  /** Travel between two blades; there while mowing with a cylinder whose blades and turns are given. */
  readonly clip?: Metres
  readonly forces: readonly Force[]
  /** What the forces leave of their sums, moments about the front axle. */
  readonly balance: { readonly down: Newtons; readonly forward: Newtons; readonly moment: number }
  readonly cautions: readonly Caution[]
}

export type Settled = SettledUnit | BottomedOut | NotConverged

function unitCautions({ unit, balance }: UnitQuestion, height: Metres): Caution[] {
  const axle = unit.frontRoller.diameter / 2
  const unknown = balance !== 'level' && unit.body.height === undefined
  return [
    ...(unknown ? [{ kind: 'height not given', value: axle } as const] : []),
    ...(height <= 0 ? [{ kind: 'cuts into the turf', value: height } as const] : []),
  ]
}

/**
 * A cutting unit set down on turf, or rolling over it: how deep each roller sinks and at what height it cuts.
 *
 *   F_f + F_r = Σ N,  F_r X(B, R_r) = Σ N X(x, h) + Σ T Y(x, h)
 *   X = x cos θ + (h − R_f) sin θ,  Y = (h − R_f) cos θ − x sin θ
 *   across: ∫ q(z + φ y) y dy over both rollers = Σ N y + Σ (weight across the slope) h
 *   drop = z_f + c sin θ + (h_b − R_f)(1 − cos θ) + φ y;  level: z_f + (z_r − z_f) c/B + φ y
 *   h_e = h_b − drop + depression not yet recovered at the edge (standing: none); build-up's lift is taken off the drop
 *
 * Holds   small leans; mowing, the rear roller runs on the front roller's track
 * Sign    drop positive down, pitch positive with the rear deeper, roll with the right side deeper
 * Units   lengths [m], loads [N], pitch and roll [rad]
 * Throws  InputError when unit, turf or condition make no sense or the unit would tip
 * Source  derived (docs/physics.md §4)
 */
export function settle(question: UnitQuestion): Settled {
  refuse(unitQuestionProblems(question))
  return settleSound(question)
}

/** settle for a question known to be sound; a bench height may then lie anywhere, as after a change of roller. */
export function settleSound(asked: UnitQuestion): Settled {
  const question = { ...asked, unit: withBuildUp(asked.unit) }
  const found = findSettled(question)
  if ('outcome' in found) return found
  const lift = question.unit.benchHeight - asked.unit.benchHeight
  return describeSettled(question, found, lift)
}

/** Drop of the edge in its middle, and the depression it still meets there. */
export function heightsOf(question: UnitQuestion, found: Found): { drop: Metres; unrecovered: Metres } {
  const { unit, balance } = question
  const { edge, wheelbase, benchHeight } = unit
  const { front, rear, tilt } = found
  const drop =
    balance === 'level'
      ? front.sinkage + ((rear.sinkage - front.sinkage) * edge) / wheelbase
      : front.sinkage +
        edge * Math.sin(tilt) +
        (benchHeight - unit.frontRoller.diameter / 2) * (1 - Math.cos(tilt))
  return { drop, unrecovered: unrecoveredAtEdge(question, front.sinkage) }
}

/** A value at the left end, the middle and the right end of the edge. */
const along = (unit: Unit, valueAt: (y: Metres) => Metres): Sides => {
  const half = (unit.edgeLength ?? unit.frontRoller.length) / 2
  return { left: valueAt(-half), middle: valueAt(0), right: valueAt(half) }
}

const clipWhile = ({ unit: { cylinder }, condition }: UnitQuestion): { clip?: Metres } =>
  cylinder && condition.kind === 'mowing' ? { clip: clipOf({ ...cylinder, speed: condition.speed }) } : {}

function describeSettled(question: UnitQuestion, found: Found, lift: Metres): SettledUnit {
  const { unit } = question
  const { front, rear, frontLoad, rearLoad, tilt, roll, answers, resistances, balance, axles } = found
  const level = question.balance === 'level'
  const { drop, unrecovered } = heightsOf(question, found)
  const left = (y: Metres) =>
    roll === 0 ? unrecovered : unrecoveredAtEdge(question, Math.max(front.sinkage + roll * y, 0))
  const effectiveHeight = along(unit, y => unit.benchHeight - drop - roll * y + left(y))
  const forces = forcesOn(unit, {
    sine: level ? 0 : Math.sin(tilt),
    cosine: level ? 1 : Math.cos(tilt),
    answers,
    resistances,
    pull: balance.pull,
  })
  const axle = (name: 'front' | 'rear', pressing: Pressing, load: Newtons): AxleSettled => ({
    ...axles[name].describe(pressing),
    load,
  })
  const frontAxle = axle('front', front, frontLoad)
  const rearAxle = axle('rear', rear, rearLoad)
  const named = (where: string, cautions: readonly Caution[]) =>
    cautions.map(caution => ({ ...caution, where }))
  const lowest = Math.min(effectiveHeight.left, effectiveHeight.middle, effectiveHeight.right)
  return {
    outcome: 'settled',
    front: frontAxle,
    rear: rearAxle,
    pitch: tilt,
    roll,
    drop: along(unit, y => drop - lift + roll * y),
    lift,
    effectiveHeight,
    unrecovered,
    attitude: (front.sinkage - rear.sinkage) / unit.wheelbase,
    ...clipWhile(question),
    forces,
    balance: remainders(forces),
    cautions: [
      ...named('front roller', frontAxle.cautions),
      ...named('rear roller', rearAxle.cautions),
      ...unitCautions(question, lowest),
    ],
  }
}
