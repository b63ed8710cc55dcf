import type { Roller } from '../roller/index.ts'
import { raised, type Unit } from '../unit/index.ts'

export type Position = 'front' | 'rear'

export const rollerAt = (unit: Unit, position: Position): Roller =>
  position === 'front' ? unit.frontRoller : unit.rearRoller

/** The unit with another roller fitted and nothing re-set: one of another diameter moves the bench line. */
export function swapRoller(unit: Unit, position: Position, roller: Roller): Unit {
  const growth = (roller.diameter - rollerAt(unit, position).diameter) / 2
  return position === 'front'
    ? { ...raised(unit, { front: growth, rear: 0 }), frontRoller: roller }
    : { ...raised(unit, { front: 0, rear: growth }), rearRoller: roller }
}

/**
 * The unit with another roller fitted and nothing re-set: what the rack's "cuts" stands for.
 *
 *   h_b → h_b + ½ ΔD (1 − c/B) in front, h_b + ½ ΔD c/B behind; every height on the bench line moves with it
 *
 * Units   [m]
 * Source  docs/physics.md §4
 */
export function refit(q: {
  readonly unit: Unit
  readonly position: Position
  readonly roller: Roller
}): Unit {
  return swapRoller(q.unit, q.position, q.roller)
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
