/** Grid lines along one direction, with the spacing free to change from cell to cell. */
export type Axis = {
  readonly at: Float64Array
  /** One over the cell before and after each line; 0 where there is none: the mirror of a line of symmetry. */
  readonly before: Float64Array
  readonly after: Float64Array
  /** Half of both neighbouring cells: what a line stands for. */
  readonly share: Float64Array
  /** A line that every coarser axis keeps: the land edge. */
  readonly keep: number
}

export function axisOf(at: Float64Array, keep: number): Axis {
  const count = at.length
  const before = new Float64Array(count)
  const after = new Float64Array(count)
  const share = new Float64Array(count)
  for (let i = 1; i < count; i++) {
    const h = at[i]! - at[i - 1]!
    before[i] = 1 / h
    after[i - 1] = 1 / h
    share[i] = share[i]! + h / 2
    share[i - 1] = share[i - 1]! + h / 2
  }
  return { at, before, after, share, keep }
}

/** Nothing changes in this direction: one line that stands for a unit of width. */
export const lone = (): Axis => ({
  at: new Float64Array(1),
  before: new Float64Array(1),
  after: new Float64Array(1),
  share: Float64Array.of(1),
  keep: 0,
})

/** `first` equal cells to `knee`, then `second` equal cells to `end`. */
export function kneedAxis(knee: number, first: number, end: number, second: number): Axis {
  const at = new Float64Array(first + second + 1)
  for (let i = 1; i < first; i++) at[i] = (knee * i) / first
  for (let i = 0; i <= second; i++) at[first + i] = knee + ((end - knee) * i) / second
  return axisOf(at, first)
}

/** Where fine and coarse lines lie in each other. */
export type Between = {
  /** Of a fine line: the coarse line it lies on, or `part` of the way to the next. */
  readonly below: Int32Array
  readonly part: Float64Array
  /** Of a coarse line: the fine line it is, and what it takes of the fine lines before and after that. */
  readonly on: Int32Array
  readonly fromBefore: Float64Array
  readonly fromAfter: Float64Array
}

function betweenOf(at: Float64Array, coarse: Axis, lines: readonly number[]): Between {
  const below = new Int32Array(at.length)
  const part = new Float64Array(at.length)
  const fromBefore = new Float64Array(lines.length)
  const fromAfter = new Float64Array(lines.length)
  for (let i = 0, c = 0; i < at.length; i++) {
    if (i === lines[c + 1]) c++
    const t = (at[i]! - coarse.at[c]!) * coarse.after[c]!
    below[i] = c
    part[i] = t
    if (t === 0) continue
    fromAfter[c] = 1 - t
    fromBefore[c + 1] = t
  }
  return { below, part, on: Int32Array.from(lines), fromBefore, fromAfter }
}

/** The two runs of equal cells of an axis: before the kept line and after it. */
export type Runs<T> = { readonly before: T; readonly after: T }

const linesOf = (from: number, to: number, step: number): number[] => {
  const lines: number[] = []
  for (let i = from; i < to; i += step) lines.push(i)
  return lines
}

/** Every other line of the chosen runs, the kept line always. Nothing when no line would go. */
export function coarser(
  axis: Axis,
  halve: Runs<boolean> = { before: true, after: true },
): { readonly axis: Axis; readonly between: Between } | undefined {
  const { at, keep } = axis
  const last = at.length - 1
  const lines = [...linesOf(0, keep, halve.before ? 2 : 1), ...linesOf(keep, last, halve.after ? 2 : 1), last]
  if (lines.length === at.length) return undefined
  const coarse = axisOf(
    Float64Array.from(lines, i => at[i]!),
    lines.indexOf(keep),
  )
  return { axis: coarse, between: betweenOf(at, coarse, lines) }
}

/** The axis as it is, where other cells alone are made coarser. */
export const unchanged = (axis: Axis): { readonly axis: Axis; readonly between: Between } => ({
  axis,
  between: betweenOf(axis.at, axis, Array.from(axis.at.keys())),
})

/** Mean cell of each run; Infinity for a run of one cell or none, which cannot be halved. */
export function cellsOf({ at, keep }: Axis): Runs<number> {
  const last = at.length - 1
  return {
    before: keep > 1 ? at[keep]! / keep : Number.POSITIVE_INFINITY,
    after: last - keep > 1 ? (at[last]! - at[keep]!) / (last - keep) : Number.POSITIVE_INFINITY,
  }
}
