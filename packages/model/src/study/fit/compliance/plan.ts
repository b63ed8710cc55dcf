import type { PressureLaw, Turf } from '../../../turf/index.ts'
import { turfWith, type Values } from './lawParameters.ts'
import type { Moved } from './loadRates.ts'

/** A number that is solved for: of the turf, or the datum that the readings of a set share. */
export type Planned = {
  readonly name: string
  /** The set it belongs to, where there is one a set. */
  readonly set?: string
  readonly by: 'ln' | 'plain'
}

/** Which numbers are solved for, and where each stands in the list of them. */
export type Plan = {
  readonly law: PressureLaw
  readonly sets: readonly string[]
  /** Those of the turf that are free, in the order named. */
  readonly moved: readonly Moved[]
  /** Whether each of them has a value for every set. */
  readonly perSet: readonly boolean[]
  /** Numbers of the turf that stay. */
  readonly held: Values
  /** All that is solved for: turf first, then datums. */
  readonly planned: readonly Planned[]
  /** Turfs that differ: one for all, or one a set. */
  readonly groups: number
  /** Place among the planned of a moved number in a group. */
  readonly placeOf: (group: number, moved: number) => number
  /** Place of the datum of a set; −1 where it has none. */
  readonly sinkageDatum: Int32Array
  readonly dropDatum: Int32Array
}

type Question = Pick<Plan, 'law' | 'sets' | 'moved' | 'perSet' | 'held'> & {
  /** By set: whether its readings of sinkage, and its drops, have an unknown zero. */
  readonly datums: readonly { readonly sinkage: boolean; readonly drop: boolean }[]
}

/** Sets a number of the turf apart from the zero of the gauge. */
const DATUM = 'datum'
/** Where a set has both, its drops are from another zero than its sinkages. */
const DROP_DATUM = 'dropDatum'

export function makePlan(question: Question): Plan {
  const { sets, moved, perSet, datums } = question
  const planned: Planned[] = []
  const first: number[] = []
  moved.forEach(({ name, by }, j) => {
    first.push(planned.length)
    if (perSet[j]) for (const set of sets) planned.push({ name, set, by })
    else planned.push({ name, by })
  })
  const sinkageDatum = new Int32Array(sets.length).fill(-1)
  const dropDatum = new Int32Array(sets.length).fill(-1)
  sets.forEach((set, g) => {
    const { sinkage, drop } = datums[g]!
    if (sinkage) sinkageDatum[g] = planned.push({ name: DATUM, set, by: 'plain' }) - 1
    if (drop) dropDatum[g] = planned.push({ name: sinkage ? DROP_DATUM : DATUM, set, by: 'plain' }) - 1
  })
  return {
    law: question.law,
    sets,
    moved,
    perSet,
    held: question.held,
    planned,
    groups: perSet.includes(true) ? sets.length : 1,
    placeOf: (group, j) => first[j]! + (perSet[j] ? group : 0),
    sinkageDatum,
    dropDatum,
  }
}

/** The number itself from what is solved for. */
export const asItIs = (by: Planned['by'], value: number): number => (by === 'ln' ? Math.exp(value) : value)
/** What is solved for from the number itself. */
export const asSolved = (by: Planned['by'], value: number): number => (by === 'ln' ? Math.log(value) : value)

/** One number of the turf moved, as it is solved for. */
export type Change = { readonly parameter: number; readonly by: number }

/** Numbers of the turf of a group. */
export function valuesOf(
  { moved, held, placeOf }: Plan,
  group: number,
  p: ArrayLike<number>,
  change?: Change,
): Values {
  const values = new Map(held)
  moved.forEach(({ name, by }, j) => {
    const shift = change?.parameter === j ? change.by : 0
    values.set(name, asItIs(by, p[placeOf(group, j)]! + shift))
  })
  return values
}

/** undefined where the numbers make no turf. */
export const turfOfGroup = (
  plan: Plan,
  group: number,
  p: ArrayLike<number>,
  change?: Change,
): Turf | undefined => turfWith(plan.law, valuesOf(plan, group, p, change))
