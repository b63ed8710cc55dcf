import type { Level } from './hierarchy.ts'
import { prolong, restrict } from './transfer.ts'

/** One half of a Gauss-Seidel sweep: the nodes of one colour of the chequerboard that hang free. */
function relax({ mesh, inverse }: Level, colour: number, u: Float64Array, rhs: Float64Array): void {
  const { rows, width, west, east, south, north, along, across } = mesh
  const shareAcross = across.share
  for (let i = 0; i < rows; i++) {
    const w = west[i]!
    const e = east[i]!
    const share = along.share[i]!
    const start = (i + 1) * width
    for (let j = (i + colour) & 1; j < width; j += 2) {
      const k = start + j
      const per = inverse[k]!
      if (per === 0) continue
      u[k] =
        per *
        (rhs[k]! +
          shareAcross[j]! * (w * u[k - width]! + e * u[k + width]!) +
          share * (south[j]! * u[k - 1]! + north[j]! * u[k + 1]!))
    }
  }
}

/** rest = rhs − (A + springs) u on the nodes that hang free, 0 on the others. Returns u · rest. */
export function leaveRest(
  { mesh, inverse }: Level,
  u: Float64Array,
  rhs: Float64Array,
  rest: Float64Array,
): number {
  const { rows, width, west, east, south, north, along, across } = mesh
  const shareAcross = across.share
  let product = 0
  for (let i = 0; i < rows; i++) {
    const w = west[i]!
    const e = east[i]!
    const share = along.share[i]!
    const start = (i + 1) * width
    for (let j = 0; j < width; j++) {
      const k = start + j
      const per = inverse[k]!
      if (per === 0) {
        rest[k] = 0
        continue
      }
      const left =
        rhs[k]! +
        shareAcross[j]! * (w * u[k - width]! + e * u[k + width]!) +
        share * (south[j]! * u[k - 1]! + north[j]! * u[k + 1]!) -
        u[k]! / per
      rest[k] = left
      product += u[k]! * left
    }
  }
  return product
}

/** Pairs of sweeps on the coarsest grid, which has a handful of nodes. */
const COARSEST_SWEEPS = 6

/**
 * One V-cycle from zero: levels[depth].change answers levels[depth].rhs. Colours run backwards after the correction,
 * which makes the cycle symmetric: conjugate gradients need that.
 */
export function cycle(levels: readonly Level[], depth = 0): void {
  const level = levels[depth]!
  const { change, rhs, rest, transfer, mesh } = level
  const below = levels[depth + 1]
  change.fill(0)
  if (!transfer || !below) {
    for (let turn = 0; turn < COARSEST_SWEEPS; turn++) {
      relax(level, 0, change, rhs)
      relax(level, 1, change, rhs)
      relax(level, 1, change, rhs)
      relax(level, 0, change, rhs)
    }
    return
  }
  relax(level, 0, change, rhs)
  relax(level, 1, change, rhs)
  leaveRest(level, change, rhs, rest)
  restrict(transfer, mesh, below.mesh, rest, below.rhs)
  cycle(levels, depth + 1)
  prolong(transfer, mesh, below.mesh, below.change, change)
  hold(level, change)
  relax(level, 1, change, rhs)
  relax(level, 0, change, rhs)
}

/** The correction leaves nodes in contact where they are. */
function hold({ inverse }: Level, change: Float64Array): void {
  for (let k = 0; k < change.length; k++) if (inverse[k] === 0) change[k] = 0
}
