import type { Metres } from '../quantities/index.ts'
import type { Curve } from '../turf/index.ts'

/** What a pass left of a strip of turf. */
export type Track = {
  /** Greatest depth it was pressed to. */
  readonly pressedTo: Metres
  /** Depth of its surface now. */
  readonly depression: Metres
  /** Pressed by grooves: the depth is a mean over their pitch. */
  readonly uneven?: true
}

/** A track that does not rebound at all has a pressure from the start: it is taken to rise within this part of z_m. */
const LEAST_RISE = 1e-9
/** Beyond the track each panel of a quadrature reaches half the way to the pole of a locking law. */
const HALVINGS = 8

/** μ = (z_m − v)/z_m, what has come back of the track. */
export const backOf = ({ pressedTo, depression }: Track): number =>
  Math.max(LEAST_RISE, (pressedTo - depression) / pressedTo)

/**
 * Turf pressed again, as a law of the depth Y below the surface of the track.
 *
 *   Y ≤ z_m − v:  p(Y/μ), Φ = μ Φ₀(Y/μ);  deeper: p(v + Y), Φ = μ Φ₀(z_m) + Φ₀(v + Y) − Φ₀(z_m)
 *
 * Holds   the slope jumps where the track ends: quadratures are split there
 * Source  derived (docs/physics.md §2.3)
 */
export function trackCurve(curve: Curve, track: Track): Curve {
  const { pressedTo } = track
  const back = backOf(track)
  const rise = back * pressedTo
  const depression = pressedTo - rise
  const workOfTrack = back * curve.work(pressedTo)
  const restReach = curve.restReach && restOnTrack(curve, curve.restReach, track)
  const moved = (depths: readonly number[]) => [
    ...depths.filter(depth => depth < pressedTo).map(depth => back * depth),
    rise,
    ...depths.filter(depth => depth > pressedTo).map(depth => depth - depression),
  ]
  const towardsPole = Number.isFinite(curve.pole)
    ? Array.from({ length: HALVINGS }, (_, i) => curve.pole - (curve.pole - pressedTo) / 2 ** (i + 1))
    : []
  return {
    pressure: depth => curve.pressure(depth <= rise ? depth / back : depression + depth),
    slope: depth => (depth <= rise ? curve.slope(depth / back) / back : curve.slope(depression + depth)),
    work: depth =>
      depth <= rise
        ? back * curve.work(depth / back)
        : workOfTrack + curve.workBetween(pressedTo, depth - rise),
    workBetween: (depth, by) => {
      const end = depth + by
      if (end <= rise) return back * curve.workBetween(depth / back, by / back)
      if (depth >= rise) return curve.workBetween(depression + depth, by)
      return (
        back * curve.workBetween(depth / back, (rise - depth) / back) +
        curve.workBetween(pressedTo, end - rise)
      )
    },
    sinkage: pressure => {
      const depth = curve.sinkage(pressure)
      return depth <= pressedTo ? back * depth : depth - depression
    },
    pole: curve.pole - depression,
    limit: curve.limit - depression,
    ...(curve.powerAtZero === undefined ? {} : { powerAtZero: curve.powerAtZero }),
    ...(restReach ? { restReach } : {}),
    breaks: moved([...(curve.breaks ?? []), ...towardsPole].sort((a, b) => a - b)),
    corners: moved(curve.corners ?? []),
  }
}

/** Panels in ln Φ over which the reach beyond the track is summed, and how many at most. */
const STEPS = 64

/** Reach of rest: scaled on the track; beyond it the rest of the way is summed by Simpson's rule. */
function restOnTrack(
  curve: Curve,
  fresh: NonNullable<Curve['restReach']>,
  track: Track,
): NonNullable<Curve['restReach']> {
  const { pressedTo } = track
  const back = backOf(track)
  const rise = back * pressedTo
  const workOfTrack = back * curve.work(pressedTo)
  return (depth, shear) => {
    // dY = μ dζ over √(μ Φ)
    const scale = Math.sqrt(back)
    if (depth <= rise) return scale * fresh(depth / back, shear)
    const beyond = depth - rise
    let sum = 0
    for (let i = 0; i <= STEPS; i++) {
      const weight = i === 0 || i === STEPS ? 1 : i % 2 === 1 ? 4 : 2
      sum +=
        weight / Math.sqrt(workOfTrack + (i === 0 ? 0 : curve.workBetween(pressedTo, (beyond * i) / STEPS)))
    }
    return scale * fresh(pressedTo, shear) + (Math.sqrt(shear / 2) * beyond * sum) / (3 * STEPS)
  }
}
