import type { QuantitySettable, Refusal } from '../../book/index.ts'
import type { HeadlandSettings } from './kind.ts'

/** The numbers of this entry that a reader sets in it. */
export const SET_HERE = ['radius', 'sections', 'friction', 'drag'] as const
export type SetHere = (typeof SET_HERE)[number]

type Own = Pick<QuantitySettable, 'quantity' | 'line' | 'plausible'> & {
  refuse(value: number): Refusal | null
}

const notNegative = (value: number): Refusal | null => (value >= 0 ? null : { reason: 'not negative' })

const own: Readonly<Record<SetHere, Own>> = {
  radius: {
    quantity: 'turnRadius',
    line: { low: 0.5, high: 20, usual: [2, 8], scale: 'logarithmic' },
    plausible: [0.3, 100],
    refuse: value => (value > 0 ? null : { reason: 'more than zero' }),
  },
  sections: {
    quantity: 'count',
    line: { low: 1, high: 8, usual: [1, 3], scale: 'linear' },
    refuse: value => (Number.isInteger(value) && value >= 1 ? null : { reason: 'whole number' }),
  },
  friction: {
    quantity: 'ratio',
    line: { low: 0, high: 1, usual: [0.3, 0.6], scale: 'linear' },
    plausible: [0, 2],
    refuse: notNegative,
  },
  // What friction cannot hold, the entry says: it hangs on the load.
  drag: { quantity: 'load', line: { low: 0, high: 50, usual: [0, 20], scale: 'linear' }, refuse: () => null },
}

export function refusalOf(name: SetHere, value: number): Refusal | null {
  return own[name].refuse(value)
}

/** A number of the entry's own in the form that controls know from the scenario's. */
export function settableOf(
  name: SetHere,
  q: { readonly settings: HeadlandSettings; readonly sections: number },
): QuantitySettable {
  const value = name === 'sections' ? q.sections : q.settings[name]
  return {
    kind: 'quantity',
    name: `headland.${name}`,
    ...own[name],
    value: () => value,
    set: scenario => scenario,
    refuse: (_, entered) => own[name].refuse(entered),
  }
}
