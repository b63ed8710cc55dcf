import { leaveRest } from './cycle.ts'
import { dot, gradients, type Room, roomFor } from './gradients.ts'
import { fillHierarchy, hierarchyOf, type Level } from './hierarchy.ts'
import { type Mesh, newField } from './mesh.ts'
import { type Obstacle, obstacleField } from './obstacle.ts'
import { type Springs, springsOf } from './springs.ts'

/** The mat at rest under the roller on one mesh. */
export type Mat = {
  readonly mesh: Mesh
  /** Depth of every node. */
  readonly depth: Float64Array
  readonly obstacle: Float64Array
  /** Force of the roller on every node, N; 0 where the mat hangs free. */
  readonly reaction: Float64Array
  /** Sum of what the turf answers with: by the balance also the sum of the roller's forces, N. */
  readonly load: number
  readonly cycles: number
  readonly turns: number
  /** Part of the load that hangs from the roller's edges: carried by turf that the roller does not touch. */
  readonly hanging: number
  /** What is left of the balance, as a part of the load: bounds the error that is left in the load. */
  readonly imbalance: number
}

const MOST_TURNS = 60
/** A node that moves further than this part of its depth is balanced by itself instead of by its last slope. */
const FAR = 0.3
const ENOUGH = 0.2
const MOST_STEPS = 3

/** Balances every node in turn against its neighbours, pressed down where the roller is. */
function sweep(mesh: Mesh, springs: Springs, obstacle: Float64Array, deepest: number, u: Float64Array): void {
  const { rows, width, west, east, south, north, along, across } = mesh
  const { fixed, slope, about, balance } = springs
  for (let colour = 0; colour < 2; colour++)
    for (let i = 0; i < rows; i++) {
      const w = west[i]!
      const e = east[i]!
      const share = along.share[i]!
      for (let j = (i + colour) & 1; j < width; j += 2) {
        const k = (i + 1) * width + j
        const wide = across.share[j]!
        const pull =
          wide * (w * u[k - width]! + e * u[k + width]!) +
          share * (south[j]! * u[k - 1]! + north[j]! * u[k + 1]!)
        const diagonal = wide * (w + e) + share * (south[j]! + north[j]!)
        const low = obstacle[k]!
        let next = (pull - fixed[k]!) / (diagonal + slope[k]!)
        if (about[k] === 0 || Math.abs(next - about[k]!) > FAR * about[k]!)
          next = balance(k, diagonal, pull, low, deepest)
        u[k] = Math.min(Math.max(next, low), deepest)
      }
    }
}

/** rest = what the mat and the turf leave unbalanced on each node: positive pulls it down. */
function unbalanced(mesh: Mesh, { fixed, slope }: Springs, u: Float64Array, rest: Float64Array): void {
  const { rows, width, west, east, south, north, along, across } = mesh
  for (let i = 0; i < rows; i++) {
    const w = west[i]!
    const e = east[i]!
    const share = along.share[i]!
    for (let j = 0; j < width; j++) {
      const k = (i + 1) * width + j
      const wide = across.share[j]!
      const s = south[j]!
      const n = north[j]!
      const here = u[k]!
      const turf = here === 0 ? 0 : fixed[k]! + slope[k]! * here
      rest[k] =
        wide * (w * (u[k - width]! - here) + e * (u[k + width]! - here)) +
        share * (s * (u[k - 1]! - here) + n * (u[k + 1]! - here)) -
        turf
    }
  }
}

/**
 * Cuts a step off where it would run into the roller or below its lowest line. A step that was cut may pass the least
 * energy along what is left of it: the part to take, so that no turn ever gains energy and none can go in circles.
 */
function stepWithin(
  finest: Level,
  { image, nothing }: Room,
  u: Float64Array,
  obstacle: Float64Array,
  deepest: number,
  step: Float64Array,
  pull: Float64Array,
): number {
  let cut = false
  for (let k = 0; k < step.length; k++) {
    const to = u[k]! + step[k]!
    const low = obstacle[k]!
    if (to < low || to > deepest) {
      step[k] = (to < low ? low : deepest) - u[k]!
      cut = true
    }
  }
  if (!cut) return 1
  const most = -dot(step, pull) / leaveRest(finest, step, nothing, image)
  return most > 0 ? Math.min(1, most) : 0
}

type Balance = { left: number; load: number; hanging: number }

/** Sums what is out of balance, what the turf carries, and what of that hangs free. */
function weigh(
  { fixed, slope }: Springs,
  obstacle: Float64Array,
  u: Float64Array,
  rest: Float64Array,
): Balance {
  let left = 0
  let load = 0
  let hanging = 0
  for (let k = 0; k < u.length; k++) {
    const here = u[k]!
    const free = here > obstacle[k]!
    const out = rest[k]!
    // the roller can push but not pull
    if (free || out > 0) left += Math.abs(out)
    if (here === 0) continue
    const force = fixed[k]! + slope[k]! * here
    load += force
    if (free) hanging += force
  }
  return { left, load, hanging }
}

/** Tells the finest level which nodes lie in contact, and how the others answer. */
function hold(
  { mesh, held, springs }: Level,
  slope: Float64Array,
  obstacle: Float64Array,
  u: Float64Array,
): void {
  const { rows, width, along, across } = mesh
  for (let i = 0; i < rows; i++) {
    const share = along.share[i]!
    const start = (i + 1) * width
    for (let j = 0; j < width; j++) {
      const k = start + j
      const free = u[k]! > obstacle[k]!
      held[k] = free ? 0 : share * across.share[j]!
      springs[k] = free ? slope[k]! : 0
    }
  }
}

/** Leaves out what no step can mend: the rest of nodes in contact. Keeps a copy. */
function keepFree({ rhs, inverse }: Level, copy: Float64Array): void {
  for (let k = 0; k < rhs.length; k++) {
    if (inverse[k] === 0) rhs[k] = 0
    copy[k] = rhs[k]!
  }
}

/** u + part · step, never above the roller, which rounding would let it be. */
function take(u: Float64Array, part: number, step: Float64Array, obstacle: Float64Array): void {
  for (let k = 0; k < u.length; k++) u[k] = Math.max(u[k]! + part * step[k]!, obstacle[k]!)
}

function reactionOf(obstacle: Float64Array, u: Float64Array, rest: Float64Array): Float64Array {
  const reaction = new Float64Array(u.length)
  for (let k = 0; k < u.length; k++) if (u[k]! <= obstacle[k]!) reaction[k] = Math.max(0, -rest[k]!)
  return reaction
}

/**
 * The depth of the mat over a mesh: least ∫ ½G|∇u|² + Φ(u) with u nowhere above the roller.
 *
 * Each turn puts the law's tangent at every node, sweeps once with the roller in the way (which moves the line of
 * contact), then corrects the nodes that hang free by conjugate gradients with a multigrid cycle a step. The sweep makes
 * an outer active set unnecessary: contact moves in every turn, and the number of turns does not grow with the mesh.
 *
 * Source  truncated nonsmooth Newton multigrid, Gräser and Kornhuber 2009 (from memory)
 */
export function minimise(
  question: Obstacle,
  mesh: Mesh,
  start: Float64Array,
  tolerance: number,
  onTurn?: () => void,
): Mat {
  const { sinkage, shear } = question
  const obstacle = obstacleField(question, mesh)
  const springs = springsOf(question, mesh)
  const levels = hierarchyOf(mesh, shear)
  const finest = levels[0]!
  const room = roomFor(mesh.size)
  const u = start
  for (let k = 0; k < u.length; k++) u[k] = Math.min(Math.max(u[k]!, obstacle[k]!), sinkage)
  const step = newField(mesh)
  const pull = newField(mesh)
  const { rhs } = finest
  let cycles = 0
  for (let turns = 0; ; turns++) {
    springs.renew(u)
    unbalanced(mesh, springs, u, rhs)
    const { left, load, hanging } = weigh(springs, obstacle, u, rhs)
    if (left <= tolerance * load || turns === MOST_TURNS) {
      const reaction = reactionOf(obstacle, u, rhs)
      const parts = { hanging: hanging / load, imbalance: left / load }
      return { mesh, depth: u, obstacle, reaction, load, cycles, turns, ...parts }
    }
    sweep(mesh, springs, obstacle, sinkage, u)
    hold(finest, springs.slope, obstacle, u)
    fillHierarchy(levels)
    unbalanced(mesh, springs, u, rhs)
    keepFree(finest, pull)
    step.fill(0)
    cycles += gradients(levels, room, step, ENOUGH, MOST_STEPS)
    take(u, stepWithin(finest, room, u, obstacle, sinkage, step, pull), step, obstacle)
    onTurn?.()
  }
}
