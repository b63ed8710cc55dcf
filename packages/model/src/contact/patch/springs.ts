import { type Mesh, newField } from './mesh.ts'
import type { Obstacle } from './obstacle.ts'

/**
 * Force of the turf on each node, linear about the depth where it was last worked out: force = fixed + slope · u.
 *
 *   inside   area · p(u)
 *   last row area · p(u) + share across · √(2GΦ(u)): the turf beyond the mesh, whose mat dies out by the first
 *            integral G u′²/2 = Φ(u); exact when nothing changes across
 */
export type Springs = {
  readonly fixed: Float64Array
  readonly slope: Float64Array
  /** Depth it was worked out at. */
  readonly about: Float64Array
  /** Works the nodes out again that have moved by more than next to nothing. */
  readonly renew: (u: Float64Array) => void
  /** Depth at which one node is in balance: diagonal · u + force(u) = pull, between the bounds. */
  readonly balance: (k: number, diagonal: number, pull: number, low: number, high: number) => number
}

/** Near zero a slope is taken at this part of the sinkage: that of √Φ has no limit in floating point. */
const NEAR_ZERO = 1e-9
/** A tangent is kept while its node has moved by no more than this part: its force is then good to the square of that. */
const NEAR = 1e-4
const BALANCED = 1e-4
const MOST_STEPS = 40

export function springsOf({ curve, shear, sinkage }: Obstacle, mesh: Mesh): Springs {
  const { along, across, rows, width } = mesh
  const area = newField(mesh)
  const beyond = newField(mesh)
  for (let i = 0; i < rows; i++)
    for (let j = 0; j < width; j++) area[(i + 1) * width + j] = along.share[i]! * across.share[j]!
  for (let j = 0; j < width; j++) beyond[rows * width + j] = across.share[j]!
  const fixed = newField(mesh)
  const slope = newField(mesh)
  const about = newField(mesh).fill(Number.NaN)
  const smallest = sinkage * NEAR_ZERO
  // below the first power the slope at zero is infinite: such a node is let go by `balance` only
  const stiffAtZero = (curve.powerAtZero ?? 1) < 1

  const workOut = (k: number, u: number): void => {
    about[k] = u
    if (u === 0) {
      fixed[k] = 0
      slope[k] = stiffAtZero
        ? Number.POSITIVE_INFINITY
        : area[k]! * curve.slope(0) + (beyond[k]! * Math.sqrt(2 * shear * curve.work(smallest))) / smallest
      return
    }
    const pressure = curve.pressure(u)
    let force = area[k]! * pressure
    let steep = area[k]! * curve.slope(u)
    if (beyond[k]! > 0) {
      const pull = Math.sqrt(2 * shear * curve.work(u))
      force += beyond[k]! * pull
      if (pull > 0) steep += (beyond[k]! * shear * pressure) / pull
    }
    fixed[k] = force - steep * u
    slope[k] = steep
  }

  const renew = (u: Float64Array): void => {
    const end = (rows + 1) * width
    for (let k = width; k < end; k++) {
      const here = u[k]!
      // written so that a node never worked out, about NaN, is
      if (!(Math.abs(here - about[k]!) <= NEAR * here)) workOut(k, here)
    }
  }

  const balance = (k: number, diagonal: number, pull: number, low: number, high: number): number => {
    let under = low
    // turf and mat each by itself would hold no deeper; where the depth is next to nothing the turf's bound is sharp
    let over = pull > 0 ? Math.min(high, pull / diagonal, curve.sinkage(pull / area[k]!)) : 0
    if (over <= low) return low
    if (low > 0) {
      workOut(k, low)
      if ((diagonal + slope[k]!) * low + fixed[k]! >= pull) return low
    }
    let u = over
    for (let step = 0; step < MOST_STEPS; step++) {
      workOut(k, u)
      const left = (diagonal + slope[k]!) * u + fixed[k]! - pull
      if (left > 0) over = u
      else under = u
      let next = u - left / (diagonal + slope[k]!)
      if (!(next > under && next < over)) next = (under + over) / 2
      const move = Math.abs(next - u)
      u = next
      if (move <= BALANCED * u) break
    }
    workOut(k, u)
    return u
  }
  return { fixed, slope, about, renew, balance }
}
