import { describe, expect, it } from 'vitest'
import { filledRows, pastedCells } from '../../../packages/explorer/src/controls/pastedRows.ts'

describe('what is pasted', () => {
  it.each([
    [
      'two columns and two rows of a spreadsheet',
      '1\t2\r\n3\t4\r\n',
      [
        ['1', '2'],
        ['3', '4'],
      ],
    ],
    ['one column', '0,21\n0,34\n', [['0,21'], ['0,34']]],
    ['a row of several cells', '12.5\t0.31', [['12.5', '0.31']]],
    [
      'semicolons, with decimal commas beside them',
      '1,5;2\n3,5;4',
      [
        ['1,5', '2'],
        ['3,5', '4'],
      ],
    ],
    ['old line ends', '1\r2', [['1'], ['2']]],
    ['a quoted cell with a line end, a tab and quotes in it', '"a\n""b""\tc"\t2', [['a "b" c', '2']]],
    ['an inch sign that closes no quote', '5/32"\t2\n1', [['5/32"', '2'], ['1']]],
    ['an empty cell in the middle', '1\t\t3', [['1', '', '3']]],
  ])('is cells: %s', (_what, text, cells) => {
    expect(pastedCells(text)).toEqual(cells)
  })

  it.each([
    ['one number', '0.31'],
    ['one number and a line end', '0.31\n'],
    ['a sentence', 'wet; after rain'],
  ])('stays where the caret is: %s', (_what, text) => {
    expect(pastedCells(text)).toBeNull()
  })
})

const columns = [
  ['load_N', 'load', 'load N'],
  ['sinkage_mm', 'sinkage', 'sinkage mm'],
  ['note', 'note', 'note '],
]

describe('rows filled from a cell on', () => {
  it('replace what stood there and leave the rest', () => {
    const rows = [
      ['10', '0.1', 'dry'],
      ['20', '0.2', 'dry'],
    ]
    const filled = filledRows(rows, { at: { row: 1, column: 1 }, cells: [['0.25'], ['0.3']], columns })
    expect(filled).toEqual({
      rows: [
        ['10', '0.1', 'dry'],
        ['20', '0.25', 'dry'],
        ['', '0.3'],
      ],
      filled: 2,
      left: 0,
    })
    expect(rows[1]).toEqual(['20', '0.2', 'dry'])
  })

  it('tell how many cells found no column', () => {
    const { rows, left } = filledRows([[]], {
      at: { row: 0, column: 1 },
      cells: [['0.25', 'dry', 'too far', '']],
      columns,
    })
    expect(rows).toEqual([['', '0.25', 'dry']])
    expect(left).toBe(1)
  })

  it('go under the names of a pasted head, whatever their order', () => {
    const cells = [
      ['Sinkage (mm)', 'load_N'],
      ['0.4', '30'],
    ]
    expect(filledRows([], { at: { row: 0, column: 2 }, cells, columns }).rows).toEqual([['30', '0.4']])
  })

  it('take a first line for a row where one of its cells names no column', () => {
    const cells = [
      ['load', '30'],
      ['40', '31'],
    ]
    expect(filledRows([], { at: { row: 0, column: 0 }, cells, columns }).rows).toEqual(cells)
  })
})
