import type { Scenario } from '@swardsink/model'
import { type ChoiceSettable, moreThanZero, type QuantitySettable, type Settable } from './settable.ts'

/** Speed to begin with when a standing unit is set to mow: a walking pace. */
const FIRST_SPEED = 1.2

const condition: ChoiceSettable = {
  kind: 'choice',
  name: 'condition',
  options: () => ['standing', 'mowing'],
  value: scenario => scenario.condition.kind,
  set(scenario: Scenario, option: string): Scenario {
    if (option === scenario.condition.kind) return scenario
    return {
      ...scenario,
      condition: option === 'mowing' ? { kind: 'mowing', speed: FIRST_SPEED } : { kind: 'standing' },
    }
  },
}

const speed: QuantitySettable = {
  kind: 'quantity',
  name: 'condition.speed',
  quantity: 'speed',
  line: { low: 0.2, high: 4, usual: [0.8, 2.5], scale: 'linear' },
  value: scenario => (scenario.condition.kind === 'mowing' ? scenario.condition.speed : null),
  set: (scenario, value) =>
    scenario.condition.kind === 'mowing'
      ? { ...scenario, condition: { ...scenario.condition, speed: value } }
      : scenario,
  refuse: moreThanZero,
}

/** Whether the track that has not come back yet when the edge passes counts for the height. */
const recovery: ChoiceSettable = {
  kind: 'choice',
  name: 'condition.recovery',
  options: ({ condition: { kind } }) => (kind === 'mowing' ? ['counted', 'left out'] : []),
  value: ({ condition: now }) => (now.kind === 'mowing' && now.recovery === false ? 'left out' : 'counted'),
  set(scenario, option) {
    if (scenario.condition.kind !== 'mowing') return scenario
    return { ...scenario, condition: { ...scenario.condition, recovery: option === 'counted' } }
  },
}

const wanted: QuantitySettable = {
  kind: 'quantity',
  // `effectiveHeight` is what is cut: prose and formulas call it so
  name: 'wantedHeight',
  quantity: 'height',
  line: { low: 2e-3, high: 12e-3, usual: [2.5e-3, 8e-3], scale: 'linear' },
  value: scenario => scenario.effectiveHeight ?? null,
  set: (scenario, effectiveHeight) => ({ ...scenario, effectiveHeight }),
  refuse: moreThanZero,
  isOpen: () => true,
  unset({ effectiveHeight: _, ...scenario }) {
    return scenario
  },
}

/** How the unit is used, and the height it is to cut at. */
export const conditionSettables: readonly Settable[] = [condition, speed, recovery, wanted]
