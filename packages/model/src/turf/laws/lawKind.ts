import type { Metres, Pascals, Problem, QuantityName } from '../../quantities/index.ts'
import type { PressureLaw } from './laws.ts'

/** The pressure at which softness is told: a wide flat plate sinks by the softness at 10 kPa. */
export const REFERENCE_PRESSURE: Pascals = 10e3

/** How far into a locking law the model goes before it says "bottomed out", as a part of the locking depth. */
export const LOCKING_LIMIT = 0.99

/**
 * An arc of radius R sunk to z₀ and what it carries up to b, positive and at most the whole √(2R z₀). All in one object,
 * asked and answered in place: a call that the engine does not inline puts every number it is handed on the heap.
 */
export type UnderArc = {
  sinkage: number
  reach: number
  radius: number
  /** ∫₀ᵇ p dx. */
  load: number
  /** How it grows with z₀ at a fixed b; at the end of the whole arc p = 0, so there at any b. */
  slope: number
}

export const newUnderArc = (): UnderArc => ({ sinkage: 0, reach: 0, radius: 1, load: 0, slope: 0 })

/** ∫₀ᵇ p(z₀ − x²/2R) dx and its slope; false where a law has no closed form for that b. The innermost call of a press. */
export type UnderParabola = (arc: UnderArc) => boolean

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
  /** p is a power of z: every load without spread is then straight in logarithms. */
  readonly straight?: true
  /** p grows as this power of z near zero; 1 unless given. Below 1 a mat comes to rest at a distance from an edge. */
  readonly powerAtZero?: number
  /** Distance over which turf that carries shear G comes to rest beside an edge sunk by z; absent: it never does. */
  readonly restReach?: (sinkage: number, shear: number) => number
  /** Closed form of the far part of a hanging mat, where there is one: fills value and slope. */
  readonly farMat?: (from: number, to: number, turning: number, out: FarMat) => void
  /**
   * Depths, ascending, at which a quadrature over depth is split. Given, if only as an empty list, for a law that is
   * not of one piece: panels between the splits are then kept short.
   */
  readonly breaks?: readonly number[]
  /** The breaks at which the slope jumps or turns sharply: a strip of a grooved roller is split at them too. */
  readonly corners?: readonly number[]
  /**
   * Given where z(p) is explicit and p(z) is not: an arc is then integrated over pressure, split at these pressures.
   */
  readonly pressureBreaks?: readonly number[]
  /** p and p′ at many depths at once, for laws that are dear to ask one by one. */
  readonly column?: Column
  /** How near a sinkage lies to locking, 0 to 1; absent: sinkage/pole. */
  readonly partOfPole?: (sinkage: number) => number
  /** Pressure up to which the law was measured or checked; absent: everywhere. */
  readonly knownTo?: Pascals
}

export type Column = (
  depths: Float64Array,
  count: number,
  pressures: Float64Array,
  slopes: Float64Array,
) => void

/** ∫ du/√(Φ(u) − Φ(u_m)) between two depths well below the turning point, and its slope against Φ(u_m). */
export type FarMat = { value: number; slope: number }

export type Parameter = { readonly name: string; readonly quantity: QuantityName; readonly symbol: string }

/** The list of laws as seen by a law that holds others. */
export type Inside = {
  readonly curve: (law: PressureLaw) => Curve
  readonly problems: (law: PressureLaw, path: string) => Problem[]
  readonly softness: (law: PressureLaw) => Metres
  readonly stretched: (law: PressureLaw, factor: number) => PressureLaw
}

/** One law of pressure against sinkage: what a file in this folder supplies. */
export type LawKind<Law extends { readonly kind: string }> = {
  readonly kind: Law['kind']
  readonly equation: string
  readonly source: string
  readonly parameters: readonly Parameter[]
  /** Names under which other laws stand inside it. */
  readonly layers?: readonly string[]
  /** A list of rows of numbers. */
  readonly table?: { readonly name: string; readonly columns: readonly Parameter[] }
  /** Told by an expression of the reader's own; made by formulaLaw. */
  readonly written?: true
  readonly problems: (law: Law, path: string, inside: Inside) => Problem[]
  readonly curve: (law: Law, inside: Inside) => Curve
  readonly softness: (law: Law, inside: Inside) => Metres
  /** The same law at another softness: other parameters kept; absent: the law is stretched in depth. */
  readonly withSoftness?: (law: Law, softness: Metres) => Law
  /** The law in which every pressure stands at this many times the depth. */
  readonly stretched: (law: Law, factor: number, inside: Inside) => Law
}
