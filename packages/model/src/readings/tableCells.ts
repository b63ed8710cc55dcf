import { describe, InputError } from '../quantities/index.ts'
import { delimited } from './delimited.ts'
import { type Delimiter, plainText, tokensOf } from './tokens.ts'

/** A text as rows of cells, whatever they mean. */
export type TableCells = {
  readonly delimiter: Delimiter
  /** The header first; blank rows and comments are not among them. Cells are trimmed and have no line ends. */
  readonly rows: readonly (readonly string[])[]
  /** Lines that start with #, without it. */
  readonly comments: readonly string[]
}

/** A comment, without the empty cells that a spreadsheet adds; and one that it has put in quotes. */
const COMMENT = /^#\s*(.*?)[\s,;]*$/
const PADDED = /^\s*"?\s*#\s*([^"]*?)\s*"?[\s,;]*$/

/**
 * Cuts a table into its cells, for who wants to change some before they are read (readTable).
 *
 * Throws  InputError when it is not given a text
 */
export function tableCells(text: string): TableCells {
  if (typeof text !== 'string')
    throw new InputError({ path: 'text', expected: 'a text', received: describe(text) })
  const { plain, delimiter } = delimited(plainText(text))
  return {
    delimiter,
    rows: tokensOf(plain, delimiter).lines.map(({ cells }) =>
      cells.map(cell => cell.replace(/\s+/g, ' ').trim()),
    ),
    comments: plain.split('\n').flatMap(line => (COMMENT.exec(line) ?? PADDED.exec(line))?.[1] ?? []),
  }
}
