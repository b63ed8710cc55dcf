import { increasingRoot } from '../numerics/index.ts'
import {
  type BottomedOut,
  type Caution,
  describe,
  type Metres,
  type Newtons,
  type NewtonsPerMetre,
  type NotConverged,
  numberProblem,
  type Pascals,
  type Problem,
  refuse,
} from '../quantities/index.ts'
import { type Curve, curveOf, shearOf, type Turf, turfProblems } from '../turf/index.ts'
import { turfCautions } from './contactCautions.ts'
import { type Plate, type PlateOnTurf, plateOnTurf } from './plateOnTurf.ts'

export type PlateQuestion = { readonly plate: Plate; readonly turf: Turf } & (
  | { readonly load: Newtons }
  | { readonly sinkage: Metres }
)

export type PlatePressed =
  | {
      readonly outcome: 'settled'
      readonly load: Newtons
      readonly sinkage: Metres
      /** Under the plate, away from its edge. */
      readonly pressure: Pascals
      /** Load over area: more than the pressure where turf carries past the edge. */
      readonly meanPressure: Pascals
      /** Line force along the edge. */
      readonly edgeForce: NewtonsPerMetre
      /** Part of the load that the edge carries. */
      readonly edgeShare: number
      /** dW/dz, N/m. */
      readonly stiffness: number
      readonly cautions: readonly Caution[]
    }
  | BottomedOut
  | NotConverged

function plateProblems(plate: Plate, path: string): Problem[] {
  if (plate === null || typeof plate !== 'object' || !('diameter' in plate || 'width' in plate))
    return [{ path, expected: 'a diameter, or width and length', received: describe(plate) }]
  const sizes =
    'diameter' in plate ? { diameter: plate.diameter } : { width: plate.width, length: plate.length }
  return Object.entries(sizes).flatMap(([name, size]) =>
    numberProblem(size, `${path}.${name}`, 'length', { above: 0 }),
  )
}

/** On ln(load). */
const BALANCED = 1e-10

/**
 * A plate pressed on turf: by a load, or to a sinkage.
 *
 *   round        load = πa² p(z) + 2πa G|u′(a)|,  G (u″ + u′/r) = p(u) outside
 *                linear law: πa² k z [1 + 2 (l/a) K₁/K₀(a/l)]
 *   rectangular  load = A p(z) + perimeter × √(2GΦ(z)), corners left out
 *
 * Sign    sinkage positive into the turf, load positive down
 * Units   load [N], sinkage [m] → pressure [Pa], line force [N/m]
 * Throws  InputError when plate, turf, load or sinkage make no sense, or not one of load and sinkage is given
 * Source  docs/physics.md §3.7; linear law: Pasternak 1954
 */
export function pressPlate(question: PlateQuestion): PlatePressed {
  const { plate, turf } = question
  const { load, sinkage } = question as { readonly load?: Newtons; readonly sinkage?: Metres }
  const both = load !== undefined && sinkage !== undefined
  refuse([
    ...plateProblems(plate, 'plate'),
    ...turfProblems(turf, 'turf'),
    ...(both ? [{ path: 'load', expected: 'load or sinkage alone', received: 'both' }] : []),
    ...(sinkage === undefined
      ? numberProblem(load, 'load', 'load', { above: 0 })
      : numberProblem(sinkage, 'sinkage', 'sinkage', { above: 0 })),
  ])
  const curve = curveOf(turf.law)
  const on = plateOnTurf(plate, turf)
  return sinkage === undefined
    ? underLoad(question, on, curve, load!)
    : atSinkage(question, on, curve, sinkage)
}

const failed = (iterations: number, residual: number): NotConverged => ({
  outcome: 'not converged',
  where: 'plate',
  iterations,
  residual,
  cautions: [],
})

const bottomedOut = (curve: Curve, load?: Newtons): BottomedOut => ({
  outcome: 'bottomed out',
  where: 'plate',
  ...(load === undefined ? {} : { load }),
  lockingDepth: curve.pole,
  cautions: [],
})

type OnTurf = { readonly plate: Plate; readonly turf: Turf }

function underLoad({ plate, turf }: OnTurf, on: PlateOnTurf, curve: Curve, load: Newtons): PlatePressed {
  let lost = false
  const root = increasingRoot({
    evaluate: x => {
      const z = Math.exp(x)
      const pressed = on.at(z)
      if (!pressed) {
        lost = true
        return { value: 0, slope: 1 }
      }
      return { value: Math.log(pressed.load / load), slope: (pressed.stiffness * z) / pressed.load }
    },
    start: Math.log(
      Math.min(curve.sinkage(load / (on.area + on.around * (turf.spread ?? 0))), curve.limit / 2),
    ),
    tolerance: BALANCED,
    ...(Number.isFinite(curve.limit) ? { high: Math.log(curve.limit) } : {}),
  })
  if (root.outcome === 'beyond') return bottomedOut(curve, load)
  if (lost || root.outcome !== 'converged') return failed(root.iterations, root.residual)
  return atSinkage({ plate, turf }, on, curve, Math.exp(root.at), load)
}

function atSinkage(
  { plate, turf }: OnTurf,
  on: PlateOnTurf,
  curve: Curve,
  sinkage: Metres,
  load?: Newtons,
): PlatePressed {
  if (sinkage > curve.limit) return bottomedOut(curve)
  const pressed = on.at(sinkage)
  if (!pressed) return failed(0, Number.NaN)
  const carried = load ?? pressed.load
  return {
    outcome: 'settled',
    load: carried,
    sinkage,
    pressure: curve.pressure(sinkage),
    meanPressure: carried / on.area,
    edgeForce: pressed.edgeForce,
    edgeShare: (on.around * pressed.edgeForce) / carried,
    stiffness: pressed.stiffness,
    cautions: [
      ...turfCautions(turf, sinkage),
      ...(shearOf(turf) > 0 && !('diameter' in plate) ? [{ kind: 'corners left out' } as const] : []),
    ],
  }
}
