import { isGrooved, type Roller } from '../../roller/index.ts'
import { REFERENCE_PRESSURE } from '../../turf/index.ts'
import type { ColumnOf } from './balanceColumns.ts'
import { type LnReader, lnOf, newLnReading, type SideMaker } from './sideMaker.ts'

const here = newLnReading()
const overFloor = newLnReading()

/**
 * A standing roller without spread, from one side of its arc.
 *
 *   smooth   W = 2 E(z) L
 *   grooved  W = 2 (L − w_l)/s_p [w_l E(z) + g E(z − d)] + 2 w_l E(z);  E below zero is none
 *
 * Source  docs/physics.md §3.1, §3.3 at G = 0
 */
export function springRoller(
  end: string,
  roller: Roller,
  columnOf: ColumnOf,
  sideFor: ReturnType<SideMaker>,
): LnReader {
  const { length, surface } = roller
  const side = sideFor(columnOf(`${end}.diameter`, roller.diameter))
  const long = columnOf(`${end}.length`, length)
  const lnLong = lnOf(long, Math.LN2)
  if (!isGrooved(surface))
    return (i, reading) => {
      const isTold = side(i, reading)
      reading.lnLoad += lnLong[i]!
      return isTold
    }
  const pitch = columnOf(`${end}.surface.pitch`, surface.pitch)
  const land = columnOf(`${end}.surface.land`, surface.land)
  const depth = columnOf(`${end}.surface.depth`, surface.depth)
  return (i, reading) => {
    here.lnSinkage = reading.lnSinkage
    if (!side(i, here)) return false
    const w = land[i]!
    const inGrooves = (2 * (long[i]! - w)) / pitch[i]!
    const onLands = inGrooves * w + 2 * w
    const sinkage = Math.exp(reading.lnSinkage)
    const carried = Math.exp(here.lnLoad)
    let load = onLands * carried
    let stiffness = (load * here.slope) / sinkage
    const past = sinkage - depth[i]!
    if (past > 0) {
      overFloor.lnSinkage = Math.log(past)
      if (!side(i, overFloor)) return false
      const floor = inGrooves * (pitch[i]! - w) * Math.exp(overFloor.lnLoad)
      load += floor
      stiffness += (floor * overFloor.slope) / past
    }
    reading.lnLoad = Math.log(load)
    reading.slope = (stiffness * sinkage) / load
    return true
  }
}

/**
 * A smooth roller standing on the linear law with spread.
 *
 *   W = (2k/3R) [A³ − l³] (L + 2l),  A² = l² + 2 R z
 *
 * Source  docs/physics.md §3.2
 */
export function spreadingRoller(
  end: string,
  roller: Roller,
  softness: number,
  spread: number,
  columnOf: ColumnOf,
): LnReader {
  const soft = columnOf('softness', softness)
  const reach = columnOf('spread', spread)
  const long = columnOf(`${end}.length`, roller.length)
  const diameter = columnOf(`${end}.diameter`, roller.diameter)
  return (i, reading) => {
    const l = reach[i]!
    const twice = diameter[i]! * Math.exp(reading.lnSinkage)
    const A = Math.sqrt(l * l + twice)
    // A − l without its cancellation
    const cubes = (twice / (A + l)) * (A * A + A * l + l * l)
    const k = REFERENCE_PRESSURE / soft[i]!
    reading.lnLoad = Math.log(((4 * k * cubes) / (3 * diameter[i]!)) * (long[i]! + 2 * l))
    // dW/dz = 2kA(L + 2l)
    reading.slope = (1.5 * twice * A) / cubes
    return true
  }
}
