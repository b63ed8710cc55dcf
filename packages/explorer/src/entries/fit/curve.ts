import { type BandPoint, bands, type ComplianceFit, type ComplianceQuestion } from '@swardsink/model'

type Foot = ComplianceFit['readings'][number]['foot']

/** A point of the fitted curve; x is a load, or the pressure of a plate over its area. */
export type FitPoint = {
  readonly x: number
  readonly sinkage: number
  /** Where the curve lies, and where one more reading will; null where that cannot be said. */
  readonly curve: readonly [number, number] | null
  readonly reading: readonly [number, number] | null
  readonly beyond: boolean
}
/** A reading on that curve: it stands off it by what the fit leaves over. */
export type FitReading = {
  readonly row: number
  readonly x: number
  readonly sinkage: number
  readonly residual: number
}
export type FitCurve = {
  /** Whose turf; null where all sets share one. */
  readonly set: string | null
  readonly foot: Foot
  readonly along: 'load' | 'pressure'
  readonly most: number
  readonly points: readonly FitPoint[]
  readonly readings: readonly FitReading[]
  /** Curves of other sets under the same foot. */
  readonly others: readonly { readonly set: string; readonly points: readonly FitPoint[] }[]
  /** Why there is none. */
  readonly why: string | null
}

export function footKey(foot: Foot): string {
  if (foot.kind === 'roller') return `roller ${foot.name ?? ''}`
  return 'diameter' in foot ? `plate ${foot.diameter}` : `area ${foot.area}`
}

const areaOf = (foot: Foot): number | null =>
  foot.kind === 'roller' ? null : 'area' in foot ? foot.area : (Math.PI * foot.diameter ** 2) / 4

/** The feet that fitted readings stood under by a load of their own, most used first. */
export function feetOf({ readings }: ComplianceFit): readonly Foot[] {
  const counts = new Map<string, { foot: Foot; count: number }>()
  for (const { foot, load } of readings) {
    if (load === null) continue
    const key = footKey(foot)
    const seen = counts.get(key)
    counts.set(key, { foot, count: (seen?.count ?? 0) + 1 })
  }
  return [...counts.values()].sort((a, b) => b.count - a.count).map(({ foot }) => foot)
}

const STEPS = 44
/** The axis reaches so far beyond the greatest load that was read. */
const BEYOND = 1.14
/** So many different loads are each given a point of the curve of their own. */
const MOST_LOADS = 60
const MOST_OTHERS = 6
const OTHER_STEPS = 24
/** Of a unit that is set down as a whole: the part of its weight that its front roller may carry. */
const FRONT_PART = 0.75
const GRAVITY = 9.80665

type Asked = { readonly question: ComplianceQuestion; readonly fit: ComplianceFit }

const even = (most: number, steps: number): number[] =>
  Array.from({ length: steps }, (_, i) => (most * (i + 1)) / steps)

/** The loads the curve is drawn for when no reading says one: up to what a front roller may carry. */
function weightOf({ scenario }: ComplianceQuestion): number {
  const unit = scenario?.unit
  if (!unit) return 0
  return FRONT_PART * GRAVITY * (unit.body.mass + unit.frontRoller.mass + unit.rearRoller.mass)
}

function pointsAt(
  asked: Asked,
  at: { readonly foot: Foot; readonly set: string | null; readonly loads: readonly number[] },
): { readonly points: readonly BandPoint[]; readonly why: string | null } {
  const { foot, set, loads } = at
  const found = bands({ ...asked, at: { foot, loads, ...(set === null ? {} : { set }) } })
  return { points: found.points, why: found.why }
}

const pair = (range: { low: number; high: number } | null): readonly [number, number] | null =>
  range && [range.low, range.high]

/** The fitted curve of one foot, with its bands and the readings under that foot. */
export function curveOf(
  asked: Asked,
  q: { readonly set: string; readonly foot: string; readonly alone: boolean },
): FitCurve {
  const { fit, question } = asked
  const feet = feetOf(fit)
  const foot = feet.find(one => footKey(one) === q.foot) ?? feet[0] ?? { kind: 'roller' as const, name: null }
  const sets = Object.keys(fit.turfs)
  const set = fit.turf ? null : sets.includes(q.set) ? q.set : (sets[0] ?? null)
  const own = fit.readings.flatMap((reading, i) => {
    const isOurs = footKey(reading.foot) === footKey(foot) && (set === null || reading.set === set)
    return isOurs && reading.load !== null ? [{ ...reading, load: reading.load, i }] : []
  })
  const loads = [...new Set(own.map(({ load }) => load))].sort((a, b) => a - b)
  const greatest = loads.at(-1) ?? weightOf(question)
  const area = areaOf(foot)
  const byPressure =
    area !== null && question.readings.some(r => r.pressure !== undefined && r.load === undefined)
  const perX = byPressure && area ? area : 1
  const known = loads.length <= MOST_LOADS ? loads : []
  const at = (most: number) => [...new Set([...even(most, STEPS), ...known])].sort((a, b) => a - b)
  const reach = BEYOND * greatest
  let most = reach
  let found = pointsAt(asked, { foot, set, loads: at(reach) })
  if (found.points.length === 0) {
    // Beyond the readings the fitted turf may lock.
    most = greatest
    found = pointsAt(asked, { foot, set, loads: at(greatest) })
  }
  const told = ({ load, sinkage, curve, reading, extrapolated }: BandPoint): FitPoint => ({
    x: load / perX,
    sinkage,
    curve: pair(curve),
    reading: pair(reading),
    beyond: extrapolated,
  })
  const points = found.points.map(told)
  const others =
    set === null || q.alone || sets.length > MOST_OTHERS + 1
      ? []
      : sets
          .filter(name => name !== set)
          .map(name => ({
            set: name,
            points: pointsAt(asked, { foot, set: name, loads: even(most, OTHER_STEPS) }).points.map(told),
          }))
  return {
    set,
    foot,
    along: byPressure ? 'pressure' : 'load',
    most: most / perX,
    points,
    readings: own.flatMap(({ row, load, i }) => {
      const sinkage = sinkageAt(points, load / perX)
      const residual = fit.residuals[i]
      return sinkage === null || residual === undefined
        ? []
        : [{ row, x: load / perX, sinkage: sinkage + residual, residual }]
    }),
    others,
    why: found.why,
  }
}

/** Where a curve stands at x, straight between its points; from the turf's surface on. */
export function sinkageAt(points: readonly FitPoint[], x: number): number | null {
  const after = points.findIndex(point => point.x >= x)
  const next = points[after]
  if (!next) return null
  const before = points[after - 1] ?? { x: 0, sinkage: 0 }
  if (next.x === before.x) return next.sinkage
  return before.sinkage + ((next.sinkage - before.sinkage) * (x - before.x)) / (next.x - before.x)
}
