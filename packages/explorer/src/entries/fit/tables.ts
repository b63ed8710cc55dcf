import { displayUnit } from '@swardsink/model'
import type { Reader } from '../../words/index.ts'
import type { Shown, Table } from '../view.ts'
import type { FitCurve } from './curve.ts'
import { setName } from './drawing.ts'
import type { FitResult, FitSettings } from './kind.ts'

export const plateDiameter = (foot: Extract<FitCurve['foot'], { kind: 'plate' }>): number =>
  'diameter' in foot ? foot.diameter : Math.sqrt((4 * foot.area) / Math.PI)

export function footWords(foot: FitCurve['foot'], { words, format }: Reader): string {
  const { footNames } = words.fit
  if (foot.kind === 'roller') return foot.name ?? footNames.unitRoller
  return footNames.plate(format(plateDiameter(foot), 'diameter'))
}

/** Every reading beside what the fit answers: what the figure is drawn from. */
export function residualTable({ result, reader }: Shown<FitSettings, FitResult>): Table {
  const { words, format, units } = reader
  const said = words.fit.residuals
  const unit = displayUnit('sinkage', units)
  const mm = (value: number | null, signed = false) =>
    value === null ? words.fit.table.notKnown : format(value, 'sinkage', { unit: false, signed })
  const columns = [
    { head: said.row, unit: '' },
    { head: said.set, unit: '' },
    { head: said.under, unit: '' },
    { head: said.load, unit: displayUnit('load', units) },
    { head: said.measured, unit },
    { head: said.fitted, unit },
    { head: said.residual, unit },
  ]
  if (result.outcome === 'none') return { caption: said.caption, columns, rows: [] }
  const { fit } = result
  return {
    caption: said.caption,
    columns,
    rows: fit.readings.map(({ row, set, foot, load, measured, predicted }, i) => [
      String(row),
      setName(set, reader),
      footWords(foot, reader),
      load === null ? said.none : format(load, 'load', { unit: false }),
      mm(measured),
      mm(predicted),
      mm(fit.residuals[i] ?? null, true),
    ]),
  }
}
