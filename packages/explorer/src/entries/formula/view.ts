import { displayUnit } from '@swardsink/model'
import { html } from 'lit'
import { amountText } from '../../words/index.ts'
import type { Shown, Table, View } from '../view.ts'
import type { FormulaResult, FormulaSettings } from './kind.ts'
import './formula-entry.ts'

type ShownFormula = Shown<FormulaSettings, FormulaResult>

/** What the called names stand for. */
function table({ result, reader }: ShownFormula): Table {
  const { words } = reader
  const { caption, name, value, unit } = words.formula.table
  return {
    caption,
    columns: [
      { head: name, unit: '' },
      { head: value, unit: '' },
      { head: unit, unit: '' },
    ],
    rows: result.parts.map(part => {
      const { live } = part
      if (live.value === null) return [part.name, words.text.unknown, '']
      return 'quantity' in live
        ? [
            part.name,
            reader.format(live.value, live.quantity, { unit: false }),
            displayUnit(live.quantity, reader.units),
          ]
        : [part.name, amountText({ value: live.value, unit: '' }, reader), live.unit]
    }),
  }
}

/** A value that a reader writes. */
export const formulaView: View<'formula', FormulaSettings, FormulaResult> = {
  kind: 'formula',
  title: ({ reader }) => reader.words.formula.title,
  finding: () => null,
  note: ({ reader }) => reader.words.formula.note,
  table,
  draw: shown => html`<formula-entry .shown=${shown}></formula-entry>`,
}
