import type { Metres, Pascals, Problem, QuantityName } from '../../quantities/index.ts'

/** The pressure at which softness is told: a wide flat plate sinks by the softness at 10 kPa. */
export const REFERENCE_PRESSURE: Pascals = 10e3

/** How far into a locking law the model goes before it says "bottomed out", as a part of the locking depth. */
export const LOCKING_LIMIT = 0.99

/** ∫₀ˣ p(z₀ − t²/2R) dt for positive x up to √(2R z₀). */
export type UnderParabola = (sinkage: number, reach: number, radius: number) => number

/** A law with its numbers put in. Positional numbers: these run inside every kernel. */
export type Curve = {
  /** p(z), z ≥ 0. */
  readonly pressure: (sinkage: number) => number
  /** p′(z). */
  readonly slope: (sinkage: number) => number
  /** Φ(z) = ∫₀ᶻ p. */
  readonly work: (sinkage: number) => number
  /** Φ(z + by) − Φ(z), without the cancellation of taking it literally. */
  readonly workBetween: (sinkage: number, by: number) => number
  /** z(p). */
  readonly sinkage: (pressure: number) => number
  /** Where the pressure grows without bound; Infinity when nowhere. */
  readonly pole: number
  /** Greatest sinkage that is answered; beyond it the turf has bottomed out. */
  readonly limit: number
  /** Closed form under a parabola, where there is one. */
  readonly underParabola?: UnderParabola
  /** p grows as this power of z near zero; 1 unless given. Below 1 a mat comes to rest at a distance from an edge. */
  readonly powerAtZero?: number
  /** Distance over which turf that carries shear G comes to rest beside an edge sunk by z; absent: it never does. */
  readonly restReach?: (sinkage: number, shear: number) => number
  /** Closed form of the far part of a hanging mat, where there is one: fills value and slope. */
  readonly farMat?: (from: number, to: number, turning: number, out: FarMat) => void
}

/** ∫ du/√(Φ(u) − Φ(u_m)) between two depths well below the turning point, and its slope against Φ(u_m). */
export type FarMat = { value: number; slope: number }

type Parameter = { readonly name: string; readonly quantity: QuantityName; readonly symbol: string }

/** One law of pressure against sinkage: what a file in this folder supplies. */
export type LawKind<Law extends { readonly kind: string }> = {
  readonly kind: Law['kind']
  readonly equation: string
  readonly source: string
  readonly parameters: readonly Parameter[]
  readonly problems: (law: Law, path: string) => Problem[]
  readonly curve: (law: Law) => Curve
  readonly softness: (law: Law) => Metres
  /** The same law at another softness: other parameters kept. */
  readonly withSoftness: (law: Law, softness: Metres) => Law
}
