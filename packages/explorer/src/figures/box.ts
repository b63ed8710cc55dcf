import type { Point } from './frame.ts'

/** An upright rectangle, px, y down. */
export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number }

export const overlaps = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height

/** Area that two boxes share. */
export const shared = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)) *
  Math.max(0, Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y))

export const inside = (inner: Box, outer: Box): boolean =>
  inner.x >= outer.x &&
  inner.y >= outer.y &&
  inner.x + inner.width <= outer.x + outer.width &&
  inner.y + inner.height <= outer.y + outer.height

export const grown = ({ x, y, width, height }: Box, by: number): Box => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
})

export const around = (a: Point, b: Point): Box => ({
  x: Math.min(a.x, b.x),
  y: Math.min(a.y, b.y),
  width: Math.abs(a.x - b.x),
  height: Math.abs(a.y - b.y),
})

/** The box moved by as little as brings it inside; a box that is too large keeps its left or top edge. */
export const kept = (box: Box, within: Box): Box => ({
  ...box,
  x: Math.max(within.x, Math.min(box.x, within.x + within.width - box.width)),
  y: Math.max(within.y, Math.min(box.y, within.y + within.height - box.height)),
})
