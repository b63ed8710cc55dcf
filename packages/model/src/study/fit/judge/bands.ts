import { twoSided } from '../../../numerics/index.ts'
import { InputError, type Metres, type Newtons, type Pascals } from '../../../quantities/index.ts'
import type { Foot, Reading } from '../../../readings/index.ts'
import { pressureAt } from '../../../turf/index.ts'
import { turfOf } from '../compliance/complianceFit.ts'
import { forwardModel } from '../compliance/forwardModel.ts'
import { fittedRows } from '../compliance/rows.ts'
import { type FitAndQuestion, type FittedModel, fittedModel } from './fittedModel.ts'

export type BandsQuestion = FitAndQuestion & {
  readonly at: {
    readonly foot: Foot
    /** Whose turf; may be left out where all sets share one. */
    readonly set?: string
    /** One of the two; pressures are over a plate's area. */
    readonly loads?: readonly Newtons[]
    readonly pressures?: readonly Pascals[]
  }
  /** Of both bands; that of the fit's question unless given. */
  readonly level?: number
}

type Range = { readonly low: Metres; readonly high: Metres }

export type BandPoint = {
  readonly load: Newtons
  /** Greatest pressure under the foot. */
  readonly pressure: Pascals
  readonly sinkage: Metres
  /** Of the curve; null without an answer from the covariance. */
  readonly standardError: Metres | null
  /** Where the curve lies. */
  readonly curve: Range | null
  /** Where one more reading from a known zero will lie. */
  readonly reading: Range | null
  /** Beyond the pressures that were fitted. */
  readonly extrapolated: boolean
}

export type Bands = {
  readonly level: number
  /** Why there are no bands, where there are none. */
  readonly why: string | null
  readonly points: readonly BandPoint[]
}

const LEVEL = 0.95

function pressingsOf({ question, at }: BandsQuestion): ReturnType<typeof fittedRows>['rows'] {
  const { foot, loads, pressures } = at
  if ((loads === undefined) === (pressures === undefined))
    throw new InputError({
      path: 'at',
      expected: 'either loads or pressures',
      received: loads === undefined ? 'neither' : 'both',
    })
  const asked = (loads ?? pressures ?? []).map(
    (value, i): Reading => ({
      row: i + 1,
      set: '',
      foot,
      measured: { kind: 'sinkage', sinkage: 1 },
      count: 1,
      ...(loads ? { load: value } : { pressure: value }),
    }),
  )
  return fittedRows(asked, question.scenario, undefined).rows
}

function placeOfSet({ made }: FittedModel, set: string | undefined): number {
  const { sets, groups } = made.plan
  if (set === undefined && groups === 1) return 0
  const found = set === undefined ? -1 : sets.indexOf(set)
  if (found >= 0) return found
  throw new InputError({
    path: 'at.set',
    expected: `one of ${sets.map(one => JSON.stringify(one)).join(', ')}`,
    received: set === undefined ? 'nothing' : JSON.stringify(set),
  })
}

/** Variance of one more reading: that of a single one of those that were fitted, their mean where they differ. */
function readingVariance({ fit }: BandsQuestion, { made }: FittedModel): number | null {
  const scatter = fit.noise === 'known' ? 1 : fit.residualStandardDeviation
  if (scatter === null) return null
  const shares = made.rows.map(({ reading }, i) => reading.count / made.weights[i]!)
  return (scatter ** 2 * shares.reduce((sum, share) => sum + share, 0)) / shares.length
}

/**
 * How sure the fitted curve is along the load, and where one more reading will lie, by the delta rule.
 *
 *   var ẑ = g C gᵀ, g = ∂ẑ/∂θ;  curve ẑ ± t √var ẑ;  reading ẑ ± t √(var ẑ + σ²)
 *
 * Point by point: at one load the band holds the curve with the stated probability, not the whole curve at once. Zeros
 * of the gauge are left out.
 *
 * Holds   where the model is nearly straight over the intervals of the parameters
 * Units   loads [N] or pressures [Pa] → sinkages [m]
 * Throws  InputError when foot, set or loads make no sense, or the fit is not one of the question
 * Source  Seber and Wild 1989, Nonlinear Regression, §5.1 (from memory); docs/physics.md §7.3
 */
export function bands(asked: BandsQuestion): Bands {
  const { fit, question, at } = asked
  const level = asked.level ?? question.level ?? LEVEL
  const fitted = fittedModel(asked)
  const { made, p, free, covariance } = fitted
  const set = placeOfSet(fitted, at.set)
  const pressings = pressingsOf(asked)
  const near = Math.max(...made.measured.map(Math.abs))
  const none = new Int32Array(made.plan.sets.length).fill(-1)
  const model = forwardModel(
    { ...made.plan, sinkageDatum: none },
    pressings.map(({ pressing }) => ({ pressing, set, kind: 'sinkage', near })),
    Float64Array.from(p, (_, place) => fitted.slopes[place]!),
  )
  const answers = new Float64Array(pressings.length)
  const rates = new Float64Array(pressings.length * p.length)
  const answered = model.predict(p, answers)
  const sloped = covariance !== null && answered && model.differentiate(p, rates)
  const variance = readingVariance(asked, fitted)
  const reach = twoSided(
    level,
    fit.noise === 'known' ? Number.POSITIVE_INFINITY : Math.max(1, fit.degreesOfFreedom),
  )
  const why = !answered
    ? 'the fitted turf has no answer to one of these loads'
    : covariance === null
      ? 'the readings do not determine the parameters'
      : null
  if (!answered) return { level, why, points: [] }
  const turf = turfOf(fit, made.plan.groups === 1 ? undefined : made.plan.sets[set])
  const points = pressings.flatMap(({ pressing }, i): BandPoint[] => {
    if (pressing.kind !== 'foot') return []
    const sinkage = answers[i]!
    const pressure = pressureAt(turf.law, sinkage)
    const own = sloped
      ? variationOf(covariance, free, rates.subarray(i * p.length, (i + 1) * p.length))
      : null
    const around = (more: number | null): Range | null => {
      if (own === null || more === null) return null
      const half = reach * Math.sqrt(own + more)
      return { low: sinkage - half, high: sinkage + half }
    }
    return [
      {
        load: pressing.load,
        pressure,
        sinkage,
        standardError: own === null ? null : Math.sqrt(own),
        curve: around(0),
        reading: around(variance),
        extrapolated:
          fit.pressures !== null && !(pressure >= fit.pressures.low && pressure <= fit.pressures.high),
      },
    ]
  })
  return { level, why, points }
}

/** g C gᵀ over the free ones. */
export function variationOf(
  covariance: readonly (readonly number[])[],
  free: readonly number[],
  slopes: ArrayLike<number>,
  others: ArrayLike<number> = slopes,
): number {
  let sum = 0
  free.forEach((one, i) => {
    if (slopes[one] === 0) return
    free.forEach((other, j) => {
      sum += slopes[one]! * covariance[i]![j]! * others[other]!
    })
  })
  return sum
}
