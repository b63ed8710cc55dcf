import { html, nothing, type TemplateResult } from 'lit'
import type { Reader } from '../words/index.ts'
import { announceReader } from './readerEvents.ts'

/** Over a sheet, on the screen only: printing, the way back, and what can be set for it. */
export function sheetBar(
  from: EventTarget,
  q: { readonly page: number; readonly reader: Reader; readonly more?: TemplateResult },
): TemplateResult {
  const { sheets } = q.reader.words
  return html`<nav class="bar" aria-label=${sheets.ways}>
    <div class="words">
      <button class="word" @click=${() => window.print()}>${sheets.printSheet}</button>
      <button class="word" @click=${() => announceReader(from, 'leave', { page: q.page })}>${sheets.back}</button>
    </div>
    ${q.more ?? nothing}
  </nav>`
}
