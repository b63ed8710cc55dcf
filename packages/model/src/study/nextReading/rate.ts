import { catalogue, type Metres } from '../../quantities/index.ts'
import { answersOf } from '../fit/compliance/answersOf.ts'
import { type Beginning, isFromDatum } from './beginning.ts'
import type { Candidate } from './candidate.ts'
import type { Row } from './narrowing.ts'
import type { NextQuestion } from './nextQuestion.ts'

/** A candidate with what it would read, and how that hangs on the numbers of the fit. */
export type Rated = {
  readonly candidate: Candidate
  readonly row: Row
  readonly expected: Metres
  readonly cost: number
}

export type NotRated = { readonly candidate: Candidate; readonly why: string }

/** Candidates with what they would say, and those that can not be asked. */
export function rate(question: NextQuestion, candidates: readonly Candidate[], { deviation }: Beginning) {
  const { fit, scenario } = question
  const rated: Rated[] = []
  const leftOut: NotRated[] = []
  for (const candidate of candidates) {
    const { foot, load, pressure, point, replicates = 1, cost = replicates } = candidate
    const set = candidate.set ?? (fit.turf ? Object.keys(fit.turfs)[0] : undefined)
    const isDrop = point !== undefined
    const fromDatum = isFromDatum(fit, set, isDrop)
    if (isDrop && !fromDatum) {
      leftOut.push({
        candidate,
        why: 'a drop from an unknown zero, and no drop in its set to compare it with',
      })
      continue
    }
    const [answer] = answersOf(
      fit,
      [
        {
          foot,
          fromDatum,
          ...(set === undefined ? {} : { set }),
          ...(load === undefined ? {} : { load }),
          ...(pressure === undefined ? {} : { pressure }),
          ...(isDrop ? { point } : {}),
        },
      ],
      scenario,
    )
    if (!answer) {
      leftOut.push({ candidate, why: 'the fitted turf has no answer to it' })
      continue
    }
    const { derivatives, value } = answer
    // a ladder goes beyond what was fitted; there a law may say what no turf does
    if (!question.candidates && value > catalogue.sinkage.high) {
      leftOut.push({ candidate, why: 'it would sink deeper than any turf is likely to' })
      continue
    }
    const variance = (candidate.standardDeviation ?? deviation) ** 2 / replicates
    rated.push({ candidate, cost, expected: value, row: { slopes: derivatives, variance } })
  }
  return { rated, leftOut }
}
