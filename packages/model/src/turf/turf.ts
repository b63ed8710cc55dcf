import {
  type Metres,
  numberProblem,
  objectProblem,
  type Pascals,
  type Problem,
  refuse,
  type Seconds,
} from '../quantities/index.ts'
import { curveOf, lawProblems, lawWithSoftness, softnessOf } from './law.ts'
import { REFERENCE_PRESSURE } from './laws/lawKind.ts'
import type { PressureLaw } from './laws/laws.ts'

/** Turf as a compliant layer: how it answers pressure, how far it carries sideways, how it comes back. */
export type Turf = {
  readonly law: PressureLaw
  /** How far turf carries load sideways past an edge; 0 unless given (independent springs). */
  readonly spread?: Metres
  /** Part of the sinkage that comes back at once, 0 to 1; 1 unless given. */
  readonly rebound?: number
  /** Part of the sinkage that stays for good, at most 1 − rebound; 0 unless given. */
  readonly lasting?: number
  /** Time constant of what comes back slowly; 0 unless given (all that can come back is back). */
  readonly recoveryTime?: Seconds
  /** Thickness of the soft layer, if known: only for cautions. */
  readonly thickness?: Metres
  /** Pressures between which it was fitted to readings: outside them results are marked as extrapolated. */
  readonly fittedFrom?: Pascals
  readonly fittedTo?: Pascals
  /** Where its numbers come from, in words: which readings it was fitted to, who measured it. */
  readonly source?: string
}

/** Sums of decimals such as 0.7 + 0.3 may pass 1 by rounding: this much is let through. */
const ROUNDING = 1e-12

export function turfProblems(turf: Turf, path: string): Problem[] {
  const shapeless = objectProblem(turf, path)
  if (shapeless.length > 0) return shapeless
  const rebound = turf.rebound ?? 1
  const given = <K extends 'spread' | 'rebound' | 'recoveryTime' | 'thickness' | 'fittedFrom' | 'fittedTo'>(
    key: K,
    check: (value: number) => Problem[],
  ) => {
    const value = turf[key]
    return value === undefined ? [] : check(value)
  }
  return [
    ...lawProblems(turf.law, `${path}.law`),
    ...given('spread', value => numberProblem(value, `${path}.spread`, 'spread', { atLeast: 0 })),
    ...given('rebound', value => numberProblem(value, `${path}.rebound`, 'ratio', { atLeast: 0, atMost: 1 })),
    ...(turf.lasting === undefined
      ? []
      : numberProblem(turf.lasting, `${path}.lasting`, 'ratio', {
          atLeast: 0,
          atMost: (rebound >= 0 && rebound <= 1 ? 1 - rebound : 1) + ROUNDING,
        }).map(problem => ({ ...problem, expected: `${problem.expected}, what the rebound leaves` }))),
    ...given('recoveryTime', value => numberProblem(value, `${path}.recoveryTime`, 'time', { atLeast: 0 })),
    ...given('thickness', value => numberProblem(value, `${path}.thickness`, 'thickness', { above: 0 })),
    ...given('fittedFrom', value => numberProblem(value, `${path}.fittedFrom`, 'pressure', { atLeast: 0 })),
    ...given('fittedTo', value =>
      numberProblem(value, `${path}.fittedTo`, 'pressure', { atLeast: Math.max(turf.fittedFrom ?? 0, 0) }),
    ),
  ]
}

/** A picometre: a mat this thin carries less beside an edge than a double can tell from none, and its bend has no room. */
const NO_SPREAD: Metres = 1e-12

/**
 * Shear that the turf mat carries.
 *
 *   G = l² p_r/s, none below a picometre of spread; the local spread at a sinkage is l_z = √(G z/p(z))
 *
 * Units   → G [N/m]
 * Source  Pasternak 1954; Filonenko-Borodich 1940 (docs/physics.md §2.2)
 */
export const shearOf = (turf: Turf): number =>
  (turf.spread ?? 0) < NO_SPREAD ? 0 : ((turf.spread ?? 0) ** 2 * REFERENCE_PRESSURE) / softnessOf(turf.law)

/** How far turf at this sinkage carries load sideways, m. */
export function spreadAt(turf: Turf, sinkage: Metres): Metres {
  const curve = curveOf(turf.law)
  return Math.sqrt((shearOf(turf) * sinkage) / curve.pressure(sinkage))
}

/**
 * The same turf at another softness: exponent, locking depth and spread are kept.
 *
 * Throws  InputError when the softness is not positive or does not lie above the locking depth.
 */
export function withSoftness(turf: Turf, softness: Metres): Turf {
  const changed = { ...turf, law: lawWithSoftness(turf.law, softness) }
  refuse(lawProblems(changed.law, 'law'))
  return changed
}
