import { type PressureLaw, type Scenario, softnessOf, type Turf, withSoftness } from '@swardsink/model'
import { type ChoiceSettable, moreThanZero, notNegative, type QuantitySettable } from './settable.ts'

/** The turf the unit stands on. The reader of scenarios has checked that the name is in the list. */
export function presentTurf(scenario: Scenario): Turf {
  const turf = scenario.turfs[scenario.turf]
  if (!turf) throw new Error(`no turf called ${scenario.turf}`)
  return turf
}

function changeTurf(scenario: Scenario, turf: Turf): Scenario {
  return { ...scenario, turfs: { ...scenario.turfs, [scenario.turf]: turf } }
}

function lockingDepthOf(law: PressureLaw): number | null {
  return 'lockingDepth' in law ? law.lockingDepth : null
}

export const softness: QuantitySettable = {
  kind: 'quantity',
  name: 'turf.softness',
  quantity: 'softness',
  line: { low: 0.05e-3, high: 2e-3, usual: [0.07e-3, 1e-3], scale: 'logarithmic' },
  value: scenario => softnessOf(presentTurf(scenario).law),
  set: (scenario, value) => changeTurf(scenario, withSoftness(presentTurf(scenario), value)),
  refuse(scenario, value) {
    const lockingDepth = lockingDepthOf(presentTurf(scenario).law)
    if (lockingDepth !== null && value >= lockingDepth)
      return { reason: 'locking depth against softness', lockingDepth, softness: value }
    return moreThanZero(scenario, value)
  },
}

export const lockingDepth: QuantitySettable = {
  kind: 'quantity',
  name: 'turf.lockingDepth',
  quantity: 'lockingDepth',
  line: { low: 0.5e-3, high: 20e-3, usual: [2e-3, 12e-3], scale: 'logarithmic' },
  value: scenario => lockingDepthOf(presentTurf(scenario).law),
  set(scenario, value) {
    const turf = presentTurf(scenario)
    if (!('lockingDepth' in turf.law)) return scenario
    return changeTurf(scenario, { ...turf, law: { ...turf.law, lockingDepth: value } })
  },
  refuse(scenario, value) {
    const present = softnessOf(presentTurf(scenario).law)
    const negative = moreThanZero(scenario, value)
    if (negative) return negative
    return value > present
      ? null
      : { reason: 'locking depth against softness', lockingDepth: value, softness: present }
  },
}

export const spread: QuantitySettable = {
  kind: 'quantity',
  name: 'turf.spread',
  quantity: 'spread',
  line: { low: 0, high: 10e-3, usual: [1e-3, 6e-3], scale: 'linear' },
  value: scenario => presentTurf(scenario).spread ?? 0,
  set: (scenario, value) => changeTurf(scenario, { ...presentTurf(scenario), spread: value }),
  refuse: notNegative,
}

export const turfChoice: ChoiceSettable = {
  kind: 'choice',
  name: 'turf',
  options: scenario => Object.keys(scenario.turfs),
  value: scenario => scenario.turf,
  set: (scenario, turf) => ({ ...scenario, turf }),
}
