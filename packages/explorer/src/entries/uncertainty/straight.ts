import {
  type ComplianceFit,
  InputError,
  type PressureLaw,
  type Scatter,
  settle,
  softnessOf,
  type Turf,
  type Unit,
  withSoftness,
} from '@swardsink/model'
import type { SettledInput } from '../settled.ts'

/** Quantiles of the normal distribution at 2.5, 25, 50, 75 and 97.5 %. */
const NORMAL = [-1.959964, -0.67449, 0, 0.67449, 1.959964] as const
/** Half the width of a uniform distribution over its standard deviation. */
const UNIFORM = Math.sqrt(3)

/** How far one source moves the height, per standard deviation of its own. */
export type Moved = { readonly name: string; readonly by: number }

export type Straight = {
  readonly deviation: number
  readonly quantiles: readonly number[]
  readonly parts: readonly { readonly name: string; readonly share: number; readonly by: number | null }[]
}

function heightOf(input: SettledInput): number | null {
  try {
    const settled = settle(input)
    return settled.outcome === 'settled' ? settled.effectiveHeight.middle : null
  } catch (error) {
    if (error instanceof InputError) return null
    throw error
  }
}

/** One standard deviation more of an input: the unit or the turf with it. */
function oneMore(input: SettledInput, name: string, scatter: Scatter): SettledInput | null {
  const { unit, turf } = input
  const step =
    scatter.kind === 'normal'
      ? scatter.standardDeviation
      : scatter.kind === 'uniform'
        ? scatter.halfWidth / UNIFORM
        : 0
  if (name === 'softness' && scatter.kind === 'log-normal') {
    const softer = turfPut(turf, 'softness', softnessOf(turf.law) * Math.exp(scatter.relative))
    return softer && { ...input, turf: softer }
  }
  if (name === 'benchHeight') return { ...input, unit: { ...unit, benchHeight: unit.benchHeight + step } }
  if (name === 'frontRoller.mass') {
    const frontRoller = { ...unit.frontRoller, mass: unit.frontRoller.mass + step }
    return { ...input, unit: { ...unit, frontRoller } }
  }
  return { ...input, unit: weighedMore(unit, name === 'scales.rear' ? unit.wheelbase : 0, step) }
}

/** What the scales read more stands on the body, over the roller it was read at. */
function weighedMore(unit: Unit, at: number, more: number): Unit {
  const { body } = unit
  const mass = body.mass + more
  return { ...unit, body: { ...body, mass, at: (body.mass * body.at + more * at) / mass } }
}

/** A turf with one number of its law, or its spread, put to another value; null where it has no such number. */
export function turfPut(turf: Turf, name: string, value: number): Turf | null {
  if (name === 'spread') return { ...turf, spread: value }
  if (name === 'softness') return withSoftness(turf, value)
  const law = lawPut(turf.law, name.split('.'), value)
  return law && { ...turf, law }
}

function lawPut(
  law: PressureLaw,
  [name = '', ...rest]: readonly string[],
  value: number,
): PressureLaw | null {
  const own = law as unknown as Readonly<Record<string, unknown>>
  if (!Object.hasOwn(own, name)) return null
  if (rest.length === 0)
    return typeof own[name] === 'number' ? ({ ...own, [name]: value } as unknown as PressureLaw) : null
  const inner = own[name]
  if (typeof inner !== 'object' || inner === null) return null
  const put = lawPut(inner as PressureLaw, rest, value)
  return put && ({ ...own, [name]: put } as unknown as PressureLaw)
}

/** Variance that the free parameters of a fit give the height together: gᵀ C g. */
function fitVariance(
  input: SettledInput,
  height: number,
  { fit, set }: { readonly fit: ComplianceFit; readonly set: string | undefined },
): number {
  const { covariance } = fit
  if (!covariance) return 0
  const slopes = fit.parameters
    .filter(({ state }) => state === 'free')
    .map(({ name, value, standardError, set: own }) => {
      if ((own !== undefined && own !== set) || !standardError) return 0
      const turf = turfPut(input.turf, name, value + standardError)
      const moved = turf && heightOf({ ...input, turf })
      return moved === null ? 0 : (moved - height) / standardError
    })
  return slopes.reduce(
    (sum, a, i) => sum + slopes.reduce((row, b, j) => row + a * b * (covariance[i]?.[j] ?? 0), 0),
    0,
  )
}

/**
 * How the height scatters, at once: along straight lines through the case in hand, as if every source moved it evenly.
 * What is drawn afterwards in the worker knows of no straight lines.
 *
 *   σ² = Σ (h(x + σ_x) − h(x))² + gᵀ C g
 */
export function straightSpread(
  input: SettledInput,
  q: {
    readonly height: number
    readonly scatter: Readonly<Record<string, Scatter>>
    readonly fit: { readonly fit: ComplianceFit; readonly set: string | undefined } | null
  },
): Straight {
  const { height, scatter, fit } = q
  const moved = Object.entries(scatter).map(([name, one]): Moved => {
    const there = oneMore(input, name, one)
    const next = there && heightOf(there)
    return { name, by: next === null ? 0 : next - height }
  })
  const ofFit = fit ? Math.max(0, fitVariance(input, height, fit)) : 0
  const variance = moved.reduce((sum, { by }) => sum + by ** 2, ofFit)
  const part = (square: number) => (variance > 0 ? square / variance : 0)
  const parts = [
    ...moved.map(({ name, by }) => ({ name, share: part(by ** 2), by })),
    ...(fit ? [{ name: 'fit', share: part(ofFit), by: null }] : []),
  ].sort((a, b) => b.share - a.share)
  const deviation = Math.sqrt(variance)
  return { deviation, quantiles: NORMAL.map(z => height + z * deviation), parts }
}
