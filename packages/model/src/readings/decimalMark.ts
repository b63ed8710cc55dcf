import { columns } from './columns.ts'
import type { Column } from './header.ts'
import { type DecimalMark, EITHER, PLAIN, tidied } from './numberCell.ts'
import type { TableProblem } from './reading.ts'
import type { Line } from './tokens.ts'

/** The cells that hold numbers, row by row. */
export function* numberCells(lines: readonly Line[], found: readonly Column[]): Generator<string> {
  const numeric = found.filter(({ name }) => name !== null && columns[name].kind === 'number')
  for (const { cells } of lines) for (const { index } of numeric) yield cells[index] ?? ''
}

/**
 * Which mark the cells of a table use, with a note where that had to be judged. 12,5 and 0,125 can only be
 * decimals; 1,250 may be a thousand and more, unless the rest of the table says otherwise.
 */
export function decimalMarkOf(
  cells: Iterable<string>,
  delimiter: string,
  notes: TableProblem[],
): DecimalMark {
  const seen = { '.': false, ',': false }
  let doubtful: string | undefined
  for (const cell of cells) {
    const mark = cell.includes(',') ? ',' : cell.includes('.') ? '.' : undefined
    if (mark === undefined || seen[mark]) continue
    const text = tidied(cell)
    if (!PLAIN.test(text)) continue
    if (!EITHER.test(text)) seen[mark] = true
    else if (mark === ',') doubtful ??= text
  }
  const note = (expected: string, received: string) => notes.push({ path: 'the table', expected, received })
  if (seen['.'] && seen[',']) {
    note('decimal points or decimal commas', 'both: each number is read by its own, where it can be but one')
    return 'both'
  }
  if (seen[',']) return ','
  if (seen['.'] || doubtful === undefined) return '.'
  // Semicolons part cells where the comma is taken by the decimals.
  if (delimiter !== ';') return 'unclear'
  note('decimals that cannot be mistaken for thousands', `${doubtful}: taken as a decimal comma`)
  return ','
}
