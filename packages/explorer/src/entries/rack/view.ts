import { displayUnit } from '@swardsink/model'
import { html } from 'lit'
import type { Shown, Table, View } from '../view.ts'
import { rackFinding } from './finding.ts'
import { RACK_COLUMNS, type RackResult, type RackSettings } from './kind.ts'
import { COLUMN_QUANTITY, cellText, sorted, surfaceWords } from './rows.ts'
import './rack-entry.ts'

/** Every number of the rack, also where the drawn table has room for a few only. */
function table({ result, settings, reader }: Shown<RackSettings, RackResult>): Table {
  const { rack } = reader.words
  return {
    caption: rack.caption,
    columns: [
      { head: rack.roller, unit: '' },
      ...RACK_COLUMNS.map(column => ({
        head: rack.columns[column],
        unit: displayUnit(COLUMN_QUANTITY[column], reader.units),
      })),
    ],
    rows: sorted(result, settings).map(row => [
      `${row.name}, ${surfaceWords(row, reader)}`,
      ...RACK_COLUMNS.map(column => cellText(row, column, reader)),
    ]),
  }
}

/** The rollers of the rack compared on this unit and turf. */
export const rackView: View<'rack', RackSettings, RackResult> = {
  kind: 'rack',
  handsOn: true,
  title: ({ result, reader }) => reader.words.rack.title(result.length),
  finding: rackFinding,
  note: ({ reader }) => reader.words.rack.note,
  table,
  draw: shown => html`<rack-entry .shown=${shown}></rack-entry>`,
}
