import { describe, InputError, type Metres, type Newtons, type Pascals } from '../../../quantities/index.ts'
import type { Reading } from '../../../readings/index.ts'
import type { Scenario } from '../../../scenario/index.ts'
import { softnessOf } from '../../../turf/index.ts'
import { type ComplianceFit, turfOf } from './complianceFit.ts'
import { forwardModel } from './forwardModel.ts'
import { turfParameters } from './lawParameters.ts'
import { asSolved, makePlan, type Plan, type Planned } from './plan.ts'
import { type Row, rowOf } from './rows.ts'

/** A reading that might be made: of a foot under a load, or of the drop of a point of the unit. */
export type Asking = {
  readonly set?: string
  readonly foot: Reading['foot']
  readonly load?: Newtons
  readonly pressure?: Pascals
  /** Along the wheelbase: the whole unit is set down. */
  readonly point?: number
  /** Whether it is read from the unknown zero of its set. */
  readonly fromDatum?: boolean
}

export type Answer = {
  readonly value: Metres
  /** By each parameter of the fit that is free, in the order of its covariance. */
  readonly derivatives: readonly number[]
}

const DATUMS = ['datum', 'dropDatum']

type Known = Pick<ComplianceFit, 'parameters' | 'turfs' | 'turf' | 'perSet'>

/** The plan of a fit again, from what the fit says; and how each number was solved for. */
function planOf(fit: Known): Plan {
  const sets = Object.keys(fit.turfs)
  const { law } = turfOf(fit, sets[0])
  const searched = fit.parameters.filter(({ state }) => state !== 'fixed')
  const ofTurf = searched.filter(({ name }) => !DATUMS.includes(name))
  const names = [...new Set(ofTurf.map(({ name }) => name))]
  const positive = (name: string) =>
    name !== 'spread' && turfParameters(law).find(one => one.name === name)?.quantity !== null
  const has = (name: string, set: string) => searched.some(one => one.name === name && one.set === set)
  return makePlan({
    law,
    sets,
    moved: names.map(name => ({ name, by: positive(name) ? 'ln' : 'plain' })),
    perSet: names.map(name => fit.perSet.includes(name)),
    // what else was held stands in the law
    held: new Map(
      fit.parameters
        .filter(({ state, name }) => state === 'fixed' && name === 'spread')
        .map(({ name, value }) => [name, value]),
    ),
    datums: sets.map(set => ({
      // a lone datum is of whatever the set's readings are: either kind may be asked for
      sinkage: has('datum', set),
      drop: has('dropDatum', set),
    })),
  })
}

const numberIn = (fit: Known, { name, set }: Planned): number =>
  fit.parameters.find(one => one.name === name && one.set === set)?.value ?? Number.NaN

/** The set that is asked about: named, or the only one, or any where all share a turf. */
function placeOfSet(fit: Known, sets: readonly string[], set: string | undefined): number {
  if (set === undefined && fit.turf !== null) return 0
  const place = set === undefined ? -1 : sets.indexOf(set)
  if (place < 0)
    throw new InputError({
      path: 'set',
      expected: `one of ${sets.map(one => JSON.stringify(one)).join(', ')}`,
      received: describe(set),
    })
  return place
}

/**
 * What the fitted turf answers to readings that might be made, and how that hangs on what was fitted.
 *
 *   null where it has no answer
 *
 * Units   [m]; derivatives in the units of the parameters themselves, not of their logarithms
 * Throws  InputError when a set, a roller or a load is missing or unknown
 */
export function answersOf(
  fit: Known,
  asked: readonly Asking[],
  scenario?: Pick<Scenario, 'unit' | 'rollers'>,
): readonly (Answer | null)[] {
  const plan = planOf(fit)
  const p = Float64Array.from(plan.planned, one => asSolved(one.by, numberIn(fit, one)))
  const free = plan.planned.flatMap((one, k) => {
    const found = fit.parameters.find(({ name, set }) => name === one.name && set === one.set)
    return found?.state === 'free' ? [k] : []
  })
  return asked.map(one => answer(fit, plan, p, free, one, scenario))
}

function readingFor({ foot, load, pressure, point }: Asking, row: number, set: string): Reading {
  return {
    row,
    set,
    foot,
    ...(load === undefined ? {} : { load }),
    ...(pressure === undefined ? {} : { pressure }),
    measured: point === undefined ? { kind: 'sinkage', sinkage: 0 } : { kind: 'drop', drop: 0, point },
    count: 1,
  }
}

function answer(
  fit: Known,
  plan: Plan,
  p: Float64Array,
  free: readonly number[],
  asked: Asking,
  scenario: Pick<Scenario, 'unit' | 'rollers'> | undefined,
): Answer | null {
  const set = placeOfSet(fit, plan.sets, asked.set)
  const row = rowOf(readingFor(asked, 1, plan.sets[set]!), scenario) as Row
  const datum =
    row.kind === 'drop' && plan.dropDatum[set]! >= 0 ? plan.dropDatum[set]! : plan.sinkageDatum[set]!
  // without a datum of its own kind the plan's would be added: it is added here, if asked for
  const bare: Plan = {
    ...plan,
    sinkageDatum: new Int32Array(plan.sets.length).fill(-1),
    dropDatum: new Int32Array(plan.sets.length).fill(-1),
  }
  const { pressing, kind } = row
  const model = forwardModel(bare, [{ pressing, set, kind, near: softnessOf(plan.law) }], p)
  const value = new Float64Array(1)
  const rates = new Float64Array(plan.planned.length)
  if (!model.predict(p, value) || model.isBeyond(0) || !model.differentiate(p, rates)) return null
  if (asked.fromDatum && datum >= 0) {
    value[0] = value[0]! + p[datum]!
    rates[datum] = 1
  }
  return {
    value: value[0]!,
    derivatives: free.map(k => (plan.planned[k]!.by === 'ln' ? rates[k]! / Math.exp(p[k]!) : rates[k]!)),
  }
}
