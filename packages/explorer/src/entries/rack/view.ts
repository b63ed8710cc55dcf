import { html } from 'lit'
import type { View } from '../view.ts'
import { rackFinding } from './finding.ts'
import type { RackResult, RackSettings } from './kind.ts'
import './rack-entry.ts'

/** The rollers of the rack compared on this unit and turf. */
export const rackView: View<'rack', RackSettings, RackResult> = {
  kind: 'rack',
  handsOn: true,
  title: ({ result, reader }) => reader.words.rack.title(result.length),
  finding: rackFinding,
  note: ({ reader }) => reader.words.rack.note,
  // It is a table already.
  table: () => null,
  draw: shown => html`<rack-entry .shown=${shown}></rack-entry>`,
}
