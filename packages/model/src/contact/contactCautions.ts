import type { Caution, Metres, Pascals } from '../quantities/index.ts'
import { type GroovedSurface, isGrooved, type Roller } from '../roller/index.ts'
import { curveOf, shearOf, spreadAt, type Turf } from '../turf/index.ts'
import type { Condition } from './condition.ts'
import type { Pressing } from './wholeRoller.ts'

/** Limits beyond which a result is marked (docs/physics.md §3 and §5). */
const DEEP = 0.1
const STEEP = 0.5
const WIDE = 0.7
const STRAIN = 0.1
const LOCKING = 0.9

const over = (kind: Caution['kind'], value: number, limit: number): Caution[] =>
  value > limit ? [{ kind, value, limit }] : []

/** A pressure met again by another sum than the one that set the range is not outside it. */
const ROUNDING = 1e-9

/** Pressures that neither the law nor the readings it was fitted to reach. */
function extrapolations(turf: Turf, pressure: Pascals): Caution[] {
  const { knownTo = Number.POSITIVE_INFINITY } = curveOf(turf.law)
  const { fittedFrom = 0, fittedTo = Number.POSITIVE_INFINITY } = turf
  return [
    ...over('extrapolated', pressure, Math.min(knownTo, fittedTo * (1 + ROUNDING))),
    ...(pressure < fittedFrom * (1 - ROUNDING)
      ? [{ kind: 'below the fitted pressures', value: pressure, limit: fittedFrom } as const]
      : []),
  ]
}

function grooveCautions(
  surface: GroovedSurface,
  pressing: Pressing,
  turf: Turf,
  condition: Condition,
): Caution[] {
  const shear = shearOf(turf)
  const { grooves, leading, sinkage } = pressing
  if (!grooves || shear === 0) return []
  const slope = grooves.lowest.edgeForce / shear
  const rolls = condition.kind === 'mowing' && (turf.rebound ?? 1) < 1
  return [
    ...(surface.land < surface.pitch ? over('steep at the land', slope, STEEP) : []),
    ...over('wide spread under grooves', spreadAt(turf, sinkage) / leading.reach, WIDE),
    ...(rolls ? [{ kind: 'grooves while mowing' } as const] : []),
  ]
}

/** What there is to say of turf pressed to a sinkage, whatever presses it. */
export function turfCautions(turf: Turf, sinkage: Metres): Caution[] {
  const { pole, partOfPole, pressure } = curveOf(turf.law)
  return [
    ...over('near locking', partOfPole ? partOfPole(sinkage) : sinkage / pole, LOCKING),
    ...(turf.thickness === undefined ? [] : over('large strain', sinkage / turf.thickness, STRAIN)),
    ...extrapolations(turf, pressure(sinkage)),
  ]
}

export function contactCautions(
  {
    roller,
    turf,
    condition,
  }: { readonly roller: Roller; readonly turf: Turf; readonly condition: Condition },
  pressing: Pressing,
): Caution[] {
  const { sinkage } = pressing
  return [
    ...over('deep in the arc', (2 * sinkage) / roller.diameter, DEEP),
    ...turfCautions(turf, sinkage),
    ...(isGrooved(roller.surface) ? grooveCautions(roller.surface, pressing, turf, condition) : []),
  ]
}
