import { displayUnit, type QuantityName } from '@swardsink/model'
import type { Shown, Table } from '../view.ts'
import type { HeadlandResult, HeadlandSettings } from './kind.ts'

/** The rack on this turn, in words and numbers. */
export function headlandTable({ result, reader }: Shown<HeadlandSettings, HeadlandResult>): Table {
  const { units, format } = reader
  const { table: said } = reader.words.headland
  const number = (value: number | null | undefined, quantity: QuantityName) =>
    value === null || value === undefined ? said.slides : format(value, quantity, { unit: false })
  const slidingUnit = displayUnit('sliding', units)
  return {
    caption: said.caption,
    columns: [
      { head: said.roller, unit: '' },
      { head: said.sections, unit: '' },
      { head: said.load, unit: displayUnit('load', units) },
      { head: said.greatest, unit: slidingUnit },
      { head: said.mean, unit: slidingUnit },
      { head: said.rootMeanSquare, unit: slidingUnit },
      { head: said.work, unit: displayUnit('resistance', units) },
    ],
    rows: result.rows.map(({ name, fitted, roller, load, sliding }) => [
      fitted ? `${name}, ${reader.words.surfaces.fitted}` : name,
      String(roller.sections ?? 1),
      format(load, 'load', { unit: false }),
      number(sliding?.greatest, 'sliding'),
      number(sliding?.mean, 'sliding'),
      number(sliding?.rootMeanSquare, 'sliding'),
      number(sliding?.frictionWork, 'resistance'),
    ]),
  }
}
