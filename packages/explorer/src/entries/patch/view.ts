import { html } from 'lit'
import type { Shown, View } from '../view.ts'
import { finePercent, patchFinding } from './finding.ts'
import { type PatchResult, type PatchSettings, PLACES } from './kind.ts'
import { patchTable } from './rows.ts'
import './patch-entry.ts'

function note({ result, reader }: Shown<PatchSettings, PatchResult>): string {
  const { patch, sideView } = reader.words
  const { full } = result
  if (!full) return `${patch.quickNote} ${sideView.invented}`
  const error = finePercent(full.meshError, reader.locale)
  const scale = full.across.length === 1 ? patch.smoothNote({ error }) : patch.note({ error })
  return [
    scale,
    ...(full.edgeForce > 0 ? [patch.edges(reader.format(full.edgeForce, 'lineLoad'))] : []),
    sideView.invented,
  ].join(' ')
}

/** Pressure under a roller, the full solution of it. */
export const patchView: View<'patch', PatchSettings, PatchResult> = {
  kind: 'patch',
  trust: ['contact', 'strain'],
  title: ({ settings, reader }) => reader.words.patch.title[settings.at],
  finding: patchFinding,
  note,
  table: patchTable,
  choices: ({ settings, reader }) => ({
    label: reader.words.patch.roller,
    options: PLACES.map(at => ({
      label: reader.words.patch.places[at],
      chosen: at === settings.at,
      settings: { at },
    })),
  }),
  draw: shown => html`<patch-entry .shown=${shown}></patch-entry>`,
}
