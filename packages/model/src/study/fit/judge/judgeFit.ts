import { describe } from '../../../quantities/index.ts'
import type { Row } from '../compliance/rows.ts'
import { cannotTell, type Untold } from './cannotTell.ts'
import { type FitAndQuestion, fittedModel } from './fittedModel.ts'
import type { Judged, JudgedRow } from './judged.ts'
import { type LackOfFit, lackOfFit } from './lackOfFit.ts'
import { type ResidualDiagnostics, residualDiagnostics } from './residualDiagnostics.ts'

/** What a fit says beyond its numbers. */
export type Judgement = {
  readonly residuals: ResidualDiagnostics
  readonly lackOfFit: LackOfFit
  readonly cannotTell: readonly Untold[]
}

function footWord({ reading: { foot }, pressing }: Row): string {
  if (foot.kind === 'roller') return foot.name === null ? 'the unit’s roller' : `roller ${foot.name}`
  const plate = pressing.kind === 'foot' && pressing.foot.kind === 'plate' ? pressing.foot.plate : null
  return plate && 'diameter' in plate ? `a plate of ${describe(plate.diameter, 'diameter')}` : 'a plate'
}

/** Drops of the whole unit are repeats of each other where roller and point are the same. */
const unitOf = ({ pressing }: Row) => (pressing.kind === 'unit' ? ` of ${pressing.key}` : '')

/**
 * A compliance fit as the judges want it. It runs along the load where every reading has one of the same foot, and
 * along the pressure under the foot otherwise, where rollers and plates can be put in one order.
 */
export function judgedCompliance({ question, fit }: FitAndQuestion): Judged {
  const fitted = fittedModel({ question, fit })
  const { made, p, free, slopes } = fitted
  const size = p.length
  const count = made.rows.length
  const answers = new Float64Array(count)
  const rates = new Float64Array(count * size)
  const known = made.model.predict(p, answers) && made.model.differentiate(p, rates)
  const feet = made.rows.map(footWord)
  const loads = fit.readings.map(({ load }) => load)
  const alongLoad = new Set(feet).size === 1 && loads.every(load => load !== null)
  const rows = made.rows.map((row, i): JudgedRow => {
    const pressure = fit.readings[i]?.pressure ?? null
    return {
      row: row.reading.row,
      set: row.reading.set,
      foot: feet[i]!,
      kind: `${row.kind}${unitOf(row)}`,
      along: (alongLoad ? loads[i] : pressure) ?? loads[i] ?? 0,
      ...(pressure === null ? {} : { pressure }),
    }
  })
  return {
    fit,
    scatter: fit.noise === 'known' ? 1 : fit.residualStandardDeviation,
    rows,
    alongWord: alongLoad ? 'load' : 'pressure',
    measured: Array.from(made.measured),
    derivatives: known
      ? rows.map((_, i) => free.map(place => rates[i * size + place]! / slopes[place]!))
      : null,
  }
}

/**
 * What stands between a fit and believing it: its residuals, its repeats, and what the readings cannot tell.
 *
 * Throws  InputError when the fit is not one of the question
 * Source  docs/physics.md §7.3
 */
export function judgeFit(asked: FitAndQuestion): Judgement {
  const judged = judgedCompliance(asked)
  return {
    residuals: residualDiagnostics(judged),
    lackOfFit: lackOfFit(judged),
    cannotTell: cannotTell(judged),
  }
}
