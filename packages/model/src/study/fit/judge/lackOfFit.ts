import { chiSquared, fDistribution } from '../../../numerics/index.ts'
import { freeOf, type Judged, placeOf } from './judged.ts'

/** A sum of squares, what it has to spare, and the standard deviation the two make. */
export type Share = {
  readonly sumOfSquares: number
  readonly degreesOfFreedom: number
  readonly standardDeviation: number
}

/** Whether the curve misses more than repeated readings miss each other. */
export type LackOfFit =
  | {
      readonly kind: 'tested'
      /** What repeats under the same foot, load and set differ by: nothing to do with the law. Weighted. */
      readonly pureError: Share
      /** What the means of the repeats miss the curve by. */
      readonly lack: Share
      readonly places: number
      readonly ratio: number
      /** Of a ratio this large when the law is right. */
      readonly probability: number
      /** With the noise known: of repeats this far apart by that noise. */
      readonly repeatsAgainstNoise: number | null
      readonly sentence: string
    }
  | {
      readonly kind: 'no repeats' | 'repeats agree exactly' | 'no places to spare'
      readonly sentence: string
    }

/** Below this the law is told to miss; between, it is told to be in doubt. */
const MISSES = 0.05
/** Repeats whose squares are this small beside the readings' are copies of each other. */
const COPIES = 1e-20

type Place = { weight: number; sum: number; members: number[] }

function placesOf({ fit, rows, measured }: Judged): readonly Place[] {
  const places = new Map<string, Place>()
  rows.forEach((row, i) => {
    const key = placeOf(row)
    const place = places.get(key) ?? { weight: 0, sum: 0, members: [] }
    place.weight += fit.weights[i]!
    place.sum += fit.weights[i]! * measured[i]!
    place.members.push(i)
    places.set(key, place)
  })
  return [...places.values()]
}

const share = (sumOfSquares: number, degreesOfFreedom: number): Share => ({
  sumOfSquares,
  degreesOfFreedom,
  standardDeviation: Math.sqrt(sumOfSquares / degreesOfFreedom),
})

const chance = (probability: number) =>
  probability < 0.001 ? 'less than one time in a thousand' : `with probability ${shown(probability)}`
const shown = (value: number) => String(Number(value.toPrecision(2)))

/** Whether a parameter is shared by sets that may differ in it. */
const isPooled = ({ fit, rows }: Judged) =>
  new Set(rows.map(({ set }) => set)).size > 1 && freeOf(fit).some(({ set }) => set === undefined)

function words(judged: Judged, ratio: number, probability: number): string {
  const so = `the means of repeated readings miss the curve ${shown(ratio)} times as much, in squares, as repeats differ among themselves`
  const by = `such a ratio comes ${chance(probability)} when the law is right`
  if (probability >= MISSES)
    return `The repeats speak of no lack of fit along the ${judged.alongWord}: ${so}; ${by}.`
  const cause = isPooled(judged)
    ? ' The law may bend otherwise than the turf, or the sets may differ in what they share.'
    : ''
  return `The law does not follow the readings: ${so}; ${by}.${cause}`
}

/**
 * Lack of fit, where readings of one foot, load and set are repeated.
 *
 *   F = [Σ_g w_g (ȳ_g − ŷ_g)²/(m − p)] / [Σ_g Σ_i w_i (y_i − ȳ_g)²/(n − m)],  m places, p free parameters
 *
 * Holds   exactly for laws linear in their parameters, nearly so for others.
 * Source  NIST/SEMATECH e-Handbook of Statistical Methods, §4.4.4.6
 */
export function lackOfFit(judged: Judged): LackOfFit {
  const { fit, measured } = judged
  const places = placesOf(judged)
  const spare = places.length - freeOf(fit).length
  const repeats = measured.length - places.length
  if (repeats < 1)
    return {
      kind: 'no repeats',
      sentence:
        'No reading is repeated under the same foot, load and set: lack of fit cannot be told from scatter.',
    }
  if (spare < 1)
    return {
      kind: 'no places to spare',
      sentence: `The readings stand at ${places.length} different places and the law has ${freeOf(fit).length} free parameters: there is no place left over to miss.`,
    }
  let pure = 0
  let size = 0
  let lack = 0
  for (const { weight, sum, members } of places) {
    const mean = sum / weight
    const fitted = members.map(i => measured[i]! - fit.residuals[i]!)
    members.forEach((i, k) => {
      pure += fit.weights[i]! * (measured[i]! - mean) ** 2
      lack += fit.weights[i]! * (mean - fitted[k]!) ** 2
      size += fit.weights[i]! * measured[i]! ** 2
    })
  }
  if (pure <= COPIES * size)
    return {
      kind: 'repeats agree exactly',
      sentence:
        'The repeated readings agree to the last digit: they are copies, or the gauge is too coarse to show their scatter, and lack of fit cannot be judged by them.',
    }
  const [pureError, lackShare] = [share(pure, repeats), share(lack, spare)]
  const ratio = lackShare.standardDeviation ** 2 / pureError.standardDeviation ** 2
  const probability = fDistribution.survival(ratio, spare, repeats)
  return {
    kind: 'tested',
    pureError,
    lack: lackShare,
    places: places.length,
    ratio,
    probability,
    repeatsAgainstNoise:
      fit.noise === 'known' && judged.scatter !== null
        ? chiSquared.survival(pure / judged.scatter ** 2, repeats)
        : null,
    sentence: words(judged, ratio, probability),
  }
}
