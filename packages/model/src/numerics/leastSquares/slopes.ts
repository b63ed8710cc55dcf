import type { Descent, Place } from './descentRoom.ts'
import { coarseDifferences, fineDifferences } from './differences.ts'

/**
 * Fills the Jacobian at a place and the lengths of its columns; gives the evaluations it took, negative when the
 * model has no slopes there. Without the model's own slopes: `fine` ones cost six times as much and are needed only
 * where the search ends.
 */
export function slopesAt(descent: Descent, { p, residuals: r, jacobian }: Place, fine: boolean): number {
  const { residuals, lower, upper, least, room } = descent
  const { count, size } = residuals
  const { sizes, lengths, scale } = room
  let used = 0
  if (residuals.jacobian) {
    if (!residuals.jacobian(p, jacobian)) return -1
  } else {
    for (let k = 0; k < size; k++) sizes[k] = Math.max(Math.abs(p[k]!), least[k]!)
    const question = { residuals, room: room.differences, lower, upper }
    used = (fine ? fineDifferences : coarseDifferences)(question, p, sizes, r, jacobian)
    if (used < 0) return used
  }
  lengths.fill(0)
  for (let i = 0; i < count; i++)
    for (let k = 0; k < size; k++) lengths[k] = lengths[k]! + jacobian[i * size + k]! ** 2
  for (let k = 0; k < size; k++) {
    lengths[k] = Math.sqrt(lengths[k]!)
    if (!Number.isFinite(lengths[k]!)) return -used - 1
    scale[k] = Math.max(scale[k]!, lengths[k]!)
  }
  return used
}
