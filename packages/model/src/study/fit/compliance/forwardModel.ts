import type { Turf } from '../../../turf/index.ts'
import { difference, STEP } from './difference.ts'
import { type Foot, footOnTurf, type Stood, standUnder } from './foot.ts'
import { type LoadRates, loadRates, type Neighbourhood } from './loadRates.ts'
import { asItIs, type Plan, turfOfGroup } from './plan.ts'
import type { Pressing } from './rows.ts'
import { dropOn, dropRates } from './unitDrop.ts'

/** What the turf of a plan answers to a list of pressings, and how that changes with what is solved for. */
export type ForwardModel = {
  /** Of each row: the answer of its case, with the datum of its set. */
  readonly predict: (p: Float64Array, out: Float64Array) => boolean
  /** Row-major: of each row by each planned number. */
  readonly differentiate: (p: Float64Array, out: Float64Array) => boolean
  /** Whether the turf last predicted with bottoms out under the foot of a row. */
  readonly isBeyond: (row: number) => boolean
}

export type ModelRow = {
  readonly pressing: Pressing
  /** Place of its set among the plan's. */
  readonly set: number
  readonly kind: 'sinkage' | 'drop'
  /** Where a search for its sinkage starts. */
  readonly near: number
}

/** Rows of one foot on one turf under one load, or of one unit on it, are one case. */
type FootCases = {
  readonly group: number
  readonly pressing: Extract<Pressing, { kind: 'foot' }>
  readonly loads: Float64Array
  /** Place of each among all cases. */
  readonly places: Int32Array
  /** Where each search starts, and what it finds: for feet that take all their loads at once. */
  readonly room: {
    readonly lnStarts: Float64Array
    readonly sinkages: Float64Array
    readonly steepnesses: Float64Array
  }
}
type UnitCase = {
  readonly group: number
  readonly pressing: Extract<Pressing, { kind: 'unit' }>
  readonly place: number
}

function casesOf(rows: readonly ModelRow[], groups: number) {
  const places = new Map<string, number>()
  const feet = new Map<
    string,
    Pick<FootCases, 'group' | 'pressing'> & { loads: number[]; places: number[] }
  >()
  const units: UnitCase[] = []
  const starts: number[] = []
  const caseOf = rows.map(({ pressing, set, near }) => {
    const group = groups === 1 ? 0 : set
    const key = `${group} ${pressing.key}`
    const known = places.get(key)
    if (known !== undefined) return known
    const place = starts.push(near) - 1
    places.set(key, place)
    if (pressing.kind === 'unit') units.push({ group, pressing, place })
    else {
      const footKey = `${group} ${pressing.footKey}`
      const cases = feet.get(footKey) ?? { group, pressing, loads: [], places: [] }
      feet.set(footKey, cases)
      cases.loads.push(pressing.load)
      cases.places.push(place)
    }
    return place
  })
  return {
    caseOf: Int32Array.from(caseOf),
    feet: [...feet.values()].map(({ group, pressing, loads, places: own }): FootCases => {
      const room = () => new Float64Array(own.length)
      return {
        group,
        pressing,
        loads: Float64Array.from(loads),
        places: Int32Array.from(own),
        room: { lnStarts: room(), sinkages: room(), steepnesses: room() },
      }
    }),
    units,
    starts: Float64Array.from(starts),
  }
}

/** Sets the neighbours of one parameter apart from those of the next: they lie within four steps. */
const NEIGHBOURS = 16

/** Where a value of a written law is nothing its step is a part of its start, or of one. */
const stepOf = (by: 'ln' | 'plain', value: number, usual: number): number =>
  by === 'ln' ? STEP : STEP * (Math.abs(value) || Math.abs(usual) || 1)

export function forwardModel(plan: Plan, rows: readonly ModelRow[], usual: Float64Array): ForwardModel {
  const { moved, placeOf, groups, planned } = plan
  const size = moved.length
  const { caseOf, feet, units, starts } = casesOf(rows, groups)
  const answers = new Float64Array(starts.length)
  const sinkages = starts.slice()
  const steepnesses = new Float64Array(starts.length)
  const stood: Stood = { sinkage: 0, steepness: 0, beyond: false }
  const beyond = new Uint8Array(starts.length)
  /** How deep the turf answers, where a foot is taken deeper along its last slope; otherwise 0. */
  const limits = new Float64Array(starts.length)
  const rates = new Float64Array(starts.length * size)
  const turfs: (Turf | undefined)[] = new Array(groups)
  const datumOf = Int32Array.from(
    rows,
    ({ kind, set }) => (kind === 'drop' ? plan.dropDatum : plan.sinkageDatum)[set]!,
  )
  const last = new Float64Array(planned.length).fill(Number.NaN)
  const groupOf = Int32Array.from(rows, ({ set }) => (groups === 1 ? 0 : set))

  // where slopes were last known: a search starts along them
  const known = new Float64Array(planned.length).fill(Number.NaN)
  const knownSinkages = starts.slice()
  const moves = new Float64Array(size)
  /** ln z of a case along the slopes last known; `moves` is how far each parameter has gone since. */
  const lnStartNear = (place: number): number => {
    const from = knownSinkages[place]!
    let change = 0
    for (let j = 0; j < size; j++) change += rates[place * size + j]! * moves[j]!
    change /= from
    return Number.isNaN(change)
      ? Math.log(sinkages[place]!)
      : Math.log(from) + Math.min(Math.max(change, -1), 1)
  }

  const keep = (place: number, { sinkage, steepness, beyond: past }: Stood, limit: number): void => {
    beyond[place] = past ? 1 : 0
    limits[place] = past ? limit : 0
    sinkages[place] = sinkage
    steepnesses[place] = steepness
    answers[place] = sinkage
  }

  /** Every load of a foot, all at once where the foot can. */
  const answerFoot = ({ pressing, group, loads, places, room }: FootCases, p: Float64Array): boolean => {
    const on = footOnTurf(pressing.foot, turfs[group]!)
    const { under, column, limit } = on
    const { lnStarts, sinkages: found, steepnesses: steep } = room
    if (!under) {
      for (let j = 0; j < size; j++) moves[j] = p[placeOf(group, j)]! - known[placeOf(group, j)]!
      for (let i = 0; i < loads.length; i++) lnStarts[i] = lnStartNear(places[i]!)
      column?.(loads, lnStarts, found, steep)
    }
    for (let i = 0; i < loads.length; i++) {
      if (column && !under && found[i] !== Number.POSITIVE_INFINITY) {
        stood.sinkage = found[i]!
        stood.steepness = steep[i]!
        stood.beyond = false
      } else if (!standUnder(on, loads[i]!, under ? 0 : Math.exp(lnStarts[i]!), stood)) return false
      // an explicit answer goes on by itself past the limit
      keep(places[i]!, stood, under ? 0 : limit)
    }
    return true
  }

  const answerAll = (p: Float64Array): boolean => {
    for (let g = 0; g < groups; g++) {
      turfs[g] = turfOfGroup(plan, g, p)
      if (!turfs[g]) return false
    }
    for (const cases of feet) if (!answerFoot(cases, p)) return false
    for (const { group, pressing, place } of units) {
      const dropped = dropOn(pressing.drop, turfs[group]!)
      if (!dropped) return false
      answers[place] = dropped.drop
    }
    return true
  }

  const neighbourhood = (p: Float64Array, group: number): Neighbourhood => {
    const known = new Map<number, Turf | undefined>()
    const steps = Float64Array.from(moved, ({ by }, j) => {
      const place = placeOf(group, j)
      return stepOf(by, asItIs(by, p[place]!), usual[place]!)
    })
    return {
      turf: turfs[group]!,
      moved,
      steps,
      neighbour: (parameter, by) => {
        const key = parameter + by / steps[parameter]! / NEIGHBOURS
        if (!known.has(key)) known.set(key, turfOfGroup(plan, group, p, { parameter, by }))
        return known.get(key)
      },
    }
  }

  /** Beyond the limit the answer moves with it: (z − z_max) d ln z_max/dθ more. */
  const withLimit = (place: number, foot: Foot, { neighbour, steps }: Neighbourhood): boolean => {
    for (let j = 0; j < size; j++) {
      const rate = difference(steps[j]!, by => {
        const turf = neighbour(j, by * steps[j]!)
        return turf ? Math.log(footOnTurf(foot, turf).limit) : Number.NaN
      })
      if (!Number.isFinite(rate)) return false
      rates[place * size + j]! += (sinkages[place]! - limits[place]!) * rate
    }
    return true
  }

  const rateFoot = ({ pressing, places }: FootCases, around: Neighbourhood): boolean => {
    const found: LoadRates = loadRates(pressing.foot, around)
    for (const place of places) {
      const deepest = limits[place]!
      const sinkage = deepest || sinkages[place]!
      const steepness = steepnesses[place]!
      if (!found.fill(sinkage, steepness, rates, place * size)) return false
      // ∂z/∂θ = −(∂W/∂θ)/(∂W/∂z)
      for (let j = 0; j < size; j++) rates[place * size + j]! *= -sinkage / steepness
      if (deepest > 0 && !withLimit(place, pressing.foot, around)) return false
    }
    return true
  }

  return {
    isBeyond: row => beyond[caseOf[row]!] === 1,
    predict: (p, out) => {
      last.fill(Number.NaN)
      if (!answerAll(p)) return false
      last.set(p)
      for (let r = 0; r < rows.length; r++) {
        const datum = datumOf[r]!
        out[r] = answers[caseOf[r]!]! + (datum < 0 ? 0 : p[datum]!)
      }
      return true
    },
    differentiate: (p, out) => {
      if (p.some((value, k) => value !== last[k]) && !answerAll(p)) return false
      last.set(p)
      known.fill(Number.NaN)
      const around = Array.from({ length: groups }, (_, g) => neighbourhood(p, g))
      for (const cases of feet) if (!rateFoot(cases, around[cases.group]!)) return false
      for (const { group, pressing, place } of units)
        if (!dropRates(pressing.drop, around[group]!, rates, place * size)) return false
      known.set(p)
      knownSinkages.set(sinkages)
      const all = planned.length
      out.fill(0, 0, rows.length * all)
      for (let r = 0; r < rows.length; r++) {
        const from = caseOf[r]! * size
        for (let j = 0; j < size; j++) out[r * all + placeOf(groupOf[r]!, j)] = rates[from + j]!
        const datum = datumOf[r]!
        if (datum >= 0) out[r * all + datum] = 1
      }
      return true
    },
  }
}
