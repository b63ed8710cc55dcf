import { type Condition, loadAt, pressureAt, type Roller, sinkageAt, type Turf } from '@swardsink/model'

/** SI: a load or a pressure, and the sinkage it gives. */
export type CurvePoint = { readonly x: number; readonly sinkage: number }

export type CurveFound = {
  /** From nothing to the end of the axis, or to where the turf bottoms out. */
  readonly points: readonly CurvePoint[]
  /** Beyond this load or pressure the law of the turf is only carried on; null where it holds throughout. */
  readonly knownTo: number | null
  readonly bottomsOut: boolean
}

export type Pressing = { readonly roller: Roller; readonly turf: Turf; readonly condition: Condition }

/** Points crowd at the surface, where a curve turns most. */
const CROWDING = 1.5
/** So much of the locking depth is drawn; beyond it the model says bottomed out. */
const LAST_PART = 0.989
const GROWTH = 1.35
const MOST_STEPS = 40

function loadOn(pressing: Pressing, sinkage: number) {
  const loaded = loadAt({ ...pressing, sinkage })
  return loaded.outcome === 'settled' ? loaded : null
}

/** A depth whose load is at least `most`; where there is none, the last one with an answer. */
function deepestFor(pressing: Pressing, q: { readonly most: number; readonly start: number }) {
  const { law } = pressing.turf
  const locked = 'lockingDepth' in law ? LAST_PART * law.lockingDepth : Number.POSITIVE_INFINITY
  let depth = Math.min(q.start, locked)
  for (let step = 0; step < MOST_STEPS; step++) {
    const loaded = loadOn(pressing, depth)
    if (loaded && loaded.load >= q.most) return { depth, bottomsOut: false }
    if (depth === locked) break
    if (!loaded) return { depth: depth / GROWTH, bottomsOut: true }
    depth = Math.min(locked, depth * GROWTH)
  }
  return { depth, bottomsOut: true }
}

/** Depths at even parts of the whole, crowded at the surface. */
const spaced = (deepest: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => deepest * ((i + 1) / count) ** CROWDING)

/** A point of a curve between two others: loads and pressures go nearly as a power of the depth. */
export function pointAt(points: readonly CurvePoint[], x: number): CurvePoint | null {
  const next = points.findIndex(point => point.x >= x)
  const [before, b, after] = [points[next - 1], points[next], points[next + 1]]
  if (!b || x < 0) return null
  if (x === 0 || b.x === x) return { x, sinkage: x === 0 ? 0 : b.sinkage }
  // Nothing has no logarithm: before the first point the power of the next stretch is carried back.
  const a = before && before.x > 0 ? before : after
  if (!a) return { x, sinkage: (b.sinkage * x) / b.x }
  const part = Math.log(x / b.x) / Math.log(a.x / b.x)
  return { x, sinkage: b.sinkage * (a.sinkage / b.sinkage) ** part }
}

/** A curve cut off at the end of the axis, with a point of its own where its law ends to be known. */
function cut(points: readonly CurvePoint[], q: { readonly most: number; readonly knownTo: number | null }) {
  const ends = [q.most, ...(q.knownTo === null ? [] : [q.knownTo])]
  const added = ends.flatMap(x => pointAt(points, x) ?? [])
  return [...points.filter(({ x }) => x < q.most && !ends.includes(x)), ...added].sort((a, b) => a.x - b.x)
}

/** Load against sinkage of one roller. `start` is a depth to begin the search with. */
export function loadCurve(
  pressing: Pressing,
  q: { readonly most: number; readonly count: number; readonly start: number },
): CurveFound {
  const { law } = pressing.turf
  const { depth, bottomsOut } = deepestFor(pressing, q)
  const loaded = spaced(depth, q.count).map(sinkage => ({ sinkage, found: loadOn(pressing, sinkage) }))
  const points = [
    { x: 0, sinkage: 0 },
    ...loaded.flatMap(({ sinkage, found }) => (found ? [{ x: found.load, sinkage }] : [])),
  ]
  const limit = loaded.at(-1)?.found?.cautions.find(({ kind }) => kind === 'extrapolated')?.limit
  const known = limit === undefined ? null : loadOn(pressing, sinkageAt(law, limit))
  const knownTo = known && known.load < q.most ? known.load : null
  return { points: cut(points, { most: q.most, knownTo }), knownTo, bottomsOut }
}

/** Pressure against sinkage of a turf: under a wide flat plate, and at the lowest line of any roller. */
export function pressureCurve(
  pressing: Pressing,
  q: { readonly most: number; readonly count: number },
): CurveFound {
  const { law } = pressing.turf
  const deepest = sinkageAt(law, q.most)
  // What a law is known to, the model tells on whatever is pressed beyond it.
  const caution = loadOn(pressing, deepest)?.cautions.find(({ kind }) => kind === 'extrapolated')
  const knownTo = caution?.limit !== undefined && caution.limit < q.most ? caution.limit : null
  const points = [0, ...spaced(deepest, q.count).slice(0, -1)].map(sinkage => ({
    x: pressureAt(law, sinkage),
    sinkage,
  }))
  return {
    points: cut([...points, { x: q.most, sinkage: deepest }], { most: q.most, knownTo }),
    knownTo,
    bottomsOut: false,
  }
}
