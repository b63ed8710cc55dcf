import { describe, type Problem } from '../quantities/index.ts'

/** The arc of the roller: the parabola of the closed forms, or the true circle. */
export type Arc = 'parabola' | 'circle'

/** h(x): how far the surface lies above its lowest line. Positional numbers: these run inside every kernel. */
export type ArcShape = {
  readonly name: Arc
  readonly height: (x: number, radius: number) => number
  /** h′(x). */
  readonly slope: (x: number, radius: number) => number
  /** The x at which h is this. */
  readonly reach: (height: number, radius: number) => number
  /** The x at which h′ is this. */
  readonly reachOfSlope: (slope: number, radius: number) => number
  /** 1 + h · d ln(1/h′)/dh: how an integral over x grows when the arc is sunk deeper. */
  readonly stretch: (height: number, radius: number) => number
  /** Greatest height of the arc as a part of the radius. */
  readonly tallest: number
}

const parabola: ArcShape = {
  name: 'parabola',
  height: (x, R) => (x * x) / (2 * R),
  slope: (x, R) => x / R,
  reach: (h, R) => Math.sqrt(2 * R * h),
  reachOfSlope: (slope, R) => R * slope,
  stretch: () => 0.5,
  tallest: Number.POSITIVE_INFINITY,
}

const circle: ArcShape = {
  name: 'circle',
  // R − √(R² − x²) loses digits near the lowest line
  height: (x, R) => (x * x) / (R + Math.sqrt(R * R - x * x)),
  slope: (x, R) => x / Math.sqrt(R * R - x * x),
  reach: (h, R) => Math.sqrt(h * (2 * R - h)),
  reachOfSlope: (slope, R) => (R * slope) / Math.sqrt(1 + slope * slope),
  stretch: (h, R) => 0.5 + (0.5 * h) / (2 * R - h) - h / (R - h),
  tallest: 1,
}

const arcs = { parabola, circle } as const

export const arcOf = (name: Arc): ArcShape => arcs[name]

export const arcProblems = (arc: Arc, path: string): Problem[] =>
  Object.hasOwn(arcs, arc) ? [] : [{ path, expected: 'one of parabola, circle', received: describe(arc) }]
