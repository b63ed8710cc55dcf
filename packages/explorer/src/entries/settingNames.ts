import { html, type TemplateResult } from 'lit'
import type { Editing } from './view.ts'

/** The list from which a reader chooses what can be set in an entry; it is fetched when a page is first edited. */
export function settingNames(
  { id, now, reader }: Editing,
  q: {
    /** Those chosen, in their order. */
    readonly of: readonly string[]
    /** What the entry's settings call them. */
    readonly as: string
  },
): TemplateResult {
  void import('./setting-names.ts')
  return html`<setting-names
    .entry=${id}
    .as=${q.as}
    .chosen=${q.of}
    .scenario=${now}
    .reader=${reader}
  ></setting-names>`
}
