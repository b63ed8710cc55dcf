import type { RollerOnTurf } from '../contact/index.ts'
import { increasingRoot } from '../numerics/index.ts'

/**
 * A stretch of ln sinkage against ln load, as a cubic through knots and their slopes. Above the sinkage at which a
 * groove floor is first touched the load goes on as a root of the depth beyond it: there both are taken as roots of
 * their distance from that point, in which the curve is smooth.
 */
type Stretch = {
  readonly origin: { readonly lnLoad: number; readonly lnSinkage: number; readonly rooted: boolean }
  /** Knots: distance from the origin in ln load, in ln sinkage (roots of them when rooted), and the slope. */
  readonly loads: Float64Array
  readonly sinkages: Float64Array
  readonly slopes: Float64Array
  readonly topLnLoad: number
}

export type TableReading = { lnSinkage: number; slope: number }

/** ln sinkage against ln load of one roller on one turf. */
export type InverseTable = {
  readonly stretches: readonly Stretch[]
  readonly lowLnLoad: number
  readonly lowLnSinkage: number
  readonly highLnSinkage: number
}

/** Knots lie no further apart than this in ln z, or in its root. */
const STEP = 0.1
const ROOT_STEP = 0.05
/** Knots are added until the cubic misses the curve by no more than this in ln z half way between two of them. */
const MISS = 2e-7
const MOST_HALVINGS = 14
/** The ends are found to this in ln W, and laid this far outside what is asked. */
export const MARGIN = 0.01
/** A touching point this much below the range, in ln z, no longer bends it. */
export const FADED = 1.5
/** How far, in ln z, either side of a touching point is asked. */
const BESIDE = 1e-10

type Knot = { readonly place: number; readonly load: number; readonly slope: number; readonly lnLoad: number }

/** The cubic through two knots and their slopes: its value and slope at x. Positional: read for every cell. */
function cubic(
  x0: number,
  y0: number,
  m0: number,
  x1: number,
  y1: number,
  m1: number,
  x: number,
  out: TableReading,
): void {
  const width = x1 - x0
  const t = (x - x0) / width
  const rise = y1 - y0
  const left = m0 * width
  const right = m1 * width
  const c = 3 * rise - 2 * left - right
  const d = left + right - 2 * rise
  out.lnSinkage = y0 + t * (left + t * (c + t * d))
  out.slope = (left + t * (2 * c + 3 * t * d)) / width
}

const probe: TableReading = { lnSinkage: 0, slope: 0 }

function stretchOf(on: RollerOnTurf, from: number, to: number, rootedAt?: number): Stretch {
  const rooted = rootedAt !== undefined
  const start = rooted ? rootedAt : from
  const placeOf = (x: number) => (rooted ? Math.sqrt(x - start) : x - start)
  const origin = { lnLoad: rooted ? Math.log(on.at(Math.exp(start)).load) : 0, lnSinkage: start, rooted }
  const knotAt = (place: number): Knot => {
    const { load, stiffness, sinkage } = on.at(Math.exp(start + (rooted ? place * place : place)))
    const slope = load / (stiffness * sinkage)
    const lnLoad = Math.log(load)
    const above = lnLoad - origin.lnLoad
    const root = rooted ? Math.sqrt(Math.max(above, 0)) : above
    // dξ/dη of the roots: (η/ξ) d ln z/d ln W, at the origin the root of it
    const told = !rooted ? slope : place > 0 ? (root / place) * slope : Math.sqrt(slope)
    return { place, load: root, slope: told, lnLoad }
  }
  /** Knots after `left` up to and with `right`. */
  const between = (left: Knot, right: Knot, halvings: number): Knot[] => {
    const middle = knotAt((left.place + right.place) / 2)
    cubic(left.load, left.place, left.slope, right.load, right.place, right.slope, middle.load, probe)
    const miss = rooted ? probe.lnSinkage ** 2 - middle.place ** 2 : probe.lnSinkage - middle.place
    if (Math.abs(miss) <= MISS || halvings === 0) return [middle, right]
    return [...between(left, middle, halvings - 1), ...between(middle, right, halvings - 1)]
  }
  const first = placeOf(from)
  const last = placeOf(to)
  const count = Math.max(1, Math.ceil((last - first) / (rooted ? ROOT_STEP : STEP) / 2))
  let left = knotAt(first)
  const knots = [left]
  for (let i = 1; i <= count; i++) {
    const right = knotAt(first + ((last - first) * i) / count)
    knots.push(...between(left, right, MOST_HALVINGS))
    left = right
  }
  return {
    origin,
    loads: Float64Array.from(knots, knot => knot.load),
    sinkages: Float64Array.from(knots, knot => knot.place),
    slopes: Float64Array.from(knots, knot => knot.slope),
    topLnLoad: left.lnLoad,
  }
}

/**
 * Tabulates a roller over a range of loads.
 *
 * Holds   between the loads given; undefined when the turf bottoms out under the least of them
 */
export function inverseTable(
  on: RollerOnTurf,
  lnLow: number,
  lnHigh: number,
  startLnSinkage: number,
): InverseTable | undefined {
  const top = Number.isFinite(on.limit) ? Math.log(on.limit) : Number.POSITIVE_INFINITY
  const find = (target: number, start: number) =>
    increasingRoot({
      evaluate: x => {
        const { load, stiffness, sinkage } = on.at(Math.exp(x))
        return { value: Math.log(load) - target, slope: (stiffness * sinkage) / load }
      },
      start,
      tolerance: MARGIN,
      ...(Number.isFinite(top) ? { high: top } : {}),
    })
  const low = find(lnLow - 2 * MARGIN, startLnSinkage)
  if (low.outcome !== 'converged') return undefined
  const high = find(lnHigh + 2 * MARGIN, low.at + (lnHigh - lnLow) / low.slope)
  if (high.outcome === 'not converged') return undefined
  const touch = Math.log(on.touchFrom)
  // the load's slope jumps where the floor is touched: each side is asked for its own
  const below = touch - BESIDE
  const above = touch + BESIDE
  const stretches =
    touch >= high.at || touch < low.at - FADED
      ? [stretchOf(on, low.at, high.at)]
      : touch <= low.at
        ? [stretchOf(on, low.at, high.at, touch)]
        : [stretchOf(on, low.at, below), stretchOf(on, above, Math.max(high.at, above + BESIDE), touch)]
  return {
    stretches,
    lowLnLoad: lnLow - 2 * MARGIN + low.residual,
    lowLnSinkage: low.at,
    highLnSinkage: high.at,
  }
}

/** Reads the table at a load into `out`; false outside it. */
export function readTableAt(table: InverseTable, lnLoad: number, out: TableReading): boolean {
  if (!(lnLoad >= table.lowLnLoad)) return false
  for (const stretch of table.stretches) {
    if (lnLoad > stretch.topLnLoad) continue
    const { origin, loads: xs, sinkages: ys, slopes: ms } = stretch
    const above = lnLoad - origin.lnLoad
    const x = origin.rooted ? Math.sqrt(Math.max(above, 0)) : above
    let i = 0
    while (i < xs.length - 2 && x > xs[i + 1]!) i++
    cubic(xs[i]!, ys[i]!, ms[i]!, xs[i + 1]!, ys[i + 1]!, ms[i + 1]!, x, out)
    const y = out.lnSinkage
    const { slope } = out
    out.lnSinkage = origin.lnSinkage + (origin.rooted ? y * y : y)
    out.slope = origin.rooted && x > 0 ? (slope * y) / x : origin.rooted ? slope * slope : slope
    return true
  }
  return false
}
