export type Place = { readonly row: number; readonly column: number }

const PAGE = 10

/**
 * Where a key in a cell leads: a cell, one more row, or null where the key belongs to the field itself. Left and
 * right leave a cell only from the ends of its text, or while all of it is selected.
 */
export function placeAfter(
  { key, shiftKey }: { readonly key: string; readonly shiftKey: boolean },
  q: {
    readonly at: Place
    readonly rows: number
    readonly columns: number
    /** Where Enter comes back to after a row was filled with Tab. */
    readonly startColumn: number
    readonly caret: { readonly start: number; readonly end: number; readonly length: number }
  },
): Place | 'add' | null {
  const { at, rows, columns, startColumn, caret } = q
  const last = rows - 1
  const to = (row: number, column = at.column): Place => ({ row: Math.max(0, Math.min(last, row)), column })
  const whole = caret.start === 0 && caret.end === caret.length
  if (key === 'Enter') {
    if (shiftKey) return to(at.row - 1)
    return at.row === last ? 'add' : to(at.row + 1, startColumn)
  }
  if (shiftKey) return null
  if (key === 'ArrowUp') return to(at.row - 1)
  if (key === 'ArrowDown') return to(at.row + 1)
  if (key === 'PageUp') return to(at.row - PAGE)
  if (key === 'PageDown') return to(at.row + PAGE)
  if (key === 'ArrowLeft' && (whole || caret.end === 0) && at.column > 0) return to(at.row, at.column - 1)
  if (key === 'ArrowRight' && (whole || caret.start === caret.length) && at.column < columns - 1)
    return to(at.row, at.column + 1)
  return null
}
