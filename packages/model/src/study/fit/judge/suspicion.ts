import { fDistribution, normal, studentT } from '../../../numerics/index.ts'
import { freeOf, type Judged } from './judged.ts'

/** Why a reading is worth a second look. It stays in the fit. */
export type Suspicion = {
  readonly kind: 'far off' | 'pulls the fit' | 'stands alone'
  readonly value: number
  readonly limit: number
  readonly sentence: string
}

export type JudgedResidual = {
  readonly row: number
  readonly set: string
  /** Measured minus fitted, in the unit of the readings. */
  readonly residual: number
  /** In standard deviations of such a reading; null without a scatter to measure by. */
  readonly standardised: number | null
  /** The same, allowing for how much the reading draws the curve to itself. */
  readonly studentised: number | null
  /** The same, by the scatter of the other readings: Student's t, with one degree of freedom fewer, if all is well. */
  readonly deleted: number | null
  readonly leverage: number
  /** Cook's distance: how far all parameters move when it is left out. */
  readonly cook: number | null
  readonly suspicions: readonly Suspicion[]
}

/** Chance, over all readings together, of calling one far off when none is. */
const FALSE_ALARM = 0.05
/** A reading that draws its own fitted value this far has hardly a residual left to judge it by. */
const ALONE = 0.9
/** Above this the reading is fitted whatever it says. */
const OWN = 1 - 1e-9
/** Where leaving a reading out moves the parameters to the edge of the region that holds them with this probability. */
const HALF = 0.5
/** At the end of a short ladder of loads much leverage is usual: the reading must lie off by more than one in a hundred. */
const ODD = 0.995
/** The median of F is below this for all degrees of freedom; so many halvings leave six digits. */
const TOP = 8
const HALVINGS = 24

type Numbers = Omit<JudgedResidual, 'suspicions'>

function numbersOf({ fit, rows, scatter }: Judged): readonly Numbers[] {
  const size = freeOf(fit).length
  return rows.map(({ row, set }, i) => {
    const [residual, leverage] = [fit.residuals[i]!, fit.leverage[i]!]
    const named = { row, set, residual, leverage }
    const weighted = residual * Math.sqrt(fit.weights[i]!)
    if (scatter === null || !(scatter > 0))
      return { ...named, standardised: null, studentised: null, deleted: null, cook: null }
    const standardised = weighted / scatter
    if (leverage > OWN) return { ...named, standardised, studentised: null, deleted: null, cook: null }
    const studentised = standardised / Math.sqrt(1 - leverage)
    const dof = fit.degreesOfFreedom
    const rest = dof - studentised ** 2
    const deleted =
      fit.noise === 'known'
        ? studentised
        : dof > 1 && rest > 0
          ? studentised * Math.sqrt((dof - 1) / rest)
          : null
    const cook = size > 0 ? (studentised ** 2 * leverage) / ((1 - leverage) * size) : null
    return { ...named, standardised, studentised, deleted, cook }
  })
}

const shown = (value: number) => String(Number(value.toPrecision(3))).replace('-', '−')

function farOff({ deleted }: Numbers, { fit, rows }: Judged): Suspicion[] {
  if (deleted === null) return []
  const tail = 1 - FALSE_ALARM / (2 * rows.length)
  const limit =
    fit.noise === 'known' ? normal.quantile(tail) : studentT.quantile(tail, fit.degreesOfFreedom - 1)
  if (!(Math.abs(deleted) > limit)) return []
  const side = deleted > 0 ? 'above' : 'below'
  return [
    {
      kind: 'far off',
      value: deleted,
      limit,
      sentence: `it lies ${shown(Math.abs(deleted))} standard deviations ${side} the curve; among ${rows.length} readings one beyond ${shown(limit)} comes by chance in one fit of twenty`,
    },
  ]
}

/** The F that is as often exceeded as not: near one, and found by halving. */
function medianF(above: number, below: number): number {
  let [low, high] = [0, TOP]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2
    if (fDistribution.cdf(middle, above, below) < HALF) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function pulls({ cook, deleted }: Numbers, { fit }: Judged): Suspicion[] {
  const size = freeOf(fit).length
  if (cook === null || deleted === null || fit.degreesOfFreedom < 2) return []
  const limit = medianF(size, fit.noise === 'known' ? Number.POSITIVE_INFINITY : fit.degreesOfFreedom)
  const odd = fit.noise === 'known' ? normal.quantile(ODD) : studentT.quantile(ODD, fit.degreesOfFreedom - 1)
  if (!(cook > limit && Math.abs(deleted) > odd)) return []
  return [
    {
      kind: 'pulls the fit',
      value: cook,
      limit,
      sentence: `without it the parameters would move beyond the region that holds them with even odds (Cook's distance ${shown(cook)})`,
    },
  ]
}

/** With no degrees of freedom every reading stands alone, and none of them is worth more of a look than another. */
function alone({ leverage }: Numbers, { fit }: Judged): Suspicion[] {
  if (!(leverage > ALONE) || fit.degreesOfFreedom < 1) return []
  return [
    {
      kind: 'stands alone',
      value: leverage,
      limit: ALONE,
      sentence: `the curve goes where it says (leverage ${shown(leverage)}): no other reading checks it`,
    },
  ]
}

/** Every residual with its measures and what makes it suspicious. */
export const judgedResiduals = (judged: Judged): readonly JudgedResidual[] =>
  numbersOf(judged).map(numbers => ({
    ...numbers,
    suspicions: [...farOff(numbers, judged), ...pulls(numbers, judged), ...alone(numbers, judged)],
  }))
