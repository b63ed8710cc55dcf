import { describe, expect, it } from 'vitest'
import { tableText } from '../../../packages/explorer/src/shell/tableText.ts'

const table = {
  caption: 'Loads',
  columns: [
    { head: 'roller', unit: '' },
    { head: 'load', unit: 'N' },
    { head: 'change, by', unit: 'mm' },
  ],
  rows: [
    ['peg 1, smooth', '1\u202f148', '\u22120.10'],
    ['the "old" one', 'not known', '+0.02'],
  ],
}

describe('a table as CSV', () => {
  it('has names, units, then rows, each ended as RFC 4180 says, after a byte-order mark', () => {
    expect(tableText(table)).toBe(
      '\uFEFFroller,load,"change, by"\r\n,N,mm\r\n"peg 1, smooth",1148,-0.10\r\n"the ""old"" one",not known,+0.02\r\n',
    )
  })

  it('keeps a sentence as it is read, and quotes one that holds a line break', () => {
    const rows = [['a\nb', '2.65 / 2.65', '5/32']]
    expect(tableText({ ...table, rows }).split('\r\n')[2]).toBe('"a\nb",2.65 / 2.65,5/32')
  })

  it('parts its cells by semicolons where decimals take the comma', () => {
    const german = { ...table, rows: [['peg 1, smooth', '1148', '\u22120,10']] }
    expect(tableText(german, 'de').split('\r\n').slice(0, 3)).toEqual([
      '\uFEFFroller;load;"change, by"',
      ';N;mm',
      '"peg 1, smooth";1148;-0,10',
    ])
  })
})
