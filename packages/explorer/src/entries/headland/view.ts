import { html } from 'lit'
import type { View } from '../view.ts'
import { headlandFinding } from './finding.ts'
import { type HeadlandResult, type HeadlandSettings, PLACES } from './kind.ts'
import { headlandTable } from './rows.ts'
import './headland-entry.ts'

/** A roller on a headland turn: how far its face slides, and the rack beside it. */
export const headlandView: View<'headland', HeadlandSettings, HeadlandResult> = {
  kind: 'headland',
  trust: ['sliding'],
  title: ({ settings, reader }) => reader.words.headland.title[settings.at],
  finding: headlandFinding,
  note: ({ settings, reader }) => {
    const { headland } = reader.words
    return settings.axles === 'both' ? `${headland.note} ${headland.crossways}` : headland.note
  },
  table: headlandTable,
  choices: ({ settings, reader }) => ({
    label: reader.words.headland.roller,
    options: PLACES.map(at => ({
      label: reader.words.headland.places[at],
      chosen: at === settings.at,
      settings: { at },
    })),
  }),
  draw: shown => html`<headland-entry .shown=${shown}></headland-entry>`,
}
