import type { QuantitySettable } from '../../book/index.ts'
import type { CheckSettings } from './kind.ts'

/** The numbers of this entry that a reader sets in it. */
export const SET_HERE = ['bench', 'gauge'] as const
export type SetHere = (typeof SET_HERE)[number]

/** A number of the entry's own in the form that controls know from the scenario's. */
export function settableOf(name: SetHere, settings: CheckSettings): QuantitySettable {
  return {
    kind: 'quantity',
    name: `check.${name}`,
    quantity: 'height',
    line: { low: 0, high: 0.5e-3, usual: [0.02e-3, 0.2e-3], scale: 'linear' },
    plausible: [0, 2e-3],
    refuse: (_, value) => (value >= 0 ? null : { reason: 'not negative' }),
    value: () => settings[name],
    set: scenario => scenario,
  }
}
