import type { Curve } from '../../turf/index.ts'
import type { ArcShape } from '../arc.ts'
import { type Mesh, newField } from './mesh.ts'

/** What the turf is pressed by, and what it answers with. */
export type Obstacle = {
  readonly curve: Curve
  readonly shear: number
  readonly radius: number
  readonly arc: ArcShape
  readonly sinkage: number
  /** Of the grooves; Infinity for a smooth roller. */
  readonly depth: number
}

/** Depth of land and floor below the undisturbed surface at a distance from the axis; below 0 where they are above it. */
function depthsAt({ arc, radius, sinkage, depth }: Obstacle, x: number): { land: number; floor: number } {
  const circle = arc.name === 'circle'
  const under = (R: number, deep: number) => (circle && x >= R ? -1 : deep - arc.height(x, R))
  // on the circle the floor is an arc of its own, nearer the axis
  return { land: under(radius, sinkage), floor: under(circle ? radius - depth : radius, sinkage - depth) }
}

/** The roller's surface as a field: turf cannot stand higher than it, nor above its undisturbed level. */
export function obstacleField(obstacle: Obstacle, mesh: Mesh): Float64Array {
  const field = newField(mesh)
  const { along, across, rows, width } = mesh
  for (let i = 0; i < rows; i++) {
    const { land, floor } = depthsAt(obstacle, along.at[i]!)
    // flanks are vertical: the edge itself is land
    for (let j = 0; j < width; j++) {
      field[(i + 1) * width + j] = Math.max(0, j <= across.keep ? land : floor)
    }
  }
  return field
}
