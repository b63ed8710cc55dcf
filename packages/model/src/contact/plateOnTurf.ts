import { besselRatio } from '../numerics/index.ts'
import type { Metres, Newtons, NewtonsPerMetre } from '../quantities/index.ts'
import { type Curve, curveOf, shearOf, type Turf } from '../turf/index.ts'
import { matAroundPlate } from './roundPlate.ts'

/** A rigid flat foot: of a gauge, or of a plate test. */
export type Plate = { readonly diameter: Metres } | { readonly width: Metres; readonly length: Metres }

/** Line force along the edge, how it grows with the sinkage, and with the logarithm of the shear. */
type Edge = { readonly force: number; readonly slope: number; readonly byShear: number }

const NO_EDGE: Edge = { force: 0, slope: 0, byShear: 0 }

/** Linear turf: G z/l K₁/K₀(a/l), l = √(G/k). */
function linearEdge(stiffness: number, shear: number, radius: number, sinkage: number): Edge {
  const x = radius * Math.sqrt(stiffness / shear)
  const ratio = besselRatio(x)
  const slope = (shear * x * ratio) / radius
  // d ln ratio/d ln x
  const turn = x * (ratio - 1 / ratio) - 1
  const force = slope * sinkage
  return { force, slope, byShear: (force * (1 - turn)) / 2 }
}

/** undefined when no mat is found. */
function roundEdge(
  turf: Turf,
  curve: Curve,
  shear: number,
  radius: number,
  sinkage: number,
): Edge | undefined {
  if (turf.law.kind === 'linear') return linearEdge(curve.slope(0), shear, radius, sinkage)
  const mat = matAroundPlate(curve, shear, radius, sinkage)
  return (
    mat && {
      force: (shear * mat.flux) / radius,
      slope: (shear * mat.fluxSlope) / radius,
      byShear: (shear * (mat.flux - mat.radiusSlope / 2)) / radius,
    }
  )
}

function straightEdge(curve: Curve, shear: number, sinkage: number): Edge {
  const force = Math.sqrt(2 * shear * curve.work(sinkage))
  return { force, slope: (shear * curve.pressure(sinkage)) / force, byShear: force / 2 }
}

const areaOf = (plate: Plate): number =>
  'diameter' in plate ? (Math.PI * plate.diameter ** 2) / 4 : plate.width * plate.length

const edgeLength = (plate: Plate): Metres =>
  'diameter' in plate ? Math.PI * plate.diameter : 2 * (plate.width + plate.length)

/** A plate pressed to one sinkage. */
export type PlatePressing = {
  readonly load: Newtons
  /** d load/d sinkage, N/m. */
  readonly stiffness: number
  /** d load/d ln G, N. */
  readonly byShear: Newtons
  /** Along the edge. */
  readonly edgeForce: NewtonsPerMetre
}

/** One plate on one turf, its constants worked out once. */
export type PlateOnTurf = {
  readonly area: number
  /** Length of the edge, m. */
  readonly around: Metres
  /** Greatest sinkage that is answered. */
  readonly limit: Metres
  /** undefined when no mat is found around it. */
  readonly at: (sinkage: Metres) => PlatePressing | undefined
}

/**
 * Load of a plate against sinkage.
 *
 *   W = A p(z) + edge length × edge force;  linear turf round a plate: edge force G z/l K₁/K₀(a/l)
 *
 * Source  docs/physics.md §3.7
 */
export function plateOnTurf(plate: Plate, turf: Turf): PlateOnTurf {
  const curve = curveOf(turf.law)
  const shear = shearOf(turf)
  const area = areaOf(plate)
  const around = edgeLength(plate)
  return {
    area,
    around,
    limit: curve.limit,
    at: sinkage => {
      const edge =
        shear === 0
          ? NO_EDGE
          : 'diameter' in plate
            ? roundEdge(turf, curve, shear, plate.diameter / 2, sinkage)
            : straightEdge(curve, shear, sinkage)
      return (
        edge && {
          load: area * curve.pressure(sinkage) + around * edge.force,
          stiffness: area * curve.slope(sinkage) + around * edge.slope,
          byShear: around * edge.byShear,
          edgeForce: edge.force,
        }
      )
    },
  }
}
