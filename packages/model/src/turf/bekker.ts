import { type Metres, numberProblem, refuse } from '../quantities/index.ts'
import { lawProblems } from './law.ts'
import { REFERENCE_PRESSURE } from './laws/lawKind.ts'
import type { Turf } from './turf.ts'

/**
 * Turf from Bekker's soil values.
 *
 *   p = (k_c/b + k_φ) zⁿ = p_r (z/s)ⁿ,  s = (p_r/(k_c/b + k_φ))^(1/n)
 *
 * Holds   for the width b it was made for: k_c is put into the stiffness, so the spread is 0
 * Units   k_c [N/m^(n+1)], k_φ [N/m^(n+2)], b [m], the smaller side of a plate or the radius of a round one
 * Throws  InputError when the width is not positive, the stiffness not positive or the exponent outside 0.2 to 2.
 * Source  Bekker 1956; values in Wong, Theory of Ground Vehicles (2008), table 2.3
 */
export function turfFromBekker(soil: {
  readonly kc: number
  readonly kPhi: number
  readonly exponent: number
  readonly width: Metres
}): Turf {
  const { kc, kPhi, exponent, width } = soil
  refuse([
    ...numberProblem(width, 'width', 'length', { above: 0 }),
    ...numberProblem(kc, 'kc', 'ratio'),
    ...numberProblem(kPhi, 'kPhi', 'ratio'),
    ...numberProblem(kc / width + kPhi, 'kc/width + kPhi', 'ratio', { above: 0 }),
  ])
  const law = {
    kind: 'power',
    softness: (REFERENCE_PRESSURE / (kc / width + kPhi)) ** (1 / exponent),
    exponent,
  } as const
  refuse(lawProblems(law, 'law'))
  return { law, spread: 0 }
}
