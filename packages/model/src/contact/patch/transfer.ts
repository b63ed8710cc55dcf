import type { Between } from './axis.ts'
import type { Mesh } from './mesh.ts'

/** How fine and coarse lines lie in each other, and room for one fine and one coarse row. */
export type Transfer = {
  readonly along: Between
  readonly across: Between
  /** One longer at both ends: what stands there is read with weight zero. */
  readonly fineRow: Float64Array
  readonly row: Float64Array
}

export const transferOf = (along: Between, across: Between, coarse: Mesh): Transfer => ({
  along,
  across,
  fineRow: new Float64Array(across.below.length + 2),
  row: new Float64Array(coarse.width + 1),
})

/** What a fine field sums to on the coarse nodes: the transpose of interpolation. */
export function restrict(
  { along, across, fineRow }: Transfer,
  fine: Mesh,
  coarse: Mesh,
  from: Float64Array,
  to: Float64Array,
): void {
  const { width } = fine
  const { on, fromBefore, fromAfter } = across
  for (let c = 0; c < coarse.rows; c++) {
    const before = along.fromBefore[c]!
    const after = along.fromAfter[c]!
    const start = (along.on[c]! + 1) * width
    if (before === 0 && after === 0) for (let j = 0; j < width; j++) fineRow[j + 1] = from[start + j]!
    else
      for (let j = 0; j < width; j++) {
        const k = start + j
        fineRow[j + 1] = from[k]! + before * from[k - width]! + after * from[k + width]!
      }
    const out = (c + 1) * coarse.width
    for (let d = 0; d < coarse.width; d++) {
      const j = on[d]! + 1
      to[out + d] = fineRow[j]! + fromBefore[d]! * fineRow[j - 1]! + fromAfter[d]! * fineRow[j + 1]!
    }
  }
}

/** Adds the coarse field, interpolated bilinearly, to the fine one. */
export function prolong(
  { along, across, row }: Transfer,
  fine: Mesh,
  coarse: Mesh,
  from: Float64Array,
  to: Float64Array,
): void {
  const { below, part } = across
  const { width } = fine
  const wide = coarse.width
  for (let i = 0; i < fine.rows; i++) {
    const t = along.part[i]!
    const out = (along.below[i]! + 1) * wide
    // the last line lies on a coarse one: the row of zeros behind it is read with weight zero
    for (let c = 0; c < wide; c++) row[c] = (1 - t) * from[out + c]! + t * from[out + wide + c]!
    const start = (i + 1) * width
    for (let j = 0; j < width; j++) {
      const c = below[j]!
      const s = part[j]!
      to[start + j] = to[start + j]! + (1 - s) * row[c]! + s * row[c + 1]!
    }
  }
}
