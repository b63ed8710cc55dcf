import { InputError, type Scenario, scenarioProblems, type Unit } from '@swardsink/model'
import { conditionSettables } from './conditionSettables.ts'
import { loadNames, loadSettable } from './loadSettables.ts'
import { fittedSettables, rackNames, rackSettable } from './rollerSettables.ts'
import { scaleSettables } from './scaleSettables.ts'
import type { QuantitySettable, Refusal, Settable } from './settable.ts'
import { namedTurfSettable, presentSettables, turfSettableNames } from './turfSettables.ts'
import { unitSettables } from './unitSettables.ts'

/** What every scenario has, or may have, by the name books use. */
const list: readonly Settable[] = [
  ...fittedSettables,
  ...presentSettables,
  ...scaleSettables,
  ...unitSettables,
  ...conditionSettables,
]

export const settables: Readonly<Record<string, Settable>> = Object.fromEntries(
  list.map(settable => [settable.name, settable]),
)

/** Those asked for by the name of a roller, a turf or a load: an element that is given one twice is given the same. */
const named = new Map<string, Settable | undefined>()

/**
 * What can be set under a name: one of `settables`, or a number of anything that has a name of its own, such as
 * `rollers.peg 3.mass`, `turfs.chapel green.rebound`, `turf.upper.softness`, `loads.grass box.mass`.
 */
export function settable(name: string): Settable | undefined {
  if (Object.hasOwn(settables, name)) return settables[name]
  if (!named.has(name)) named.set(name, rackSettable(name) ?? namedTurfSettable(name) ?? loadSettable(name))
  return named.get(name)
}

/** Whether a scenario has this to set: a smooth roller has no pitch, and a single unit is no choice. */
export function isThere(of: Settable, scenario: Scenario): boolean {
  if (of.kind === 'choice') return of.options(scenario).length > 0
  return of.value(scenario) !== null || of.isOpen?.(scenario) === true
}

/** The name of everything that can be set of a scenario. */
export function settableNames(scenario: Scenario): readonly string[] {
  const names = [
    ...list.map(({ name }) => name),
    ...rackNames(scenario),
    ...Object.keys(scenario.turfs).flatMap(turf => turfSettableNames(scenario, turf)),
    ...loadNames(scenario),
  ]
  return names.filter(name => {
    const of = settable(name)
    return of !== undefined && isThere(of, scenario)
  })
}

export type Set =
  | { readonly ok: true; readonly scenario: Scenario }
  | { readonly ok: false; readonly refusal: Refusal }

/** Two rollers cannot be where each other is. */
export function touching({ frontRoller, rearRoller, wheelbase }: Unit): Refusal | null {
  const [front, rear] = [frontRoller.diameter, rearRoller.diameter]
  return (front + rear) / 2 < wheelbase ? null : { reason: 'rollers touch', front, rear, wheelbase }
}

/** Sets one number, or says why the scenario cannot take it. The scenario handed in is never changed. */
export function setQuantity(
  scenario: Scenario,
  { of, value }: { readonly of: QuantitySettable; readonly value: number },
): Set {
  const refusal = of.refuse(scenario, value)
  if (refusal) return { ok: false, refusal }
  try {
    const next = of.set(scenario, value)
    const [problem] = scenarioProblems(next)
    if (problem) return { ok: false, refusal: { reason: 'model', problem } }
    // a file may hold a unit whose rollers touch: that must not keep its reader from putting anything right
    const touches = touching(scenario.unit) ? null : touching(next.unit)
    return touches ? { ok: false, refusal: touches } : { ok: true, scenario: next }
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    const problem = { path: error.quantity, expected: error.expected, received: error.received }
    return { ok: false, refusal: { reason: 'model', problem } }
  }
}
