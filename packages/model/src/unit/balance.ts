import { GRAVITY, type Metres, type Newtons } from '../quantities/index.ts'
import { type Unit, weightsOf } from './unit.ts'

/** One force on the unit: a weight (positive down) or the answer of the turf (negative). */
export type Force = {
  readonly name: string
  /** Along the ground behind the front axle, as the unit stands. */
  readonly at: Metres
  /** Above the undisturbed turf. */
  readonly height: Metres
  readonly down: Newtons
}

/** What the balance of a unit needs, worked out once: sums over its weights and the geometry of its tilt. */
export type Balance = {
  readonly total: Newtons
  /** Σ m g x and Σ m g (h − R_f). */
  readonly along: number
  readonly above: number
  readonly wheelbase: Metres
  /** R_r − R_f. */
  readonly rise: Metres
}

export function balanceOf(unit: Unit): Balance {
  const axle = unit.frontRoller.diameter / 2
  let total = 0
  let along = 0
  let above = 0
  for (const { mass, at, height } of weightsOf(unit)) {
    const weight = mass * GRAVITY
    total += weight
    along += weight * at
    above += weight * (height - axle)
  }
  return { total, along, above, wheelbase: unit.wheelbase, rise: unit.rearRoller.diameter / 2 - axle }
}

/** Load on the rear roller and its slope against the tilt: F_r X(B, R_r) = Σ m g X(x, h). */
export function rearLoad(balance: Balance, sine: number, cosine: number): { load: Newtons; slope: number } {
  const { along, above, wheelbase, rise } = balance
  const moment = along * cosine + above * sine
  const arm = wheelbase * cosine + rise * sine
  const load = moment / arm
  return { load, slope: (above * cosine - along * sine - load * (rise * cosine - wheelbase * sine)) / arm }
}

/**
 * Tilt at which the rear roller lies deeper than the front one by a difference.
 *
 *   z_r − z_f = B sin θ + (R_r − R_f)(1 − cos θ)
 */
export function tiltFor(
  { wheelbase, rise }: Balance,
  deeper: Metres,
): { sine: number; cosine: number; tilt: number } {
  const tilt = Math.atan2(rise, wheelbase) + Math.asin((deeper - rise) / Math.hypot(wheelbase, rise))
  return { tilt, sine: Math.sin(tilt), cosine: Math.cos(tilt) }
}

/** Every force on the unit as it stands; sums to zero when it is settled. */
export function forcesOn(
  unit: Unit,
  state: { sinkage: Metres; sine: number; cosine: number; front: Newtons; rear: Newtons },
): Force[] {
  const { sinkage, sine, cosine, front, rear } = state
  const axle = unit.frontRoller.diameter / 2
  const stand = (at: Metres, height: Metres) => ({
    at: at * cosine + (height - axle) * sine,
    height: axle - sinkage - at * sine + (height - axle) * cosine,
  })
  return [
    ...weightsOf(unit).map(({ name, mass, at, height }) => ({
      name,
      ...stand(at, height),
      down: mass * GRAVITY,
    })),
    { name: 'turf under the front roller', ...stand(0, axle), down: -front },
    {
      name: 'turf under the rear roller',
      ...stand(unit.wheelbase, unit.rearRoller.diameter / 2),
      down: -rear,
    },
  ]
}

/** What is left of the sums of forces and of moments about the front axle. */
export function remainders(forces: readonly Force[]): { down: Newtons; moment: number } {
  let down = 0
  let moment = 0
  for (const force of forces) {
    down += force.down
    moment += force.down * force.at
  }
  return { down, moment }
}
