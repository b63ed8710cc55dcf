import { describe, expect, test } from 'vitest'
import { readTable, tableCells } from '../../../packages/model/src/index.ts'

describe('the cells of a table', () => {
  test('are cut at the delimiter its header tells, quotes undone and line ends taken out', () => {
    const { delimiter, rows } = tableCells('set;sinkage_mm;note\r\nA;0,31;"a \r\n b"\r\n\r\nB; 0,4 ;"x;y"')
    expect(delimiter).toBe(';')
    expect(rows).toEqual([
      ['set', 'sinkage_mm', 'note'],
      ['A', '0,31', 'a b'],
      ['B', '0,4', 'x;y'],
    ])
  })

  test('have the comments beside them, not among them', () => {
    const { rows, comments } = tableCells('# all invented\nset,sinkage_mm\n"# of April",\nA,0.3\n')
    expect(rows).toHaveLength(2)
    expect(comments).toEqual(['all invented', 'of April'])
  })

  test('keep what is no table as one cell', () => {
    expect(tableCells('what is this')).toEqual({ delimiter: ',', rows: [['what is this']], comments: [] })
    expect(tableCells('').rows).toEqual([])
  })
})

test('rows may be counted without their header, in problems and in notes alike', () => {
  const text = 'set,load_N,sinkage_mm\nA,100,0.3\na,120,x\n a ,140,0.5'
  const read = readTable(text, { firstLine: 0 })
  expect(read.readings.map(({ row }) => row)).toEqual([1, 3])
  expect(read.ok ? [] : read.problems).toMatchObject([{ row: 2, path: 'row 2, sinkage_mm' }])
  expect(read.notes.map(({ expected }) => expected).join()).toContain('in row 1')
})
