import { html } from 'lit'
import type { Shown, Table, View } from '../view.ts'
import { turfsFinding } from './finding.ts'
import type { TurfsResult, TurfsSettings } from './kind.ts'
import { columnUnit, TURF_COLUMNS, turfCell } from './rows.ts'
import './turfs-entry.ts'

function table({ result, reader }: Shown<TurfsSettings, TurfsResult>): Table {
  const said = reader.words.turfs
  return {
    caption: said.caption,
    columns: [
      { head: said.turf, unit: '' },
      ...TURF_COLUMNS.map(column => ({ head: said.columns[column], unit: columnUnit(column, reader) })),
    ],
    rows: result.rows.map(row => [row.name, ...TURF_COLUMNS.map(column => turfCell(row, column, reader))]),
  }
}

/** The greens, typed, chosen or fitted. */
export const turfsView: View<'turfs', TurfsSettings, TurfsResult> = {
  kind: 'turfs',
  title: ({ result, reader }) => reader.words.turfs.title(result.rows.length),
  finding: turfsFinding,
  note: ({ reader }) => reader.words.turfs.note,
  table,
  draw: shown => html`<turfs-entry .shown=${shown}></turfs-entry>`,
}
