import { displayUnit } from '@swardsink/model'
import { html } from 'lit'
import { readingsChoice } from '../readingsChoice.ts'
import type { Shown, Table, View } from '../view.ts'
import { nameOf } from './drawing.ts'
import { curvesFinding } from './finding.ts'
import type { CurvesResult, CurvesSettings } from './kind.ts'
import { pointAt } from './oneCurve.ts'
import { OVERS } from './questions.ts'
import './curves-entry.ts'

type ShownCurves = Shown<CurvesSettings, CurvesResult>

/** Even steps at which every curve is read off for the table. */
const STEPS = 5

function note({ result, reader }: ShownCurves): string {
  const { notes } = reader.words.curves
  const { show, over, curves, readings } = result
  return [
    notes[show],
    ...(over === 'laws' ? [notes.laws] : []),
    ...(curves.some(({ knownTo }) => knownTo !== null) ? [notes.carriedOn] : []),
    ...(readings.length > 0 ? [notes.readings(String(readings.length))] : []),
  ].join(' ')
}

function table({ result, reader }: ShownCurves): Table {
  const { words, format, units } = reader
  const { table: said } = words.curves
  const { show, curves, most } = result
  const steps = Array.from({ length: STEPS }, (_, i) => (most * (i + 1)) / STEPS)
  const sinkageUnit = displayUnit('sinkage', units)
  const mm = (sinkage: number) => format(sinkage, 'sinkage', { unit: false })
  return {
    caption: said.caption,
    columns: [
      { head: said.curve, unit: '' },
      { head: said.own[show], unit: displayUnit(show, units) },
      { head: said.ownSinkage, unit: sinkageUnit },
      ...steps.map(x => ({ head: said.at(format(x, show)), unit: sinkageUnit })),
    ],
    rows: curves.map(({ name, own, points, bottomsOut }) => [
      nameOf(name, words),
      own ? format(own.x, show, { unit: false }) : said.none,
      own ? mm(own.sinkage) : said.none,
      ...steps.map(x => {
        const point = pointAt(points.length > 0 ? points : (curves.find(c => c.present)?.points ?? []), x)
        return point ? mm(point.sinkage) : bottomsOut ? said.beyond : said.none
      }),
    ]),
  }
}

/** Load or pressure against sinkage, several on one pair of axes. */
export const curvesView: View<'curves', CurvesSettings, CurvesResult> = {
  kind: 'curves',
  trust: ['strain', 'fitted', 'locking'],
  title: ({ settings, reader }) => reader.words.curves.titles[settings.show],
  finding: curvesFinding,
  note,
  table,
  choices: ({ settings, reader }) => ({
    label: reader.words.curves.over,
    options: OVERS.map(over => ({
      label: reader.words.curves.overs[over],
      chosen: over === settings.over,
      settings: { over },
    })),
  }),
  edit: editing => readingsChoice(editing, editing.settings.readings),
  draw: shown => html`<curves-entry .shown=${shown}></curves-entry>`,
}
