import type { Box } from './box.ts'
import { type Frame, lineHeight, type Point, textSize } from './frame.ts'
import type { MapContour, MapField } from './mapField.ts'
import { spreadOut } from './spreadOut.ts'
import { textWidth } from './textWidth.ts'

export type ContourName = {
  readonly text: string
  /** Where the contour leaves the frame, and where its name stands; a plate inside has both in one place. */
  readonly from: Point
  readonly at: Point
  readonly where: 'right' | 'top' | 'inside'
}

/** From the frame to a name, px. */
const STALK = 9
/** A contour ends at the border when it comes this close, in cells. */
const AT_BORDER = 1e-6

/** Names stand outside the frame where their contours leave it: right, else top; else a plate inside. */
export function contourNames(
  q: { field: MapField; box: Box; project: (point: Point) => Point },
  frame: Pick<Frame<unknown>, 'text'>,
): readonly ContourName[] {
  const line = lineHeight(frame)
  const size = textSize(frame)
  const { box } = q
  const names = q.field.contours.flatMap(contour => nameOf(contour, q))
  const right = names.filter(name => name.where === 'right')
  const top = names.filter(name => name.where === 'top')
  const heights = spreadOut(
    right.map(name => name.from.y),
    { gap: line, low: box.y + 2, high: box.y + box.height - 1 },
  )
  const widest = Math.max(0, ...top.map(name => textWidth(name.text, size))) + 6
  const places = spreadOut(
    top.map(name => name.from.x),
    { gap: widest, low: box.x + widest / 2, high: box.x + box.width - widest / 2 },
  )
  return [
    ...right.map((name, i) => ({
      ...name,
      at: { x: box.x + box.width + STALK, y: heights[i] ?? name.from.y },
    })),
    ...top.map((name, i) => ({ ...name, at: { x: places[i] ?? name.from.x, y: box.y - STALK } })),
    ...names.filter(name => name.where === 'inside'),
  ]
}

function nameOf(
  { rung, lines }: MapContour,
  { field, project }: { field: MapField; project: (point: Point) => Point },
): readonly ContourName[] {
  const ends = lines.flatMap(line => [line[0], line.at(-1)].filter(end => end !== undefined))
  const right = ends.find(end => end.x >= field.columns - 1 - AT_BORDER)
  const top = ends.find(end => end.y >= field.rows - 1 - AT_BORDER)
  const outside = right ?? top
  if (outside) {
    const from = project(outside)
    return [{ text: rung.text, from, at: from, where: right ? 'right' : 'top' }]
  }
  const longest = lines.reduce<readonly Point[]>(
    (best, line) => (line.length > best.length ? line : best),
    [],
  )
  const middle = longest[Math.floor(longest.length / 2)]
  if (!middle) return []
  const at = project(middle)
  return [{ text: rung.text, from: at, at, where: 'inside' }]
}
