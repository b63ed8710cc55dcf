import { columnNames, columns, type NumberColumn, type TextColumn } from './columns.ts'

/** What people call a column that we name otherwise. */
const otherWords: Readonly<Record<string, string>> = {
  plot: 'set',
  green: 'set',
  site: 'set',
  block: 'set',
  rep: 'replicate',
  repeat: 'replicate',
  weight: 'load_kg',
  mass: 'load_kg',
  force: 'load_N',
  depth: 'sinkage_mm',
  depression: 'sinkage_mm',
  penetration: 'sinkage_mm',
  resolution: 'gauge_step_mm',
  count: 'n',
  remark: 'note',
  remarks: 'note',
  comment: 'note',
  comments: 'note',
  area: 'plate_area_mm2',
  diameter: 'plate_diameter_mm',
  stress: 'pressure_kPa',
  water: 'moisture_percent',
  hoc: 'height_mm',
}

/** Letters to put in, take out, change or swap to make one word of another. */
function distance(a: string, b: string): number {
  let before: number[] = []
  let row = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let least = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + same)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, before[j - 2]! + 1)
      next.push(least)
    }
    before = row
    row = next
  }
  return row[b.length]!
}

/** Names with every unit they may carry, in lower case and as they are written. */
const spellings: readonly (readonly [string, string])[] = columnNames.flatMap(name => {
  const column: NumberColumn | TextColumn = columns[name]
  const suffixes = column.kind === 'number' ? Object.keys(column.suffixes) : ['']
  const all = suffixes.map(suffix => (suffix === '' ? name : `${name}_${suffix}`))
  return all.map(one => [one.toLowerCase(), one] as const)
})

/** More than this part of a word wrong, and it was another word. */
const FAR = 0.45
/** Longer than any name and its typing errors: not worth comparing. */
const LONGEST = 40

/** The known name that a name was probably meant to be. */
export function nearestName(normal: string): string | undefined {
  const other = otherWords[normal.replace(/_[^_]*$/, '')] ?? otherWords[normal]
  if (other) return other
  if (normal.length > LONGEST) return undefined
  const [found, far] = spellings.reduce<readonly [string | undefined, number]>(
    (best, [spelling, name]) => {
      const steps = distance(normal, spelling)
      return steps < best[1] ? [name, steps] : best
    },
    [undefined, Number.POSITIVE_INFINITY],
  )
  return far <= FAR * normal.length ? found : undefined
}
