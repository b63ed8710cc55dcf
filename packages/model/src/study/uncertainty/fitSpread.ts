import { InputError } from '../../quantities/index.ts'
import type { Fit, FittedParameter } from '../fit/fit.ts'

/** How the parameters of a turf lie about the values of a fit: δ = C t, in the logarithm where that is so marked. */
export type FitSpread = {
  readonly names: readonly string[]
  readonly values: readonly number[]
  /** Numbers that the fit solves for in their logarithm scatter in it. */
  readonly inLog: readonly boolean[]
  /** Lower triangle C of C Cᵀ = covariance, row-major. */
  readonly factor: Float64Array
  /** Of Student's t, where the noise was taken from the residuals; null: normal. */
  readonly degreesOfFreedom: number | null
}

/** A pivot this small beside its variance is a parameter that goes with those before it. */
const NOTHING_LEFT = 1e-12

/**
 * C of C Cᵀ = A; a direction without variance gives a column of zeros.
 *
 * Source  Cholesky; Golub and Van Loan, Matrix Computations, §4.2
 */
function lowerFactor(covariance: readonly (readonly number[])[]): Float64Array {
  const size = covariance.length
  const C = new Float64Array(size * size)
  for (let j = 0; j < size; j++)
    for (let i = j; i < size; i++) {
      let rest = covariance[i]![j]!
      for (let k = 0; k < j; k++) rest -= C[i * size + k]! * C[j * size + k]!
      if (i === j) C[j * size + j] = rest > NOTHING_LEFT * covariance[j]![j]! ? Math.sqrt(rest) : 0
      else C[i * size + j] = C[j * size + j] === 0 ? 0 : rest / C[j * size + j]!
    }
  return C
}

const listed = (names: Iterable<string>) => [...names].map(name => JSON.stringify(name)).join(', ')

/** Parameters of one set and those all sets share; a fit of several sets must be told which. */
function chosenSet({ parameters }: Fit, isOfTurf: (name: string) => boolean, set: string | undefined) {
  const sets = new Set(
    parameters.flatMap(one => (one.set !== undefined && isOfTurf(one.name) ? [one.set] : [])),
  )
  if (set === undefined && sets.size > 1)
    throw new InputError({ path: 'set', expected: `one of ${listed(sets)}`, received: 'nothing' })
  if (set !== undefined && sets.size > 0 && !sets.has(set))
    throw new InputError({ path: 'set', expected: `one of ${listed(sets)}`, received: JSON.stringify(set) })
  const wanted = set ?? [...sets][0]
  return (one: FittedParameter) => isOfTurf(one.name) && (one.set === undefined || one.set === wanted)
}

/**
 * What a fit says of the turf of one set: every value it gives, and how its free parameters scatter together.
 *
 * Holds   datums and the parameters of other sets are left out: of the covariance the block of this turf remains
 * Throws  InputError when the data did not determine the free parameters, or the set is not one of the fit
 */
export function fitSpread(
  fit: Fit,
  isOfTurf: (name: string) => boolean,
  isInLog: (name: string) => boolean,
  set: string | undefined,
): { readonly values: ReadonlyMap<string, number>; readonly spread: FitSpread } {
  const isWanted = chosenSet(fit, isOfTurf, set)
  const values = new Map(fit.parameters.filter(isWanted).map(({ name, value }) => [name, value]))
  const free = fit.parameters.filter(({ state }) => state === 'free')
  const places = free.flatMap((one, i) => (isWanted(one) ? [i] : []))
  const { covariance, noise, degreesOfFreedom } = fit
  const isKnown =
    covariance !== null &&
    places.every(i => places.every(j => Number.isFinite(covariance[i]?.[j]))) &&
    !(noise === 'estimated' && degreesOfFreedom < 1)
  if (!isKnown)
    throw new InputError({
      path: 'fit.covariance',
      expected: 'a fit whose data determine its free parameters',
      received: covariance === null ? 'null' : `${degreesOfFreedom} degrees of freedom`,
    })
  const inLog = places.map(i => isInLog(free[i]!.name) && free[i]!.value > 0)
  const size = (i: number, k: number) => (inLog[k] ? free[i]!.value : 1)
  const block = places.map((i, k) => places.map((j, m) => covariance[i]![j]! / (size(i, k) * size(j, m))))
  return {
    values,
    spread: {
      names: places.map(i => free[i]!.name),
      values: places.map(i => free[i]!.value),
      inLog,
      factor: lowerFactor(block),
      degreesOfFreedom: noise === 'estimated' ? degreesOfFreedom : null,
    },
  }
}
