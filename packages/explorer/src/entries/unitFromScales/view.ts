import { displayUnit } from '@swardsink/model'
import { html } from 'lit'
import type { Shown, Table, View } from '../view.ts'
import { SOURCES, type UnitFromScalesResult, type UnitFromScalesSettings } from './kind.ts'
import { scalesFinding } from './sentences.ts'
import './unit-from-scales-entry.ts'

type ShownScales = Shown<UnitFromScalesSettings, UnitFromScalesResult>

function table({ settings, result, reader }: ShownScales): Table {
  const { words, format, units } = reader
  const { table: said, labels } = words.unitFromScales
  const unit = displayUnit('mass', units)
  const kg = (value: number | undefined) =>
    value === undefined ? said.none : format(value, 'mass', { unit: false })
  return {
    caption: said.caption,
    columns: [
      { head: said.what, unit: '' },
      { head: said.read, unit },
      { head: said.would, unit },
    ],
    rows: (['total', 'front', 'rear'] as const).map(name => [
      labels[name],
      kg(settings[name]),
      kg(result.reads[name]),
    ]),
  }
}

/** The unit in hand, from the scales or from its dimensions. */
export const unitFromScalesView: View<'unitFromScales', UnitFromScalesSettings, UnitFromScalesResult> = {
  kind: 'unitFromScales',
  handsOn: true,
  title: ({ settings, reader }) => reader.words.unitFromScales.titles[settings.from],
  finding: scalesFinding,
  note: ({ reader }) => reader.words.unitFromScales.note,
  table,
  choices: ({ settings, reader }) => ({
    label: reader.words.unitFromScales.from,
    options: SOURCES.map(from => ({
      label: reader.words.unitFromScales.sources[from],
      chosen: from === settings.from,
      settings: { from },
    })),
  }),
  draw: shown => html`<unit-from-scales-entry .shown=${shown}></unit-from-scales-entry>`,
}
