import { displayUnit, type QuantityName } from '@swardsink/model'
import { html } from 'lit'
import { sectionLayout, timesText } from '../../figures/index.ts'
import type { Shown, Table, View } from '../view.ts'
import { frameOf, specOf } from './drawing.ts'
import { sectionFinding } from './finding.ts'
import { groovesOf, PLACES, type SectionResult, type SectionSettings } from './kind.ts'
import './section-entry.ts'

type ShownSection = Shown<SectionSettings, SectionResult>

/** The widest a figure is drawn: the note speaks of that scale. */
const USUAL_WIDTH = 792

function note(shown: ShownSection): string {
  const { result, reader } = shown
  const { section } = reader.words
  const frame = frameOf(reader, USUAL_WIDTH)
  const layout = sectionLayout(specOf(shown), frame)
  return [
    section.note({ scale: section.scale(timesText(layout.times, frame)) }),
    ...(layout.breakAt === null ? [] : [section.broken]),
    ...(result.track > 0 ? [section.track(reader.format(result.track, 'sinkage'))] : []),
    reader.words.sideView.invented,
  ].join(' ')
}

function table({ result, reader }: ShownSection): Table {
  const { table: said } = reader.words.section
  const { roller, load, sinkage, pressure, wholeBearing, grooves } = result
  const surface = groovesOf(roller)
  const row = (name: string, quantity: QuantityName, value: number) => [
    name,
    reader.format(value, quantity, { unit: false }),
    displayUnit(quantity, reader.units),
  ]
  const face = [
    row(said.load, 'load', load),
    row(said.sinkage, 'sinkage', sinkage),
    row(said.pressure, 'pressure', pressure),
    row(said.wholeBearing, 'ratio', wholeBearing),
    row(said.contactWidth, 'length', wholeBearing * roller.length),
  ]
  const cut =
    surface && grooves
      ? [
          row(said.bearing, 'ratio', grooves.bearingFraction),
          row(said.meanPressure, 'pressure', grooves.meanPressure),
          row(said.edgeForce, 'lineLoad', grooves.edgeForce),
          row(said.mat, 'sinkage', sinkage - grooves.relief),
          row(said.relief, 'relief', grooves.relief),
          row(said.matPressure, 'pressure', grooves.across[0]?.pressure ?? pressure),
          row(said.pitch, 'pitch', surface.pitch),
          row(said.land, 'land', surface.land),
          row(said.depth, 'grooveDepth', surface.depth),
          [said.floor, grooves.floor === 'touching' ? said.touched : said.free, ''],
        ]
      : [[said.floor, said.none, '']]
  return {
    caption: said.caption,
    columns: [
      { head: said.quantity, unit: '' },
      { head: said.value, unit: '' },
      { head: said.unit, unit: '' },
    ],
    rows: [...face, ...cut],
  }
}

/** A roller cut along its axis: what the lands carry, and the mat between them. */
export const sectionView: View<'section', SectionSettings, SectionResult> = {
  kind: 'section',
  trust: ['mat', 'grooves', 'contact'],
  title: ({ settings, reader }) => reader.words.section.title[settings.at],
  finding: sectionFinding,
  note,
  table,
  choices: ({ settings, reader }) => ({
    label: reader.words.section.roller,
    options: PLACES.map(at => ({
      label: reader.words.section.places[at],
      chosen: at === settings.at,
      settings: { at },
    })),
  }),
  draw: shown => html`<section-entry .shown=${shown}></section-entry>`,
}
