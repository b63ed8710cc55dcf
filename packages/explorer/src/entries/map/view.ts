import { displayUnit, sinkageMap } from '@swardsink/model'
import { html } from 'lit'
import { settledInput } from '../settled.ts'
import type { Shown, Table, View } from '../view.ts'
import { mapFinding } from './finding.ts'
import { MAP_QUANTITIES, type MapResult, type MapSettings, SHOWN_AS } from './kind.ts'
import './map-entry.ts'

const TABLE_MASSES = 6
const TABLE_SOFTNESSES = 6

/** The map read off at even steps: a table of forty thousand cells would tell nobody anything. */
function table({ settings, scenario, result, reader }: Shown<MapSettings, MapResult>): Table {
  const { words, format, units } = reader
  const { quantity } = settings
  const pick = (values: Float64Array, count: number) =>
    Array.from({ length: count }, (_, i) => values[Math.round((i * (values.length - 1)) / (count - 1))] ?? 0)
  const masses = pick(result.masses, TABLE_MASSES)
  const softnesses = pick(result.softnesses, TABLE_SOFTNESSES)
  const read = sinkageMap({ ...settledInput(scenario), masses, softnesses, quantity })
  return {
    caption: `${words.map.quantities[quantity]}, ${displayUnit(SHOWN_AS[quantity], units)}`,
    columns: [
      { head: words.map.softness, unit: displayUnit('softness', units) },
      ...masses.map(mass => ({ head: format(mass, 'mass'), unit: '' })),
    ],
    rows: softnesses.map((softness, row) => [
      format(softness, 'softness', { unit: false }),
      ...masses.map((_, column) => {
        const value = read.values[row * masses.length + column] ?? Number.NaN
        return Number.isFinite(value) ? format(value, SHOWN_AS[quantity], { unit: false }) : words.map.none
      }),
    ]),
  }
}

/** Roller mass against softness, with contours of what they come to. */
export const mapView: View<'map', MapSettings, MapResult> = {
  kind: 'map',
  title: ({ settings, reader }) => reader.words.map.quantities[settings.quantity],
  finding: mapFinding,
  note: ({ reader }) => reader.words.map.note,
  table,
  choices: ({ settings, reader }) => ({
    label: reader.words.map.quantity,
    options: MAP_QUANTITIES.map(quantity => ({
      label: reader.words.map.short[quantity],
      chosen: quantity === settings.quantity,
      settings: { quantity },
    })),
  }),
  draw: shown => html`<map-entry .shown=${shown}></map-entry>`,
}
