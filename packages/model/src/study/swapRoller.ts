import type { Metres } from '../quantities/index.ts'
import type { Roller } from '../roller/index.ts'
import type { Unit } from '../unit/index.ts'

export type Position = 'front' | 'rear'

export const rollerAt = (unit: Unit, position: Position): Roller =>
  position === 'front' ? unit.frontRoller : unit.rearRoller

/**
 * The unit with another roller fitted and nothing re-set. A roller of another diameter moves the bench line, and
 * with it every height that stands on it.
 *
 *   change of a height at x = ½ΔD (1 − x/B) at the front, ½ΔD x/B at the rear
 *
 * Source  docs/physics.md §4
 */
export function swapRoller(unit: Unit, position: Position, roller: Roller): Unit {
  const growth = (roller.diameter - rollerAt(unit, position).diameter) / 2
  const rise = (at: Metres) => growth * (position === 'front' ? 1 - at / unit.wheelbase : at / unit.wheelbase)
  const raised = <W extends { readonly at: Metres; readonly height?: Metres }>(weight: W): W =>
    weight.height === undefined ? weight : { ...weight, height: weight.height + rise(weight.at) }
  return {
    ...unit,
    benchHeight: unit.benchHeight + rise(unit.edge),
    body: raised(unit.body),
    ...(unit.loads ? { loads: unit.loads.map(raised) } : {}),
    ...(position === 'front' ? { frontRoller: roller } : { rearRoller: roller }),
  }
}

/** Whether two rollers are the same in every size. */
export const sameRoller = (one: Roller, other: Roller): boolean => {
  const a = one.surface
  const b = other.surface
  const surfaces =
    a.kind === 'grooved' && b.kind === 'grooved'
      ? a.pitch === b.pitch && a.land === b.land && a.depth === b.depth
      : a.kind === b.kind
  const sizes = (['mass', 'diameter', 'length'] as const).every(size => one[size] === other[size])
  const turning = (one.sections ?? 1) === (other.sections ?? 1)
  const wear = (['buildUp', 'runout'] as const).every(size => (one[size] ?? 0) === (other[size] ?? 0))
  return surfaces && sizes && turning && wear
}
