import { cellsOf, coarser, type Runs, unchanged } from './axis.ts'
import { type Mesh, meshOf, newField } from './mesh.ts'
import { restrict, type Transfer, transferOf } from './transfer.ts'

/** One grid of the multigrid cycle: A d + springs d = rhs on the nodes that hang free. */
export type Level = {
  readonly mesh: Mesh
  /** What each node's springs add to the diagonal. */
  readonly springs: Float64Array
  /** One over the diagonal; 0 on a node in contact, which no sweep moves. */
  readonly inverse: Float64Array
  /** Area of each node that lies in contact. */
  readonly held: Float64Array
  readonly change: Float64Array
  readonly rhs: Float64Array
  readonly rest: Float64Array
  /** To the next coarser grid; none on the coarsest. */
  readonly transfer?: Transfer
}

/** Cells up to this much longer than the shortest are made coarser together with it, longer ones wait. */
const SQUARE_ENOUGH = 1.5

/** The next coarser mesh: ahead, on the land and over the gap each by itself, so that cells become square and stay so. */
function next(mesh: Mesh, shear: number): { readonly mesh: Mesh; readonly transfer: Transfer } | undefined {
  const [ahead, across] = [cellsOf(mesh.along), cellsOf(mesh.across)]
  const shortest = Math.min(ahead.after, across.before, across.after)
  if (shortest === Number.POSITIVE_INFINITY) return undefined
  const halve = ({ before, after }: Runs<number>) => ({
    before: before < SQUARE_ENOUGH * shortest,
    after: after < SQUARE_ENOUGH * shortest,
  })
  const along = coarser(mesh.along, halve(ahead)) ?? unchanged(mesh.along)
  const beside = coarser(mesh.across, halve(across)) ?? unchanged(mesh.across)
  const coarse = meshOf(along.axis, beside.axis, shear)
  return { mesh: coarse, transfer: transferOf(along.between, beside.between, coarse) }
}

export function hierarchyOf(finest: Mesh, shear: number): readonly Level[] {
  const levels: Level[] = []
  for (let mesh: Mesh | undefined = finest; mesh; ) {
    const below = next(mesh, shear)
    const field = () => newField(mesh as Mesh)
    levels.push({
      mesh,
      springs: field(),
      inverse: field(),
      held: field(),
      change: field(),
      rhs: field(),
      rest: field(),
      ...(below ? { transfer: below.transfer } : {}),
    })
    mesh = below?.mesh
  }
  return levels
}

/** A coarse node is held when more than this part of what it stands for lies in contact: the part with fewest cycles. */
const HELD_FROM = 0.3

/** Fills the diagonals of a level from its springs and what is held of it. */
function fillInverse({ mesh, springs, inverse, held }: Level): void {
  const { rows, width, west, east, south, north, along, across } = mesh
  for (let i = 0; i < rows; i++) {
    const links = west[i]! + east[i]!
    const share = along.share[i]!
    for (let j = 0; j < width; j++) {
      const k = (i + 1) * width + j
      const area = share * across.share[j]!
      inverse[k] =
        held[k]! > HELD_FROM * area
          ? 0
          : 1 / (across.share[j]! * links + share * (south[j]! + north[j]!) + springs[k]!)
    }
  }
}

/** Carries springs and contact of the finest level to all the others. */
export function fillHierarchy(levels: readonly Level[]): void {
  levels.forEach((level, depth) => {
    fillInverse(level)
    const below = levels[depth + 1]
    if (!level.transfer || !below) return
    restrict(level.transfer, level.mesh, below.mesh, level.springs, below.springs)
    restrict(level.transfer, level.mesh, below.mesh, level.held, below.held)
  })
}
