import type { Metres, Newtons, NewtonsPerMetre } from '../quantities/index.ts'
import { type Curve, curveOf, shearOf, type Turf } from '../turf/index.ts'
import { matAroundPlate } from './roundPlate.ts'

/** A rigid flat foot: of a gauge, or of a plate test. */
export type Plate = { readonly diameter: Metres } | { readonly width: Metres; readonly length: Metres }

type Edge = { readonly force: number; readonly slope: number }

const NO_EDGE: Edge = { force: 0, slope: 0 }

/** Line force along the edge, and how it grows with the sinkage; undefined when no mat is found. */
function edgeOf(plate: Plate, curve: Curve, shear: number, sinkage: number): Edge | undefined {
  if (shear === 0) return NO_EDGE
  if ('diameter' in plate) {
    const radius = plate.diameter / 2
    const mat = matAroundPlate(curve, shear, radius, sinkage)
    return mat && { force: (shear * mat.flux) / radius, slope: (shear * mat.fluxSlope) / radius }
  }
  const force = Math.sqrt(2 * shear * curve.work(sinkage))
  return { force, slope: (shear * curve.pressure(sinkage)) / force }
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
 *   W = A p(z) + edge length × edge force
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
      const edge = edgeOf(plate, curve, shear, sinkage)
      return (
        edge && {
          load: area * curve.pressure(sinkage) + around * edge.force,
          stiffness: area * curve.slope(sinkage) + around * edge.slope,
          edgeForce: edge.force,
        }
      )
    },
  }
}
