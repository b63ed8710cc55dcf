/** Rows of cells as text: what a reader typed, whatever it means. Rows may be shorter than the head. */
export type Rows = readonly (readonly string[])[]

type Separator = '\t' | ';'

/** Semicolons part cells only where every line has as many: a note may hold one. */
function separatorOf(lines: readonly string[]): Separator | null {
  if (lines.some(line => line.includes('\t'))) return '\t'
  const counts = lines.filter(line => line !== '').map(line => line.split(';').length)
  const [first] = counts
  return first !== undefined && first > 1 && counts.every(count => count === first) ? ';' : null
}

/** Splits at the separator, but not inside a quoted cell, which may hold separators, line ends and doubled quotes. */
function splitQuoted(text: string, separator: Separator | null): string[][] {
  const rows: string[][] = [[]]
  let cell = ''
  let quoted = false
  for (let i = 0; i < text.length; i++) {
    const letter = text[i]
    if (quoted) {
      if (letter !== '"') cell += letter
      else if (text[i + 1] === '"') cell += text[i++]
      else quoted = false
    } else if (letter === '"' && cell === '') quoted = true
    else if (letter === separator) {
      rows.at(-1)?.push(cell)
      cell = ''
    } else if (letter === '\n') {
      rows.at(-1)?.push(cell)
      rows.push([])
      cell = ''
    } else cell += letter
  }
  rows.at(-1)?.push(cell)
  return rows
}

/**
 * The cells of a text that was copied from a spreadsheet, a file or a page; null when it is one cell and belongs
 * where the caret stands. A cell keeps no line end: a field has one line.
 */
export function pastedCells(text: string): Rows | null {
  const whole = text.replace(/\r\n?/g, '\n').replace(/\n+$/, '')
  const separator = separatorOf(whole.split('\n'))
  // a single line of text with a semicolon in it is a note, not a row
  if (!whole.includes('\n') && separator !== '\t') return null
  // a quote that is never closed is a letter like any other
  const quotes = whole.split('"').length - 1
  const cells =
    quotes % 2 === 0
      ? splitQuoted(whole, separator)
      : whole.split('\n').map(line => (separator ? line.split(separator) : [line]))
  return cells.map(row => row.map(cell => cell.replace(/\s+/g, ' ').trim()))
}

/** Which column each pasted cell belongs to, if the first pasted row is a head that names columns. */
function headOf(first: readonly string[], names: readonly (readonly string[])[]): readonly number[] | null {
  const plain = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '')
  const places = first.map(cell => names.findIndex(all => all.some(name => plain(name) === plain(cell))))
  const named = places.filter((place, i) => place >= 0 && first[i] !== '')
  return named.length > 0 && first.every((cell, i) => cell === '' || places[i] !== -1) ? places : null
}

export type Filled = {
  readonly rows: Rows
  /** How many rows were filled, and how many cells found no column. */
  readonly filled: number
  readonly left: number
}

/**
 * Puts pasted cells into rows from a cell on, to the right and down; rows are added as needed. A pasted head that
 * names columns places the cells under those names.
 */
export function filledRows(
  rows: Rows,
  q: {
    readonly at: { readonly row: number; readonly column: number }
    readonly cells: Rows
    /** Every name a column goes by. */
    readonly columns: readonly (readonly string[])[]
  },
): Filled {
  const { at, cells, columns } = q
  const head = cells[0] ? headOf(cells[0], columns) : null
  const body = head ? cells.slice(1) : cells
  const next = [...rows]
  let left = 0
  body.forEach((line, down) => {
    const row = [...(next[at.row + down] ?? [])]
    line.forEach((cell, along) => {
      const column = head ? (head[along] ?? -1) : at.column + along
      if (column < 0 || column >= columns.length) {
        if (cell !== '') left++
        return
      }
      while (row.length < column) row.push('')
      row[column] = cell
    })
    while (next.length < at.row + down) next.push([])
    next[at.row + down] = row
  })
  return { rows: next, filled: body.length, left }
}
