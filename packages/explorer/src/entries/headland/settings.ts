import type { QuantitySettable } from '../../book/index.ts'
import type { HeadlandSettings } from './kind.ts'

/** The numbers of this entry that a reader sets in it. */
export const SET_HERE = ['radius', 'friction', 'drag'] as const
export type SetHere = (typeof SET_HERE)[number]

type Own = Pick<QuantitySettable, 'quantity' | 'line' | 'plausible' | 'refuse'>

const own: Readonly<Record<SetHere, Own>> = {
  radius: {
    quantity: 'turnRadius',
    line: { low: 0.5, high: 20, usual: [2, 8], scale: 'logarithmic' },
    plausible: [0.3, 100],
    refuse: (_, value) => (value > 0 ? null : { reason: 'more than zero' }),
  },
  friction: {
    quantity: 'ratio',
    line: { low: 0, high: 1, usual: [0.3, 0.6], scale: 'linear' },
    plausible: [0, 2],
    refuse: (_, value) => (value >= 0 ? null : { reason: 'not negative' }),
  },
  // What friction cannot hold, the entry says: it hangs on the load.
  drag: {
    quantity: 'load',
    line: { low: 0, high: 50, usual: [0, 20], scale: 'linear' },
    plausible: [-200, 200],
    refuse: () => null,
  },
}

/** A number of the entry's own in the form that controls know from the scenario's. */
export function settableOf(name: SetHere, settings: HeadlandSettings): QuantitySettable {
  return {
    kind: 'quantity',
    name: `headland.${name}`,
    ...own[name],
    value: () => settings[name],
    set: scenario => scenario,
  }
}
