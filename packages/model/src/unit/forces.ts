import type { Metres, Newtons } from '../quantities/index.ts'
import { actionsOf } from './actions.ts'
import type { Resistances } from './balance.ts'
import type { Unit } from './unit.ts'

/** One force on the unit as it stands: what acts on it, and the answers of turf and pull. */
export type Force = {
  readonly name: string
  /** Along the ground behind the front axle. */
  readonly at: Metres
  /** Above the front axle. */
  readonly height: Metres
  /** To the right of the middle. */
  readonly offset: Metres
  /** Square to the ground, positive into it. */
  readonly down: Newtons
  /** Along the ground, positive forward. */
  readonly forward: Newtons
}

export type Stance = {
  readonly sine: number
  readonly cosine: number
  /** What the turf answers under each roller, and its moment about the middle. */
  readonly answers: Readonly<Record<'front' | 'rear', { readonly load: Newtons; readonly moment: number }>>
  readonly resistances: Resistances
  readonly pull: Newtons
}

/** Every force on the unit; sums to zero when it is settled. */
export function forcesOn(unit: Unit, stance: Stance): Force[] {
  const { sine, cosine, answers, resistances, pull } = stance
  const axle = unit.frontRoller.diameter / 2
  const stand = (at: Metres, height: Metres) => ({
    at: at * cosine + (height - axle) * sine,
    height: (height - axle) * cosine - at * sine,
  })
  const frontAxle = stand(0, axle)
  const rearAxle = stand(unit.wheelbase, unit.rearRoller.diameter / 2)
  type Place = typeof frontAxle
  const force = (name: string, { at, height }: Place, { offset = 0, down = 0, forward = 0 }): Force => ({
    name,
    at,
    height,
    offset,
    down,
    forward,
  })
  const forces = actionsOf(unit).map(({ name, at, height, offset, down, back }) =>
    force(name, stand(at, height), { offset, down, forward: -back }),
  )
  const rolling = (name: string, place: Place, forward: Newtons) => {
    if (forward !== 0) forces.push(force(name, place, { forward }))
  }
  const answer = (name: string, place: Place, { load, moment }: Stance['answers']['front']) =>
    forces.push(force(name, place, { offset: moment / load, down: -load }))
  answer('turf under the front roller', frontAxle, answers.front)
  answer('turf under the rear roller', rearAxle, answers.rear)
  rolling('rolling resistance of the front roller', frontAxle, -resistances.front)
  rolling('rolling resistance of the rear roller', rearAxle, -resistances.rear)
  if (unit.hitchHeight !== undefined)
    rolling('pull at the hitch', { at: 0, height: unit.hitchHeight - axle }, pull)
  else {
    rolling('pull at the front axis', frontAxle, pull - resistances.rear)
    rolling('pull at the rear axis', rearAxle, resistances.rear)
  }
  return forces
}

/** What is left of the sums of forces and of moments about the front axle. */
export function remainders(forces: readonly Force[]): { down: Newtons; forward: Newtons; moment: number } {
  let down = 0
  let forward = 0
  let moment = 0
  for (const force of forces) {
    down += force.down
    forward += force.forward
    moment += force.down * force.at - force.forward * force.height
  }
  return { down, forward, moment }
}
