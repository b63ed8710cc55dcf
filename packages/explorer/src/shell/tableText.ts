import type { Table } from '../entries/view.ts'

/** Spreadsheets of one system take a file without it for one of its own old alphabets. */
const BYTE_ORDER_MARK = '\uFEFF'

/** A number as machines read it: no thin spaces, no minus of typography. Words stay as they are. */
function plain(cell: string): string {
  const number = cell.replaceAll(/[\s\u00A0\u2009\u202F]/gu, '').replace('\u2212', '-')
  return /^[+-]?\d+([.,]\d+)?$/.test(number) ? number : cell
}

const quoted = (cell: string): string => (/[",;\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)

/** Spreadsheets of a language with decimal commas part their cells by semicolons. */
const delimiterFor = (locale: string): ',' | ';' =>
  new Intl.NumberFormat(locale).format(0.5).includes(',') ? ';' : ','

/** A number with a decimal comma stands bare where semicolons part the cells. */
const isDecimal = (cell: string): boolean => /^[+-]?\d+,\d+$/.test(cell)

/** A table as CSV (RFC 4180): a row of names, a row of units, then the numbers as they are read on the page. */
export function tableText({ columns, rows }: Table, locale = 'en'): string {
  const delimiter = delimiterFor(locale)
  const cellOf = (cell: string) => (delimiter === ';' && isDecimal(cell) ? cell : quoted(cell))
  const lines = [
    columns.map(({ head }) => head),
    columns.map(({ unit }) => unit),
    ...rows.map(row => row.map(plain)),
  ]
  return BYTE_ORDER_MARK + lines.map(line => `${line.map(cellOf).join(delimiter)}\r\n`).join('')
}
