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

/** ln sinkage against ln load of one roller on one turf. */
export type InverseTable = {
  readonly stretches: readonly Stretch[]
  readonly lowLnLoad: number
  readonly lowLnSinkage: number
  readonly highLnSinkage: number
}

/** Knots lie this far apart in ln z, or in its root: the cubic is then good to about 1e-7. */
const STEP = 0.1
const ROOT_STEP = 0.05
/** The ends are found to this in ln W, and laid this far outside what is asked. */
export const MARGIN = 0.01
/** A touching point this much below the range, in ln z, no longer bends it. */
export const FADED = 1.5
/** How far, in ln z, either side of a touching point is asked. */
const BESIDE = 1e-6

function stretchOf(on: RollerOnTurf, from: number, to: number, rootedAt?: number): Stretch {
  const rooted = rootedAt !== undefined
  const start = rooted ? rootedAt : from
  const place = (x: number) => (rooted ? Math.sqrt(x - start) : x - start)
  const origin = { lnLoad: rooted ? Math.log(on.at(Math.exp(start)).load) : 0, lnSinkage: start, rooted }
  const first = place(from)
  const last = place(to)
  const count = Math.max(2, Math.ceil((last - first) / (rooted ? ROOT_STEP : STEP)) + 1)
  const loads = new Float64Array(count)
  const sinkages = new Float64Array(count)
  const slopes = new Float64Array(count)
  let topLnLoad = 0
  for (let i = 0; i < count; i++) {
    const t = first + ((last - first) * i) / (count - 1)
    const x = start + (rooted ? t * t : t)
    const { load, stiffness, sinkage } = on.at(Math.exp(x))
    const slope = load / (stiffness * sinkage)
    topLnLoad = Math.log(load)
    const above = topLnLoad - origin.lnLoad
    sinkages[i] = t
    loads[i] = rooted ? Math.sqrt(Math.max(above, 0)) : above
    // dξ/dη of the roots: (η/ξ) d ln z/d ln W, at the origin the root of it
    slopes[i] = !rooted ? slope : t > 0 ? (loads[i]! / t) * slope : Math.sqrt(slope)
  }
  return { origin, loads, sinkages, slopes, topLnLoad }
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

export type TableReading = { lnSinkage: number; slope: number }

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
    const width = xs[i + 1]! - xs[i]!
    const t = (x - xs[i]!) / width
    const rise = ys[i + 1]! - ys[i]!
    const left = ms[i]! * width
    const right = ms[i + 1]! * width
    const c = 3 * rise - 2 * left - right
    const d = left + right - 2 * rise
    const y = ys[i]! + t * (left + t * (c + t * d))
    const slope = (left + t * (2 * c + 3 * t * d)) / width
    out.lnSinkage = origin.lnSinkage + (origin.rooted ? y * y : y)
    out.slope = origin.rooted && x > 0 ? (slope * y) / x : origin.rooted ? slope * slope : slope
    return true
  }
  return false
}
