import type { Problem, QuantityName, Scenario } from '@swardsink/model'

/** Why a value cannot be taken, as data; the words table has the sentence. Values are SI. */
export type Refusal =
  | { readonly reason: 'not a number'; readonly text: string }
  | { readonly reason: 'more than zero' }
  | { readonly reason: 'not negative' }
  | { readonly reason: 'whole number' }
  | { readonly reason: 'a share' }
  | { readonly reason: 'land against pitch'; readonly land: number; readonly pitch: number }
  | { readonly reason: 'groove deeper than the roller'; readonly depth: number; readonly diameter: number }
  | {
      readonly reason: 'locking depth against softness'
      readonly lockingDepth: number
      readonly softness: number
    }
  | { readonly reason: 'lasting against rebound'; readonly lasting: number; readonly rebound: number }
  | { readonly reason: 'edge outside the wheelbase'; readonly edge: number; readonly wheelbase: number }
  | {
      readonly reason: 'rollers touch'
      readonly front: number
      readonly rear: number
      readonly wheelbase: number
    }
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
  /** Outside this a value is taken with a caution; the catalogue's range unless given. */
  readonly plausible?: readonly [number, number]
  /** null where this scenario has no such number: a smooth roller has no pitch. */
  value(scenario: Scenario): number | null
  set(scenario: Scenario, value: number): Scenario
  /** The reasons a person can act on; what they let through is still put before the model's own check. */
  refuse(scenario: Scenario, value: number): Refusal | null
  /** Absent, or false, where no value means that there is no such number; true where it is only not known yet. */
  isOpen?(scenario: Scenario): boolean
  /** Back to not known. */
  unset?(scenario: Scenario): Scenario
}

/** A choice between a few things of the scenario. */
export type ChoiceSettable = {
  readonly kind: 'choice'
  readonly name: string
  /** Its options are names that people gave: they are said as they stand, even where one is a word of the page too. */
  readonly named?: true
  options(scenario: Scenario): readonly string[]
  value(scenario: Scenario): string
  set(scenario: Scenario, option: string): Scenario
}

export type Settable = QuantitySettable | ChoiceSettable

export const positive = (value: number): Refusal | null => (value > 0 ? null : { reason: 'more than zero' })

export const notBelowZero = (value: number): Refusal | null =>
  value >= 0 ? null : { reason: 'not negative' }

export const whole = (value: number): Refusal | null =>
  Number.isInteger(value) && value >= 1 ? null : { reason: 'whole number' }

export const share = (value: number): Refusal | null =>
  value >= 0 && value <= 1 ? null : { reason: 'a share' }

export function moreThanZero(_: Scenario, value: number): Refusal | null {
  return positive(value)
}

export function notNegative(_: Scenario, value: number): Refusal | null {
  return notBelowZero(value)
}

/** What is wrong with it, the model says. */
export function anything(): Refusal | null {
  return null
}
