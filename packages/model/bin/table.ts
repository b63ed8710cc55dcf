/** Columns of words for a terminal: the first to the left, the others to the right. */
export function table(rows: readonly (readonly string[])[]): string {
  const columns = Math.max(...rows.map(row => row.length))
  const widths = Array.from({ length: columns }, (_, i) => Math.max(...rows.map(row => row[i]?.length ?? 0)))
  const line = (row: readonly string[]) =>
    row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!))).join('  ')
  return rows.map(row => line(row).trimEnd()).join('\n')
}
