import { type Box, grown, inside, kept, overlaps, shared } from './box.ts'
import type { Point } from './frame.ts'
import { alongLine, leaderStart, needsLeader } from './leader.ts'
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
  const { boxAt, free, clear } = judge(wanted, room)
  const placed = search(wanted, room, { accepts: clear }) ?? search(wanted, room, { accepts: free })
  if (placed) return placed
  const cover = (box: Box) => room.taken.reduce((sum, other) => sum + shared(box, other), 0)
  const least = wanted.places
    .map(place => ({ anchor: place.anchor, box: kept(boxAt(place), room.bounds) }))
    .reduce((best, next) => (cover(next.box) < cover(best.box) ? next : best))
  return { lines: wanted.lines, ...least }
}

/** How far a name may stand from its first wanted place, px. */
const REACH = 60

/** A name is worth less than a clear drawing: it is left out where it, or its leader, would cross something. */
export function placeName(wanted: Wanted & { readonly target?: Point }, room: Room): PlacedLabel | undefined {
  const { clear } = judge(wanted, room)
  const { target } = wanted
  const leads = (box: Box) =>
    !target ||
    !needsLeader(box, target) ||
    !alongLine(leaderStart(box, target), target).some(piece =>
      room.taken.some(other => overlaps(piece, other)),
    )
  return search(wanted, room, { accepts: box => clear(box) && leads(box), reach: REACH })
}

function judge(wanted: Wanted, room: Room) {
  const { width, height } = labelSize(wanted.lines, room)
  const free = (box: Box) =>
    inside(box, room.bounds) && !room.taken.some(other => overlaps(grown(box, AIR), other))
  return {
    boxAt: ({ x, y, anchor }: Wanted['places'][number]): Box => ({
      x: anchor === 'end' ? x - width : x,
      y,
      width,
      height,
    }),
    free,
    clear: (box: Box) => free(box) && !room.avoided.some(other => overlaps(box, other)),
  }
}

function search(
  wanted: Wanted,
  room: Room,
  { accepts, reach = Number.POSITIVE_INFINITY }: { accepts: (box: Box) => boolean; reach?: number },
): PlacedLabel | undefined {
  const { boxAt } = judge(wanted, room)
  const { lines, places } = wanted
  const place = places.find(candidate => accepts(boxAt(candidate)))
  if (place) return { lines, anchor: place.anchor, box: boxAt(place) }
  const first = places[0]
  if (!first) throw new Error('a label needs at least one place')
  const box = nearest(kept(boxAt(first), room.bounds), room.bounds, accepts, reach)
  return box && { lines, anchor: first.anchor, box }
}

function nearest(from: Box, bounds: Box, accepts: (box: Box) => boolean, reach: number): Box | undefined {
  let best: Box | undefined
  let distance = reach
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
