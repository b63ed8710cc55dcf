/** A table without quotes, comments, units or anything wrong with it. */
export function plainTable(text: string): Record<string, number | string>[] {
  const [head = '', ...lines] = text.trim().split('\n')
  const names = head.split(',')
  return lines.map(line => {
    const cells = line.split(',')
    return Object.fromEntries(
      names.map((name, i) => {
        const cell = cells[i] ?? ''
        const value = Number(cell)
        return [name, cell === '' || Number.isNaN(value) ? cell : value]
      }),
    )
  })
}
