/** What was found on one side of a fitted value. */
export type Side =
  | { readonly kind: 'end'; readonly at: number }
  /** No end as far as `reached`. */
  | { readonly kind: 'open'; readonly reached: number; readonly reason: 'bound' | 'no answer' | 'far' }
  /** A better fit than the one the profile started from. */
  | { readonly kind: 'lower sum'; readonly at: number }

type SideQuestion = {
  /** How far a value is past the limit, in standard errors; null where there is no answer. */
  readonly distance: (value: number) => number | null
  readonly value: number
  readonly toward: -1 | 1
  /** Where a straight model would have the end. */
  readonly step: number
  readonly bound: number
  /** How far the fit itself is from the limit. */
  readonly reach: number
}

type Point = { readonly at: number; readonly past: number }

/** Doublings of the step before a side is given up as open: a thousand times as wide as a straight model's. */
const DOUBLINGS = 10
/** Halvings towards where the model's answers end. */
const HALVINGS = 12
/** A sum smaller than the fit's by so many standard errors is a better fit. */
const BETTER = 0.03
/** The end is found to this part of the step. */
const CLOSE = 1e-9
const TURNS = 60

/** Steps from a point that has an answer towards one that has none, for a point past the limit. */
function beforeTheEnd(distance: SideQuestion['distance'], from: Point, to: number): Point {
  let last = from
  let without = to
  for (let halving = 0; halving < HALVINGS; halving++) {
    const at = (last.at + without) / 2
    const past = distance(at)
    if (past === null) without = at
    else {
      last = { at, past }
      if (past >= 0) break
    }
  }
  return last
}

/** Where the limit is crossed between a point inside and one past it: regula falsi by the Illinois rule. */
function crossing({ distance, step, reach }: SideQuestion, inside: Point, outside: Point): Side {
  let [inner, outer] = [inside, outside]
  let stale = 0
  let at = outer.at
  for (let turn = 0; turn < TURNS && Math.abs(outer.at - inner.at) > CLOSE * step; turn++) {
    at = inner.at + ((outer.at - inner.at) * inner.past) / (inner.past - outer.past)
    const past = distance(at)
    if (past === null || Math.abs(past) < CLOSE) break
    if (past < -reach - BETTER) return { kind: 'lower sum', at }
    if (past < 0) {
      inner = { at, past }
      if (stale < 0) outer = { at: outer.at, past: outer.past / 2 }
    } else {
      outer = { at, past }
      if (stale > 0) inner = { at: inner.at, past: inner.past / 2 }
    }
    stale = Math.sign(past)
  }
  return { kind: 'end', at }
}

/** The end of an interval on one side: steps outward that double until the limit is passed, then where it is crossed. */
export function sideOf(question: SideQuestion): Side {
  const { distance, value, toward, step, bound, reach } = question
  let inner: Point = { at: value, past: -reach }
  for (let turn = 0; turn <= DOUBLINGS; turn++) {
    const wanted = value + toward * step * 2 ** turn
    const at = toward < 0 ? Math.max(wanted, bound) : Math.min(wanted, bound)
    if (at === inner.at) return { kind: 'open', reached: bound, reason: 'bound' }
    const past = distance(at)
    const point = past === null ? beforeTheEnd(distance, inner, at) : { at, past }
    if (point.past < -reach - BETTER) return { kind: 'lower sum', at: point.at }
    if (point.past >= 0) return crossing(question, inner, point)
    if (past === null) return { kind: 'open', reached: point.at, reason: 'no answer' }
    inner = point
  }
  return { kind: 'open', reached: inner.at, reason: 'far' }
}
