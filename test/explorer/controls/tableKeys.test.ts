import { describe, expect, it } from 'vitest'
import { placeAfter } from '../../../packages/explorer/src/controls/tableKeys.ts'

const inCell = (key: string, over: Partial<Parameters<typeof placeAfter>[1]> & { shiftKey?: boolean } = {}) =>
  placeAfter(
    { key, shiftKey: over.shiftKey ?? false },
    {
      at: { row: 4, column: 1 },
      rows: 12,
      columns: 3,
      startColumn: 0,
      caret: { start: 2, end: 2, length: 4 },
      ...over,
    },
  )

describe('keys in a cell', () => {
  it('go from row to row and stop at the first and last', () => {
    expect(inCell('ArrowDown')).toEqual({ row: 5, column: 1 })
    expect(inCell('ArrowUp')).toEqual({ row: 3, column: 1 })
    expect(inCell('PageDown')).toEqual({ row: 11, column: 1 })
    expect(inCell('PageUp')).toEqual({ row: 0, column: 1 })
  })

  it('come back with Enter to the column a row was begun in', () => {
    expect(inCell('Enter')).toEqual({ row: 5, column: 0 })
    expect(inCell('Enter', { startColumn: 1 })).toEqual({ row: 5, column: 1 })
    expect(inCell('Enter', { shiftKey: true })).toEqual({ row: 3, column: 1 })
  })

  it('ask for one more row with Enter in the last', () => {
    expect(inCell('Enter', { at: { row: 11, column: 1 } })).toBe('add')
  })

  it('leave the caret to the field inside its text, and the cell from its ends', () => {
    expect(inCell('ArrowRight')).toBeNull()
    expect(inCell('ArrowRight', { caret: { start: 4, end: 4, length: 4 } })).toEqual({ row: 4, column: 2 })
    expect(inCell('ArrowLeft', { caret: { start: 0, end: 0, length: 4 } })).toEqual({ row: 4, column: 0 })
    expect(inCell('ArrowLeft', { caret: { start: 0, end: 4, length: 4 } })).toEqual({ row: 4, column: 0 })
    expect(
      inCell('ArrowRight', { at: { row: 4, column: 2 }, caret: { start: 4, end: 4, length: 4 } }),
    ).toBeNull()
  })

  it('leave selecting with Shift, and every other key, to the field', () => {
    expect(inCell('ArrowDown', { shiftKey: true })).toBeNull()
    expect(inCell('Home')).toBeNull()
    expect(inCell('a')).toBeNull()
  })
})
