import { html } from 'lit'
import { announce } from '../../controls/index.ts'
import type { Editing, View } from '../view.ts'
import './check-entry.ts'
import type { CheckResult, CheckSettings } from './kind.ts'
import { checkFinding, checkTable, type ShownCheck } from './strips.ts'

function note({ result, settings, scenario, reader }: ShownCheck): string | null {
  const said = reader.words.check.note
  if (result.strips.length === 0) return null
  return [said.drawn, said[scenario.condition.kind], ...(settings.fit === '' ? [said.exact] : [])].join(' ')
}

/** Which entry the heights come from, and which fit they are checked against. */
function edit({ id, settings, reader, entries }: Editing<CheckSettings>) {
  const said = reader.words.check
  const select = (
    label: string,
    q: { readonly setting: 'readings' | 'fit'; readonly kind: string; readonly none: string },
  ) => {
    const chosen = settings[q.setting]
    const choose = (event: Event): void => {
      const field = event.currentTarget as HTMLSelectElement
      announce(field, 'rearrange', { id, settings: { [q.setting]: field.value } })
    }
    return html`<label>${label}
      <select class="field" @change=${choose}>
        <option value="" ?selected=${chosen === ''}>${q.none}</option>
        ${entries
          .filter(({ kind }) => kind === q.kind)
          .map(one => html`<option value=${one.id} ?selected=${one.id === chosen}>${one.title}</option>`)}
      </select>
    </label>`
  }
  return html`${select(said.readings, { setting: 'readings', kind: 'readings', none: said.noReadings })}
    ${select(said.fit, { setting: 'fit', kind: 'fit', none: said.inHand })}`
}

/** Heights measured after a test strip, beside those expected. */
export const checkView: View<'check', CheckSettings, CheckResult> = {
  kind: 'check',
  trust: ['softness', 'fitted'],
  title: ({ reader }) => reader.words.check.title,
  finding: checkFinding,
  note,
  table: checkTable,
  draw: shown => html`<check-entry .shown=${shown}></check-entry>`,
  edit,
  handsOn: true,
}
