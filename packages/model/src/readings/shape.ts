import { isMissing } from './cells.ts'
import type { Column } from './header.ts'
import { placed, type TableProblem } from './reading.ts'
import type { Line } from './tokens.ts'

/** A row that is longer than the header would lose cells; one that is shorter may have lost any. */
export function raggedness(
  { row, cells }: Line,
  found: readonly Column[],
  delimiter: string,
): TableProblem[] {
  const { length } = found
  const wrong = (expected: string): TableProblem[] => [
    placed(row, undefined, { expected, received: String(cells.length) }),
  ]
  if (cells.slice(length).some(cell => cell.trim() !== ''))
    return wrong(
      `${length} cells, as in the header${delimiter === ',' ? ' (decimal commas need quotation marks, or semicolons between cells)' : ''}`,
    )
  // A note or an unnamed margin left off at the end is no loss.
  const lost = found.slice(cells.length)
  return lost.some(({ name, header }) => name !== 'note' && header !== '')
    ? wrong(`${length} cells, as in the header`)
    : []
}

/** Lines turned off by a # that would have been rows: perhaps their set is named so. */
export function commentedRows(
  text: string,
  { cells, delimiter, first }: { readonly cells: number; readonly delimiter: string; readonly first: number },
): TableProblem[] {
  if (!/^#/m.test(text) || cells < 2) return []
  const expected = 'a comment'
  const received = 'as many cells as a row has: left out, as it starts with #'
  return text
    .split('\n')
    .flatMap((line, i) =>
      line.startsWith('#') && line.split(delimiter).length === cells
        ? [placed(i + first, undefined, { expected, received })]
        : [],
    )
}

/** How many cells of each quantity are missing; a quantity given in another column of it is not. */
export function missingCells(
  lines: readonly Line[],
  found: readonly Column[],
): { readonly column: string; readonly count: number }[] {
  const groups = new Map<string, Column[]>()
  for (const column of found)
    if (column.name !== null) groups.set(column.name, [...(groups.get(column.name) ?? []), column])
  return [...groups.values()].flatMap(group => {
    const count = lines.filter(({ cells }) =>
      group.every(({ index }) => isMissing(cells[index] ?? '')),
    ).length
    return count > 0 ? [{ column: group[0]!.header, count }] : []
  })
}
