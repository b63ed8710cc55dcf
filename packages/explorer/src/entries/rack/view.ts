import { displayUnit } from '@swardsink/model'
import { html } from 'lit'
import type { Shown, Table, View } from '../view.ts'
import { rackFinding } from './finding.ts'
import { columnsOf, POSITIONS, type RackResult, type RackSettings } from './kind.ts'
import { COLUMN_QUANTITY, cellText, sorted, surfaceWords } from './rows.ts'
import { headlandRadius } from './settings.ts'
import '../own-setting.ts'
import './rack-entry.ts'

/** Every number of the rack, also where the drawn table has room for a few only. */
function table({ result, settings, reader }: Shown<RackSettings, RackResult>): Table {
  const { rack } = reader.words
  return {
    caption: rack.caption,
    columns: [
      { head: rack.roller, unit: '' },
      ...columnsOf(settings).map(column => ({
        head: rack.columns[column],
        unit: displayUnit(COLUMN_QUANTITY[column], reader.units),
      })),
    ],
    rows: sorted(result, settings).map(row => [
      `${row.name}, ${surfaceWords(row, reader)}`,
      ...columnsOf(settings).map(column => cellText(row, column, { reader, position: settings.position })),
    ]),
  }
}

/** The rollers of the rack compared on this unit and turf. */
export const rackView: View<'rack', RackSettings, RackResult> = {
  kind: 'rack',
  handsOn: true,
  trust: ['grooves', 'mat', 'mowing', 'trial'],
  title: ({ result, settings, reader }) => reader.words.rack.titles[settings.position](result.length),
  finding: rackFinding,
  note: ({ settings, reader }) => {
    const { rack } = reader.words
    const radius = reader.format(settings.headlandRadius, 'turnRadius')
    return settings.headlandRadius > 0 ? `${rack.note} ${rack.slidingNote(radius)}` : rack.note
  },
  table,
  choices: ({ settings, reader }) => ({
    label: reader.words.rack.position,
    options: POSITIONS.map(position => ({
      label: reader.words.rack.positions[position],
      chosen: position === settings.position,
      settings: { position },
    })),
  }),
  edit: ({ id, settings, now, reader }) => html`<own-setting
    entry=${id}
    field="headlandRadius"
    .of=${headlandRadius(settings)}
    .scenario=${now}
    .reader=${reader}
  ></own-setting>`,
  draw: shown => html`<rack-entry .shown=${shown}></rack-entry>`,
}
