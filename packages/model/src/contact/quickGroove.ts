import type { GroovedSurface } from '../roller/index.ts'
import type { Curve } from '../turf/index.ts'
import type { ArcShape } from './arc.ts'
import { newPeriod, type Period, period } from './gapKernel.ts'
import type { Side } from './smoothSide.ts'
import { type GrooveKinks, type Strip, stripIntegral } from './stripIntegral.ts'

export type QuickGroove = {
  /** Both sides, standing, N/m. */
  readonly load: number
  /** d load/d sinkage, Pa. */
  readonly slope: number
  readonly strip: Strip
  /** Under the lowest line. */
  readonly lowest: Readonly<Period>
}

/**
 * Quick model of a grooved roller: strips, corrected for the bending of the mat in the rolling direction.
 *
 *   q = q_strip [1 + (ρ_s − 1) χ],  ρ_s = smooth with spread/smooth without
 *   χ = [w_l + L₂/2 + (g/2)(u_m/z)²]/[w_l + L₂],  L₂ = load of a pitch/p(z) − w_l
 *
 * Holds   floor free: within 0.3 % for l_z/a to 0.3, 1.2 % to 0.45, 2.4 % to 0.7, 5 % to 0.92, 8 % beyond; where the floor is
 *         touched low by up to 1.5 % for l_z/a to 0.15, 3 % to 0.3, 4.5 % to 0.7, 7 % to 0.92, 12 % beyond
 * Source  χ read off full solutions, then tried on 40 random cases (docs/physics.md §3.3)
 */
export function quickGroove(
  curve: Curve,
  shear: number,
  radius: number,
  arc: ArcShape,
  surface: GroovedSurface,
  kinks: GrooveKinks,
  sinkage: number,
  smooth: { readonly spreading: Side; readonly springs: Side },
): QuickGroove {
  const strip = stripIntegral(curve, shear, radius, arc, surface, kinks, sinkage)
  const lowest: Period = newPeriod()
  period(curve, shear, surface, surface.depth, sinkage, kinks.touchFrom, lowest)
  if (shear === 0) return { load: strip.load, slope: strip.slope, strip, lowest }
  const { land } = surface
  const gap = surface.pitch - land
  const pressure = curve.pressure(sinkage)
  const carrying = lowest.load / pressure
  const carryingSlope = lowest.slope / pressure - (carrying * curve.slope(sinkage)) / pressure
  const sag = lowest.lowest / sinkage
  const sagSlope = (lowest.lowestSlope - sag) / sinkage
  const part = (land + (carrying - land) / 2 + (gap / 2) * sag * sag) / carrying
  const partSlope = (carryingSlope / 2 + gap * sag * sagSlope - part * carryingSlope) / carrying
  const { spreading, springs } = smooth
  const ratio = spreading.load / springs.load
  const ratioSlope = (spreading.slope - ratio * springs.slope) / springs.load
  const factor = 1 + (ratio - 1) * part
  return {
    load: strip.load * factor,
    slope: strip.slope * factor + strip.load * (ratioSlope * part + (ratio - 1) * partSlope),
    strip,
    lowest,
  }
}

/**
 * Accuracy of the quick model by l_z/a, floor free: [up to, relative error of load]. A table of full solutions gave 0.2,
 * 0.8, 1.6 and 3.3 %; random cases set against the full patch missed by up to half as much again.
 */
const FREE = [
  [0.3, 0.003],
  [0.45, 0.012],
  [0.7, 0.024],
  [0.92, 0.05],
  [Number.POSITIVE_INFINITY, 0.08],
] as const
/** The same, floor touched, always low: from 480 random cases set against the full patch. */
const TOUCHING = [
  [0.15, 0.015],
  [0.3, 0.03],
  [0.45, 0.035],
  [0.7, 0.045],
  [0.92, 0.07],
  [Number.POSITIVE_INFINITY, 0.12],
] as const
/** Rolling on turf that keeps a part of the work: 2 to 9 % low. */
const ROLLING = 0.09

/** How far off the quick model may be, relative, in load at equal sinkage. */
export function quickAccuracy(spreadOverContact: number, touching: boolean, rolling: boolean): number {
  if (rolling) return ROLLING
  const ladder = touching ? TOUCHING : FREE
  return ladder.find(([limit]) => spreadOverContact <= limit)?.[1] ?? Number.NaN
}
