import type { Entry } from './book.ts'

/** An entry and those that stand beside it. */
export type Row = readonly [Entry, ...Entry[]]

export function rowsOf(entries: readonly Entry[]): readonly Row[] {
  const rows: [Entry, ...Entry[]][] = []
  for (const entry of entries) {
    const last = rows.at(-1)
    if (entry.beside && last) last.push(entry)
    else rows.push([entry])
  }
  return rows
}

/** The entries of these rows in order, each told whether it stands beside another. */
export function entriesOf(rows: readonly (readonly Entry[])[]): readonly Entry[] {
  return rows.flatMap(row =>
    row.map((entry, at) => {
      const beside = at > 0
      return entry.beside === beside ? entry : { ...entry, beside }
    }),
  )
}
