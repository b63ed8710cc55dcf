import type { Problem, QuantityName, Scenario } from '@swardsink/model'

/** Why a value cannot be taken, as data; the words table has the sentence. Values are SI. */
export type Refusal =
  | { readonly reason: 'not a number'; readonly text: string }
  | { readonly reason: 'more than zero' }
  | { readonly reason: 'not negative' }
  | { readonly reason: 'land against pitch'; readonly land: number; readonly pitch: number }
  | {
      readonly reason: 'locking depth against softness'
      readonly lockingDepth: number
      readonly softness: number
    }
  | { readonly reason: 'edge outside the wheelbase'; readonly edge: number; readonly wheelbase: number }
  | {
      readonly reason: 'roller heavier than its reading'
      readonly where: 'front' | 'rear'
      readonly reading: number
      readonly roller: number
    }
  | { readonly reason: 'model'; readonly problem: Problem }

/** The graduated line under a value: where it runs, which part is usual, and how it is divided. */
export type Line = {
  readonly low: number
  readonly high: number
  readonly usual: readonly [number, number]
  readonly scale: 'linear' | 'logarithmic'
}

/** A number of the scenario that a reader can set. */
export type QuantitySettable = {
  readonly kind: 'quantity'
  readonly name: string
  readonly quantity: QuantityName
  readonly line: Line
  /** null where this scenario has no such number: a smooth roller has no pitch. */
  value(scenario: Scenario): number | null
  set(scenario: Scenario, value: number): Scenario
  /** The reasons a person can act on; what they let through is still put before the model's own check. */
  refuse(scenario: Scenario, value: number): Refusal | null
}

/** A choice between a few things of the scenario. */
export type ChoiceSettable = {
  readonly kind: 'choice'
  readonly name: string
  options(scenario: Scenario): readonly string[]
  value(scenario: Scenario): string
  set(scenario: Scenario, option: string): Scenario
}

export type Settable = QuantitySettable | ChoiceSettable

export function moreThanZero(_: Scenario, value: number): Refusal | null {
  return value > 0 ? null : { reason: 'more than zero' }
}

export function notNegative(_: Scenario, value: number): Refusal | null {
  return value >= 0 ? null : { reason: 'not negative' }
}
