import { type Mesh, newField } from './mesh.ts'
import type { Mat } from './minimise.ts'
import { type Obstacle, obstacleField } from './obstacle.ts'

/** Turf without spread: every spot answers for itself, so the mat is the roller's own surface. Nothing is solved. */
export function independentSprings(question: Obstacle, mesh: Mesh): Mat {
  const obstacle = obstacleField(question, mesh)
  const reaction = newField(mesh)
  const { along, across, rows, width } = mesh
  let load = 0
  for (let i = 0; i < rows; i++)
    for (let j = 0; j < width; j++) {
      const k = (i + 1) * width + j
      const wide = j === across.keep && width > 1 ? 0.5 / across.before[j]! : across.share[j]!
      reaction[k] = along.share[i]! * wide * question.curve.pressure(obstacle[k]!)
      load += reaction[k]!
    }
  return { mesh, depth: obstacle, obstacle, reaction, load, cycles: 0, turns: 0, hanging: 0, imbalance: 0 }
}
