import { type Axis, coarser, unchanged } from './axis.ts'
import { meshOf, newField } from './mesh.ts'
import { type Mat, minimise } from './minimise.ts'
import type { Obstacle } from './obstacle.ts'
import { prolong, transferOf } from './transfer.ts'

/** Rows of the first mesh: few enough that a cold start costs nothing. */
const FIRST_ROWS = 12
/** Imbalance that is left, as a part of the load. A coarser mesh is only a start, and the measure of the mesh's error. */
const TOLERANCE = 1e-6
const START_TOLERANCE = 1e-5

/**
 * The mat on a mesh, started from the mat on the mesh of half as many lines, and so on down: a cold start would move the
 * line of contact by one cell a turn, this one starts it within a cell. All meshes come back, the finest first.
 */
export function nested(
  question: Obstacle,
  axes: { readonly along: Axis; readonly across: Axis },
  onTurn?: (rows: number) => void,
  tolerance = TOLERANCE,
): readonly Mat[] {
  const { shear } = question
  const mesh = meshOf(axes.along, axes.across, shear)
  const along = axes.along.at.length > FIRST_ROWS ? coarser(axes.along) : undefined
  const start = newField(mesh)
  const turned = () => onTurn?.(mesh.rows)
  if (!along) return [minimise(question, mesh, start, tolerance, turned)]
  const across = coarser(axes.across) ?? unchanged(axes.across)
  const coarse = nested(question, { along: along.axis, across: across.axis }, onTurn, START_TOLERANCE)
  const from = coarse[0]!
  prolong(transferOf(along.between, across.between, from.mesh), mesh, from.mesh, from.depth, start)
  return [minimise(question, mesh, start, tolerance, turned), ...coarse]
}
