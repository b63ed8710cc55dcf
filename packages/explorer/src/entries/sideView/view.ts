import type { QuantityName, SettledUnit } from '@swardsink/model'
import { displayUnit } from '@swardsink/model'
import { html } from 'lit'
import { sideLayout } from '../../figures/index.ts'
import { settingNames } from '../settingNames.ts'
import type { Shown, Table, View } from '../view.ts'
import { frameOf, specOf } from './drawing.ts'
import { sideViewFinding } from './finding.ts'
import { EXAGGERATIONS, type SideViewSettings } from './kind.ts'
import './side-view-entry.ts'

type ShownSide = Shown<SideViewSettings, SettledUnit>

function note(shown: ShownSide): string {
  const { scenario, reader } = shown
  const { sideView } = reader.words
  const { condition } = scenario
  const stands =
    condition.kind === 'standing'
      ? sideView.condition.standing
      : sideView.condition.mowing(reader.format(condition.speed, 'speed'))
  const anyWidth = 792
  const { exaggeration } = sideLayout(specOf(shown), frameOf(reader, anyWidth))
  const asked = shown.settings.exaggeration
  const reduced =
    exaggeration === asked
      ? []
      : [sideView.reduced({ asked: sideView.factor(asked), drawn: sideView.factor(exaggeration) })]
  return [stands, sideView.scale(exaggeration), ...reduced, sideView.invented].join(' ')
}

function table({ result, reader }: ShownSide): Table {
  const { table: said } = reader.words.sideView
  const { front, rear, drop, effectiveHeight } = result
  const row = (name: string, quantity: QuantityName, ...values: number[]) => [
    name,
    values.map(value => reader.format(value, quantity, { unit: false })).join(' / '),
    displayUnit(quantity, reader.units),
  ]
  return {
    caption: said.caption,
    columns: [
      { head: said.quantity, unit: '' },
      { head: said.value, unit: '' },
      { head: said.unit, unit: '' },
    ],
    rows: [
      row(said.frontLoad, 'load', front.load),
      row(said.rearLoad, 'load', rear.load),
      row(said.frontSinkage, 'sinkage', front.sinkage),
      row(said.rearSinkage, 'sinkage', rear.sinkage),
      row(said.frontPeak, 'pressure', front.peakPressure),
      row(said.rearPeak, 'pressure', rear.peakPressure),
      row(said.drop, 'drop', drop.left, drop.middle, drop.right),
      row(said.height, 'height', effectiveHeight.left, effectiveHeight.middle, effectiveHeight.right),
    ],
  }
}

/** The unit from the side with the two numbers and their settings. */
export const sideViewView: View<'sideView', SideViewSettings, SettledUnit> = {
  kind: 'sideView',
  trust: ['softness', 'arc', 'locking', 'injury'],
  title: ({ reader }) => reader.words.sideView.title,
  finding: sideViewFinding,
  saysFinding: true,
  note,
  table,
  choices: ({ settings, reader }) => ({
    label: reader.words.sideView.heights,
    options: EXAGGERATIONS.map(exaggeration => ({
      label: reader.words.sideView.factor(exaggeration),
      chosen: exaggeration === settings.exaggeration,
      settings: { exaggeration },
    })),
  }),
  draw: shown => html`<side-view-entry .shown=${shown}></side-view-entry>`,
  edit: editing => settingNames(editing, { of: editing.settings.settings, as: 'settings' }),
}
