import { InputError, type Scenario, scenarioProblems } from '@swardsink/model'
import {
  fittedRoller,
  frontDiameter,
  frontMass,
  frontSurface,
  grooveDepth,
  grooveLand,
  groovePitch,
} from './rollerSettables.ts'
import type { QuantitySettable, Refusal, Settable } from './settable.ts'
import { lockingDepth, softness, spread, turfChoice } from './turfSettables.ts'
import { benchHeight, condition, edge, scalesFront, scalesTotal, speed, wheelbase } from './unitSettables.ts'

/** Everything of a scenario that a reader can set, by the name books use. */
const list: readonly Settable[] = [
  frontMass,
  frontDiameter,
  frontSurface,
  groovePitch,
  grooveLand,
  grooveDepth,
  fittedRoller,
  softness,
  lockingDepth,
  spread,
  turfChoice,
  scalesTotal,
  scalesFront,
  benchHeight,
  wheelbase,
  edge,
  condition,
  speed,
]

export const settables: Readonly<Record<string, Settable>> = Object.fromEntries(
  list.map(settable => [settable.name, settable]),
)

export function settable(name: string): Settable | undefined {
  return Object.hasOwn(settables, name) ? settables[name] : undefined
}

export type Set =
  | { readonly ok: true; readonly scenario: Scenario }
  | { readonly ok: false; readonly refusal: Refusal }

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
    return problem ? { ok: false, refusal: { reason: 'model', problem } } : { ok: true, scenario: next }
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    const problem = { path: error.quantity, expected: error.expected, received: error.received }
    return { ok: false, refusal: { reason: 'model', problem } }
  }
}
