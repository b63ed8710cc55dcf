import { GRAVITY, type Metres, type Newtons } from '../quantities/index.ts'
import type { Unit } from './unit.ts'

/** Something that acts on the unit, in the unit's own frame and the directions of the ground. */
export type Action = {
  readonly name: string
  readonly at: Metres
  /** Above the bench line. */
  readonly height: Metres
  /** To the right of the middle. */
  readonly offset: Metres
  /** Square to the ground, positive into it. */
  readonly down: Newtons
  /** Along the ground, positive backwards: down the slope when the front is higher. */
  readonly back: Newtons
  /** Along the ground, positive to the right: down the slope when the right side is lower. */
  readonly right: Newtons
}

type Placed = { readonly name: string; readonly at: Metres; readonly height: Metres; readonly offset: Metres }

/**
 * Everything that acts on the unit but the turf and the pull: weights, taken apart along the slopes, and other loads.
 * Heights not given are the front axle's.
 */
export function actionsOf(unit: Unit): Action[] {
  const { body, frontRoller, rearRoller, wheelbase, loads = [], slopeAlong = 0, slopeAcross = 0 } = unit
  const axle = frontRoller.diameter / 2
  const squarely = Math.cos(slopeAlong) * Math.cos(slopeAcross)
  const backwards = Math.sin(slopeAlong)
  const sideways = Math.cos(slopeAlong) * Math.sin(slopeAcross)
  const action = ({ name, at, height, offset }: Placed, mass: number, down = 0, forward = 0): Action => {
    const weight = mass * GRAVITY
    return {
      name,
      at,
      height,
      offset,
      down: weight * squarely + down,
      back: weight * backwards - forward,
      right: weight * sideways,
    }
  }
  const placed = (name: string, { at, height = axle, offset = 0 }: Partial<Placed> & { at: Metres }) => ({
    name,
    at,
    height,
    offset,
  })
  const actions = [
    action(placed('body', body), body.mass),
    action(placed('front roller', { at: 0 }), frontRoller.mass),
    action(placed('rear roller', { at: wheelbase, height: rearRoller.diameter / 2 }), rearRoller.mass),
  ]
  for (const load of loads)
    actions.push(action(placed(load.name, load), load.mass ?? 0, load.down, load.forward))
  return actions
}
