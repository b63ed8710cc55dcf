import { gaussLegendre } from '../../numerics/index.ts'
import type { Curve } from '../laws/lawKind.ts'
import { RESTS_BELOW, restReachOf } from '../laws/restReach.ts'
import type { FormulaRange } from './formulaRange.ts'
import { type Program, runProgram } from './program.ts'

const POINTS = 12
const { nodes, weights } = gaussLegendre(POINTS)
/** Nearer to zero than this part of the range the expression may cancel: a power law that meets it in value and slope. */
const NEAR_ZERO = 1e-9
/** A panel is halved until its work is right to this part of it, or to what rounding leaves of the greatest pressure. */
const CLOSE = 1e-13
const ROUNDING = 1e-15
const MOST_HALVINGS = 12
/** An exponent at zero this near one is one. */
const STRAIGHT = 1e-3
const MOST_TURNS = 60

/**
 * A checked expression as a curve.
 *
 * Φ by panels, doubling from zero, split at corners and halved until two rules agree; past the range checked the last
 * slope is continued.
 */
export function formulaCurve(program: Program, parameters: ArrayLike<number>, range: FormulaRange): Curve {
  const end = range.sinkage
  const least = NEAR_ZERO * end
  const one = new Float64Array(1)
  const value = new Float64Array(1)
  const rise = new Float64Array(1)
  const column = new Float64Array(POINTS)
  const columnValues = new Float64Array(POINTS)
  const columnSlopes = new Float64Array(POINTS)
  let asked = Number.NaN
  const ask = (depth: number) => {
    if (depth === asked) return
    one[0] = depth
    runProgram(program, parameters, one, 1, value, rise)
    asked = depth
  }
  const gauss = (from: number, by: number): number => {
    for (let i = 0; i < POINTS; i++) column[i] = from + by * nodes[i]!
    runProgram(program, parameters, column, POINTS, columnValues, columnSlopes)
    let sum = 0
    for (let i = 0; i < POINTS; i++) sum += weights[i]! * columnValues[i]!
    return by * sum
  }
  ask(least)
  const leastPressure = value[0]!
  const exponent = (least * rise[0]!) / leastPressure
  // work of the power law, and of what the expression has over it, u = least q³ against the power at zero
  let leastWork = (leastPressure * least) / (exponent + 1)
  for (let i = 0; i < POINTS; i++) column[i] = least * nodes[i]! ** 3
  runProgram(program, parameters, column, POINTS, columnValues, columnSlopes)
  for (let i = 0; i < POINTS; i++) {
    const over = columnValues[i]! - leastPressure * nodes[i]! ** (3 * exponent)
    leastWork += 3 * least * weights[i]! * nodes[i]! ** 2 * over
  }
  ask(end)
  const endPressure = value[0]!
  const endSlope = rise[0]!

  const corners = range.corners.map(({ sinkage }) => sinkage).filter(depth => depth > least && depth < end)
  const edges = [0, least]
  const worked = [0, leastWork]
  const split: number[] = [...corners]
  const panel = (from: number, to: number, work: number, halvings: number): void => {
    const middle = (from + to) / 2
    const first = gauss(from, middle - from)
    const second = gauss(middle, to - middle)
    if (
      Math.abs(first + second - work) <= CLOSE * work + ROUNDING * endPressure * (to - from) ||
      halvings === 0
    ) {
      edges.push(to)
      worked.push(worked.at(-1)! + first + second)
      return
    }
    split.push(middle)
    panel(from, middle, first, halvings - 1)
    panel(middle, to, second, halvings - 1)
  }
  const stops = [...corners]
  for (let depth = 2 * least; depth < end; depth *= 2) stops.push(depth)
  stops.push(end)
  stops.sort((a, b) => a - b)
  for (const stop of stops) {
    const from = edges.at(-1)!
    if (stop > from) panel(from, stop, gauss(from, stop - from), MOST_HALVINGS)
  }
  const last = edges.length - 1

  const pressure = (depth: number): number => {
    if (depth < least) return leastPressure * (depth / least) ** exponent
    if (depth > end) return endPressure + endSlope * (depth - end)
    ask(depth)
    return value[0]!
  }
  const slope = (depth: number): number => {
    if (depth < least) return ((exponent * leastPressure) / least) * (depth / least) ** (exponent - 1)
    if (depth > end) return endSlope
    ask(depth)
    return rise[0]!
  }
  const edgePressures = edges.map(pressure)
  /** The panel a value of an ascending list lies in. */
  const seek = (list: readonly number[], wanted: number): number => {
    let low = 0
    let high = last
    if (wanted >= list[last]!) return last
    while (high - low > 1) {
      const middle = (low + high) >> 1
      if (list[middle]! <= wanted) low = middle
      else high = middle
    }
    return low
  }
  /** Work of a step within one panel. */
  const piece = (at: number, from: number, by: number): number => {
    if (by === 0) return 0
    if (at === last) return by * (pressure(from) + (endSlope * by) / 2)
    if (at > 0) return gauss(from, by)
    if (from === 0) return (pressure(by) * by) / (exponent + 1)
    return ((pressure(from) * from) / (exponent + 1)) * Math.expm1((exponent + 1) * Math.log1p(by / from))
  }
  // a mat is followed from one turning point at a time: its work down to the next edge is kept
  let kept = Number.NaN
  let keptWork = 0
  const downToEdge = (at: number, depth: number): number => {
    if (kept !== depth) {
      keptWork = piece(at, depth, edges[at + 1]! - depth)
      kept = depth
    }
    return keptWork
  }
  const workBetween = (depth: number, by: number): number => {
    const to = depth + by
    const a = seek(edges, depth)
    const b = seek(edges, to)
    if (a === b) return piece(a, depth, by)
    return downToEdge(a, depth) + (worked[b]! - worked[a + 1]!) + piece(b, edges[b]!, to - edges[b]!)
  }
  const work = (depth: number): number => {
    const at = seek(edges, depth)
    return worked[at]! + piece(at, edges[at]!, depth - edges[at]!)
  }
  const sinkage = (wanted: number): number => {
    if (wanted <= leastPressure) return least * (wanted / leastPressure) ** (1 / exponent)
    if (wanted >= endPressure) return end + (wanted - endPressure) / endSlope
    const at = seek(edgePressures, wanted)
    let low = edges[at]!
    let high = edges[at + 1]!
    let depth =
      low + ((high - low) * (wanted - edgePressures[at]!)) / (edgePressures[at + 1]! - edgePressures[at]!)
    for (let turn = 0; turn < MOST_TURNS; turn++) {
      const miss = pressure(depth) - wanted
      if (miss > 0) high = depth
      else low = depth
      let next = depth - miss / slope(depth)
      if (!(next > low && next < high)) next = (low + high) / 2
      if (Math.abs(next - depth) <= Number.EPSILON * depth) return next
      depth = next
    }
    return depth
  }
  split.sort((a, b) => a - b)
  const powerAtZero = Math.abs(exponent - 1) < STRAIGHT ? 1 : exponent
  const curve: Curve = {
    pressure,
    slope,
    work,
    workBetween,
    sinkage,
    pole: Number.POSITIVE_INFINITY,
    limit: Number.POSITIVE_INFINITY,
    powerAtZero,
    breaks: [...split, end],
    corners: split,
    column: (depths, count, pressures, slopes) => {
      runProgram(program, parameters, depths, count, pressures, slopes)
      for (let i = 0; i < count; i++) {
        const depth = depths[i]!
        if (depth >= least && depth <= end) continue
        pressures[i] = pressure(depth)
        slopes[i] = slope(depth)
      }
    },
    knownTo: endPressure,
  }
  return powerAtZero < RESTS_BELOW
    ? { ...curve, restReach: restReachOf(curve, curve.sinkage(endPressure)) }
    : curve
}
