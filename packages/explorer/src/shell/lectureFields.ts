import { html, type TemplateResult } from 'lit'
import { live } from 'lit/directives/live.js'
import type { Entry, Page } from '../book/index.ts'
import type { Reader } from '../words/index.ts'
import { announceReader, type ReaderEvents } from './readerEvents.ts'

/** What the teacher's sheet says of a page, or of an entry by its name, folded in while either is edited. */
export function lectureFields(
  from: EventTarget,
  q: { readonly of: Pick<Page | Entry, 'notes' | 'minutes'>; readonly id?: string; readonly reader: Reader },
): TemplateResult {
  const { editing } = q.reader.words
  const write = (what: ReaderEvents['write']['what']) => (event: Event) => {
    const text = (event.currentTarget as HTMLInputElement | HTMLTextAreaElement).value
    announceReader(from, 'write', { what, text, ...(q.id === undefined ? {} : { id: q.id }) })
  }
  const written = () => announceReader(from, 'written')
  return html`<details>
    <summary class="small">${editing.teaching}</summary>
    <label>${editing.notes}
      <textarea class="field" rows="2" .value=${live(q.of.notes ?? '')} @input=${write('notes')} @change=${written}></textarea>
    </label>
    <label>${editing.minutes}
      <input
        class="field"
        inputmode="decimal"
        .value=${live(q.of.minutes === undefined ? '' : String(q.of.minutes))}
        @change=${(event: Event) => {
          write('minutes')(event)
          written()
        }}
      >
    </label>
  </details>`
}
