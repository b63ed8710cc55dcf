import { describe, type Metres, numberProblem, type Pascals, type Problem } from '../../quantities/index.ts'
import { type Curve, type LawKind, REFERENCE_PRESSURE } from './lawKind.ts'
import { monotoneSlopes } from './monotoneCubic.ts'

export type MeasuredPoint = { readonly sinkage: Metres; readonly pressure: Pascals }
export type MeasuredLaw = { readonly kind: 'measured'; readonly points: readonly MeasuredPoint[] }

/** More points than a gauge gives in a day; a longer list is a mistake. */
const MOST_POINTS = 1000
/** Up to so many points the strips of a grooved roller are split at each; more lie so near that it makes no odds. */
const MOST_SPLITS = 8
const MOST_TURNS = 60

/** The points with (0, 0) before them, unless it is there. */
function withOrigin(points: readonly MeasuredPoint[]): readonly MeasuredPoint[] {
  const [first] = points
  return first?.sinkage === 0 && first.pressure === 0 ? points : [{ sinkage: 0, pressure: 0 }, ...points]
}

function pointProblems(points: readonly MeasuredPoint[], path: string): Problem[] {
  const whole = withOrigin(points)
  const offset = whole.length - points.length
  return points.flatMap((point, i) => {
    const at = `${path}.${i}`
    if (point === null || typeof point !== 'object')
      return [{ path: at, expected: 'a sinkage and a pressure', received: describe(point) }]
    const before = whole[i + offset - 1]
    const rising = (value: number, least: number | undefined) =>
      Number.isFinite(value) && least !== undefined && Number.isFinite(least) ? { above: least } : {}
    return [
      ...numberProblem(point.sinkage, `${at}.sinkage`, 'sinkage', rising(point.sinkage, before?.sinkage)).map(
        problem => ({ ...problem, expected: `${problem.expected}: points go deeper one by one` }),
      ),
      ...numberProblem(
        point.pressure,
        `${at}.pressure`,
        'pressure',
        rising(point.pressure, before?.pressure),
      ).map(problem => ({ ...problem, expected: `${problem.expected}: a deeper point bears more` })),
    ]
  })
}

const curves = new WeakMap<readonly MeasuredPoint[], Curve>()

function curveThrough(points: readonly MeasuredPoint[]): Curve {
  const whole = withOrigin(points)
  const z = whole.map(point => point.sinkage)
  const p = whole.map(point => point.pressure)
  const m = monotoneSlopes(z, p)
  const last = z.length - 1
  // Taylor coefficients of each cubic at its left knot; beyond the last knot a straight line
  const second: number[] = []
  const third: number[] = []
  const worked = [0]
  for (let i = 0; i < last; i++) {
    const h = z[i + 1]! - z[i]!
    const secant = (p[i + 1]! - p[i]!) / h
    second.push((3 * secant - 2 * m[i]! - m[i + 1]!) / h)
    third.push((m[i]! + m[i + 1]! - 2 * secant) / (h * h))
    worked.push(worked[i]! + (h * (p[i]! + p[i + 1]!)) / 2 + (h * h * (m[i]! - m[i + 1]!)) / 12)
  }
  second.push(0)
  third.push(0)

  let at = 0
  /** The interval a value of an ascending list lies in, sought from the one asked before. */
  const seek = (list: readonly number[], value: number): number => {
    while (at < last && value >= list[at + 1]!) at++
    while (at > 0 && value < list[at]!) at--
    return at
  }
  const pressure = (depth: number): number => {
    const i = seek(z, depth)
    const t = depth - z[i]!
    return p[i]! + t * (m[i]! + t * (second[i]! + t * third[i]!))
  }
  const slope = (depth: number): number => {
    const i = seek(z, depth)
    const t = depth - z[i]!
    return m[i]! + t * (2 * second[i]! + 3 * t * third[i]!)
  }
  /** From a depth of interval i by so much, within that interval: exact, from the depth and not from the knot. */
  const stepWork = (i: number, depth: number, by: number): number => {
    const t = depth - z[i]!
    const first = m[i]! + t * (2 * second[i]! + 3 * t * third[i]!)
    const half = second[i]! + 3 * t * third[i]!
    const value = p[i]! + t * (m[i]! + t * (second[i]! + t * third[i]!))
    return by * (value + by * (first / 2 + by * (half / 3 + (by * third[i]!) / 4)))
  }
  const workBetween = (depth: number, by: number): number => {
    const from = seek(z, depth)
    const end = depth + by
    const to = seek(z, end)
    if (from === to) return stepWork(from, depth, by)
    return (
      stepWork(from, depth, z[from + 1]! - depth) +
      (worked[to]! - worked[from + 1]!) +
      stepWork(to, z[to]!, end - z[to]!)
    )
  }
  const sinkage = (wanted: number): number => {
    const i = seek(p, wanted)
    if (i === last) return z[last]! + (wanted - p[last]!) / m[last]!
    let low = 0
    let high = z[i + 1]! - z[i]!
    let t = (high * (wanted - p[i]!)) / (p[i + 1]! - p[i]!)
    for (let turn = 0; turn < MOST_TURNS; turn++) {
      const miss = p[i]! - wanted + t * (m[i]! + t * (second[i]! + t * third[i]!))
      if (miss > 0) high = t
      else low = t
      let next = t - miss / (m[i]! + t * (2 * second[i]! + 3 * t * third[i]!))
      if (!(next > low && next < high)) next = (low + high) / 2
      if (Math.abs(next - t) <= Number.EPSILON * high) return z[i]! + next
      t = next
    }
    return z[i]! + t
  }
  return {
    pressure,
    slope,
    work: depth => {
      const i = seek(z, depth)
      return worked[i]! + stepWork(i, z[i]!, depth - z[i]!)
    },
    workBetween,
    sinkage,
    pole: Number.POSITIVE_INFINITY,
    limit: Number.POSITIVE_INFINITY,
    breaks: z.slice(1),
    corners: last <= MOST_SPLITS ? z.slice(1) : [],
    knownTo: p[last]!,
  }
}

function curve({ points }: MeasuredLaw): Curve {
  let known = curves.get(points)
  if (!known) {
    known = curveThrough(points)
    curves.set(points, known)
  }
  return known
}

/**
 * Pressure through measured points.
 *
 *   monotone cubics through (sinkage, pressure), (0, 0) added if missing; past the last point a straight line
 *
 * Holds   points that rise in both; past the last one the result is marked extrapolated
 * Source  Fritsch and Carlson 1980, SIAM Journal on Numerical Analysis 17(2):238-246
 */
export const measured: LawKind<MeasuredLaw> = {
  kind: 'measured',
  equation: 'p(z) through measured points',
  source: 'Fritsch and Carlson 1980',
  parameters: [],
  table: {
    name: 'points',
    columns: [
      { name: 'sinkage', quantity: 'sinkage', symbol: 'z' },
      { name: 'pressure', quantity: 'pressure', symbol: 'p' },
    ],
  },
  problems: ({ points }, path) => {
    const at = `${path}.points`
    if (!Array.isArray(points))
      return [{ path: at, expected: 'a list of points', received: describe(points) }]
    const given = withOrigin(points).length - 1
    if (given < 1 || points.length > MOST_POINTS)
      return [
        {
          path: at,
          expected: `1 to ${MOST_POINTS} points beside (0, 0)`,
          received: String(Math.max(given, 0)),
        },
      ]
    return pointProblems(points, at)
  },
  softness: law => curve(law).sinkage(REFERENCE_PRESSURE),
  stretched: (law, factor) => ({
    ...law,
    points: law.points.map(point => ({ ...point, sinkage: factor * point.sinkage })),
  }),
  curve,
}
