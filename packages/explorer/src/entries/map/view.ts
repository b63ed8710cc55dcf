import { displayUnit, sinkageMap } from '@swardsink/model'
import { html } from 'lit'
import { linearTicksOf, logTicksOf, mapDomain } from '../../figures/index.ts'
import { readingsChoice } from '../readingsChoice.ts'
import { settledInput } from '../settled.ts'
import type { Shown, Table, View } from '../view.ts'
import { mapFinding } from './finding.ts'
import { MAP_QUANTITIES, type MapResult, type MapSettings, SHOWN_AS } from './kind.ts'
import './map-entry.ts'

type ShownMap = Shown<MapSettings, MapResult>

/** A table has room for so many columns; down, it is read off at what an axis of this length would name, px. */
const COLUMNS = 6
const AXIS = { length: 600, needs: 30 }

/** Round numbers in the reader's own units: masses even steps apart, softnesses at 1, 2 and 5. */
function steps({ result, reader }: ShownMap) {
  const { mass, softness } = mapDomain(result)
  const masses = linearTicksOf({ domain: mass, quantity: 'mass', count: COLUMNS, reader })
  const softnesses = logTicksOf({
    domain: softness,
    quantity: 'softness',
    ...AXIS,
    reader,
  }).filter(({ text }) => text !== '')
  return { masses, softnesses }
}

/** The map read off at round steps: a table of forty thousand cells would tell nobody anything. */
function table(shown: ShownMap): Table {
  const { settings, scenario, reader } = shown
  const { words, format, units } = reader
  const { quantity } = settings
  const { masses, softnesses } = steps(shown)
  const read = sinkageMap({
    ...settledInput(scenario),
    masses: masses.map(({ value }) => value),
    softnesses: softnesses.map(({ value }) => value),
    quantity,
  })
  return {
    caption: `${words.map.quantities[quantity]}, ${displayUnit(SHOWN_AS[quantity], units)}`,
    columns: [
      { head: words.map.softness, unit: displayUnit('softness', units) },
      ...masses.map(({ text }) => ({ head: text, unit: displayUnit('mass', units) })),
    ],
    rows: softnesses.map(({ text }, row) => [
      text,
      ...masses.map((_, column) => {
        const value = read.values[row * masses.length + column] ?? Number.NaN
        return Number.isFinite(value) ? format(value, SHOWN_AS[quantity], { unit: false }) : words.map.none
      }),
    ]),
  }
}

function note({ settings, result, reader }: ShownMap): string {
  const { map } = reader.words
  if (settings.readings === '' || result.places.length === 0) return map.note
  return `${map.note} ${map.readingsNote(String(result.places.length))}`
}

/** Roller mass against softness, with contours of what they come to. */
export const mapView: View<'map', MapSettings, MapResult> = {
  kind: 'map',
  trust: ['softness', 'arc', 'locking'],
  title: ({ settings, reader }) => reader.words.map.quantities[settings.quantity],
  finding: mapFinding,
  note,
  table,
  choices: ({ settings, reader }) => ({
    label: reader.words.map.quantity,
    options: MAP_QUANTITIES.map(quantity => ({
      label: reader.words.map.short[quantity],
      chosen: quantity === settings.quantity,
      settings: { quantity },
    })),
  }),
  edit: editing => readingsChoice(editing, editing.settings.readings),
  draw: shown => html`<map-entry .shown=${shown}></map-entry>`,
}
