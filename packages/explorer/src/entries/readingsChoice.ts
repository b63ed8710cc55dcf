import { html, type TemplateResult } from 'lit'
import { announce } from '../controls/index.ts'
import type { Editing } from './view.ts'

/** Which entry's readings are drawn on top of a figure, as a field of the entry that has them. */
export function readingsChoice({ id, reader, entries }: Editing, chosen: string): TemplateResult {
  const { curves } = reader.words
  const choose = (event: Event): void => {
    const { currentTarget } = event
    if (currentTarget instanceof HTMLSelectElement)
      announce(currentTarget, 'rearrange', { id, settings: { readings: currentTarget.value } })
  }
  const having = entries.filter(({ kind }) => kind === 'readings')
  return html`<label>${curves.readings}
    <select class="field" @change=${choose}>
      <option value="" ?selected=${chosen === ''}>${curves.none}</option>
      ${having.map(
        entry => html`<option value=${entry.id} ?selected=${entry.id === chosen}>${entry.title}</option>`,
      )}
    </select>
  </label>`
}
