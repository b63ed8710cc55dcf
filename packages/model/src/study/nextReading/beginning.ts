import { InputError, type Metres } from '../../quantities/index.ts'
import { softnessOf } from '../../turf/index.ts'
import { type Asking, answersOf } from '../fit/compliance/answersOf.ts'
import type { ComplianceFit, FittedReading } from '../fit/compliance/complianceFit.ts'
import type { FittedParameter } from '../fit/fit.ts'
import type { Parts } from './candidate.ts'
import { type Covariance, withReading } from './narrowing.ts'

/** What was taken for known of a number before any reading, where the readings alone do not determine all of them. */
export type Assumed = { readonly name: string; readonly set?: string; readonly standardDeviation: number }

export type Beginning = {
  readonly free: readonly FittedParameter[]
  readonly covariance: Covariance
  /** Of one reading more. */
  readonly deviation: Metres
  readonly assumed: readonly Assumed[]
}

/** An unknown zero lies within this, if nothing else is said of it. */
const DATUM_SPREAD: Metres = 10e-3
const DATUMS = ['datum', 'dropDatum']

/** Whether readings of a kind are told from the unknown zero of their set. */
export function isFromDatum(fit: ComplianceFit, set: string | undefined, isDrop: boolean): boolean {
  const has = (name: string) => fit.parameters.some(one => one.name === name && one.set === set)
  if (isDrop) return has('datum') || has('dropDatum')
  const drops = fit.readings.some(reading => reading.set === set && reading.kind === 'drop')
  return has('datum') && (has('dropDatum') || !drops)
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)]!
}

/** Scatter of a reading as sure as the middle one of those fitted. */
function deviationOf(fit: ComplianceFit, given: Metres | undefined): Metres {
  const scale = fit.noise === 'known' ? 1 : fit.residualStandardDeviation
  const told = given ?? (scale === null ? 0 : scale / Math.sqrt(median(fit.weights)))
  if (told > 0) return told
  throw new InputError({
    path: 'standardDeviation',
    expected: 'the scatter of one reading, for this fit leaves none to take it from',
    received: 'nothing',
  })
}

/** How little was known of a number before: by its own size, for want of anything better. */
function assumedOf({ name, set, value }: FittedParameter, softness: Metres): Assumed {
  const size = DATUMS.includes(name)
    ? DATUM_SPREAD
    : name === 'spread'
      ? Math.max(value, softness)
      : Math.abs(value) || 1
  return { name, ...(set === undefined ? {} : { set }), standardDeviation: size }
}

function askingOf(fit: ComplianceFit, reading: FittedReading, scenario: Parts | undefined): Asking {
  const { set, foot, load, kind } = reading
  const unit = scenario?.unit
  const isDrop = kind === 'drop'
  return {
    set,
    foot,
    ...(load === null ? {} : { load }),
    ...(isDrop && load === null && unit ? { point: unit.edge / unit.wheelbase } : {}),
    fromDatum: isFromDatum(fit, set, isDrop),
  }
}

/** From the little that is assumed, one fitted reading after the other. */
function fromReadings(
  fit: ComplianceFit,
  assumed: readonly Assumed[],
  deviation: Metres,
  scenario: Parts | undefined,
): Covariance {
  const size = assumed.length
  const values = new Float64Array(size * size)
  assumed.forEach(({ standardDeviation }, k) => {
    values[k * size + k] = standardDeviation ** 2
  })
  const asked = fit.readings.map(reading => askingOf(fit, reading, scenario))
  const usual = median(fit.weights)
  return answersOf(fit, asked, scenario).reduce<Covariance>(
    (covariance, answer, i) =>
      answer
        ? withReading(covariance, {
            slopes: answer.derivatives,
            variance: (deviation ** 2 * usual) / fit.weights[i]!,
          })
        : covariance,
    { size, values },
  )
}

/**
 * What is known of the free numbers of a fit: its covariance; where the readings do not determine them all, what they
 * add to a weak assumption, which is stated.
 *
 * Holds   then for drops of the whole unit read at its edge
 */
export function beginningOf(
  fit: ComplianceFit,
  given: Metres | undefined,
  scenario: Parts | undefined,
): Beginning {
  const free = fit.parameters.filter(({ state }) => state === 'free')
  const deviation = deviationOf(fit, given)
  if (fit.covariance)
    return {
      free,
      deviation,
      assumed: [],
      covariance: { size: free.length, values: Float64Array.from(fit.covariance.flat()) },
    }
  const softness = softnessOf(Object.values(fit.turfs)[0]!.law)
  const assumed = free.map(one => assumedOf(one, softness))
  return { free, deviation, assumed, covariance: fromReadings(fit, assumed, deviation, scenario) }
}
