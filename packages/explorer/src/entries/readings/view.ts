import { displayUnit, type Reading } from '@swardsink/model'
import { html } from 'lit'
import type { Shown, Table, View } from '../view.ts'
import { readingsFinding } from './finding.ts'
import type { ReadingsResult, ReadingsSettings } from './kind.ts'
import './readings-entry.ts'

type ShownReadings = Shown<ReadingsSettings, ReadingsResult>

function footWords({ foot }: Reading, { reader }: ShownReadings): string {
  const said = reader.words.readings.asTable
  if (foot.kind === 'roller') return foot.name ?? said.unitRoller
  const diameter = 'diameter' in foot ? foot.diameter : Math.sqrt((4 * foot.area) / Math.PI)
  return said.plate(reader.format(diameter, 'diameter'))
}

/** The readings as they were understood, in the reader's units. */
function table(shown: ShownReadings): Table {
  const { result, reader } = shown
  const { words, format, units } = reader
  const said = words.readings.asTable
  const number = (value: number | undefined, quantity: 'load' | 'pressure' | 'sinkage') =>
    value === undefined ? said.none : format(value, quantity, { unit: false })
  const amount = ({ measured }: Reading) =>
    measured.kind === 'sinkage'
      ? measured.sinkage
      : measured.kind === 'drop'
        ? measured.drop
        : measured.height
  return {
    caption: said.caption,
    columns: [
      { head: said.row, unit: '' },
      { head: said.set, unit: '' },
      { head: said.foot, unit: '' },
      { head: said.load, unit: displayUnit('load', units) },
      { head: said.pressure, unit: displayUnit('pressure', units) },
      { head: said.what, unit: '' },
      { head: said.value, unit: displayUnit('sinkage', units) },
      { head: said.count, unit: '' },
    ],
    rows: result.readings.map(reading => [
      String(reading.row),
      reading.set,
      footWords(reading, shown),
      number(reading.load, 'load'),
      number(reading.pressure, 'pressure'),
      said.kinds[reading.measured.kind],
      number(amount(reading), 'sinkage'),
      String(reading.count),
    ]),
  }
}

/** What a gauge said, as a table to type in. */
export const readingsView: View<'readings', ReadingsSettings, ReadingsResult> = {
  kind: 'readings',
  title: ({ reader }) => reader.words.readings.title,
  finding: readingsFinding,
  note: () => null,
  table,
  draw: shown => html`<readings-entry .shown=${shown}></readings-entry>`,
}
