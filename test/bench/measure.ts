/** What a contestant did in one go: CPU time it took, how many pieces, and a number to compare answers by. */
export type Timed = { readonly seconds: number; readonly pieces: number; readonly value?: number }

export type Contestant = () => Timed | Promise<Timed>

export const sides = ['ours', 'plain', 'C', 'scipy'] as const
export type Side = (typeof sides)[number]

/** Times a peer's time or that of another row, or milliseconds for all the pieces of one go. */
export type Bar =
  | { readonly most: number; readonly of: Exclude<Side, 'ours'> | 'ms' }
  | { readonly most: number; readonly of: 'row'; readonly row: string }

/** One thing to time, by whoever can do it. */
export type Row = {
  readonly name: string
  readonly per: string
  readonly by: Partial<Record<Side, Contestant>>
  readonly bar?: Bar
  /** Told once: counts that no machine changes, and how far off the answers are. */
  readonly counts?: () => string
  readonly worst?: () => number
}

export type Spread = { readonly median: number; readonly spread: number }

export type Measured = {
  readonly name: string
  readonly per: string
  /** Microseconds of CPU a piece. */
  readonly us: Partial<Record<Side, Spread>>
  /** Our time over theirs, round by round. */
  readonly ratios: Partial<Record<Side, Spread>>
  /** Our answer over theirs, less one. */
  readonly differs: Partial<Record<Side, number>>
  readonly pieces: number
  readonly bar?: Bar
  /** What the bar is held against; null where the peer was left out. */
  readonly reached: number | null
  readonly met: boolean | null
  readonly counts?: string
  readonly worst?: number
}

const ROUNDS = 9
const WARM = 5
const US = 1e6
const US_PER_MS = 1e3

/** CPU time of this process: its helper threads, which compile and collect, are counted. */
export const timed =
  (run: () => Omit<Timed, 'seconds'>): Contestant =>
  () => {
    const before = process.cpuUsage()
    const done = run()
    const { user, system } = process.cpuUsage(before)
    return { seconds: (user + system) / US, ...done }
  }

const quantile = (sorted: readonly number[], q: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))]!

/** Median, and half of what the middle half spans. */
function spreadOf(values: readonly number[]): Spread {
  const sorted = [...values].sort((a, b) => a - b)
  return { median: quantile(sorted, 0.5), spread: (quantile(sorted, 0.75) - quantile(sorted, 0.25)) / 2 }
}

type Tally = { readonly times: Map<Side, number[]>; readonly values: Map<Side, number>; pieces: number }

function told(row: Row, { times, values, pieces }: Tally): Measured {
  const us: Measured['us'] = {}
  const ratios: Measured['ratios'] = {}
  const differs: Measured['differs'] = {}
  const ours = times.get('ours') ?? []
  for (const [side, list] of times) {
    us[side] = spreadOf(list.map(seconds => US * seconds))
    if (side === 'ours') continue
    ratios[side] = spreadOf(list.map((theirs, i) => ours[i]! / theirs))
    const [a, b] = [values.get('ours'), values.get(side)]
    if (a !== undefined && b !== undefined && Number.isFinite(b)) differs[side] = a / b - 1
  }
  return {
    name: row.name,
    per: row.per,
    us,
    ratios,
    differs,
    pieces,
    ...(row.bar ? { bar: row.bar } : {}),
    reached: null,
    met: null,
    ...(row.counts ? { counts: row.counts() } : {}),
    ...(row.worst ? { worst: row.worst() } : {}),
  }
}

function reachedBy({ bar, us, ratios, pieces }: Measured, all: readonly Measured[]): number | null {
  const ours = us.ours?.median
  if (!bar || ours === undefined) return null
  if (bar.of === 'ms') return (ours * pieces) / US_PER_MS
  if (bar.of !== 'row') return ratios[bar.of]?.median ?? null
  const other = all.find(({ name }) => name === bar.row)?.us.ours?.median
  return other === undefined ? null : ours / other
}

/** Times every contestant in turn, round after round, so that a slow spell of the machine falls on all of them. */
export async function interleaved(rows: readonly Row[]): Promise<Measured[]> {
  const records = rows.map((): Tally => ({ times: new Map(), values: new Map(), pieces: 0 }))
  for (let round = -WARM; round < ROUNDS; round++)
    for (const [at, row] of rows.entries())
      for (const side of sides) {
        const contestant = row.by[side]
        if (!contestant) continue
        const { seconds, pieces, value } = await contestant()
        const record = records[at]!
        if (side === 'ours') record.pieces = pieces
        if (value !== undefined) record.values.set(side, value)
        if (round < 0) continue
        const list = record.times.get(side) ?? []
        list.push(seconds / pieces)
        record.times.set(side, list)
      }
  const all = rows.map((row, i) => told(row, records[i]!))
  return all.map(one => {
    const reached = reachedBy(one, all)
    return { ...one, reached, met: one.bar && reached !== null ? reached <= one.bar.most : null }
  })
}
