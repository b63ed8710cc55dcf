import { type Box, grown, kept, overlaps } from './box.ts'
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
  /** The contour of a name that stands inside. */
  readonly along: readonly Point[]
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
    return [{ text: rung.text, from, at: from, where: right ? 'right' : 'top', along: [] }]
  }
  const longest = lines.reduce<readonly Point[]>(
    (best, line) => (line.length > best.length ? line : best),
    [],
  )
  const middle = longest[Math.floor(longest.length / 2)]
  if (!middle) return []
  const at = project(middle)
  return [{ text: rung.text, from: at, at, where: 'inside', along: longest.map(project) }]
}

export type NamePlate = { readonly text: string; readonly box: Box }

/** Parts of the way along a contour where its plate may stand, best first. */
const PARTS = [0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9]

const extent = (line: readonly Point[]): number => {
  const reach = (values: readonly number[]) => Math.max(...values) - Math.min(...values)
  return Math.hypot(reach(line.map(point => point.x)), reach(line.map(point => point.y)))
}

/** Plates of the contours named inside: within the frame, clear of each other and of marks. */
export function namePlates(
  names: readonly ContourName[],
  q: { box: Box; avoided: readonly Box[] },
  frame: Pick<Frame<unknown>, 'text'>,
): readonly NamePlate[] {
  const size = textSize(frame)
  const taken = [...q.avoided]
  return names
    .filter(name => name.where === 'inside')
    .flatMap(({ text, along }) => {
      const [width, height] = [textWidth(text, size) + 8, size * 1.3]
      // A contour that its own plate would cover has nothing to show.
      if (extent(along) < 2 * width) return []
      const places = PARTS.flatMap(part => along[Math.round(part * (along.length - 1))] ?? []).map(
        ({ x, y }): Box => kept({ x: x - width / 2, y: y - height / 2, width, height }, grown(q.box, -2)),
      )
      const box = places.find(place => !taken.some(other => overlaps(place, other))) ?? places[0]
      if (!box) return []
      taken.push(box)
      return [{ text, box }]
    })
}
