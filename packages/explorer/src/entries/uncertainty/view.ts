import { html } from 'lit'
import type { Shown, View } from '../view.ts'
import { uncertaintyFinding } from './finding.ts'
import type { UncertaintyResult } from './kind.ts'
import { uncertaintyTable } from './rows.ts'
import type { UncertaintySettings } from './settings.ts'
import './uncertainty-entry.ts'

function note({ result, settings, reader }: Shown<UncertaintySettings, UncertaintyResult>): string {
  const { uncertainty, sideView } = reader.words
  if (result.by === 'lines') return `${uncertainty.noteLines} ${sideView.invented}`
  const draws = new Intl.NumberFormat(reader.locale).format(result.draws)
  return `${uncertainty.note({ draws, seed: String(settings.seed) })} ${sideView.invented}`
}

/** What the height may be, and what it hangs on. */
export const uncertaintyView: View<'uncertainty', UncertaintySettings, UncertaintyResult> = {
  kind: 'uncertainty',
  trust: ['softness', 'trial'],
  title: ({ reader }) => reader.words.uncertainty.title,
  finding: uncertaintyFinding,
  note,
  table: uncertaintyTable,
  draw: shown => html`<uncertainty-entry .shown=${shown}></uncertainty-entry>`,
  edit(editing) {
    void import('./uncertainty-editor.ts')
    return html`<uncertainty-editor .editing=${editing}></uncertainty-editor>`
  },
}
