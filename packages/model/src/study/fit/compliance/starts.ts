import { REFERENCE_PRESSURE } from '../../../turf/index.ts'
import { levelLoads } from '../../../unit/index.ts'
import type { ForwardModel } from './forwardModel.ts'
import type { FreeParameter } from './freeParameters.ts'
import { asItIs, asSolved, type Plan } from './plan.ts'
import { hasDatum, type Row } from './rows.ts'

export const median = (values: readonly number[]): number => {
  const sorted = Float64Array.from(values).sort()
  const middle = Math.floor(sorted.length / 2)
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}

/** Lengths that the readings suggest before anything is fitted: limits and starts are parts of them. */
export type Scales = {
  /** Deepest reading; where every zero is unknown, the furthest that readings of a set lie apart. */
  readonly depth: number
  /** Half the width of the widest contact. */
  readonly contact: number
}

const contactOf = ({ pressing }: Row, depth: number): number => {
  if (pressing.kind === 'unit') return Math.sqrt(pressing.drop.unit.frontRoller.diameter * depth)
  const { foot } = pressing
  if (foot.kind === 'roller') return Math.sqrt(foot.roller.diameter * depth)
  const { plate } = foot
  return 'diameter' in plate ? plate.diameter / 2 : Math.min(plate.width, plate.length) / 2
}

export function scalesOf(rows: readonly Row[], datum: 'per set' | undefined): Scales {
  const known = rows.filter(row => !hasDatum(row, datum) && row.measured > 0)
  const bySet = new Map<string, number[]>()
  for (const { reading, kind, measured } of rows) {
    const key = `${kind} ${reading.set}`
    const together = bySet.get(key)
    if (together) together.push(measured)
    else bySet.set(key, [measured])
  }
  const ranges = [...bySet.values()].map(values => Math.max(...values) - Math.min(...values))
  const depth = known.length > 0 ? Math.max(...known.map(row => row.measured)) : Math.max(...ranges)
  return { depth, contact: Math.max(...rows.map(row => contactOf(row, depth))) }
}

/** Softness of the linear springs that a foot under its load presses to a depth. */
function secant({ pressing }: Row, depth: number): number {
  const roller = (diameter: number, length: number, load: number) =>
    (REFERENCE_PRESSURE * (4 / 3) * length * Math.sqrt(diameter) * depth ** 1.5) / load
  if (pressing.kind === 'unit') {
    const { unit } = pressing.drop
    return roller(unit.frontRoller.diameter, unit.frontRoller.length, levelLoads(unit).front)
  }
  const { foot, load } = pressing
  if (foot.kind === 'roller') return roller(foot.roller.diameter, foot.roller.length, load)
  const area =
    'diameter' in foot.plate ? (Math.PI * foot.plate.diameter ** 2) / 4 : foot.plate.width * foot.plate.length
  return (REFERENCE_PRESSURE * depth * area) / load
}

/** How far a number may go when nobody says, as parts of what the readings suggest: far beyond any turf. */
const FAR = 1e5
/** Locked so much deeper than the deepest reading, turf bends by a thousandth: no reading tells that from a straight line. */
const FAR_LOCKING = 1e3
const FAR_SPREAD = 20

/** What is solved for at a limit, so that rounding does not lead back past it. */
function inside(by: 'ln' | 'plain', limit: number, towards: 1 | -1): number {
  let at = asSolved(by, limit)
  while (Number.isFinite(at) && (asItIs(by, at) - limit) * towards < 0)
    at += towards * Number.EPSILON * Math.max(Math.abs(at), 1)
  return at
}

/** Limits of a parameter as it is solved for. */
export function limitsFor({ name, by, quantity, lower, upper }: FreeParameter, scales: Scales) {
  const depths = quantity === 'softness' || quantity === 'lockingDepth'
  const low = depths ? Math.max(lower, scales.depth / FAR) : lower
  const depth = scales.depth * (quantity === 'lockingDepth' ? FAR_LOCKING : FAR)
  const far = depths ? depth : name === 'spread' ? scales.contact * FAR_SPREAD : upper
  const high = Math.min(upper, far)
  return { lower: inside(by, low, 1), upper: inside(by, high, -1) }
}

/** Parts of a contact, and multiples of a depth or a softness, to start from. */
const FIRST_SPREAD = 0.2
const FIRST_LOCKING = 2.5
/** Where every zero is unknown the readings say how far the turf gave between loads: it gave so many times that in all. */
const GIVES = [1, 0.3, 3, 10, 30] as const
/** Locking depth is raised, or softness taken down, by so much a time until the turf answers every reading. */
const EASE = 1.4
const MOST_EASING = 40

type Started = { readonly p: Float64Array; readonly sumOfSquares: number }

type Question = {
  readonly plan: Plan
  readonly free: readonly FreeParameter[]
  readonly held: ReadonlyMap<string, number>
  readonly rows: readonly Row[]
  readonly weights: Float64Array
  readonly datum: 'per set' | undefined
  readonly scales: Scales
  readonly lower: Float64Array
  readonly upper: Float64Array
}

/** Softness by set from sinkages of a known zero, or undefined. */
function softnessBySet({ rows, datum, plan }: Question): readonly (number | undefined)[] {
  const known = rows.filter(row => !hasDatum(row, datum) && row.measured > 0)
  const all = known.map(row => secant(row, row.measured))
  return plan.sets.map(set => {
    const own = known.flatMap((row, i) => (row.reading.set === set ? [all[i]!] : []))
    return own.length > 0 ? median(own) : all.length > 0 ? median(all) : undefined
  })
}

/**
 * Where the search starts: told, or from the readings. Softness is the middle secant of the readings as if the springs
 * were linear; where every zero is unknown the best of a few. The datum of a set is the middle of what is left.
 *
 * Holds   where the turf answers no start, the first is given back and the search fails there
 */
export function startFor(question: Question, model: ForwardModel): Float64Array {
  const { plan, free, held, rows, weights, scales, lower, upper, datum } = question
  const bySet = softnessBySet(question)
  const shared = bySet.every(one => one !== undefined) ? median(bySet as number[]) : undefined
  const usual = median(rows.map(row => secant(row, scales.depth)))
  const predicted = new Float64Array(rows.length)

  const startOf = (
    parameter: FreeParameter,
    set: number | undefined,
    gives: number,
    ease: number,
  ): number => {
    const softness =
      held.get('softness') ?? (set === undefined ? shared : bySet[set]) ?? usual * gives ** (3 / 2)
    const told = parameter.start
    if (parameter.quantity === 'lockingDepth')
      return (told ?? FIRST_LOCKING * Math.max(scales.depth * gives, softness)) * ease
    if (parameter.quantity === 'softness')
      return (told ?? softness) / (free.some(({ quantity }) => quantity === 'lockingDepth') ? 1 : ease)
    if (told !== undefined) return told
    if (parameter.name === 'spread') return FIRST_SPREAD * scales.contact
    return 1 // an exponent: linear springs
  }

  const startAt = (gives: number, ease: number): Float64Array => {
    const p = new Float64Array(plan.planned.length)
    free.forEach((parameter, j) => {
      const sets = parameter.perSet ? plan.sets.map((_, g) => g) : [undefined]
      for (const set of sets) {
        const place = plan.placeOf(set ?? 0, j)
        const value = asSolved(parameter.by, startOf(parameter, set, gives, ease))
        p[place] = Math.min(Math.max(value, lower[place]!), upper[place]!)
      }
    })
    return p
  }
  const datumOf = rows.map(row =>
    hasDatum(row, datum)
      ? (row.kind === 'drop' ? plan.dropDatum : plan.sinkageDatum)[plan.sets.indexOf(row.reading.set)]!
      : -1,
  )
  const attempt = (gives: number, ease: number): Started | undefined => {
    const p = startAt(gives, ease)
    if (!model.predict(p, predicted)) return undefined
    const left = new Map<number, number[]>()
    rows.forEach((row, r) => {
      const place = datumOf[r]!
      if (place < 0) return
      const together = left.get(place)
      if (together) together.push(row.measured - predicted[r]!)
      else left.set(place, [row.measured - predicted[r]!])
    })
    for (const [place, values] of left) p[place] = median(values)
    const sumOfSquares = rows.reduce((sum, row, r) => {
      const zero = datumOf[r]! >= 0 ? p[datumOf[r]!]! : 0
      return sum + weights[r]! * (row.measured - predicted[r]! - zero) ** 2
    }, 0)
    return { p, sumOfSquares }
  }

  const gives = shared === undefined ? GIVES : [1]
  for (let i = 0; i < MOST_EASING; i++) {
    const found = gives.flatMap(one => attempt(one, EASE ** i) ?? [])
    if (found.length > 0)
      return found.reduce((best, one) => (one.sumOfSquares < best.sumOfSquares ? one : best)).p
  }
  return startAt(1, 1)
}
