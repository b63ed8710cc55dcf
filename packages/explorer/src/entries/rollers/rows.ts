import { displayUnit, type QuantityName } from '@swardsink/model'
import type { Reader } from '../../words/index.ts'
import type { RackRoller, RollersResult } from './kind.ts'

export const ROLLER_COLUMNS = [
  'mass',
  'diameter',
  'length',
  'sections',
  'buildUp',
  'runout',
  'raises',
] as const
export type RollerColumn = (typeof ROLLER_COLUMNS)[number]

const QUANTITY: Readonly<Record<RollerColumn, QuantityName>> = {
  mass: 'mass',
  diameter: 'diameter',
  length: 'length',
  sections: 'count',
  buildUp: 'height',
  runout: 'height',
  raises: 'height',
}

export const columnUnit = (column: RollerColumn, { units }: Reader): string =>
  displayUnit(QUANTITY[column], units)

export function rollerCell({ roller, raises }: RackRoller, column: RollerColumn, { format }: Reader): string {
  const values: Readonly<Record<RollerColumn, number>> = {
    mass: roller.mass,
    diameter: roller.diameter,
    length: roller.length,
    sections: roller.sections ?? 1,
    buildUp: roller.buildUp ?? 0,
    runout: roller.runout ?? 0,
    raises,
  }
  return format(values[column], QUANTITY[column], { unit: false })
}

/** Where a roller is fitted, in words. */
export function whereWords(
  { places }: RackRoller,
  { several }: Pick<RollersResult, 'several'>,
  { words }: Reader,
): string {
  const said = words.rollers
  if (places.length === 0) return said.nowhere
  return words.list(
    places.map(({ unit, position }) => {
      const place = said.places[position]
      return several && unit !== null ? said.placeOn({ unit, place }) : place
    }),
  )
}
