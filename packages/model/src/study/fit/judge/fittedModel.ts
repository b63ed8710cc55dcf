import { InputError } from '../../../quantities/index.ts'
import type { ComplianceFit } from '../compliance/complianceFit.ts'
import { asItIs, asSolved, type Plan } from '../compliance/plan.ts'
import type { ComplianceQuestion } from '../compliance/question.ts'
import { type SetUp, setUp } from '../compliance/setUp.ts'

/** A fit beside the question it answers. */
export type FitAndQuestion = { readonly question: ComplianceQuestion; readonly fit: ComplianceFit }

/** A fit's model again, at the numbers it ended with. */
export type FittedModel = {
  readonly made: SetUp
  /** As they are solved for. */
  readonly p: Float64Array
  /** Places of those with a standard error: the columns of the fit's covariance. */
  readonly free: readonly number[]
  /** How the number itself grows with what is solved for, by place. */
  readonly slopes: readonly number[]
  /** Covariance of what is solved for, of the free ones; null where the data do not determine them. */
  readonly covariance: readonly (readonly number[])[] | null
}

function valueAt(fit: ComplianceFit, { name, set }: Plan['planned'][number]): number {
  const found = fit.parameters.find(one => one.name === name && one.set === set)
  if (found) return found.value
  throw new InputError({
    path: 'fit.parameters',
    expected: `${name}${set === undefined ? '' : ` of set ${JSON.stringify(set)}`}, as the question has it`,
    received: fit.parameters.map(one => one.name).join(', '),
  })
}

/**
 * Puts a fit's numbers back into the model it was made with.
 *
 * Throws  InputError when the fit is not one of this question
 */
export function fittedModel({ question, fit }: FitAndQuestion): FittedModel {
  const made = setUp(question)
  const { planned } = made.plan
  if (made.rows.length !== fit.residuals.length)
    throw new InputError({
      path: 'fit.residuals',
      expected: `${made.rows.length} of them, as many as the question has readings to fit`,
      received: String(fit.residuals.length),
    })
  const values = planned.map(one => valueAt(fit, one))
  const isFree = (place: number) =>
    fit.parameters.some(
      ({ name, set, state }) =>
        name === planned[place]!.name && set === planned[place]!.set && state === 'free',
    )
  const free = [...planned.keys()].filter(isFree)
  const slopes = planned.map(({ by }, k) => (by === 'ln' ? values[k]! : 1))
  return {
    made,
    p: Float64Array.from(planned, ({ by }, k) => asSolved(by, values[k]!)),
    free,
    slopes,
    covariance:
      fit.covariance?.map((row, i) => row.map((c, j) => c / (slopes[free[i]!]! * slopes[free[j]!]!))) ?? null,
  }
}

/** What a number that is solved for stands for. */
export const numberAt = ({ made: { plan } }: FittedModel, place: number, value: number): number =>
  asItIs(plan.planned[place]!.by, value)
