import type { Box } from './box.ts'
import type { Point } from './frame.ts'

/** A leader leaves a label from the middle of the side that faces its target. */
export function leaderStart({ x, y, width, height }: Box, target: Point): Point {
  const middle = y + height / 2
  if (target.x > x + width) return { x: x + width + 3, y: middle }
  if (target.x < x) return { x: x - 3, y: middle }
  return { x: x + width / 2, y: target.y > middle ? y + height + 1 : y - 1 }
}

const PIECE = 8
const HALF = 2

/** A slanting line as a row of small boxes. */
export function alongLine(from: Point, to: Point): readonly Box[] {
  const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / PIECE))
  return Array.from({ length: steps + 1 }, (_, i) => {
    const at = (a: number, b: number) => a + ((b - a) * i) / steps
    return { x: at(from.x, to.x) - HALF, y: at(from.y, to.y) - HALF, width: 2 * HALF, height: 2 * HALF }
  })
}

const distance = ({ x, y, width, height }: Box, to: Point): number =>
  Math.hypot(Math.max(x - to.x, 0, to.x - x - width), Math.max(y - to.y, 0, to.y - y - height))

/** A leader is left out where the label stands this close, px. */
const NEAR = 10

export const needsLeader = (box: Box, target: Point): boolean => distance(box, target) >= NEAR
