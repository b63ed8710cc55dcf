import type { Solved } from '../../../numerics/index.ts'
import { InputError } from '../../../quantities/index.ts'
import { residualsOf } from '../compliance/setUp.ts'
import { type BootstrapFits, bootstrapFits } from './bootstrapFits.ts'
import { type FitAndQuestion, fittedModel, numberAt } from './fittedModel.ts'

export type ResampleQuestion = FitAndQuestion & {
  /** What is drawn again: residuals about the curve, single readings, or whole sets. */
  readonly resample: 'residuals' | 'readings' | 'sets'
  /** 2,000 unless given. */
  readonly draws?: number
  readonly seed: number
  readonly onStep?: (done: number) => void
}

export type ResampledFit = {
  readonly parameters: readonly { readonly name: string; readonly set?: string }[]
  /** A row a draw that was fitted, in the order of `parameters`, each in its own unit. */
  readonly values: readonly (readonly number[])[]
  readonly draws: number
  readonly seed: number
  readonly failed: BootstrapFits['failed']
}

const DRAWS = 2000

/**
 * A fit of turf made again many times of readings drawn from its readings: how its numbers scatter, and hang together,
 * without asking that the model be straight. Intervals of a population of sets come from acrossFittedSets.
 *
 * Holds   in drawing sets, a set's own parameters keep their values while it is not drawn
 * Throws  InputError for a robust fit, or one that did not converge
 * Source  docs/physics.md §7.3
 */
export function resampleFit(asked: ResampleQuestion): ResampledFit {
  const { fit, resample, draws = DRAWS, seed, onStep } = asked
  if (fit.outcome !== 'converged')
    throw new InputError({ path: 'fit', expected: 'one that converged', received: fit.why })
  const fitted = fittedModel(asked)
  const { made, p, free } = fitted
  const { plan, rows, measured, weights } = made
  const residuals = residualsOf(made, measured, weights)
  const solved = solvedAgain(asked, fitted, residuals)
  const groups = Int32Array.from(rows, ({ reading }) => plan.sets.indexOf(reading.set))
  const found = bootstrapFits({
    residuals,
    solved,
    resample: resample === 'sets' ? { groups } : resample,
    draws,
    seed,
    ...(onStep ? { onStep } : {}),
  })
  const size = p.length
  return {
    parameters: free.map(place => {
      const { name, set } = plan.planned[place]!
      return set === undefined ? { name } : { name, set }
    }),
    values: Array.from({ length: found.fitted }, (_, draw) =>
      free.map(place => numberAt(fitted, place, found.values[draw * size + place]!)),
    ),
    draws,
    seed,
    failed: found.failed,
  }
}

/** The end of the search, as far as drawing again needs it, from the numbers of the fit. */
function solvedAgain(
  { question, fit }: ResampleQuestion,
  { p, free }: ReturnType<typeof fittedModel>,
  of: ReturnType<typeof residualsOf>,
): Solved {
  const residuals = new Float64Array(of.count)
  const jacobian = new Float64Array(of.count * of.size)
  if (!of.evaluate(p, residuals) || !of.jacobian?.(p, jacobian))
    throw new InputError({ path: 'fit', expected: 'numbers the model answers to', received: 'others' })
  const { loss } = question
  const robust = loss !== undefined && loss.kind !== 'squares'
  return {
    outcome: 'converged',
    why: 'small gain',
    p,
    residuals,
    jacobian,
    robust: null,
    loss: robust ? { kind: loss.kind, at: loss.at, spread: 1 } : null,
    atBound: Uint8Array.from(p, (_, place) => (free.includes(place) ? 0 : 1)),
    rank: free.length,
    sumOfSquares: fit.sumOfSquares,
    iterations: fit.iterations,
    evaluations: fit.evaluations,
    restarts: 0,
  }
}
