import { isGrooved, type Surface } from '../../roller/index.ts'
import type { ArcShape } from '../arc.ts'
import { type Axis, axisOf, kneedAxis, lone } from './axis.ts'

export type QuarterCell = { readonly along: Axis; readonly across: Axis }

/** Behind the longest line of contact the mesh goes on for so many decay lengths of what changes across: e⁻⁴ squared. */
const BEYOND = 4
/** Neither land nor gap gets less than this part of the cells across. */
const LEAST_PART = 1 / 8

/**
 * Lines over a quarter of the contact: from the axis forwards, from the middle of a land to the middle of a gap. There is
 * a line on the land edge, where the mat has a kink. Cells are equal between the axis and the end, and on either side of
 * the edge.
 *
 * Beyond the contact the mean of the mat over a pitch is closed exactly (see springs), so only what changes across has to
 * die out: over 1/κ, κ² = 1/l² + (2π/s_p)².
 */
export function quarterCell(
  { arc, radius, sinkage }: { readonly arc: ArcShape; readonly radius: number; readonly sinkage: number },
  surface: Surface,
  spread: number,
  cells: number,
): QuarterCell {
  const half = isGrooved(surface) ? surface.pitch / 2 : Number.POSITIVE_INFINITY
  const decay = 1 / Math.hypot(1 / spread, Math.PI / half)
  const end = arc.reach(sinkage, radius) + BEYOND * decay
  const along = axisOf(
    Float64Array.from({ length: cells + 1 }, (_, i) => (end * i) / cells),
    0,
  )
  if (!isGrooved(surface)) return { along, across: lone() }
  const land = surface.land / 2
  const part = Math.min(Math.max(land / half, LEAST_PART), 1 - LEAST_PART)
  const onLand = Math.round(cells * part)
  return { along, across: kneedAxis(land, onLand, half, cells - onLand) }
}
