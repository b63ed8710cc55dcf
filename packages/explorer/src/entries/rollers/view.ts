import { html } from 'lit'
import type { Shown, Table, View } from '../view.ts'
import { rollersFinding } from './finding.ts'
import type { RollersResult, RollersSettings } from './kind.ts'
import { columnUnit, ROLLER_COLUMNS, rollerCell, whereWords } from './rows.ts'
import './rollers-entry.ts'

function table({ result, reader }: Shown<RollersSettings, RollersResult>): Table {
  const said = reader.words.rollers
  return {
    caption: said.caption,
    columns: [
      { head: said.roller, unit: '' },
      ...ROLLER_COLUMNS.map(column => ({ head: said.columns[column], unit: columnUnit(column, reader) })),
      { head: said.where, unit: '' },
    ],
    rows: result.rollers.map(row => [
      row.name,
      ...ROLLER_COLUMNS.map(column => rollerCell(row, column, reader)),
      whereWords(row, result, reader),
    ]),
  }
}

/** The rack, to be measured, added to and fitted from. */
export const rollersView: View<'rollers', RollersSettings, RollersResult> = {
  kind: 'rollers',
  handsOn: true,
  title: ({ result, reader }) => reader.words.rollers.title(result.rollers.length),
  finding: rollersFinding,
  note: ({ reader }) => reader.words.rollers.note,
  table,
  draw: shown => html`<rollers-entry .shown=${shown}></rollers-entry>`,
}
