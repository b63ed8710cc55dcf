/** Fewer rows than this are all in the document. */
export const ALL_DRAWN = 200
/** Rows drawn beyond either edge of what is in view, so that a turn of the wheel finds them there. */
const MARGIN = 12

export type Heights = {
  readonly row: number
  /** What a row's sentence adds to it. */
  readonly sentence: number
}

/** Where a row begins, in px from the top of the first. `tall` holds the rows with a sentence, ascending. */
export function topOf(row: number, tall: readonly number[], heights: Heights): number {
  return row * heights.row + tall.filter(one => one < row).length * heights.sentence
}

/** The row at a distance from the top. */
function rowAt(
  y: number,
  q: { readonly count: number; readonly tall: readonly number[]; readonly heights: Heights },
) {
  let [low, high] = [0, q.count]
  while (low + 1 < high) {
    const middle = (low + high) >> 1
    if (topOf(middle, q.tall, q.heights) <= y) low = middle
    else high = middle
  }
  return low
}

/** A run of rows that are drawn, and the room left above it for those that are not. */
export type Run = { readonly from: number; readonly to: number; readonly above: number }

/**
 * What of a long table is drawn: the rows in view and some beyond, and the row that has the focus, which must not be
 * taken from under its reader. The rest is room, so that the bar at the side tells the truth.
 */
export function rowWindow(q: {
  readonly count: number
  readonly tall: readonly number[]
  readonly heights: Heights
  readonly scrolled: number
  readonly room: number
  readonly focused: number | null
}): { readonly runs: readonly Run[]; readonly below: number } {
  const { count, tall, heights, focused } = q
  if (count <= ALL_DRAWN) return { runs: [{ from: 0, to: count, above: 0 }], below: 0 }
  const from = Math.max(0, rowAt(q.scrolled, q) - MARGIN)
  const to = Math.min(count, rowAt(q.scrolled + q.room, q) + 1 + MARGIN)
  const spans: [number, number][] = [[from, to]]
  if (focused !== null && focused < Math.min(from, count)) spans.unshift([focused, focused + 1])
  if (focused !== null && focused >= to && focused < count) spans.push([focused, focused + 1])
  const y = (row: number) => topOf(row, tall, heights)
  let end = 0
  const runs = spans.map(([first, last]) => {
    const above = y(first) - y(end)
    end = last
    return { from: first, to: last, above }
  })
  return { runs, below: y(count) - y(end) }
}
