import {
  type Arc,
  type Condition,
  type ContactQuestion,
  conditionProblems,
  describePressing,
  findPressing,
  type PressedSettled,
  type Pressing,
  type RollerOnTurf,
  rollerOnTurf,
} from '../contact/index.ts'
import {
  type BottomedOut,
  type Caution,
  type Metres,
  type Newtons,
  type NotConverged,
  type Problem,
  type Radians,
  refuse,
} from '../quantities/index.ts'
import { curveOf, type Turf, turfProblems } from '../turf/index.ts'
import { balanceOf, type Force, forcesOn, rearLoad, remainders, tiltFor } from './balance.ts'
import { unrecoveredAtEdge } from './track.ts'
import { type Unit, unitProblems } from './unit.ts'

/** Along the edge; the same everywhere until left and right are told apart. */
export type Sides = { readonly left: Metres; readonly middle: Metres; readonly right: Metres }

export type UnitQuestion = {
  readonly unit: Unit
  readonly turf: Turf
  readonly condition: Condition
  /** 'tilted' unless 'level' is asked: whether the loads follow the unit as it leans. */
  readonly balance?: 'tilted' | 'level'
  readonly arc?: Arc
}

export type AxleSettled = PressedSettled & { readonly load: Newtons }

export type SettledUnit = {
  readonly outcome: 'settled'
  readonly front: AxleSettled
  readonly rear: AxleSettled
  /** Rear deeper positive. */
  readonly pitch: Radians
  readonly roll: Radians
  /** Bench height minus the height of the edge above undisturbed turf. */
  readonly drop: Sides
  readonly effectiveHeight: Sides
  /** Depression the front roller left and the edge still meets. */
  readonly unrecovered: Metres
  /** (z_f − z_r)/B: how the unit leans against its attitude on the bench. */
  readonly attitude: number
  readonly forces: readonly Force[]
  readonly balance: { readonly down: Newtons; readonly moment: number }
  readonly cautions: readonly Caution[]
}

export type Settled = SettledUnit | BottomedOut | NotConverged

export const unitQuestionProblems = ({ unit, turf, condition }: UnitQuestion): Problem[] => [
  ...unitProblems(unit, 'unit'),
  ...turfProblems(turf, 'turf'),
  ...conditionProblems(condition, 'condition'),
]

/** Both rollers of a unit on its turf, their constants worked out once. */
export type Axles = {
  readonly front: { readonly question: ContactQuestion; readonly on: RollerOnTurf }
  readonly rear: { readonly question: ContactQuestion; readonly on: RollerOnTurf }
}

export function axlesOf({ unit, turf, condition, arc }: UnitQuestion): Axles {
  const axle = (roller: Unit['frontRoller']) => {
    const question = { roller, turf, condition, ...(arc ? { arc } : {}) }
    return { question, on: rollerOnTurf(question) }
  }
  return { front: axle(unit.frontRoller), rear: axle(unit.rearRoller) }
}

type Found = { front: Pressing; rear: Pressing; frontLoad: Newtons; rearLoad: Newtons; tilt: Radians }

const MOST_TURNS = 30
/** On ln(load): the quadratures under it are good to about 1e-13. */
const BALANCED = 2e-12

const failed = (iterations: number, residual: number): NotConverged => ({
  outcome: 'not converged',
  where: 'unit',
  iterations,
  residual,
  cautions: [],
})

/** Newton on (ln z_f, ln z_r) with the balance of moments inside, from the level state. */
function lean(question: UnitQuestion, axles: Axles, start: Found): Found | NotConverged | 'too deep' {
  const balance = balanceOf(question.unit)
  let { front, rear } = start
  let residual = Number.NaN
  for (let turn = 1; turn <= MOST_TURNS; turn++) {
    const { sine, cosine, tilt } = tiltFor(balance, rear.sinkage - front.sinkage)
    const onRear = rearLoad(balance, sine, cosine)
    const onFront = balance.total - onRear.load
    if (!(onRear.load > 0 && onFront > 0)) return failed(turn, residual)
    const missFront = Math.log(front.load / onFront)
    const missRear = Math.log(rear.load / onRear.load)
    residual = Math.max(Math.abs(missFront), Math.abs(missRear))
    if (residual <= BALANCED) return { front, rear, frontLoad: onFront, rearLoad: onRear.load, tilt }
    // d tilt/d(z_r − z_f)
    const turnPerDepth = 1 / (balance.wheelbase * cosine + balance.rise * sine)
    const shift = onRear.slope * turnPerDepth
    const a = (front.stiffness / front.load - shift / onFront) * front.sinkage
    const b = (shift / onFront) * rear.sinkage
    const c = (shift / onRear.load) * front.sinkage
    const d = (rear.stiffness / rear.load - shift / onRear.load) * rear.sinkage
    const determinant = a * d - b * c
    const stepFront = (b * missRear - d * missFront) / determinant
    const stepRear = (c * missFront - a * missRear) / determinant
    const damp = Math.min(1, 1 / Math.max(Math.abs(stepFront), Math.abs(stepRear), 1))
    const deeperFront = front.sinkage * Math.exp(damp * stepFront)
    const deeperRear = rear.sinkage * Math.exp(damp * stepRear)
    if (deeperFront > axles.front.on.limit || deeperRear > axles.rear.on.limit) return 'too deep'
    front = axles.front.on.at(deeperFront)
    rear = axles.rear.on.at(deeperRear)
  }
  return failed(MOST_TURNS, residual)
}

function levelState(question: UnitQuestion, axles: Axles): Found | BottomedOut | NotConverged {
  const balance = balanceOf(question.unit)
  const { load: onRear } = rearLoad(balance, 0, 1)
  const onFront = balance.total - onRear
  const front = findPressing(axles.front.question, onFront, 'front', axles.front.on)
  if ('outcome' in front) return front
  const rear = findPressing(axles.rear.question, onRear, 'rear', axles.rear.on)
  if ('outcome' in rear) return rear
  const tilt = (rear.sinkage - front.sinkage) / question.unit.wheelbase
  return { front, rear, frontLoad: onFront, rearLoad: onRear, tilt }
}

/** The state in which unit and turf are at rest; unchecked. */
export function findSettled(
  question: UnitQuestion,
  axles = axlesOf(question),
): Found | BottomedOut | NotConverged {
  const level = levelState(question, axles)
  if ('outcome' in level || question.balance === 'level') return level
  const leant = lean(question, axles, level)
  if (leant !== 'too deep') return leant
  const { rear } = level
  const where = rear.sinkage > level.front.sinkage ? 'rear' : 'front'
  const load = where === 'rear' ? level.rearLoad : level.frontLoad
  const lockingDepth = curveOf(question.turf.law).pole
  return { outcome: 'bottomed out', where, load, lockingDepth, cautions: [] }
}

const same = (value: Metres): Sides => ({ left: value, middle: value, right: value })

function unitCautions({ unit, condition, balance }: UnitQuestion, height: Metres): Caution[] {
  const axle = unit.frontRoller.diameter / 2
  const unknown = balance !== 'level' && unit.body.height === undefined
  return [
    ...(unknown ? [{ kind: 'height not given', value: axle } as const] : []),
    ...(condition.kind === 'mowing' ? [{ kind: 'rear roller on fresh turf' } as const] : []),
    ...(height <= 0 ? [{ kind: 'cuts into the turf', value: height } as const] : []),
  ]
}

/**
 * A cutting unit set down on turf, or rolling over it: how deep each roller sinks and at what height it cuts.
 *
 *   F_f + F_r = Σ m g,  F_r X(B, R_r) = Σ m g X(x, h),  X(x, h) = x cos θ + (h − R_f) sin θ
 *   drop = z_f + c sin θ + (h_b − R_f)(1 − cos θ);  level: z_f + (z_r − z_f) c/B
 *   h_e = h_b − drop + depression not yet recovered at the edge (standing: none)
 *
 * Holds   on level ground, weights alone, left and right alike, the rear roller on fresh turf
 * Sign    drop positive down, pitch positive with the rear deeper
 * Units   lengths [m], loads [N], pitch [rad]
 * Throws  InputError when unit, turf or condition make no sense or the unit would tip
 * Source  derived (docs/physics.md §4)
 */
export function settle(question: UnitQuestion): Settled {
  refuse(unitQuestionProblems(question))
  const axles = axlesOf(question)
  const found = findSettled(question, axles)
  return 'outcome' in found ? found : describeSettled(question, axles, found)
}

/** Drop at the edge, and the depression it still meets. */
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

function describeSettled(question: UnitQuestion, axles: Axles, found: Found): SettledUnit {
  const { unit } = question
  const { front, rear, frontLoad, rearLoad: onRear, tilt } = found
  const level = question.balance === 'level'
  const { drop, unrecovered } = heightsOf(question, found)
  const height = unit.benchHeight - drop + unrecovered
  const forces = forcesOn(unit, {
    sinkage: front.sinkage,
    sine: level ? 0 : Math.sin(tilt),
    cosine: level ? 1 : Math.cos(tilt),
    front: front.load,
    rear: rear.load,
  })
  const axle = (name: 'front' | 'rear', pressing: Pressing, load: Newtons): AxleSettled => ({
    ...describePressing(axles[name].question, pressing),
    load,
  })
  const frontAxle = axle('front', front, frontLoad)
  const rearAxle = axle('rear', rear, onRear)
  const named = (where: string, cautions: readonly Caution[]) =>
    cautions.map(caution => ({ ...caution, where }))
  return {
    outcome: 'settled',
    front: frontAxle,
    rear: rearAxle,
    pitch: tilt,
    roll: 0,
    drop: same(drop),
    effectiveHeight: same(height),
    unrecovered,
    attitude: (front.sinkage - rear.sinkage) / unit.wheelbase,
    forces,
    balance: remainders(forces),
    cautions: [
      ...named('front roller', frontAxle.cautions),
      ...named('rear roller', rearAxle.cautions),
      ...unitCautions(question, height),
    ],
  }
}
