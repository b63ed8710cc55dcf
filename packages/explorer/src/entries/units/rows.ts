import { displayUnit, type QuantityName, type Scenario } from '@swardsink/model'
import type { Reader } from '../../words/index.ts'
import type { UnitRow } from './kind.ts'

export const UNIT_COLUMNS = [
  'roller',
  'benchHeight',
  'load',
  'drop',
  'effectiveHeight',
  'ends',
  'toMatch',
] as const
export type UnitColumn = (typeof UNIT_COLUMNS)[number]

const QUANTITY: Readonly<Partial<Record<UnitColumn, QuantityName>>> = {
  benchHeight: 'height',
  load: 'load',
  drop: 'drop',
  effectiveHeight: 'height',
  ends: 'height',
  toMatch: 'height',
}

export function unitOfColumn(column: UnitColumn, { units }: Reader): string {
  const quantity = QUANTITY[column]
  return quantity ? displayUnit(quantity, units) : ''
}

export const nameOf = (row: UnitRow, { words }: Reader): string => row.name || words.units.unnamed

/** A cell as it is read: a number, or the reason there is none. */
export function unitCell(
  row: UnitRow,
  column: UnitColumn,
  q: { reader: Reader; scenario: Scenario },
): string {
  const { reader, scenario } = q
  const { words, format } = reader
  const { unit, settled, toMatch } = row
  if (column === 'roller') {
    const name = unit.fitted?.front
    const known = name !== undefined && Object.hasOwn(scenario.rollers, name)
    return known ? name : (sameAs(unit.frontRoller, scenario) ?? words.units.ownRoller)
  }
  const say = (value: number, quantity: QuantityName, signed = false) =>
    format(value, quantity, { unit: false, signed })
  if (column === 'benchHeight') return say(unit.benchHeight, 'height')
  if (!settled) return words.units.bottomsOut
  if (column === 'load') return say(settled.front.load, 'load')
  if (column === 'drop') return say(settled.drop.middle, 'drop')
  const { left, middle, right } = settled.effectiveHeight
  if (column === 'effectiveHeight') return say(middle, 'height')
  if (column === 'ends') return say(right - left, 'height', true)
  if (toMatch === null) return words.text.unknown
  return toMatch > 0 ? say(toMatch, 'height') : words.units.belowBench
}

function sameAs(roller: UnitRow['unit']['frontRoller'], { rollers }: Scenario): string | null {
  const text = JSON.stringify(roller)
  return Object.entries(rollers).find(([, one]) => JSON.stringify(one) === text)?.[0] ?? null
}
