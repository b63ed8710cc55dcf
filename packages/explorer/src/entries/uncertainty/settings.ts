import type { QuantitySettable } from '../../book/index.ts'

export type UncertaintySettings = {
  /** Scatter of the softness, as a part of it: standard deviation of its logarithm. Not asked of a fit. */
  readonly softness: number
  /** Standard deviation of the setting on the bench, m. */
  readonly benchHeight: number
  /** Half of the step the scales are read to, kg. */
  readonly scales: number
  /** Standard deviation of the mass of the front roller, kg. */
  readonly rollerMass: number
  /** What counts as the wanted height, to either side, m. */
  readonly tolerance: number
  /** The entry of kind fit whose turf is taken, and its scatter with it; empty: the turf in hand. */
  readonly fit: string
  /** Which set of that fit, where it has several; empty: the one it shows. */
  readonly set: string
  readonly draws: number
  readonly seed: number
}

/**
 * Usual values, common practice without a source: softness from one spot of a green to the next, a setting by feeler,
 * scales read to a fifth of a kilogram, a roller weighed once.
 */
export const USUAL: UncertaintySettings = {
  softness: 0.2,
  benchHeight: 0.05e-3,
  scales: 0.1,
  rollerMass: 0.05,
  tolerance: 0.2e-3,
  fit: '',
  set: '',
  draws: 100_000,
  seed: 1,
}

export const DRAWS = [2_000, 20_000, 100_000, 500_000] as const

/** The numbers of this entry that a reader sets in it. */
export const SET_HERE = ['softness', 'benchHeight', 'scales', 'rollerMass', 'tolerance'] as const
export type SetHere = (typeof SET_HERE)[number]

type Own = Pick<QuantitySettable, 'quantity' | 'line' | 'plausible' | 'refuse'>

const atLeastZero: QuantitySettable['refuse'] = (_, value) => (value >= 0 ? null : { reason: 'not negative' })
const linear = (low: number, high: number, usual: readonly [number, number]) =>
  ({ low, high, usual, scale: 'linear' }) as const

const own: Readonly<Record<SetHere, Own>> = {
  softness: { quantity: 'ratio', line: linear(0, 0.6, [0.1, 0.3]), plausible: [0, 1], refuse: atLeastZero },
  benchHeight: {
    quantity: 'height',
    line: linear(0, 0.3e-3, [0.02e-3, 0.1e-3]),
    plausible: [0, 1e-3],
    refuse: atLeastZero,
  },
  scales: { quantity: 'mass', line: linear(0, 0.5, [0.05, 0.25]), plausible: [0, 2], refuse: atLeastZero },
  rollerMass: { quantity: 'mass', line: linear(0, 0.5, [0.01, 0.1]), plausible: [0, 2], refuse: atLeastZero },
  tolerance: {
    quantity: 'height',
    line: linear(0.05e-3, 0.6e-3, [0.1e-3, 0.4e-3]),
    plausible: [0.01e-3, 2e-3],
    refuse: (_, value) => (value > 0 ? null : { reason: 'more than zero' }),
  },
}

/** A number of the entry's own in the form that controls know from the scenario's. */
export function settableOf(name: SetHere, settings: UncertaintySettings): QuantitySettable {
  return {
    kind: 'quantity',
    name: `uncertainty.${name}`,
    ...own[name],
    value: () => settings[name],
    set: scenario => scenario,
  }
}
