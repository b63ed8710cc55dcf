import { units as modelUnits, type UnitName } from '@swardsink/model'
import { type Dimension, nameOf, PLAIN, same, things } from './dimension.ts'

export type Unit = { readonly factor: number; readonly dimension: Dimension }

/** Units of the model that are written as one word in a formula: km/h is written so, and is not among them. */
const words: readonly UnitName[] = [
  ...(['m', 'cm', 'mm', 'in', 'kg', 'g', 'lb', 'N', 'lbf', 'Pa', 'kPa', 'psi'] as const),
  ...(['s', 'ms', 'mph', 'rad', 'deg', 'rpm'] as const),
]

const ofModel = words.map(name => {
  const { dimension, factor } = modelUnits[name]
  return [name, { factor, dimension: things[dimension] ?? PLAIN }] as const
})

const MINUTE = 60
/** Larger and smaller ones that go with them. Foot, yard, mile: International Yard and Pound Agreement (1959). */
const more: Readonly<Record<string, Unit>> = {
  km: { factor: 1000, dimension: things.length ?? PLAIN },
  ft: { factor: 12 * modelUnits.in.factor, dimension: things.length ?? PLAIN },
  yd: { factor: 36 * modelUnits.in.factor, dimension: things.length ?? PLAIN },
  kN: { factor: 1000, dimension: things.force ?? PLAIN },
  MPa: { factor: 1e6, dimension: things.pressure ?? PLAIN },
  J: { factor: 1, dimension: things.energy ?? PLAIN },
  min: { factor: MINUTE, dimension: things.time ?? PLAIN },
  h: { factor: MINUTE * MINUTE, dimension: things.time ?? PLAIN },
}

/** Every unit a formula may hold, by how it is written. */
export const formulaUnits: ReadonlyMap<string, Unit> = new Map([...ofModel, ...Object.entries(more)])

const PROPOSALS: readonly (readonly [string, Dimension])[] = [
  ['mm', things.length ?? PLAIN],
  ['mm^2', things.area ?? PLAIN],
  ['mm^3', things.volume ?? PLAIN],
  ['kg', things.mass ?? PLAIN],
  ['s', things.time ?? PLAIN],
  ['km/h', things.speed ?? PLAIN],
  ['m/s^2', things.acceleration ?? PLAIN],
  ['N', things.force ?? PLAIN],
  ['N/mm', things['force per length'] ?? PLAIN],
  ['kPa', things.pressure ?? PLAIN],
  ['kPa/mm', things['pressure per length'] ?? PLAIN],
  ['J', things.energy ?? PLAIN],
  ['rpm', things.turning ?? PLAIN],
]

/** A unit that such a thing can be told in; empty for a plain number. */
export function proposedUnit(dimension: Dimension): string {
  if (same(dimension, PLAIN)) return ''
  const found = PROPOSALS.find(([, proposed]) => same(proposed, dimension))
  return found?.[0] ?? nameOf(dimension).replaceAll('·', '*').replaceAll('−', '-')
}
