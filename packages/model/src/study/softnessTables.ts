import type { RollerOnTurf } from '../contact/index.ts'
import { increasingRoot } from '../numerics/index.ts'
import { evenly, lagrange, placeAmong, STENCIL } from './interpolation.ts'
import { FADED, type InverseTable, inverseTable, MARGIN } from './inverseTable.ts'

/** Tables of one roller for any softness of a map. */
export type SoftnessTables = (softness: number) => InverseTable | undefined

type Question = {
  readonly rollerAt: (softness: number) => RollerOnTurf | undefined
  readonly softnesses: Float64Array
  readonly lnLow: number
  readonly lnHigh: number
}

/** Anchors lie this far apart in ln softness, knots in ln load: six anchors are then read to about 1e-8. */
const ANCHOR_STEP = 0.12
/** What a reading between anchors may miss in ln z, half way; beyond, the softness is tabulated by itself. */
const ANCHOR_MISS = 5e-7
const KNOT_STEP = 0.16
/** A miss this small in ln load is mended along the tangent: that leaves its square. */
const TANGENT = 1e-5

type Anchor = { readonly lnSinkages: Float64Array; readonly slopes: Float64Array }

/** Whether a groove floor is touched in, or not far below, a stretch of ln sinkage. */
const isBent = (on: RollerOnTurf, low: number, high: number): boolean => {
  const touch = Math.log(on.touchFrom)
  return touch > low - FADED && touch < high
}

/** ln sinkage and its slope at fixed loads; undefined where the turf bottoms out or a groove floor is near. */
function anchorAt(
  on: RollerOnTurf,
  lnLoads: Float64Array,
  startFor: (knot: number, above: number) => number,
): Anchor | undefined {
  const count = lnLoads.length
  const lnSinkages = new Float64Array(count)
  const slopes = new Float64Array(count)
  let above = Number.NaN
  for (let i = 0; i < count; i++) {
    const target = lnLoads[i]!
    const root = increasingRoot({
      evaluate: x => {
        const { load, stiffness, sinkage } = on.at(Math.exp(x))
        return { value: Math.log(load) - target, slope: (stiffness * sinkage) / load }
      },
      start: startFor(i, above),
      tolerance: TANGENT,
      ...(Number.isFinite(on.limit) ? { high: Math.log(on.limit) } : {}),
    })
    if (root.outcome !== 'converged') return undefined
    const slope = 1 / root.slope
    lnSinkages[i] = root.at - root.residual * slope
    slopes[i] = slope
    above = root.at + ((lnLoads[i + 1] ?? target) - target) * slope
    if (i === 0 && isBent(on, root.at, root.at + (lnLoads[count - 1]! - target) * slope)) return undefined
  }
  return { lnSinkages, slopes }
}

/** Where a knot of the next anchor should lie: the last four anchors drawn on, else along the tangent. */
function startOf(done: readonly (Anchor | undefined)[], knot: number, tangent: number): number {
  const [d, c, b, a] = [1, 2, 3, 4].map(back => done.at(-back)?.lnSinkages[knot])
  if (d === undefined) return Number.isNaN(tangent) ? Math.log(1e-3) : tangent
  if (c === undefined) return Number.isNaN(tangent) ? d : tangent
  if (b === undefined) return 2 * d - c
  return a === undefined ? 3 * d - 3 * c + b : 4 * d - 6 * c + 4 * b - a
}

/** Every softness tabulated by itself, each search started from the last two. */
function oneByOne({ rollerAt, lnLow, lnHigh }: Question): SoftnessTables {
  const first = Math.log(1e-3)
  let last = Number.NaN
  let before = Number.NaN
  return softness => {
    const on = rollerAt(softness)
    const start = Number.isNaN(last) ? first : Number.isNaN(before) ? last : 2 * last - before
    const table = on && inverseTable(on, lnLow, lnHigh, start)
    before = last
    last = table?.lowLnSinkage ?? Number.NaN
    return table
  }
}

/**
 * Tables for many softnesses from few: ln sinkage at a fixed load is smooth in ln softness, so it is solved at
 * anchors and read between them through six. Where an anchor bottoms out or touches a groove floor (a bend), and where
 * the reading misses half way between two anchors, the softness is tabulated by itself.
 */
export function softnessTables(question: Question): SoftnessTables {
  const { rollerAt, softnesses, lnLow, lnHigh } = question
  const single = oneByOne(question)
  const lowest = Math.log(Math.min(...softnesses))
  const anchors = evenly(lowest, Math.log(Math.max(...softnesses)), ANCHOR_STEP)
  if (softnesses.length <= anchors.values.length) return single
  const knots = evenly(lnLow - MARGIN, lnHigh + MARGIN, KNOT_STEP, 2)
  const found: (Anchor | undefined)[] = []
  for (const lnSoftness of anchors.values) {
    const on = rollerAt(Math.exp(lnSoftness))
    found.push(on && anchorAt(on, knots.values, (knot, tangent) => startOf(found, knot, tangent)))
  }
  /** The anchors about a place, mixed; undefined where one of them has no answer. */
  const mixedAt = (lnSoftness: number): Anchor | undefined => {
    const { first, t } = placeAmong(anchors, lnSoftness)
    const whole = found.slice(first, first + STENCIL).filter(anchor => anchor !== undefined)
    if (whole.length < STENCIL) return undefined
    const weights = lagrange(t)
    const mixed = (pick: (anchor: Anchor) => Float64Array) =>
      knots.values.map((_, k) => whole.reduce((sum, anchor, i) => sum + weights[i]! * pick(anchor)[k]!, 0))
    return { lnSinkages: mixed(anchor => anchor.lnSinkages), slopes: mixed(anchor => anchor.slopes) }
  }
  const deepest = knots.values.length - 1
  /** Whether the mixture is right half way between two anchors, under the greatest load: nearest to locking. */
  const holds = Array.from(anchors.values, lnSoftness => {
    const half = lnSoftness + anchors.step / 2
    const mixture = mixedAt(half)
    const on = mixture && rollerAt(Math.exp(half))
    if (!on || !mixture) return false
    const { load } = on.at(Math.exp(mixture.lnSinkages[deepest]!))
    return Math.abs(Math.log(load) - knots.values[deepest]!) * mixture.slopes[deepest]! <= ANCHOR_MISS
  })
  return softness => {
    const lnSoftness = Math.log(softness)
    const mixture = holds[placeAmong(anchors, lnSoftness).below] ? mixedAt(lnSoftness) : undefined
    if (!mixture) return single(softness)
    return {
      stretches: [
        {
          origin: { lnLoad: 0, lnSinkage: 0, rooted: false },
          loads: knots.values,
          sinkages: mixture.lnSinkages,
          slopes: mixture.slopes,
          topLnLoad: knots.values.at(-1)!,
        },
      ],
      lowLnLoad: knots.values[0]!,
      lowLnSinkage: mixture.lnSinkages[0]!,
      highLnSinkage: mixture.lnSinkages.at(-1)!,
    }
  }
}
