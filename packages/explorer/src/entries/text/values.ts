import {
  type BenchSetting,
  benchHeightFor,
  GRAVITY,
  type QuantityName,
  type Scenario,
  type SettledUnit,
  softnessOf,
  withSoftness,
} from '@swardsink/model'
import { type LiveValue, settable, settables } from '../../book/index.ts'
import { type SettledInput, settleOnce } from '../settled.ts'

/** What the unit at rest can be asked for in prose, by the names books use. */
type Ask = {
  readonly quantity: QuantityName
  of(settled: SettledUnit, input: SettledInput, scenario: Scenario): number | null
}

function dropWith(input: SettledInput): number | null {
  const settled = settleOnce(input)
  return settled.outcome === 'settled' ? settled.drop.middle : null
}

function heavierByOne({ unit, turf, condition }: SettledInput): SettledInput {
  const frontRoller = { ...unit.frontRoller, mass: unit.frontRoller.mass + 1 }
  return { unit: { ...unit, frontRoller }, turf, condition }
}

/** null where the turf cannot be twice as soft: it locks before. */
function twiceAsSoft({ unit, turf, condition }: SettledInput): SettledInput | null {
  const twice = 2 * softnessOf(turf.law)
  if ('lockingDepth' in turf.law && twice >= turf.law.lockingDepth) return null
  return { unit, turf: withSoftness(turf, twice), condition }
}

/** How the unit is set for the height that is wanted; null while none is, or where no setting gives it. */
function holding(input: SettledInput, { effectiveHeight }: Scenario): BenchSetting | null {
  if (effectiveHeight === undefined) return null
  const setting = benchHeightFor({ ...input, effectiveHeight })
  // No edge can be set below the line that the rollers stand on.
  return setting.outcome === 'settled' && setting.benchHeight > 0 ? setting : null
}

const middle = ({ left, right }: BenchSetting['change']): number => (left + right) / 2

const difference = (more: number | null, now: number): number | null => (more === null ? null : more - now)

const computed: Readonly<Record<string, Ask>> = {
  'front.load': { quantity: 'load', of: ({ front }) => front.load },
  'front.sinkage': { quantity: 'sinkage', of: ({ front }) => front.sinkage },
  'front.peakPressure': { quantity: 'pressure', of: ({ front }) => front.peakPressure },
  'rear.load': { quantity: 'load', of: ({ rear }) => rear.load },
  'rear.sinkage': { quantity: 'sinkage', of: ({ rear }) => rear.sinkage },
  drop: { quantity: 'drop', of: ({ drop }) => drop.middle },
  effectiveHeight: { quantity: 'height', of: ({ effectiveHeight }) => effectiveHeight.middle },
  'toHold.benchHeight': {
    quantity: 'height',
    of: (_, input, scenario) => holding(input, scenario)?.benchHeight ?? null,
  },
  'toHold.change': {
    quantity: 'height',
    of(_, input, scenario) {
      const setting = holding(input, scenario)
      return setting && middle(setting.change)
    },
  },
  'toHold.travel': {
    quantity: 'height',
    of(_, input, scenario) {
      const setting = holding(input, scenario)
      return setting && middle(setting.rollerTravel)
    },
  },
  'body.weight': { quantity: 'load', of: (_, { unit }) => unit.body.mass * GRAVITY },
  // A round step to speak of; told in the reader’s own units.
  'oneKilogram.mass': { quantity: 'mass', of: () => 1 },
  'oneKilogramMore.drop': {
    quantity: 'drop',
    of: ({ drop }, input) => difference(dropWith(heavierByOne(input)), drop.middle),
  },
  'twiceAsSoft.drop': {
    quantity: 'drop',
    of({ drop }, input) {
      const softer = twiceAsSoft(input)
      return softer ? difference(dropWith(softer), drop.middle) : null
    },
  },
}

/** Every name prose and formulas may call, other entries apart. */
export const valueNames = (): readonly string[] => [
  ...Object.keys(computed),
  ...Object.values(settables).flatMap(({ kind, name }) => (kind === 'quantity' ? [name] : [])),
]

export function isValueName(name: string): boolean {
  return Object.hasOwn(computed, name) || settable(name)?.kind === 'quantity'
}

/** One live value of prose: what was set, or what follows from it. */
export function liveValue(
  name: string,
  q: { readonly scenario: Scenario; readonly settled: SettledUnit | null; readonly input: SettledInput },
): LiveValue | null {
  const of = settable(name)
  if (of?.kind === 'quantity') return { quantity: of.quantity, value: of.value(q.scenario) }
  const ask = Object.hasOwn(computed, name) ? computed[name] : undefined
  if (!ask) return null
  return { quantity: ask.quantity, value: q.settled ? ask.of(q.settled, q.input, q.scenario) : null }
}
