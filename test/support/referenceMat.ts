import type { ReferenceLaw } from './referenceLaws.ts'

/** A turf mat on a line of nodes: depth at each, and the load its springs carry per length. */
type Mat = { readonly depth: Float64Array; readonly carried: number; readonly firstCell: number }

const MOST_TURNS = 4000
const CLOSE = 1e-13

/** Tridiagonal system, symmetric but for held nodes; in place. */
function solved(
  low: Float64Array,
  middle: Float64Array,
  high: Float64Array,
  right: Float64Array,
): Float64Array {
  const n = middle.length
  for (let i = 1; i < n; i++) {
    const factor = low[i]! / middle[i - 1]!
    middle[i]! -= factor * high[i - 1]!
    right[i]! -= factor * right[i - 1]!
  }
  right[n - 1]! /= middle[n - 1]!
  for (let i = n - 2; i >= 0; i--) right[i] = (right[i]! - high[i]! * right[i + 1]!) / middle[i]!
  return right
}

/**
 * G u″ = p(u) by finite volumes: depth held at the first node, level at the last, nowhere above a floor.
 *
 * Newton's method for laws with a finite slope at zero; for exponents below one the secant iteration, because there the
 * slope of pressure is infinite where the mat comes to rest. The floor is an active set.
 */
export function matBy(question: {
  readonly law: ReferenceLaw
  readonly G: number
  readonly places: Float64Array
  readonly held: number
  /** Shallowest depth the mat may have. */
  readonly floor?: number
  readonly secant?: boolean
}): Mat {
  const { law, G, places, held, floor = Number.NEGATIVE_INFINITY, secant = false } = question
  const n = places.length
  const cell = Float64Array.from(
    places,
    (_, i) => ((places[i + 1] ?? places[i]!) - (places[i - 1] ?? places[i]!)) / 2,
  )
  const link = Float64Array.from({ length: n - 1 }, (_, i) => G / (places[i + 1]! - places[i]!))
  const depth = new Float64Array(n).fill(Math.max(held, 0))
  let lies = new Uint8Array(n)
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const low = new Float64Array(n)
    const middle = new Float64Array(n)
    const high = new Float64Array(n)
    const right = new Float64Array(n)
    const lying = new Uint8Array(n)
    middle[0] = 1
    right[0] = held - depth[0]!
    for (let i = 1; i < n; i++) {
      const before = link[i - 1]!
      const after = link[i] ?? 0
      const here = depth[i]!
      const pressure = here > 0 ? law.pressure(here) : 0
      const residual =
        before * (here - depth[i - 1]!) + after * (here - (depth[i + 1] ?? here)) + cell[i]! * pressure
      const stiffness = before + after
      if ((lies[i] ? residual : 0) + stiffness * (floor - here) > 0) {
        lying[i] = 1
        middle[i] = 1
        right[i] = floor - here
        continue
      }
      const tiny = 1e-30
      const slope = secant ? pressure / Math.max(here, tiny) : law.slope(Math.max(here, tiny))
      low[i] = -before
      high[i] = -after
      middle[i] = stiffness + cell[i]! * Math.min(slope, 1e30)
      right[i] = -residual
    }
    const step = solved(low, middle, high, right)
    let largest = 0
    for (let i = 0; i < n; i++) {
      // a step may not leave the law: halfway to its limit at most
      const next = depth[i]! + step[i]!
      const kept = next < law.limit ? next : (depth[i]! + law.limit) / 2
      largest = Math.max(largest, Math.abs(kept - depth[i]!))
      depth[i] = secant && kept < 0 ? 0 : kept
    }
    const settled = largest <= CLOSE * held && lying.every((value, i) => value === lies[i])
    lies = lying
    if (settled) {
      let carried = 0
      for (let i = 0; i < n; i++) carried += cell[i]! * (depth[i]! > 0 ? law.pressure(depth[i]!) : 0)
      return { depth, carried, firstCell: cell[0]! * law.pressure(held) }
    }
  }
  throw new Error('the mat did not settle')
}

/** Places from an edge outwards, evenly spaced at first and then ever further apart: x = reach sinh(b t)/sinh b. */
export const widening = (from: number, reach: number, count: number, b = 4): Float64Array =>
  Float64Array.from(
    { length: count + 1 },
    (_, i) => from + (reach * Math.sinh((b * i) / count)) / Math.sinh(b),
  )

export const evenly = (length: number, count: number): Float64Array =>
  Float64Array.from({ length: count + 1 }, (_, i) => (length * i) / count)

/** Where an increasing function of one number crosses zero, by halving. */
export function halved(value: (x: number) => number, low: number, high: number, turns = 60): number {
  let [from, to] = [low, high]
  for (let turn = 0; turn < turns; turn++) {
    const middle = (from + to) / 2
    if (value(middle) > 0) to = middle
    else from = middle
  }
  return (from + to) / 2
}
