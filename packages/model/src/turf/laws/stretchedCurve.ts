import type { Curve } from './lawKind.ts'

const scaled = (list: readonly number[] | undefined, factor: number): readonly number[] =>
  (list ?? []).map(depth => factor * depth)

/** A curve of which every pressure stands at `factor` times the depth. */
export function stretchedCurve(curve: Curve, factor: number): Curve {
  if (factor === 1) return curve
  const { column, restReach } = curve
  let inner = new Float64Array(0)
  return {
    pressure: z => curve.pressure(z / factor),
    slope: z => curve.slope(z / factor) / factor,
    work: z => factor * curve.work(z / factor),
    workBetween: (z, by) => factor * curve.workBetween(z / factor, by / factor),
    sinkage: p => factor * curve.sinkage(p),
    pole: factor * curve.pole,
    limit: factor * curve.limit,
    powerAtZero: curve.powerAtZero ?? 1,
    breaks: scaled(curve.breaks, factor),
    corners: scaled(curve.corners, factor),
    // ∫ du/√Φ, u = factor × v: the depth once, the work under the root
    ...(restReach
      ? { restReach: (z: number, shear: number) => Math.sqrt(factor) * restReach(z / factor, shear) }
      : {}),
    ...(column
      ? {
          column: (depths, count, pressures, slopes) => {
            if (inner.length < count) inner = new Float64Array(count)
            for (let i = 0; i < count; i++) inner[i] = depths[i]! / factor
            column(inner, count, pressures, slopes)
            for (let i = 0; i < count; i++) slopes[i] = slopes[i]! / factor
          },
        }
      : {}),
    ...(curve.knownTo === undefined ? {} : { knownTo: curve.knownTo }),
  }
}
