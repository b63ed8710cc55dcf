import {
  type Arc,
  type Condition,
  type ContactQuestion,
  describeOnTrack,
  describePressing,
  type PressedSettled,
  type Pressing,
  type RollerOnTurf,
  rollerOnTrack,
  rollerOnTurf,
  type TrackPressing,
  trackBehind,
} from '../contact/index.ts'
import { gaussLegendre } from '../numerics/index.ts'
import type { Metres, Newtons } from '../quantities/index.ts'
import type { Roller } from '../roller/index.ts'
import type { Turf } from '../turf/index.ts'
import type { Unit } from './unit.ts'

/** One roller of a unit on its turf, its constants worked out once. */
export type Axle = {
  readonly question: ContactQuestion
  readonly on: RollerOnTurf
  /** What a pressing of this very axle tells, as data. */
  readonly describe: (pressing: Pressing) => PressedSettled
}

export type Axles = { readonly front: Axle; readonly rear: Axle }

type Question = {
  readonly unit: Unit
  readonly turf: Turf
  readonly condition: Condition
  readonly arc?: Arc
}

const asked = ({ turf, condition, arc }: Question, roller: Roller): ContactQuestion => ({
  roller,
  turf,
  condition,
  ...(arc ? { arc } : {}),
})

/** A roller on turf that nothing has pressed before it. */
export function freshAxle(question: Question, end: 'frontRoller' | 'rearRoller'): Axle {
  const contact = asked(question, question.unit[end])
  return {
    question: contact,
    on: rollerOnTurf(contact),
    describe: pressing => describePressing(contact, pressing),
  }
}

export const axlesOf = (question: Question): Axles => ({
  front: freshAxle(question, 'frontRoller'),
  rear: freshAxle(question, 'rearRoller'),
})

/** Whether the rear roller meets what the front roller left: mowing on turf that does not spring back at once. */
export const meetsTrack = ({ condition, turf }: Pick<Question, 'condition' | 'turf'>): boolean =>
  condition.kind === 'mowing' && (turf.rebound ?? 1) < 1

/**
 * The rear roller on the front roller's track, B/speed after it.
 *
 * Holds   the track is the one in the middle of the front roller; its length is taken to cover the rear one's
 */
export function trackAxle(question: Question, frontSinkage: Metres): Axle {
  const { unit, turf, condition, arc } = question
  const contact = asked(question, unit.rearRoller)
  const time = condition.kind === 'mowing' ? unit.wheelbase / condition.speed : 0
  const track = trackBehind(turf, unit.frontRoller.surface, frontSinkage, time)
  const on = rollerOnTrack({ roller: unit.rearRoller, turf, track, ...(arc ? { arc } : {}) })
  return {
    question: contact,
    on,
    // a pressing of this axle is one of `on`, which tells more than the type of the fresh axle says
    describe: pressing => describeOnTrack({ ...contact, track }, pressing as TrackPressing),
  }
}

/** A roller that leans sideways: its load, its moment about the middle, and how both answer depth and lean. */
export type LeaningAxle = {
  readonly middle: Pressing
  readonly load: Newtons
  /** Positive when the right side carries more, N m. */
  readonly moment: number
  readonly loadByDepth: number
  /** d load/d lean, which is also d moment/d depth. */
  readonly loadByLean: number
  readonly momentByLean: number
}

/** Along a roller that presses everywhere, and along one whose end may leave the turf. */
const PRESSING = gaussLegendre(4)
const LIFTING = gaussLegendre(12)
/** A lean that takes less than this part of the sinkage at an end is a small one. */
const SMALL = 0.5

const NOTHING = { lineLoad: 0, load: 0, stiffness: 0 }

/**
 * A roller pressed deeper at one end than at the other.
 *
 *   z(y) = z + φ y;  load = ∫ q dy + ends,  moment = ∫ q y dy + ends · (± L/2)
 *
 * Holds   what the free ends carry acts at the ends; an end that leaves the turf carries nothing
 * Sign    φ positive with the right side deeper
 * Source  docs/physics.md §4
 */
export function leaningAxle({ question, on }: Axle, sinkage: Metres, lean: number): LeaningAxle {
  const middle = on.at(sinkage)
  const { length } = question.roller
  if (lean === 0)
    return {
      middle,
      load: middle.load,
      moment: 0,
      loadByDepth: middle.stiffness,
      loadByLean: 0,
      momentByLean: (middle.stiffness * length * length) / 12,
    }
  const at = (y: Metres) => {
    const depth = sinkage + lean * y
    return depth > (on.from ?? 0) ? on.at(depth) : NOTHING
  }
  const pressed = sinkage - (on.from ?? 0)
  const { nodes, weights } = (Math.abs(lean) * length) / 2 < SMALL * pressed ? PRESSING : LIFTING
  let load = 0
  let moment = 0
  let loadByDepth = 0
  let loadByLean = 0
  let momentByLean = 0
  for (let i = 0; i < nodes.length; i++) {
    const y = (nodes[i]! - 0.5) * length
    const weight = weights[i]!
    const here = at(y)
    load += weight * length * here.lineLoad
    moment += weight * length * here.lineLoad * y
    loadByDepth += weight * here.stiffness
    loadByLean += weight * here.stiffness * y
    momentByLean += weight * here.stiffness * y * y
  }
  for (const y of [-length / 2, length / 2]) {
    const here = at(y)
    const end = (here.load - here.lineLoad * length) / 2
    load += end
    moment += end * y
  }
  return { middle, load, moment, loadByDepth, loadByLean, momentByLean }
}
