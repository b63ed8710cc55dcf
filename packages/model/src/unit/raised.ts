import type { Metres } from '../quantities/index.ts'
import type { Roller } from '../roller/index.ts'
import type { Unit } from './unit.ts'

/**
 * The unit when its rollers' radii grow and nothing is re-set: the bench line moves, and with it every height that
 * stands on it.
 *
 *   change of a height at x = ΔR_f (1 − x/B) + ΔR_r x/B
 *
 * Source  docs/physics.md §4
 */
export function raised(unit: Unit, growth: { readonly front: Metres; readonly rear: Metres }): Unit {
  const { wheelbase, body, loads, hitchHeight } = unit
  const rise = (at: Metres) => growth.front * (1 - at / wheelbase) + growth.rear * (at / wheelbase)
  const lifted = <Part extends { readonly at: Metres; readonly height?: Metres }>(part: Part): Part =>
    part.height === undefined ? part : { ...part, height: part.height + rise(part.at) }
  return {
    ...unit,
    benchHeight: unit.benchHeight + rise(unit.edge),
    body: lifted(body),
    ...(loads ? { loads: loads.map(lifted) } : {}),
    ...(hitchHeight === undefined ? {} : { hitchHeight: hitchHeight + growth.front }),
  }
}
/**
 * The unit as it stands with what has stuck to its rollers: larger rollers, and the cut raised by
 * build-up (1 − c/B) at the front and build-up c/B at the rear.
 *
 * Source  docs/physics.md §4
 */
export function withBuildUp(unit: Unit): Unit {
  const { frontRoller, rearRoller } = unit
  const front = frontRoller.buildUp ?? 0
  const rear = rearRoller.buildUp ?? 0
  if (front === 0 && rear === 0) return unit
  const grown = ({ buildUp = 0, ...roller }: Roller): Roller => ({
    ...roller,
    diameter: roller.diameter + 2 * buildUp,
  })
  return { ...raised(unit, { front, rear }), frontRoller: grown(frontRoller), rearRoller: grown(rearRoller) }
}
