import type { Box } from './box.ts'
import { type Point, pathOf, px } from './frame.ts'
import type { Circle } from './sideGeometry.ts'
import type { SideLayout } from './sideLayout.ts'

const BLADES = 9
/** Where a blade of the cylinder starts, bends and ends: part of the radius, angle ahead of its tip. */
const SPIDER: readonly (readonly [radius: number, ahead: number])[] = [
  [0.5, 0.3],
  [0.78, 0.2],
  [0.995, 0],
]
export const INNER_RING = 0.5

const turned = (point: Point, about: Point, angle: number): Point => {
  const [x, y] = [point.x - about.x, point.y - about.y]
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  return { x: about.x + x * cos - y * sin, y: about.y + x * sin + y * cos }
}

const onPage =
  ({ X, Y }: SideLayout) =>
  ({ x, y }: Point): Point => ({ x: X(x), y: Y(y) })

export function cylinderBlades(layout: SideLayout, cylinder: Circle): string {
  const page = onPage(layout)
  return Array.from({ length: BLADES }, (_, i) => {
    const tip = (i / BLADES) * 2 * Math.PI - 0.2 + layout.geometry.tilt
    const [from, bend, end] = SPIDER.map(([part, ahead]) =>
      page({
        x: cylinder.x + part * cylinder.radius * Math.cos(tip + ahead),
        y: cylinder.y + part * cylinder.radius * Math.sin(tip + ahead),
      }),
    ) as [Point, Point, Point]
    return `M${px(from.x)} ${px(from.y)}Q${px(bend.x)} ${px(bend.y)} ${px(end.x)} ${px(end.y)}`
  }).join('')
}

/** Patterns from the edge, mm: backwards, up. */
const BLADE: readonly (readonly [number, number])[] = [
  [0, 0],
  [0, -2.2],
  [37, 1],
  [45, 1.8],
  [45, 4.8],
  [34, 4.2],
]
const BAR: readonly (readonly [number, number])[] = [
  [18, 2.2],
  [24, 6.5],
  [33, 16],
  [33, 26],
  [45, 26],
  [45, 4.8],
]

export function bottomBlade(layout: SideLayout): { readonly blade: string; readonly bar: string } {
  const { edge, blade, tilt } = layout.geometry
  const page = onPage(layout)
  const outline = (pattern: typeof BLADE) =>
    pathOf(
      pattern.map(([back, up]) =>
        page(turned({ x: edge.x + back * blade, y: edge.y + up * blade }, edge, tilt)),
      ),
      true,
    )
  return { blade: outline(BLADE), bar: outline(BAR) }
}

/** Outline of a tapered arm, the hull of two circles. */
export function arm(layout: SideLayout, from: Circle, to: Circle): string {
  const apart = Math.hypot(to.x - from.x, to.y - from.y)
  const towards = Math.atan2(to.y - from.y, to.x - from.x)
  const touch = Math.acos(Math.max(-1, Math.min(1, (from.radius - to.radius) / apart)))
  const arc = ({ x, y, radius }: Circle, start: number, sweep: number): Point[] =>
    Array.from({ length: 21 }, (_, i) => {
      const angle = start + (sweep * i) / 20
      return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) }
    })
  const outline = [
    ...arc(from, towards + touch, 2 * Math.PI - 2 * touch),
    ...arc(to, towards - touch, 2 * touch),
  ]
  return pathOf(outline.map(onPage(layout)), true)
}

const SURFACE_STEP = 2

export function surfacePoints({ width, X, Y, scale, geometry }: SideLayout): readonly Point[] {
  const points: Point[] = []
  for (let x = 0; x <= width; x += SURFACE_STEP)
    points.push({ x, y: Y(geometry.surface((x - X(0)) / scale)) })
  return points
}

/** A number in 0 to 1 that looks random and is the same in every drawing of the same stroke. */
const scattered = (i: number, salt: number): number => {
  const turn = Math.sin(i * 12.9898 + salt * 78.233) * 43758.5453
  return turn - Math.floor(turn)
}

const STROKE_EVERY = 3.4
/** Between a label and the grass under it, px. */
const AIR = 3

/** Strokes of grass: uncut ahead of the edge, cut behind it, none under a roller, and none higher than the foot of a label. */
export function grass(layout: SideLayout, labels: readonly Box[]): string {
  const { X, Y, scale, width, geometry: g, exaggeration } = layout
  const cut = g.edge.y
  const uncut = Math.max(cut, exaggeration) * 1.22
  let strokes = ''
  for (let i = 0, along = 2; along < width; i++, along += STROKE_EVERY) {
    const at = along + 2 * scattered(i, 1)
    const x = (at - X(0)) / scale
    const ahead = x < g.edge.x - 1
    const whole = ahead
      ? uncut + Math.max(cut, exaggeration) * 0.2 * scattered(i, 2)
      : cut * (1 - 0.012 * scattered(i, 2))
    const base = Y(g.surface(x))
    const over = labels.filter(({ x: from, width }) => at > from - AIR && at < from + width + AIR)
    const tip = over.reduce(
      (y, box) => (box.y < base && y < box.y + box.height ? box.y + box.height + AIR : y),
      Y(whole),
    )
    const underRoller = [g.front, g.rear].some(roller => Math.abs(x - roller.x) < roller.radius * 0.86)
    if (tip >= base || underRoller) continue
    const lean = (scattered(i, 3) - 0.5) * 3.2 * scale * (ahead ? 1 : 0.6)
    strokes += `M${px(at)} ${px(base)}Q${px(at + lean * 0.2)} ${px(base + (tip - base) * 0.6)} ${px(at + lean)} ${px(tip)}`
  }
  return strokes
}
