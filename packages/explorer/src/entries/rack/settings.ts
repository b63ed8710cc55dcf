import type { QuantitySettable } from '../../book/index.ts'
import type { RackSettings } from './kind.ts'

/** The turn on which sliding is told, in the form that controls know from the scenario's numbers. */
export const headlandRadius = (settings: RackSettings): QuantitySettable => ({
  kind: 'quantity',
  name: 'rack.headlandRadius',
  quantity: 'turnRadius',
  line: { low: 0, high: 12, usual: [2, 8], scale: 'linear' },
  plausible: [0, 100],
  value: () => settings.headlandRadius,
  set: scenario => scenario,
  refuse: (_, value) => (value >= 0 ? null : { reason: 'not negative' }),
})
