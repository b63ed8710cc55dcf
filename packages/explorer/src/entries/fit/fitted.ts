import {
  type AcrossSets,
  acrossFittedSets,
  type Comparison,
  type ComplianceFailed,
  type ComplianceFit,
  compareLaws,
  fitCompliance,
  InputError,
  type Judgement,
  judgeFit,
  type LawToTry,
  type NextReading,
  nextReading,
  type Problem,
  type Reading,
} from '@swardsink/model'
import { curveOf, type FitCurve } from './curve.ts'
import type { FitInput } from './kind.ts'
import type { FitQuestion } from './question.ts'
import { type SetFact, setFacts } from './sets.ts'
import { LAWS, type LawChoice, parametersOf } from './settings.ts'

/** What is said of a fit beside its numbers; null while that is still being worked out. */
export type Judged = {
  readonly judgement: Judgement
  /** What the sets say of their like; null with one set, or a softness that all share. */
  readonly population: AcrossSets | null
  readonly comparison: Comparison | null
  readonly next: NextReading | Problem | null
}
export type Fitted = {
  readonly fit: ComplianceFit
  readonly question: FitQuestion
  readonly curve: FitCurve
  readonly sets: readonly SetFact[]
  readonly judged: Judged | null
  /** How many readings say their own standard deviation, and the step of their gauge. */
  readonly given: { readonly standardDeviation: number; readonly gaugeStep: number }
}
/** Settings stand beside the figure, so that a reason why there is none is an answer too. */
export type FitResult =
  | ({ readonly outcome: 'fitted' } & Fitted)
  | { readonly outcome: 'none'; readonly reason: 'no readings' | 'no fit'; readonly why: string }
  | { readonly outcome: 'none'; readonly reason: 'problems'; readonly problems: readonly Problem[] }

const problemOf = (error: InputError): Problem => ({
  path: error.quantity,
  expected: error.expected,
  received: error.received,
})

/** The last few fits: what else is asked of one, such as another foot, leaves it as it is. */
const known: { key: string; readings: readonly Reading[]; fit: ComplianceFit | ComplianceFailed }[] = []
const MOST_KNOWN = 4

function fitOnce(question: FitQuestion, readings: readonly Reading[]): ComplianceFit | ComplianceFailed {
  const key = JSON.stringify(question)
  const found = known.find(
    one => one.key === key && (one.readings === readings || sameReadings(one.readings, readings)),
  )
  if (found) return found.fit
  const fit = fitCompliance({ ...question, readings })
  known.unshift({ key, readings, fit })
  known.length = Math.min(known.length, MOST_KNOWN)
  return fit
}

/** In the worker every question comes with a copy of its own. */
const sameReadings = (a: readonly Reading[], b: readonly Reading[]): boolean =>
  a.length === b.length && JSON.stringify(a) === JSON.stringify(b)

/** The other laws with the same numbers for each set. */
function lawsToTry(question: FitQuestion): readonly LawToTry[] {
  const perSet = question.free.some(free => typeof free !== 'string' && free.name === 'softness')
  const spread = question.free.filter(free => (typeof free === 'string' ? free : free.name) === 'spread')
  const held = question.start?.spread
  return LAWS.filter((law): law is Exclude<LawChoice, 'own'> => law !== 'own').map(law => ({
    law,
    free: [
      ...parametersOf(law)
        .filter(name => name !== 'spread')
        .map(name => (name === 'softness' && perSet ? ({ name, per: 'set' } as const) : name)),
      ...spread,
    ],
    ...(held === undefined ? {} : { start: { spread: held } }),
  }))
}

function comparisonOf(question: FitQuestion, readings: readonly Reading[]): Comparison {
  const { law: _, free: __, start: ___, bounds: ____, loss: _____, ...shared } = question
  const { fits: ______, ...comparison } = compareLaws({ ...shared, readings, laws: lawsToTry(question) })
  return comparison
}

function nextOf(
  fit: ComplianceFit,
  { nextFor, set }: FitInput,
  curve: FitCurve,
): NextReading | Problem | null {
  if (!nextFor) return null
  const { unit, rollers, condition } = nextFor
  const wanted = curve.set ?? (set === '' ? undefined : set)
  try {
    return nextReading({
      fit,
      scenario: { unit, rollers },
      unit,
      condition,
      ...(fit.turf || wanted === undefined ? {} : { set: wanted }),
    })
  } catch (error) {
    if (error instanceof InputError) return problemOf(error)
    throw error
  }
}

const FIT_DONE = 0.3
const CURVE_DONE = 0.45
const JUDGED = 0.75
const COMPARED = 0.9

/** Fits, and says what the fit says. A draft is the fit and its curve. */
export function fitted(
  input: FitInput,
  q: { readonly draft: boolean; readonly onStep?: (done: number) => void },
): FitResult {
  const { question, readings, set, foot } = input
  const step = (done: number) => q.onStep?.(done)
  if (readings.length === 0) return { outcome: 'none', reason: 'no readings', why: '' }
  try {
    const fit = fitOnce(question, readings)
    step(FIT_DONE)
    if (fit.outcome === 'failed') return { outcome: 'none', reason: 'no fit', why: fit.why }
    const asked = { question: { ...question, readings }, fit }
    const curve = curveOf(asked, { set, foot, alone: q.draft })
    step(CURVE_DONE)
    const sets = setFacts(fit, readings)
    const count = (is: (reading: Reading) => boolean) => readings.filter(is).length
    const told = {
      outcome: 'fitted' as const,
      fit,
      question,
      curve,
      sets,
      given: {
        standardDeviation: count(({ standardDeviation }) => standardDeviation !== undefined),
        gaugeStep: count(({ gaugeStep }) => gaugeStep !== undefined),
      },
    }
    if (q.draft) return { ...told, judged: null }
    const judgement = judgeFit(asked)
    step(JUDGED)
    const population =
      sets.length > 1 && fit.covariance ? acrossFittedSets({ ...asked, of: 'softness' }) : null
    const comparison = input.compare ? comparisonOf(question, readings) : null
    step(COMPARED)
    const next = nextOf(fit, input, curve)
    return { ...told, judged: { judgement, population, comparison, next } }
  } catch (error) {
    if (error instanceof InputError)
      return { outcome: 'none', reason: 'problems', problems: [problemOf(error)] }
    throw error
  }
}
