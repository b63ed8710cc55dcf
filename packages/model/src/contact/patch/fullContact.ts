import { isGrooved, type Roller } from '../../roller/index.ts'
import { curveOf, shearOf, spreadAt, type Turf } from '../../turf/index.ts'
import { type Arc, arcOf } from '../arc.ts'
import type { RollerOnTurf } from '../rollerOnTurf.ts'
import { cellsOf } from './axis.ts'
import { independentSprings } from './independentSprings.ts'
import { meshOf } from './mesh.ts'
import type { Mat } from './minimise.ts'
import { nested } from './nested.ts'
import type { Obstacle } from './obstacle.ts'
import { quarterCell } from './quarterCell.ts'

/** A roller pressed to one sinkage, in full. */
export type FullContact = {
  readonly obstacle: Obstacle
  readonly mat: Mat
  readonly lineLoad: number
  /** Of the whole roller, free ends included. */
  readonly load: number
  /** Relative error of the line load that is left to the mesh. */
  readonly meshError: number
  /** Line load of the quick model over this one, less 1. */
  readonly fromPress: number
  /** d ln load/d ln sinkage of the quick model: close enough to search with. */
  readonly growth: number
}

/** Part of a mesh's work that is over after each turn, as a guess for those who watch. */
const LEFT_PER_TURN = 0.6

/** Turns of every mesh in the nest to a part done that only grows: a mesh costs four times the one before. */
function progress(rows: number, onStep: ((done: number) => void) | undefined) {
  if (!onStep) return undefined
  let current = 0
  let left = 1
  return (at: number) => {
    left = at === current ? left * LEFT_PER_TURN : LEFT_PER_TURN
    current = at
    onStep((at / rows) ** 2 * (1 - 0.75 * left))
  }
}

/**
 * The h² bound of the mesh's error: one halving can change the load by next to nothing by accident, this cannot.
 *
 *   h²/(8Rz)   between two lines the arc is a chord, which lies this part of the sinkage above it
 *   h²/(8l²)   a mat that dies out as e^(−y/l) pulls its edge as √(1 + h²/4l²) on lines a distance h apart; l where it
 *              is shortest: under the axis or where the turf leaves a smooth roller
 *
 * Source  derived
 */
function bound(
  { arc, curve, radius, shear, sinkage }: Obstacle,
  { mesh, hanging }: Mat,
  reach: number,
): number {
  const along = cellsOf(mesh.along).after
  const { before, after } = cellsOf(mesh.across)
  const longest = mesh.width > 1 ? Math.max(along, before, after) : along
  const squaredSpread = (depth: number) => (shear * depth) / curve.pressure(depth)
  const leaving = sinkage - arc.height(reach, radius)
  const shortest = Math.min(squaredSpread(sinkage), squaredSpread(leaving))
  return along ** 2 / (8 * radius * sinkage) + (hanging * longest ** 2) / (8 * shortest)
}

export function fullContact(
  question: { readonly roller: Roller; readonly turf: Turf; readonly arc?: Arc },
  on: RollerOnTurf,
  sinkage: number,
  cells: number,
  onStep?: (done: number) => void,
): FullContact {
  const { roller, turf } = question
  const { surface, length } = roller
  const grooved = isGrooved(surface)
  const shear = shearOf(turf)
  const obstacle: Obstacle = {
    curve: curveOf(turf.law),
    shear,
    radius: roller.diameter / 2,
    arc: arcOf(question.arc ?? 'parabola'),
    sinkage,
    depth: grooved ? surface.depth : Number.POSITIVE_INFINITY,
  }
  const spread = spreadAt(turf, sinkage)
  const axes = quarterCell(obstacle, surface, spread, cells)
  const mats: readonly Mat[] =
    shear > 0
      ? nested(obstacle, axes, progress(cells + 1, onStep))
      : [independentSprings(obstacle, meshOf(axes.along, axes.across, shear))]
  const mat = mats[0]!
  const halved = mats[1] ?? mat
  const quick = on.at(sinkage)
  // without spread the strips of the quick model are the whole truth
  const lineLoad = shear > 0 ? (2 * mat.load) / (grooved ? surface.pitch / 2 : 1) : quick.lineLoad
  const ends = grooved ? surface.land : length
  return {
    obstacle,
    mat,
    lineLoad,
    load: grooved
      ? lineLoad * (length - ends) + quick.smoothLineLoad * (ends + 2 * quick.beyondEnd)
      : lineLoad * (length + 2 * quick.beyondEnd),
    meshError:
      shear > 0
        ? Math.max(Math.abs(halved.load / mat.load - 1), bound(obstacle, mat, quick.leading.reach))
        : 0,
    fromPress: quick.lineLoad / lineLoad - 1,
    growth: (quick.stiffness * sinkage) / quick.load,
  }
}
