import { html } from 'lit'
import { announce } from '../../controls/index.ts'
import type { Editing, View } from '../view.ts'
import { fitFinding } from './finding.ts'
import type { FitResult, FitSettings } from './kind.ts'
import { residualTable } from './tables.ts'
import './fit-entry.ts'

/** Which entry the readings come from: there may be several, or none yet. */
function edit({ id, settings, reader, entries }: Editing<FitSettings>) {
  const { settings: said } = reader.words.fit
  const { noEntry } = reader.words.fit
  const having = entries.filter(({ kind }) => kind === 'readings')
  if (having.length === 0) return html`<p class="note">${noEntry}</p>`
  const choose = (event: Event): void => {
    const field = event.currentTarget as HTMLSelectElement
    announce(field, 'rearrange', { id, settings: { readings: field.value } })
  }
  return html`<label>${said.readings}
    <select class="field" @change=${choose}>
      <option value="" ?selected=${settings.readings === ''}>${said.noReadings}</option>
      ${having.map(one => html`<option value=${one.id} ?selected=${one.id === settings.readings}>${one.title}</option>`)}
    </select>
  </label>`
}

/** The turf found from readings, and how sure that is. */
export const fitView: View<'fit', FitSettings, FitResult> = {
  kind: 'fit',
  trust: ['fitted', 'exponent', 'contact'],
  title: ({ reader }) => reader.words.fit.title,
  finding: fitFinding,
  // It stands right under its figure, which is not the last thing here.
  note: () => null,
  table: residualTable,
  draw: shown => html`<fit-entry .shown=${shown}></fit-entry>`,
  edit,
}
