import {
  describe,
  type Metres,
  numberProblem,
  type Pascals,
  type Problem,
  refuse,
} from '../quantities/index.ts'
import type { Curve, Inside, LawKind } from './laws/lawKind.ts'
import { laws, type PressureLaw } from './laws/laws.ts'

/** The entry of a law in the list. The cast is the one place where name and law type are joined. */
const kindOf = (law: PressureLaw): LawKind<PressureLaw> => laws[law.kind] as unknown as LawKind<PressureLaw>

export function lawProblems(law: PressureLaw, path: string): Problem[] {
  if (law === null || typeof law !== 'object' || !Object.hasOwn(laws, law.kind))
    return [
      {
        path: `${path}.kind`,
        expected: `one of ${Object.keys(laws).join(', ')}`,
        received: describe(law?.kind),
      },
    ]
  return kindOf(law).problems(law, path, inside)
}

/** A law with its numbers put in, for kernels: unchecked. */
export const curveOf = (law: PressureLaw): Curve => kindOf(law).curve(law, inside)

const checked = (law: PressureLaw): Curve => {
  refuse(lawProblems(law, 'law'))
  return curveOf(law)
}

function checkedSinkage(law: PressureLaw, sinkage: Metres): Curve {
  const curve = checked(law)
  const below = Number.isFinite(curve.pole) ? { below: curve.pole } : {}
  refuse(numberProblem(sinkage, 'sinkage', 'sinkage', { atLeast: 0, ...below }))
  return curve
}

/**
 * Pressure that turf under a wide flat plate carries at a sinkage.
 *
 * Sign    sinkage positive into the turf, pressure positive in compression
 * Units   z [m] → p [Pa]
 * Throws  InputError when the sinkage is negative, not finite, or at the locking depth.
 * Source  by law: docs/physics.md §2.1
 */
export const pressureAt = (law: PressureLaw, sinkage: Metres): Pascals =>
  checkedSinkage(law, sinkage).pressure(sinkage)

/**
 * Slope of pressure against sinkage, p′(z); infinite at zero for an exponent below one.
 *
 * Units   z [m] → p′ [Pa/m]
 * Throws  InputError as pressureAt.
 */
export const slopeAt = (law: PressureLaw, sinkage: Metres): number =>
  checkedSinkage(law, sinkage).slope(sinkage)

/**
 * Sinkage of a wide flat plate under a pressure: the inverse of pressureAt.
 *
 * Units   p [Pa] → z [m]
 * Throws  InputError when the pressure is negative or not finite.
 */
export function sinkageAt(law: PressureLaw, pressure: Pascals): Metres {
  const curve = checked(law)
  refuse(numberProblem(pressure, 'pressure', 'pressure', { atLeast: 0 }))
  return curve.sinkage(pressure)
}

/**
 * Work per area spent in pressing turf to a sinkage.
 *
 *   Φ(z) = ∫₀ᶻ p dz
 *
 * Units   z [m] → Φ [J/m²]
 * Throws  InputError as pressureAt.
 */
export const workTo = (law: PressureLaw, sinkage: Metres): number =>
  checkedSinkage(law, sinkage).work(sinkage)

/** Softness of a law: sinkage of a wide flat plate at 10 kPa, m. */
export const softnessOf = (law: PressureLaw): Metres => kindOf(law).softness(law, inside)

/** The law in which every pressure stands at `factor` times the depth, unchecked. */
export const stretched = (law: PressureLaw, factor: number): PressureLaw =>
  kindOf(law).stretched(law, factor, inside)

/** The same law at another softness, unchecked; other parameters are kept. */
export function lawWithSoftness(law: PressureLaw, softness: Metres): PressureLaw {
  const { withSoftness } = kindOf(law)
  return withSoftness ? withSoftness(law, softness) : stretched(law, softness / softnessOf(law))
}

const inside: Inside = { curve: curveOf, problems: lawProblems, softness: softnessOf, stretched }
