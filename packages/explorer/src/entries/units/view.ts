import { html } from 'lit'
import type { Shown, Table, View } from '../view.ts'
import { unitsFinding } from './finding.ts'
import type { UnitsResult, UnitsSettings } from './kind.ts'
import { nameOf, UNIT_COLUMNS, unitCell, unitOfColumn } from './rows.ts'
import './units-entry.ts'

function table({ result, reader, scenario }: Shown<UnitsSettings, UnitsResult>): Table {
  const { units } = reader.words
  return {
    caption: units.caption,
    columns: [
      { head: units.unit, unit: '' },
      ...UNIT_COLUMNS.map(column => ({ head: units.columns[column], unit: unitOfColumn(column, reader) })),
    ],
    rows: result.rows.map(row => [
      nameOf(row, reader),
      ...UNIT_COLUMNS.map(column => unitCell(row, column, { reader, scenario })),
    ]),
  }
}

/** Units of one machine side by side. */
export const unitsView: View<'units', UnitsSettings, UnitsResult> = {
  kind: 'units',
  handsOn: true,
  title: ({ result, reader }) => reader.words.units.title(result.rows.length),
  finding: unitsFinding,
  note: ({ settings, reader }) => reader.words.units.note(reader.format(settings.tolerance, 'height')),
  table,
  draw: shown => html`<units-entry .shown=${shown}></units-entry>`,
}
