import { type Curve, LOCKING_LIMIT, REFERENCE_PRESSURE } from './lawKind.ts'
import { RESTS_BELOW, restReachOf } from './restReach.ts'

/** Parts of its own depth at which a locking layer bends the whole: it is split there, the rest halved each time. */
const KNEES = [0.5, 0.75, 0.875, 0.9375, 0.96875, 0.984375]
const MOST_TURNS = 100
/** Longest step, in ln p. */
const FURTHEST = 4
/** On ln z: one more of Newton's steps then leaves its square. */
const NEARLY = 1e-8

/** The state a series was last asked for: kernels ask pressure, slope and work of one depth in a row. */
type State = { sinkage: number; pressure: number; give: number; readonly parts: Float64Array }

const ascending = (values: number[]): number[] =>
  [...new Set(values)].filter(value => value > 0).sort((a, b) => a - b)

/**
 * Layers in series as one curve: the same pressure in all, their sinkages add up.
 *
 *   z(p) = Σ zᵢ(p),  1/p′ = Σ 1/pᵢ′,  Φ = Σ Φᵢ(zᵢ)
 *
 * z(p) is explicit, p(z) by Newton's method in logarithms. The split of a depth between the layers minimises their
 * work, so an error in the split enters the work squared: differences of work keep their digits.
 *
 * Source  springs in series; the remark on the split is the project's own
 */
export function series(layers: readonly Curve[], softness: number): Curve {
  const sinkage = (pressure: number): number => {
    let sum = 0
    for (const layer of layers) sum += layer.sinkage(pressure)
    return sum
  }
  const state: State = { sinkage: Number.NaN, pressure: 0, give: 0, parts: new Float64Array(layers.length) }
  const beyond: State = { ...state, parts: new Float64Array(layers.length) }

  /** Fills the parts at a pressure; their sum. `give` is dz/dp. */
  const fill = (into: State, pressure: number): number => {
    let sum = 0
    let give = 0
    for (let i = 0; i < layers.length; i++) {
      const part = layers[i]!.sinkage(pressure)
      into.parts[i] = part
      sum += part
      give += 1 / layers[i]!.slope(part)
    }
    into.pressure = pressure
    into.give = give
    return sum
  }
  /** What rounding and the last step leave over goes to the softest layer. */
  const settle = (into: State, wanted: number, sum: number) => {
    let most = 0
    for (let i = 1; i < layers.length; i++) if (into.parts[i]! > into.parts[most]!) most = i
    into.parts[most] = Math.max(0, into.parts[most]! + wanted - sum)
    into.sinkage = wanted
  }
  const solve = (into: State, wanted: number, start: number): State => {
    if (into.sinkage === wanted) return into
    if (wanted === 0) {
      fill(into, 0)
      into.parts.fill(0)
      into.sinkage = 0
      return into
    }
    const target = Math.log(wanted)
    let low = Number.NEGATIVE_INFINITY
    let high = Number.POSITIVE_INFINITY
    let x = Math.log(start)
    for (let turn = 0; turn < MOST_TURNS; turn++) {
      const sum = fill(into, Math.exp(x))
      const miss = Math.log(sum) - target
      const step = -miss * (sum / (into.give * into.pressure))
      // so near a root the step is right; a bracket as narrow as rounding has no better
      if (Math.abs(miss) <= NEARLY || high - low <= Number.EPSILON * Math.abs(x)) {
        settle(into, wanted, fill(into, Math.exp(Number.isFinite(step) ? x + step : x)))
        return into
      }
      if (miss > 0) high = x
      else low = x
      let next = x + Math.max(-FURTHEST, Math.min(FURTHEST, step))
      if (!(next > low && next < high)) next = (low + high) / 2
      if (!Number.isFinite(next)) next = miss > 0 ? x - 1 : x + 1
      x = next
    }
    settle(into, wanted, fill(into, Math.exp(x)))
    return into
  }
  /** From the state asked before, along its tangent in logarithms. */
  const asked = (depth: number): State => {
    if (state.sinkage === depth) return state
    const { sinkage: from, pressure, give } = state
    const start =
      from > 0 && pressure > 0
        ? pressure * (depth / from) ** Math.min(Math.max(from / (give * pressure), 0.2), 5)
        : REFERENCE_PRESSURE * (depth / softness)
    return solve(state, depth, start)
  }

  const locking = layers.filter(layer => Number.isFinite(layer.limit))
  const locksAt = Math.min(...locking.map(layer => layer.pressure(layer.limit)))
  const limit = locking.length > 0 ? sinkage(locksAt) : Number.POSITIVE_INFINITY
  const pole = limit / LOCKING_LIMIT
  const knees = locking.flatMap(layer => KNEES.map(part => layer.pressure(part * layer.pole)))
  const pressuresAt = (of: 'breaks' | 'corners') =>
    layers.flatMap(layer => (layer[of] ?? []).map(depth => layer.pressure(depth)))
  const depths = (pressures: readonly number[]) => ascending(pressures.map(sinkage))
  const known = layers.flatMap(({ knownTo }) => (knownTo === undefined ? [] : [knownTo]))
  const powerAtZero = Math.max(...layers.map(layer => layer.powerAtZero ?? 1))

  const work = (depth: number): number => {
    const { parts } = asked(depth)
    let sum = 0
    for (let i = 0; i < layers.length; i++) sum += layers[i]!.work(parts[i]!)
    return sum
  }
  // kernels ask for the work between two depths and then for the pressure at the lower one: the upper one stays known
  const pressure = (depth: number): number =>
    beyond.sinkage === depth ? beyond.pressure : asked(depth).pressure
  const curve: Curve = {
    pressure,
    slope: depth => 1 / asked(depth).give,
    work,
    workBetween: (depth, by) => {
      const { parts, pressure: from, give } = asked(depth)
      beyond.sinkage = Number.NaN
      solve(beyond, depth + by, from > 0 ? from + by / give : REFERENCE_PRESSURE * ((depth + by) / softness))
      // the steps of the layers, made to add up to the step asked for
      let sum = 0
      let most = 0
      for (let i = 0; i < layers.length; i++) {
        beyond.parts[i] = Math.max(0, beyond.parts[i]! - parts[i]!)
        sum += beyond.parts[i]!
        if (beyond.parts[i]! > beyond.parts[most]!) most = i
      }
      beyond.parts[most] = Math.max(0, beyond.parts[most]! + by - sum)
      let gained = 0
      for (let i = 0; i < layers.length; i++) gained += layers[i]!.workBetween(parts[i]!, beyond.parts[i]!)
      return gained
    },
    sinkage,
    pole,
    limit,
    powerAtZero,
    breaks: depths([...knees, ...pressuresAt('breaks')]),
    corners: depths([...knees, ...pressuresAt('corners')]),
    pressureBreaks: ascending(pressuresAt('breaks')),
    ...(locking.length > 0
      ? {
          partOfPole: (depth: number) => {
            const at = asked(depth).pressure
            return Math.max(...locking.map(layer => layer.sinkage(at) / layer.pole))
          },
        }
      : {}),
    ...(known.length > 0 ? { knownTo: Math.min(...known) } : {}),
  }
  return powerAtZero < RESTS_BELOW ? { ...curve, restReach: restReachOf(curve, softness) } : curve
}
