import { around, type Box, grown } from './box.ts'
import { alongLine } from './leader.ts'
import type { Circle } from './sideGeometry.ts'
import type { Arrow, SideLayout } from './sideLayout.ts'

const arrowBox = ({ x, y, length }: Arrow): Box => ({ x: x - 4, y, width: 8, height: length })
/** Arrows of the loads: as closed to labels as another label. */
export const arrowBoxes = ({ loads }: SideLayout): readonly Box[] =>
  [loads.front, loads.rear, ...loads.above].map(arrowBox)

const STRIPS = 8
function strips({ x, y, radius }: Circle): readonly Box[] {
  return Array.from({ length: STRIPS }, (_, i) => {
    const from = -1 + (2 * i) / STRIPS
    const to = from + 2 / STRIPS
    const least = from * to < 0 ? 0 : Math.min(Math.abs(from), Math.abs(to))
    const half = radius * Math.sqrt(1 - least * least)
    return { x: x - half, y: y + from * radius, width: 2 * half, height: (2 * radius) / STRIPS }
  })
}

/** Lines and shapes that a label is better clear of. */
export function obstacles({
  X,
  Y,
  scale,
  width,
  geometry: g,
  edgeLine,
  ground,
  benchLine,
  benchAt,
  heightAt,
  foot,
}: SideLayout): Box[] {
  const drawn = ({ x, y, radius }: Circle): Circle => ({ x: X(x), y: Y(y), radius: scale * radius })
  const level = (y: number): Box => ({ x: 0, y: y - 1.5, width, height: 3 })
  const upright = (x: number, from: number, to: number) => grown(around({ x, y: from }, { x, y: to }), 3)
  const hub = { ...g.hub, radius: g.arm.hub }
  return [
    ...[g.front, g.rear, hub, ...(g.cylinder ? [g.cylinder] : [])].map(drawn).flatMap(strips),
    ...alongLine({ x: X(g.hub.x), y: Y(g.hub.y) }, { x: X(g.front.x), y: Y(g.front.y) }),
    ...alongLine({ x: X(g.hub.x), y: Y(g.hub.y) }, { x: X(g.rear.x), y: Y(g.rear.y) }),
    ...[edgeLine, ground, foot].map(level),
    upright(benchAt, edgeLine, benchLine),
    upright(heightAt, edgeLine, benchLine),
  ]
}
