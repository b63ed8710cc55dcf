import Papa from 'papaparse'
import { placed, type TableProblem } from './reading.ts'

export type Delimiter = ',' | ';' | '\t'
export const delimiters: readonly Delimiter[] = [',', ';', '\t']

/** The cells of one row, and the line of the text it starts in. */
export type Line = { readonly row: number; readonly cells: readonly string[] }

export type Tokens = { readonly lines: readonly Line[]; readonly problems: readonly TableProblem[] }

const faults: Readonly<Record<string, { expected: string; received: string }>> = {
  MissingQuotes: { expected: 'a closing quotation mark', received: 'none to the end of the text' },
  InvalidQuotes: {
    expected: 'quotation marks inside a quoted field to be doubled ("")',
    received: 'a single one',
  },
}

const isBlank = (cells: readonly string[]): boolean => cells.every(cell => cell.trim() === '')

/** A comment that a spreadsheet has put in quotes, or padded with empty cells. */
const isComment = (cells: readonly string[]): boolean =>
  (cells[0] ?? '').trimStart().startsWith('#') && isBlank(cells.slice(1))

function lineEnds(text: string): number {
  let found = 0
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) found++
  return found
}

/**
 * Text without what editors and programs put around it: the byte-order mark, and the line ends of Windows and of
 * old Macs. Lines keep their numbers.
 */
export const plainText = (text: string): string => text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')

/**
 * Rows and cells of a plain text. Blank rows and comments are left out.
 *
 * Throws  nothing: quotation marks that do not pair are problems of their row
 */
export function tokensOf(
  text: string,
  delimiter: Delimiter,
  {
    most = Number.POSITIVE_INFINITY,
    firstLine = 1,
  }: { readonly most?: number; readonly firstLine?: number } = {},
): Tokens {
  const lines: Line[] = []
  const problems: TableProblem[] = []
  let seen = 0
  let line = firstLine
  Papa.parse(text, {
    delimiter,
    newline: '\n',
    comments: '#',
    step: ({ data, errors, meta }, parser) => {
      // The parser tells where a row ends; comments may lie before it, and line ends inside its quotes.
      const open = errors.some(({ code }) => code === 'MissingQuotes')
      const ended = text[meta.cursor - 1] === '\n' && !open
      line += lineEnds(text.slice(seen, meta.cursor))
      seen = meta.cursor
      const within = data.reduce((sum, cell) => (cell.includes('\n') ? sum + lineEnds(cell) : sum), 0)
      const row = line - (ended ? 1 : 0) - within
      const fault = faults[errors[0]?.code ?? '']
      if (fault) problems.push(placed(row, undefined, fault))
      if (isBlank(data) || isComment(data)) return
      lines.push({ row, cells: data })
      if (lines.length >= most) parser.abort()
    },
  })
  return { lines, problems }
}

/** The first row that is neither blank nor a comment, as one delimiter or another would cut it. */
export const firstLine = (text: string, delimiter: Delimiter): Line | undefined =>
  tokensOf(text, delimiter, { most: 1 }).lines[0]
