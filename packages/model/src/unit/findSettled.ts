import { findPressing, type Pressing } from '../contact/index.ts'
import type { BottomedOut, Newtons, NotConverged, Radians } from '../quantities/index.ts'
import { curveOf } from '../turf/index.ts'
import {
  type Axle,
  type Axles,
  axlesOf,
  type LeaningAxle,
  leaningAxle,
  meetsTrack,
  trackAxle,
} from './axle.ts'
import { AT_REST, type Balance, balanceOf, type Resistances, rearLoad, tiltFor } from './balance.ts'
import type { UnitQuestion } from './unitQuestion.ts'

/** The state in which unit and turf are at rest. */
export type Found = {
  readonly front: Pressing
  readonly rear: Pressing
  readonly frontLoad: Newtons
  readonly rearLoad: Newtons
  readonly tilt: Radians
  /** Right side deeper positive. */
  readonly roll: Radians
  /** What the turf answers under each roller, and its moment about the middle. */
  readonly answers: { readonly front: Answer; readonly rear: Answer }
  readonly resistances: Resistances
  readonly balance: Balance
  readonly axles: Axles
}

type Answer = { readonly load: Newtons; readonly moment: number }

const MOST_TURNS = 40
/** On ln(load): the quadratures under it are good to about 1e-13. */
const BALANCED = 2e-12
/** As near as the level state need be where the lean goes on from it: Newton squares what is left. */
const NEARLY = 1e-3
/** On the moment across, as a part of the weight times the roller's length: its Jacobian leaves out the free ends. */
const BALANCED_ACROSS = 1e-11

const failed = (iterations: number, residual: number): NotConverged => ({
  outcome: 'not converged',
  where: 'unit',
  iterations,
  residual,
  cautions: [],
})

function levelState(
  question: UnitQuestion,
  axles: Axles,
  balance: Balance,
  resistances: Resistances,
  tolerance: number | undefined,
): Found | BottomedOut | NotConverged {
  const { load: onRear } = rearLoad(balance, 0, 1)
  const onFront = balance.total - onRear
  if (!(onRear > 0 && onFront > 0)) return failed(0, 1)
  const front = findPressing(axles.front.question, onFront, 'front', axles.front.on, tolerance)
  if ('outcome' in front) return front
  const rear = findPressing(axles.rear.question, onRear, 'rear', axles.rear.on, tolerance)
  if ('outcome' in rear) return rear
  return {
    front,
    rear,
    frontLoad: onFront,
    rearLoad: onRear,
    tilt: (rear.sinkage - front.sinkage) / question.unit.wheelbase,
    roll: 0,
    answers: { front: { load: front.load, moment: 0 }, rear: { load: rear.load, moment: 0 } },
    resistances,
    balance,
    axles,
  }
}

type Guess = { front: number; rear: number; roll: number }

/** One Newton step on (ln z_f, ln z_r, φ) with the balance of moments inside; undefined when a load turns negative. */
function step(
  balance: Balance,
  state: { front: LeaningAxle; rear: LeaningAxle; rearFrom: number },
  tilted: boolean,
  length: number,
):
  | { residual: number; across: number; change: Guess; onFront: number; onRear: number; tilt: number }
  | undefined {
  const { front, rear } = state
  // the unknowns are the logarithms of the depths each roller is pressed by
  const deepFront = front.middle.sinkage
  const deepRear = rear.middle.sinkage - state.rearFrom
  const { sine, cosine, tilt } = tiltFor(balance, rear.middle.sinkage - deepFront)
  const level = { sine: 0, cosine: 1 }
  const onRear = rearLoad(balance, tilted ? sine : level.sine, tilted ? cosine : level.cosine)
  const onFront = balance.total - onRear.load
  if (!(onRear.load > 0 && onFront > 0 && front.load > 0 && rear.load > 0)) return undefined
  const missFront = Math.log(front.load / onFront)
  const missRear = Math.log(rear.load / onRear.load)
  const missAcross = (front.moment + rear.moment - balance.sideways) / (balance.total * length)
  // d tilt/d(z_r − z_f)
  const shift = tilted ? onRear.slope / (balance.wheelbase * cosine + balance.rise * sine) : 0
  const scale = balance.total * length
  const m = [
    [
      (front.loadByDepth / front.load - shift / onFront) * deepFront,
      (shift / onFront) * deepRear,
      front.loadByLean / front.load,
    ],
    [
      (shift / onRear.load) * deepFront,
      (rear.loadByDepth / rear.load - shift / onRear.load) * deepRear,
      rear.loadByLean / rear.load,
    ],
    [
      (front.loadByLean * deepFront) / scale,
      (rear.loadByLean * deepRear) / scale,
      (front.momentByLean + rear.momentByLean) / scale,
    ],
  ] as const
  const [a, b, c] = m[0]
  const [d, e, f] = m[1]
  const [g, h, i] = m[2]
  const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
  const [u, v, w] = [-missFront, -missRear, -missAcross]
  return {
    residual: Math.max(Math.abs(missFront), Math.abs(missRear)),
    across: Math.abs(missAcross),
    change: {
      front: (u * (e * i - f * h) - b * (v * i - f * w) + c * (v * h - e * w)) / determinant,
      rear: (a * (v * i - f * w) - u * (d * i - f * g) + c * (d * w - v * g)) / determinant,
      roll: (a * (e * w - v * h) - b * (d * w - v * g) + u * (d * h - e * g)) / determinant,
    },
    onFront,
    onRear: onRear.load,
    tilt,
  }
}

const tooDeep = ({ question, on }: Axle, sinkage: number, roll: number): boolean =>
  sinkage + (Math.abs(roll) * question.roller.length) / 2 > on.limit

/** Where the rear roller starts: a track may lie deeper than it sank the round before. */
function startInTrack(
  { question, on }: Axle,
  { rear, rearLoad: load }: Found,
): Pressing | BottomedOut | NotConverged {
  const { from = 0 } = on
  return rear.sinkage > from ? rear : findPressing(question, load, 'rear', on)
}

/** Newton from the level state. */
function lean(
  question: UnitQuestion,
  axles: Axles,
  balance: Balance,
  start: Found,
): Found | BottomedOut | NotConverged {
  const tilted = question.balance !== 'level'
  const { length } = question.unit.frontRoller
  const rearFrom = axles.rear.on.from ?? 0
  const rear = startInTrack(axles.rear, start)
  if ('outcome' in rear) return rear
  let guess: Guess = { front: start.front.sinkage, rear: rear.sinkage, roll: start.roll }
  // nothing of the balance is met before the first step
  let residual = 1
  for (let turn = 1; turn <= MOST_TURNS; turn++) {
    for (const where of ['front', 'rear'] as const)
      if (tooDeep(axles[where], guess[where], guess.roll)) {
        const load = where === 'front' ? start.frontLoad : start.rearLoad
        return {
          outcome: 'bottomed out',
          where,
          load,
          lockingDepth: curveOf(question.turf.law).pole,
          cautions: [],
        }
      }
    const front = leaningAxle(axles.front, guess.front, guess.roll)
    const rear = leaningAxle(axles.rear, guess.rear, guess.roll)
    const found = step(balance, { front, rear, rearFrom }, tilted, length)
    if (!found) return failed(turn, residual)
    residual = Math.max(found.residual, found.across)
    if (found.residual <= BALANCED && found.across <= BALANCED_ACROSS)
      return {
        front: front.middle,
        rear: rear.middle,
        frontLoad: found.onFront,
        rearLoad: found.onRear,
        tilt: found.tilt,
        roll: guess.roll,
        answers: { front, rear },
        resistances: start.resistances,
        balance,
        axles,
      }
    const { change } = found
    const damp = Math.min(1, 1 / Math.max(Math.abs(change.front), Math.abs(change.rear), 1))
    guess = {
      front: guess.front * Math.exp(damp * change.front),
      rear: rearFrom + (guess.rear - rearFrom) * Math.exp(damp * change.rear),
      roll: guess.roll + damp * change.roll,
    }
  }
  return failed(MOST_TURNS, residual)
}

/** Rolling resistance matters to the balance only through a pull at the hitch. */
const pulls = (question: UnitQuestion): boolean =>
  question.unit.hitchHeight !== undefined && meetsTrack(question)

/** Whether the rollers hang together in more ways than lean and track: then no roller can be tabulated by itself. */
export const isCoupled = (question: UnitQuestion): boolean =>
  pulls(question) || balanceOf(question.unit).sideways !== 0

const MOST_ROUNDS = 40
/** On the front sinkage, and on the resistances as a part of the weight: both hardly move what they hang on. */
const STEADY = 1e-12

const steady = (last: Found, found: Found): boolean =>
  Math.abs(found.front.sinkage - last.front.sinkage) <= STEADY * found.front.sinkage &&
  Math.abs(found.rear.sinkage - last.rear.sinkage) <= STEADY * found.rear.sinkage

/**
 * The state in which unit and turf are at rest; unchecked. What hangs on the state itself (the track that the rear
 * roller meets, the resistance that a pull overcomes) is put in from the round before until nothing moves.
 */
export function findSettled(
  question: UnitQuestion,
  fresh = axlesOf(question),
): Found | BottomedOut | NotConverged {
  const isLevel = question.balance === 'level'
  const again = meetsTrack(question)
  let resistances = AT_REST
  let axles = fresh
  let last: Found | undefined
  for (let round = 1; round <= MOST_ROUNDS; round++) {
    const balance = balanceOf(question.unit, resistances)
    const stays = isLevel && balance.sideways === 0
    const level =
      last && !isLevel
        ? { ...last, resistances }
        : levelState(question, axles, balance, resistances, stays ? undefined : NEARLY)
    if ('outcome' in level) return level
    const found = stays ? level : lean(question, axles, balance, level)
    if ('outcome' in found || !again) return found
    if (last && steady(last, found)) return found
    last = found
    axles = { front: fresh.front, rear: trackAxle(question, found.front.sinkage) }
    if (pulls(question))
      resistances = {
        front: axles.front.describe(found.front).resistance,
        rear: found.axles.rear.describe(found.rear).resistance,
      }
  }
  return failed(MOST_ROUNDS, 1)
}
