import { tell } from '../../../quantities/index.ts'
import { REFERENCE_PRESSURE } from '../../../turf/index.ts'
import type { FlatDirection } from './flatDirections.ts'
import { freeOf, type Judged, type JudgedRow, placeOf } from './judged.ts'

/** Why the readings hold a direction so loosely. */
export type Reason = {
  readonly kind:
    | 'few places'
    | 'one foot'
    | 'feet alike'
    | 'one load in a set'
    | 'loads alike'
    | 'far from locking'
    | 'far from the reference pressure'
    | 'no reading moves'
    | 'at its bound'
    | 'no derivatives'
    | 'scatter'
  readonly value: number | null
  readonly sentence: string
}

/** Loads that differ by less than this say little about how the law bends. */
const ALIKE = 2
/** A locking depth this many times the greatest sinkage hardly bends the curve. */
const FAR_FROM_LOCKING = 0.5
/** The reference pressure is inside the readings if they come within this factor of it. */
const NEAR = 1.25
const PER_CENT = 100

const shown = (value: number) => String(Number(value.toPrecision(2)))

function ratioOf(numbers: readonly number[]): number | null {
  const low = Math.min(...numbers)
  return numbers.length > 0 && low > 0 ? Math.max(...numbers) / low : null
}

/** The rows of the sets a direction is about; all of them where it names none. */
function rowsOf({ moves }: FlatDirection, { rows }: Judged): readonly JudgedRow[] {
  const sets = new Set(moves.flatMap(({ set }) => (set === undefined ? [] : [set])))
  return sets.size === 0 ? rows : rows.filter(({ set }) => sets.has(set))
}

/** Greatest ratio of loads to be found under one foot in one set: what a bend is seen by. */
function reachOf(rows: readonly JudgedRow[]): number | null {
  const pressures = rows.flatMap(({ pressure }) => (pressure === undefined ? [] : [pressure]))
  if (pressures.length === rows.length) return ratioOf(pressures)
  const groups = new Map<string, number[]>()
  for (const { set, foot, along } of rows) {
    const key = JSON.stringify([set, foot])
    groups.set(key, [...(groups.get(key) ?? []), along])
  }
  const ratios = [...groups.values()].flatMap(loads => ratioOf(loads) ?? [])
  return ratios.length === 0 ? null : Math.max(...ratios)
}

type Looker = (about: About) => Reason | null
type About = {
  readonly judged: Judged
  readonly rows: readonly JudgedRow[]
  /** Whether one of these moves; layers count by their last word. */
  readonly moves: (...names: readonly string[]) => boolean
  readonly alone: boolean
  /** How many move, by their last words. */
  readonly count: number
}

const oneFoot: Looker = ({ rows, moves }) => {
  if (!moves('spread')) return null
  const feet = [...new Set(rows.map(({ foot }) => foot))]
  return feet.length === 1
    ? { kind: 'one foot', value: 1, sentence: `all readings are of one foot (${feet[0]})` }
    : {
        kind: 'feet alike',
        value: feet.length,
        sentence: 'the feet are too much alike in size for this scatter',
      }
}

const oneLoad: Looker = ({ rows, moves, judged }) => {
  if (!moves('datum', 'dropDatum')) return null
  const loads = new Set(rows.map(placeOf)).size
  const own = new Set(rows.map(({ set }) => set)).size
  if (loads >= 2 * own) return null
  const where = own === 1 ? 'in its set' : 'in a set'
  return {
    kind: 'one load in a set',
    value: loads / own,
    sentence: `all drops ${where} are read under one ${judged.alongWord}, and only their differences count`,
  }
}

const fewPlaces: Looker = ({ judged, rows }) => {
  const places = new Set(rows.map(placeOf)).size
  const named = new Set(rows.map(({ set }) => set))
  const free = freeOf(judged.fit).filter(({ set }) => set === undefined || named.has(set)).length
  if (places >= free) return null
  return {
    kind: 'few places',
    value: places,
    sentence: `${places === 1 ? 'one place' : `${places} different places`} cannot fix ${free} unknowns`,
  }
}

const farFromLocking: Looker = ({ judged, moves }) => {
  if (!moves('lockingDepth')) return null
  const depth = judged.fit.parameters.find(({ name }) => name.endsWith('lockingDepth'))
  if (depth === undefined) return null
  const share = Math.max(...judged.measured) / depth.value
  if (!(share < FAR_FROM_LOCKING)) return null
  return {
    kind: 'far from locking',
    value: share,
    sentence: `the greatest sinkage is ${shown(share * PER_CENT)} % of it`,
  }
}

const loadsAlike: Looker = ({ judged, rows, moves, count }) => {
  // one softness can be told by one load: a short ladder excuses only what is told by a bend
  if (count < 2 && !moves('exponent', 'lockingDepth')) return null
  const reach = reachOf(rows)
  if (reach === null || reach >= ALIKE) return null
  const word = judged.alongWord
  return {
    kind: 'loads alike',
    value: reach,
    sentence:
      reach === 1
        ? `all readings are of one ${word}`
        : `the ${word}s differ by less than a factor of two (${shown(reach)})`,
  }
}

const farFromReference: Looker = ({ rows, moves }) => {
  if (!moves('softness') || !moves('exponent', 'lockingDepth')) return null
  const pressures = rows.flatMap(({ pressure }) => (pressure === undefined ? [] : [pressure]))
  if (pressures.length === 0) return null
  const [low, high] = [Math.min(...pressures), Math.max(...pressures)]
  if (low <= NEAR * REFERENCE_PRESSURE && REFERENCE_PRESSURE <= NEAR * high) return null
  return {
    kind: 'far from the reference pressure',
    value: low > REFERENCE_PRESSURE ? low / REFERENCE_PRESSURE : high / REFERENCE_PRESSURE,
    sentence: `softness is told at ${tell(REFERENCE_PRESSURE, 'pressure')}, and the readings reach from ${tell(low, 'pressure')} to ${tell(high, 'pressure')}`,
  }
}

const unmoved: Looker = ({ alone }) =>
  alone ? { kind: 'no reading moves', value: null, sentence: 'no reading moves with it' } : null

const scatter: Reason = {
  kind: 'scatter',
  value: null,
  sentence: 'what tells them apart is smaller than the scatter of the readings',
}

/** Looked up in this order: the first that holds is told. */
const lookers = [oneFoot, oneLoad, fewPlaces, farFromLocking, loadsAlike, farFromReference, unmoved]

/** Why the readings leave a direction open, looked up in the readings themselves. */
export function reasonFor(direction: FlatDirection, judged: Judged): Reason {
  const last = (name: string) => name.split('.').pop() ?? name
  const moving = new Set(direction.moves.map(({ name }) => last(name)))
  const about = {
    judged,
    rows: rowsOf(direction, judged),
    moves: (...names: readonly string[]) => names.some(name => moving.has(name)),
    alone: direction.kind === 'unmoved',
    count: moving.size,
  }
  for (const look of lookers) {
    const reason = look(about)
    if (reason !== null) return reason
  }
  return direction.moves.length === 1
    ? { ...scatter, sentence: 'the scatter of the readings is too large for it' }
    : scatter
}
