import type { Table } from '../entries/view.ts'

/** Spreadsheets of one system take a file without it for one of its own old alphabets. */
const BYTE_ORDER_MARK = '\uFEFF'

/** A number as machines read it: no thin spaces, no minus of typography. Words stay as they are. */
function plain(cell: string): string {
  const number = cell.replaceAll(/[\s\u00A0\u2009\u202F]/gu, '').replace('\u2212', '-')
  return /^[+-]?\d+([.]\d+)?$/.test(number) ? number : cell
}

const quoted = (cell: string): string => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)

/** A table as CSV (RFC 4180): a row of names, a row of units, then the numbers as they are read on the page. */
export function tableText({ columns, rows }: Table): string {
  const lines = [
    columns.map(({ head }) => head),
    columns.map(({ unit }) => unit),
    ...rows.map(row => row.map(plain)),
  ]
  return BYTE_ORDER_MARK + lines.map(line => `${line.map(quoted).join(',')}\r\n`).join('')
}
