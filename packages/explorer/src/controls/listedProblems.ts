import { html, nothing } from 'lit'
import type { Reader } from '../words/index.ts'
import type { EditorColumn, RowRemark } from './editorColumn.ts'
import type { Place } from './tableKeys.ts'

/** Further ones are counted. */
const LISTED = 12

/** What is wrong in a long table, each with a word that leads to its row: most of them are out of view. */
export function listedProblems(
  q: {
    readonly columns: readonly EditorColumn[]
    readonly remarks: readonly RowRemark[]
    readonly reader: Reader
  },
  goTo: (place: Place) => void,
) {
  const said = q.reader.words.tableEditor
  const problems = q.remarks.filter(({ kind }) => kind === 'problem')
  if (problems.length === 0) return nothing
  const place = ({ row, column }: RowRemark): Place => ({
    row,
    column: Math.max(
      0,
      q.columns.findIndex(({ name }) => name === column),
    ),
  })
  return html`<ul aria-label=${said.wrong(problems.length)}>
    ${problems
      .slice(0, LISTED)
      .map(
        problem =>
          html`<li class="small"><button class="word" @click=${() => goTo(place(problem))}>${said.toRow(problem.row + 1)}</button> ${problem.sentence}</li>`,
      )}
    ${problems.length > LISTED ? html`<li class="small">${said.more(problems.length - LISTED)}</li>` : nothing}
  </ul>`
}
