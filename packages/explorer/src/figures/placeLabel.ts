import { type Box, grown, inside, kept, overlaps, shared } from './box.ts'
import type { Point } from './frame.ts'
import { textWidth } from './textWidth.ts'

export type LabelLine = { readonly text: string; readonly strong?: boolean }
export type PlacedLabel = {
  readonly lines: readonly LabelLine[]
  readonly anchor: 'start' | 'end'
  readonly box: Box
}
export type Wanted = {
  readonly lines: readonly LabelLine[]
  /** Where the label may stand, best first: its nearer upper corner and the side it is read from. */
  readonly places: readonly (Point & { readonly anchor: 'start' | 'end' })[]
}
export type Room = {
  readonly bounds: Box
  readonly size: number
  readonly lineHeight: number
  /** Labels already standing: never touched. */
  readonly taken: readonly Box[]
  /** Lines and shapes better left clear: crossed only where there is no other place. */
  readonly avoided: readonly Box[]
}

/** Air between two labels, px. */
const AIR = 2
/** Step of the search for a free place when every wanted one is taken. */
const STEP = 7

export const labelSize = (
  lines: readonly LabelLine[],
  { size, lineHeight }: Pick<Room, 'size' | 'lineHeight'>,
) => ({
  width: Math.max(...lines.map(({ text, strong }) => textWidth(text, size, strong))),
  height: lines.length * lineHeight,
})

/**
 * Puts a label at the first wanted place that is free, else at the free place nearest the first wanted one. Two labels
 * never overlap; if a figure is so small that no place is free, the place that covers least is taken.
 */
export function placeLabel(wanted: Wanted, room: Room): PlacedLabel {
  const { width, height } = labelSize(wanted.lines, room)
  const boxAt = ({ x, y, anchor }: Wanted['places'][number]): Box => ({
    x: anchor === 'end' ? x - width : x,
    y,
    width,
    height,
  })
  const free = (box: Box) =>
    inside(box, room.bounds) && !room.taken.some(other => overlaps(grown(box, AIR), other))
  const clear = (box: Box) => free(box) && !room.avoided.some(other => overlaps(box, other))

  for (const accepts of [clear, free]) {
    const place = wanted.places.find(candidate => accepts(boxAt(candidate)))
    if (place) return { lines: wanted.lines, anchor: place.anchor, box: boxAt(place) }
    const first = wanted.places[0]
    if (!first) throw new Error('a label needs at least one place')
    const box = nearest(kept(boxAt(first), room.bounds), room.bounds, accepts)
    if (box) return { lines: wanted.lines, anchor: first.anchor, box }
  }
  const cover = (box: Box) => room.taken.reduce((sum, other) => sum + shared(box, other), 0)
  const least = wanted.places
    .map(place => ({ anchor: place.anchor, box: kept(boxAt(place), room.bounds) }))
    .reduce((best, next) => (cover(next.box) < cover(best.box) ? next : best))
  return { lines: wanted.lines, ...least }
}

function nearest(from: Box, bounds: Box, accepts: (box: Box) => boolean): Box | undefined {
  let best: Box | undefined
  let distance = Number.POSITIVE_INFINITY
  for (let x = bounds.x; x + from.width <= bounds.x + bounds.width; x += STEP) {
    for (let y = bounds.y; y + from.height <= bounds.y + bounds.height; y += STEP) {
      const away = Math.hypot(x - from.x, y - from.y)
      const box = { ...from, x, y }
      if (away < distance && accepts(box)) {
        best = box
        distance = away
      }
    }
  }
  return best
}
