import { html } from 'lit'
import { announce } from '../../controls/index.ts'
import type { Editing, Shown, View } from '../view.ts'
import { fitFinding } from './finding.ts'
import type { FitResult, FitSettings } from './kind.ts'
import { plateDiameter, residualTable } from './tables.ts'
import './fit-entry.ts'

type ShownFit = Shown<FitSettings, FitResult>

/** Rows that are named one by one; more are counted. */
const NAMED = 8

function note({ result, reader }: ShownFit): string | null {
  if (result.outcome === 'none') return null
  const { fit: said } = reader.words
  const { fit, curve } = result
  const { foot } = curve
  const rows = fit.leftOut.map(({ row }) => String(row))
  const shown = rows.length > NAMED ? [...rows.slice(0, NAMED), '…'] : rows
  const leftOut =
    rows.length === 0 ? '' : said.leftOut({ count: String(rows.length), rows: shown.join(', ') })
  const drops = fit.readings.some(({ load }) => load === null) ? said.unitDrops : ''
  const under =
    foot.kind === 'plate'
      ? said.feet.plate(reader.format(plateDiameter(foot), 'diameter'))
      : foot.name === null
        ? said.feet.unitRoller
        : said.feet.roller(foot.name)
  return said.note({ count: said.counted(curve.readings.length), foot: under, step: `${drops}${leftOut}` })
}

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
  title: ({ reader }) => reader.words.fit.title,
  finding: fitFinding,
  note,
  table: residualTable,
  draw: shown => html`<fit-entry .shown=${shown}></fit-entry>`,
  edit,
}
