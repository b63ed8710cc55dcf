import type { Residuals } from '../../../numerics/index.ts'
import { describe, InputError, numberProblem, refuse } from '../../../quantities/index.ts'
import type { Noise } from '../fit.ts'
import { type ForwardModel, forwardModel } from './forwardModel.ts'
import { type TurfAsked, turfAsked } from './freeParameters.ts'
import { makePlan, type Plan } from './plan.ts'
import type { ComplianceQuestion } from './question.ts'
import { fittedRows, type LeftOut, type Row } from './rows.ts'
import { limitsFor, scalesOf, startFor } from './starts.ts'
import { weightsOf } from './weights.ts'

/** A fit before it is solved. */
export type SetUp = {
  readonly asked: TurfAsked
  readonly plan: Plan
  readonly model: ForwardModel
  readonly rows: readonly Row[]
  readonly leftOut: readonly LeftOut[]
  readonly measured: Float64Array
  readonly weights: Float64Array
  readonly notes: readonly string[]
  readonly lower: Float64Array
  readonly upper: Float64Array
  /** Typical size of each number that is solved for. */
  readonly scale: Float64Array
  readonly start: Float64Array
}

function noiseProblems(noise: Noise) {
  const kind: unknown = noise?.kind
  if (kind === 'estimated') return []
  if (kind !== 'known')
    return [{ path: 'noise.kind', expected: 'one of known, estimated', received: describe(kind) }]
  const { standardDeviation } = noise as { readonly standardDeviation: unknown }
  return numberProblem(standardDeviation, 'noise.standardDeviation', 'sinkage', { above: 0 })
}

function checkQuestion({ readings, noise, datum, level }: ComplianceQuestion): void {
  if (!Array.isArray(readings) || readings.length === 0)
    throw new InputError({ path: 'readings', expected: 'at least one reading', received: 'none' })
  refuse([
    ...noiseProblems(noise),
    ...(level === undefined ? [] : numberProblem(level, 'level', 'ratio', { above: 0, below: 1 })),
  ])
  if (datum !== undefined && (datum as unknown) !== 'per set')
    throw new InputError({ path: 'datum', expected: '"per set"', received: describe(datum) })
}

function checkEnough(rows: readonly Row[], leftOut: readonly LeftOut[], plan: Plan): void {
  if (rows.length === 0)
    throw new InputError({
      path: 'readings',
      expected: 'readings of a sinkage, or drops from a datum under more than one roller, load or point',
      received: leftOut[0] ? `none (row ${leftOut[0].row}: ${leftOut[0].why})` : 'none',
    })
  if (rows.length < plan.planned.length)
    throw new InputError({
      path: 'readings',
      expected: `at least ${plan.planned.length} readings for ${plan.planned.length} free numbers, datums included`,
      received: String(rows.length),
    })
}

function setsOf(rows: readonly Row[], asked: TurfAsked, datum: 'per set' | undefined) {
  const sets = [...new Set(rows.map(({ reading }) => reading.set))]
  const has = (set: string, kind: Row['kind']) =>
    rows.some(row => row.reading.set === set && row.kind === kind)
  return makePlan({
    law: asked.law,
    sets,
    moved: asked.free.map(({ name, by }) => ({ name, by })),
    perSet: asked.free.map(({ perSet }) => perSet),
    held: asked.held,
    datums: sets.map(set => ({
      sinkage: datum === 'per set' && has(set, 'sinkage'),
      drop: has(set, 'drop'),
    })),
  })
}

/**
 * A fit of turf to readings, checked and ready to be solved.
 *
 * Throws  InputError for what a caller got wrong: names, numbers, rollers, too few readings
 */
export function setUp(question: ComplianceQuestion): SetUp {
  checkQuestion(question)
  const { readings, scenario, datum, noise } = question
  const asked = turfAsked(question)
  const { rows, leftOut } = fittedRows(readings, scenario, datum)
  const plan = setsOf(rows, asked, datum)
  checkEnough(rows, leftOut, plan)
  const { weights, notes } = weightsOf(
    rows.map(({ reading }) => reading),
    noise,
  )
  const measured = Float64Array.from(rows, row => row.measured)
  const scales = scalesOf(rows, datum)
  const size = plan.planned.length
  const lower = new Float64Array(size).fill(Number.NEGATIVE_INFINITY)
  const upper = new Float64Array(size).fill(Number.POSITIVE_INFINITY)
  const scale = new Float64Array(size).fill(scales.depth)
  const usual = new Float64Array(size)
  asked.free.forEach((parameter, j) => {
    const limits = limitsFor(parameter, scales)
    const { start, by, name } = parameter
    if (by === 'ln' && start !== undefined && !(start > 0))
      throw new InputError({ path: `start.${name}`, expected: 'more than 0', received: describe(start) })
    for (let group = 0; group < (parameter.perSet ? plan.sets.length : 1); group++) {
      const place = plan.placeOf(group, j)
      lower[place] = limits.lower
      upper[place] = limits.upper
      usual[place] = start ?? 0
      scale[place] = by === 'ln' ? 1 : name === 'spread' ? scales.contact : Math.abs(start ?? 1) || 1
    }
  })
  const model = forwardModel(
    plan,
    rows.map(({ pressing, kind, reading, measured: read }) => ({
      pressing,
      kind,
      set: plan.sets.indexOf(reading.set),
      near: kind === 'sinkage' && read > 0 ? read : scales.depth,
    })),
    usual,
  )
  const start = startFor(
    { plan, free: asked.free, held: asked.held, rows, weights, datum, scales, lower, upper },
    model,
  )
  return {
    asked,
    plan,
    model,
    rows,
    leftOut,
    measured,
    weights,
    notes,
    lower,
    upper,
    scale,
    start,
  }
}

/** Measured minus model, times the root of the weight, for the solver: of these readings or of others in their place. */
export function residualsOf(
  { model, plan, rows }: SetUp,
  measured: Float64Array,
  weights: Float64Array,
): Residuals {
  const count = rows.length
  const size = plan.planned.length
  const roots = weights.map(Math.sqrt)
  return {
    count,
    size,
    evaluate: (p, residuals) => {
      if (!model.predict(p, residuals)) return false
      for (let r = 0; r < count; r++) residuals[r] = (measured[r]! - residuals[r]!) * roots[r]!
      return true
    },
    jacobian: (p, jacobian) => {
      if (!model.differentiate(p, jacobian)) return false
      for (let r = 0; r < count; r++) for (let k = 0; k < size; k++) jacobian[r * size + k]! *= -roots[r]!
      return true
    },
  }
}
