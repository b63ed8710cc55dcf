import { type Metres, type Newtons, type Problem, tell } from '../quantities/index.ts'
import { type Action, actionsOf } from './actions.ts'
import type { Unit } from './unit.ts'

/** Rolling resistance of each roller; nothing when standing. */
export type Resistances = { readonly front: Newtons; readonly rear: Newtons }

export const AT_REST: Resistances = { front: 0, rear: 0 }

/** What the balance of a unit needs, worked out once: sums over what acts on it and the geometry of its lean. */
export type Balance = {
  readonly total: Newtons
  /** Σ N x + Σ T (h − R_f) and Σ N (h − R_f) − Σ T x: the moment is along cos θ + above sin θ + steady. */
  readonly along: number
  readonly above: number
  /** Moment of a pull at the hitch, which is given by its height alone. */
  readonly steady: number
  readonly wheelbase: Metres
  /** R_r − R_f. */
  readonly rise: Metres
  /** Pull that keeps the unit at its speed, or holds it on a slope: forward. */
  readonly pull: Newtons
  /** Moment that presses the right side down, from offsets and from weight across the slope. */
  readonly sideways: number
}

/**
 * The sums of the balance.
 *
 *   F_r X(B, R_r) = Σ N X(x, h) + Σ T Y(x, h),  X = x cos θ + (h − R_f) sin θ,  Y = (h − R_f) cos θ − x sin θ
 *   P = F_f + F_r + M g sin α − Σ forward
 *
 * Holds   a roller's resistance acts backwards through its own axle; without a hitch height each is overcome at its
 *         own axle and the rest of the pull at the front one
 * Source  derived (docs/physics.md §4)
 */
export function balanceOf(unit: Unit, resistances: Resistances = AT_REST): Balance {
  const axle = unit.frontRoller.diameter / 2
  const rise = unit.rearRoller.diameter / 2 - axle
  let total = 0
  let along = 0
  let above = 0
  let back = 0
  let sideways = 0
  for (const { at, height, offset, down, back: tangential, right } of actionsOf(unit)) {
    total += down
    back += tangential
    along += down * at + tangential * (height - axle)
    above += down * (height - axle) - tangential * at
    sideways += down * offset + right * height
  }
  const pull = back + resistances.front + resistances.rear
  const hitched = unit.hitchHeight !== undefined
  return {
    total,
    along: along + (hitched ? resistances.rear * rise : 0),
    above: above - (hitched ? resistances.rear * unit.wheelbase : 0),
    steady: unit.hitchHeight === undefined ? 0 : -pull * (unit.hitchHeight - axle),
    wheelbase: unit.wheelbase,
    rise,
    pull,
    sideways,
  }
}

/** Load on the rear roller at a lean, and its slope against it. */
export function rearLoad(balance: Balance, sine: number, cosine: number): { load: Newtons; slope: number } {
  const { along, above, steady, wheelbase, rise } = balance
  const arm = wheelbase * cosine + rise * sine
  const load = (along * cosine + above * sine + steady) / arm
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

/**
 * Load on each roller when the unit stands level and nothing rolls.
 *
 *   W_r B = Σ N x + Σ T h − P h_hitch,  W_f = Σ N − W_r
 *
 * Sign    load positive down
 * Units   [N]
 */
export function levelLoads(unit: Unit): { readonly front: Newtons; readonly rear: Newtons } {
  const balance = balanceOf(unit)
  const rear = rearLoad(balance, 0, 1).load
  return { front: balance.total - rear, rear }
}

/** Both rollers must press the turf when the unit stands level. */
export function tippingProblems(unit: Unit, path: string): Problem[] {
  const { total, sideways } = balanceOf(unit)
  const half = Math.max(unit.frontRoller.length, unit.rearRoller.length) / 2
  if (total > 0 && Math.abs(sideways) >= total * half)
    return [
      {
        path: `${path}.body.offset`,
        expected: 'a centre of gravity between the ends of the rollers, slope across included',
        received: `${tell(sideways / total, 'place')} from the middle: the unit would tip`,
      },
    ]
  return Object.entries(levelLoads(unit)).flatMap(([roller, load]) =>
    load > 0
      ? []
      : [
          {
            path: `${path}.body.at`,
            expected: 'a centre of gravity that leaves load on both rollers',
            received: `${tell(load, 'load')} on the ${roller} roller: the unit would tip`,
          },
        ],
  )
}

export type { Action }
