import type { UnitName } from './units.ts'
import { units } from './units.ts'

export type UnitSystem = 'metric' | 'US'

type Shown = { readonly unit: string; readonly factor: number; readonly decimals: number }
export type Quantity = {
  readonly symbol: string
  readonly metric: Shown
  readonly US: Shown
  /** Plausible range, SI: for controls and for warnings, never a limit of the physics. */
  readonly low: number
  readonly high: number
}

const shown = (name: UnitName, decimals: number): Shown => ({
  unit: units[name].word,
  factor: units[name].factor,
  decimals,
})

/** A length read in mm to 0.01 and in inches to 0.001, as practitioners write a height of cut. */
const fine = { metric: shown('mm', 2), US: shown('in', 3) }
/** A length of the machine, read with a rule. */
const coarse = { metric: shown('mm', 1), US: shown('in', 2) }
const mm = units.mm.factor

/**
 * Every quantity a reader meets: symbol, unit, decimals, plausible range. Controls, axes, tables, reports and
 * spoken values read this one table.
 *
 * Source  ranges: design figures of the trade, from memory; softness: Volk 1972, Agronomy Journal 64(4):503-506,
 *         and the derivation in docs/physics.md §1.
 */
export const catalogue = {
  sinkage: { symbol: 'z', ...fine, low: 0, high: 15 * mm },
  softness: { symbol: 's', ...fine, low: 0.07 * mm, high: 15 * mm },
  spread: { symbol: 'l', ...fine, low: 0, high: 10 * mm },
  height: { symbol: 'h', ...fine, low: 1 * mm, high: 50 * mm },
  drop: { symbol: 'h_b − h', ...fine, low: 0, high: 15 * mm },
  relief: { symbol: 'z − u_m', ...fine, low: 0, high: 8 * mm },
  lockingDepth: { symbol: 'H', ...fine, low: 1 * mm, high: 60 * mm },
  thickness: { symbol: 'h', ...coarse, low: 2 * mm, high: 300 * mm },
  diameter: { symbol: 'D', ...coarse, low: 40 * mm, high: 200 * mm },
  length: { symbol: 'L', ...coarse, low: 100 * mm, high: 1000 * mm },
  pitch: { symbol: 's_p', ...coarse, low: 4 * mm, high: 60 * mm },
  land: { symbol: 'w_l', ...coarse, low: 1 * mm, high: 30 * mm },
  grooveDepth: { symbol: 'd', ...coarse, low: 0, high: 30 * mm },
  wheelbase: { symbol: 'B', ...coarse, low: 100 * mm, high: 500 * mm },
  place: { symbol: 'x', ...coarse, low: -500 * mm, high: 1000 * mm },
  turnRadius: { symbol: 'r', metric: shown('m', 2), US: shown('ft', 1), low: 1, high: 30 },
  sliding: { symbol: 'σ', metric: shown('mm_per_m', 1), US: shown('in_per_ft', 3), low: 0, high: 0.5 },
  mass: { symbol: 'm', metric: shown('kg', 2), US: shown('lb', 2), low: 0, high: 60 },
  load: { symbol: 'W', metric: shown('N', 0), US: shown('lbf', 1), low: 0, high: 1000 },
  lineLoad: { symbol: 'q', metric: shown('N_per_mm', 3), US: shown('lbf_per_in', 2), low: 0, high: 3000 },
  pressure: { symbol: 'p', metric: shown('kPa', 1), US: shown('psi', 2), low: 0, high: 200e3 },
  resistance: { symbol: 'F', metric: shown('N', 1), US: shown('lbf', 2), low: 0, high: 200 },
  stiffness: { symbol: 'dW/dz', metric: shown('N_per_mm', 0), US: shown('lbf_per_in', 0), low: 0, high: 5e6 },
  speed: { symbol: 'v', metric: shown('kmh', 1), US: shown('mph', 1), low: 0.5, high: 3 },
  time: { symbol: 't', metric: shown('s', 2), US: shown('s', 2), low: 0, high: 600 },
  turning: { symbol: 'N', metric: shown('rpm', 0), US: shown('rpm', 0), low: 5, high: 50 },
  angle: { symbol: 'θ', metric: shown('deg', 2), US: shown('deg', 2), low: -0.5, high: 0.5 },
  ratio: { symbol: '', metric: shown('number', 2), US: shown('number', 2), low: 0, high: 1 },
  count: { symbol: '', metric: shown('number', 0), US: shown('number', 0), low: 1, high: 20 },
  exponent: { symbol: 'n', metric: shown('number', 2), US: shown('number', 2), low: 0.2, high: 2 },
} as const satisfies Record<string, Quantity>

export type QuantityName = keyof typeof catalogue

export const displayUnit = (quantity: QuantityName, system: UnitSystem): string =>
  catalogue[quantity][system].unit

/** SI to the number a reader sees, unrounded. */
export const toDisplay = (value: number, quantity: QuantityName, system: UnitSystem): number =>
  value / catalogue[quantity][system].factor

/** The number a reader typed to SI. */
export const fromDisplay = (shown: number, quantity: QuantityName, system: UnitSystem): number =>
  shown * catalogue[quantity][system].factor
