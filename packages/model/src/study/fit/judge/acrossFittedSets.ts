import { InputError } from '../../../quantities/index.ts'
import type { Turf } from '../../../turf/index.ts'
import { turfOfGroup } from '../compliance/plan.ts'
import { type AcrossSets, type AcrossSetsQuestion, acrossSets } from './acrossSets.ts'
import { variationOf } from './bands.ts'
import { type FitAndQuestion, type FittedModel, fittedModel } from './fittedModel.ts'

export type FittedSetsQuestion = FitAndQuestion & {
  /** A parameter that has a value for each set, or anything worked out from a set's turf, such as a drop. */
  readonly of: string | { readonly from: (turf: Turf) => number; readonly scale: AcrossSetsQuestion['scale'] }
  readonly level?: number
  readonly bootstrap?: AcrossSetsQuestion['bootstrap']
}

export type FittedSets = AcrossSets & {
  readonly estimates: AcrossSetsQuestion['estimates']
  /** Variance, on the scale's axis, of the error that the sets have in common through shared parameters. */
  readonly sharedVariance: number
}

/** Of a logarithm, or of a number that is not one: small beside what moves an answer, large beside its rounding. */
const STEP = 1e-4

type Sets = { readonly values: readonly number[]; readonly rates: readonly Float64Array[] }

/** Values of a set's turf on their scale, and how they grow with all that is solved for. */
function fromTurfs(
  { made, p, slopes }: FittedModel,
  from: (turf: Turf) => number,
  onScale: (value: number) => number,
): Sets {
  const { plan } = made
  const valueFor = (turf: Turf | undefined, set: string) => {
    const value = turf === undefined ? Number.NaN : onScale(from(turf))
    if (Number.isFinite(value)) return value
    throw new InputError({
      path: 'of.from',
      expected: 'a number for the turf of every set, positive for a ratio',
      received: `none for set ${JSON.stringify(set)}`,
    })
  }
  const values = plan.sets.map((set, g) => valueFor(turfOfGroup(plan, g, p), set))
  const rates = plan.sets.map((set, g) => {
    const out = new Float64Array(p.length)
    plan.moved.forEach(({ by }, j) => {
      const place = plan.placeOf(g, j)
      const step = by === 'ln' ? STEP : STEP * (Math.abs(p[place]!) || Math.abs(slopes[place]!))
      const moved = (sign: number) =>
        valueFor(turfOfGroup(plan, g, p, { parameter: j, by: sign * step }), set)
      out[place] = (moved(1) - moved(-1)) / (2 * step)
    })
    return out
  })
  return { values, rates }
}

/** A parameter by its name: nothing moves it but itself. */
function named({ made, p, slopes }: FittedModel, name: string): Sets & { readonly ratio: boolean } {
  const { plan } = made
  const j = plan.moved.findIndex((moved, i) => moved.name === name && plan.perSet[i])
  if (j < 0)
    throw new InputError({
      path: 'of',
      expected: `a parameter with a value for each set (${plan.moved.flatMap((moved, i) => (plan.perSet[i] ? [moved.name] : [])).join(', ') || 'there is none'})`,
      received: name,
    })
  const ratio = plan.moved[j]!.by === 'ln'
  const places = plan.sets.map((_, g) => plan.placeOf(g, j))
  return {
    ratio,
    values: places.map(place => p[place]!),
    rates: places.map(place => {
      const out = new Float64Array(p.length)
      out[place] = ratio ? 1 : slopes[place]!
      return out
    }),
  }
}

/** Mean covariance between different sets: what sharing parameters does to all of them at once. */
function sharedVarianceOf({ covariance, free }: FittedModel, rates: readonly Float64Array[]): number {
  if (covariance === null || rates.length < 2) return 0
  let sum = 0
  rates.forEach((one, i) => {
    rates.forEach((other, j) => {
      if (i < j) sum += variationOf(covariance, free, one, other)
    })
  })
  return Math.max(0, (2 * sum) / (rates.length * (rates.length - 1)))
}

/**
 * The population behind the sets of a fit: its median softness, or the median of anything that a set's turf decides,
 * with where the next set will lie.
 *
 * Scatter between sets is what counts, with what shared parameters do to all of them; the standard errors of single
 * sets are in that scatter already.
 *
 * Holds   sets drawn at random from the population; a quantity that rises or falls with softness throughout has its
 *         median where softness has its
 * Throws  InputError when the fit has no such parameter by set, a set has no answer, or the fit is not of the question
 * Source  docs/physics.md §7.3
 */
export function acrossFittedSets(asked: FittedSetsQuestion): FittedSets {
  const { fit, question, of } = asked
  const level = asked.level ?? question.level
  const fitted = fittedModel(asked)
  const { made } = fitted
  const found = typeof of === 'string' ? named(fitted, of) : undefined
  const scale = typeof of === 'string' ? (found?.ratio ? 'ratio' : 'difference') : of.scale
  const { values, rates } =
    found ??
    fromTurfs(fitted, (of as Exclude<typeof of, string>).from, scale === 'ratio' ? Math.log : value => value)
  const estimates = made.plan.sets.map((set, g) => ({
    set,
    value: scale === 'ratio' ? Math.exp(values[g]!) : values[g]!,
  }))
  const sharedVariance = sharedVarianceOf(fitted, rates)
  return {
    ...acrossSets({
      estimates,
      scale,
      shared: {
        variance: sharedVariance,
        degreesOfFreedom: fit.noise === 'known' ? null : fit.degreesOfFreedom,
      },
      ...(level === undefined ? {} : { level }),
      ...(asked.bootstrap === undefined ? {} : { bootstrap: asked.bootstrap }),
    }),
    estimates,
    sharedVariance,
  }
}
