import { type Metres, tell } from '../../quantities/index.ts'
import type { FittedParameter } from '../fit/fit.ts'
import { type Aim, directionOf, type HeightAlong, heightAlong } from './aim.ts'
import { type Assumed, type Beginning, beginningOf } from './beginning.ts'
import { type Candidate, candidateWords } from './candidate.ts'
import { narrowedAlong, varianceAlong, volumeLeft } from './narrowing.ts'
import { candidatesOf, type NextQuestion } from './nextQuestion.ts'
import { type NotRated, type Rated, rate } from './rate.ts'
import { type Chosen, enoughOf, narrowing, sequenceOf, worth } from './sequence.ts'

/** A quantity before and after a reading; `narrowed` is the part of its variance that goes. */
export type Narrowed = { readonly standardError: number; readonly narrowed: number }

export type RankedReading = {
  readonly candidate: Candidate
  /** What it would read, from the zero it is read from. */
  readonly expected: Metres
  readonly cost: number
  /** Of the aim; for all numbers together, of the square of the volume of their region. */
  readonly narrowed: number
  /** Of the height of the unit; null without one. */
  readonly height: Narrowed | null
  readonly parameters: readonly ({ readonly name: string; readonly set?: string } & Narrowed)[]
  /** Part of the volume of the joint region that is left. */
  readonly volume: number
}

export type NextReading = {
  readonly aim: Aim
  /** Best first: by what it narrows, or by that for its cost where a candidate has one. */
  readonly ranked: readonly RankedReading[]
  readonly leftOut: readonly NotRated[]
  readonly now: {
    readonly height: { readonly value: Metres; readonly standardError: number } | null
    readonly parameters: readonly {
      readonly name: string
      readonly set?: string
      readonly value: number
      readonly standardError: number
    }[]
  }
  /** How many readings like the best give nine tenths of what any number of them would; null when more than a hundred. */
  readonly enough: number | null
  /** One after the other up to the budget; empty without one. */
  readonly sequence: readonly Chosen[]
  readonly standardDeviation: Metres
  /** Empty where the fit determines its numbers. */
  readonly assumed: readonly Assumed[]
  readonly sentence: string
}

const owner = ({ name, set }: FittedParameter) => ({ name, ...(set === undefined ? {} : { set }) })

/** A candidate with all that it narrows. */
function ranked(
  { candidate, row, expected, cost }: Rated,
  { covariance, free }: Beginning,
  height: HeightAlong | null,
  direction: readonly number[] | null,
): RankedReading {
  const along = (c: readonly number[]): Narrowed => {
    const narrowed = narrowedAlong(covariance, row, c)
    return { narrowed, standardError: Math.sqrt(varianceAlong(covariance, c) * (1 - narrowed)) }
  }
  return {
    candidate,
    expected,
    cost,
    narrowed: narrowing(covariance, row, direction),
    height: height && along(height.along),
    parameters: free.map((one, k) => ({
      ...owner(one),
      ...along(free.map((_, j) => (j === k ? 1 : 0))),
    })),
    volume: volumeLeft(covariance, row),
  }
}

const NEARLY_ALL = 0.995

function sentenceOf(
  best: RankedReading | undefined,
  aim: Aim,
  now: NextReading['now'],
  enough: number | null,
): string {
  if (!best) return 'None of the readings offered has an answer on this turf.'
  const what = candidateWords(best.candidate)
  const many =
    enough === null
      ? ''
      : ` ${enough === 1 ? 'One reading' : `${enough} readings`} there ${enough === 1 ? 'gives' : 'give'} nine tenths of what any number would.`
  const measure = `Measure ${what} next:`
  const part = (narrowed: number) =>
    narrowed > NEARLY_ALL
      ? 'nearly all of its variance goes.'
      : `${Math.round(100 * narrowed)} % of its variance goes.`
  if (aim.kind === 'height' && best.height && now.height)
    return `${measure} the height would be known to ${tell(best.height.standardError, 'height')} (one standard error, of the fit alone) in place of ${tell(now.height.standardError, 'height')}; ${part(best.narrowed)}${many}`
  if (aim.kind === 'parameter') return `${measure} it says most of ${aim.name}; ${part(best.narrowed)}${many}`
  return `${measure} the region of all numbers of the fit together shrinks to ${Math.round(100 * best.volume)} % of its volume.`
}

/**
 * Which reading to make next: by how much each narrows the height of a unit, a number of the turf, or all of them.
 *
 *   C′ = C − C g gᵀ C/(σ²/n + gᵀ C g), g how the reading hangs on the numbers of the fit
 *   height: cᵀC′c, c = ∂h/∂θ (c-criterion);  one number: its own variance;  all: det C′ (D-criterion)
 *
 * Holds   for a turf near the fitted one, and as far as the fit's own law holds; what scatters besides the fit (the unit,
 *         the setting) is not narrowed by any reading of turf
 * Units   SI
 * Throws  InputError when candidates name what is not there, or the scatter of a reading is not known
 * Source  Atkinson, Donev and Tobias, Optimum Experimental Designs, with SAS, 2007, chapters 10 and 17 (from memory);
 *         docs/physics.md §7.4
 */
export function nextReading(question: NextQuestion): NextReading {
  const candidates = candidatesOf(question)
  const { fit, scenario, standardDeviation, budget } = question
  const beginning = beginningOf(fit, standardDeviation, scenario)
  const { covariance, free } = beginning
  const height = heightAlong(question, beginning)
  const aim = question.aim ?? (height ? { kind: 'height' } : { kind: 'all' })
  const direction = directionOf(aim, beginning, height)
  const { rated, leftOut } = rate(question, candidates, beginning)
  const hasCost = candidates.some(({ cost }) => cost !== undefined)
  const gain = ({ row, cost }: Rated) => worth(narrowing(covariance, row, direction), hasCost ? cost : 1)
  const ordered = rated.map(one => ({ one, gain: gain(one) })).sort((a, b) => b.gain - a.gain)
  const all = ordered.map(({ one }) => ranked(one, beginning, height, direction))
  const best = ordered[0]?.one
  const enough = best ? enoughOf(covariance, best, direction) : null
  const now = {
    height: height && {
      value: height.height,
      standardError: Math.sqrt(varianceAlong(covariance, height.along)),
    },
    parameters: free.map((one, k) => ({
      ...owner(one),
      value: one.value,
      standardError: Math.sqrt(covariance.values[k * free.length + k]!),
    })),
  }
  return {
    aim,
    ranked: all,
    leftOut,
    now,
    enough,
    sequence: budget === undefined ? [] : sequenceOf(covariance, rated, direction, budget),
    standardDeviation: beginning.deviation,
    assumed: beginning.assumed,
    sentence: sentenceOf(all[0], aim, now, enough),
  }
}
