import type { Between } from './axis.ts'
import type { Mesh } from './mesh.ts'

/** How fine and coarse lines lie in each other, and room for one coarse and one fine row. */
export type Transfer = {
  readonly along: Between
  readonly across: Between
  readonly row: Float64Array
}

export const transferOf = (along: Between, across: Between, coarse: Mesh): Transfer => ({
  along,
  across,
  row: new Float64Array(coarse.width + 1),
})

/** What a fine field sums to on the coarse nodes: the transpose of interpolation. */
export function restrict(
  { along, across, row }: Transfer,
  fine: Mesh,
  coarse: Mesh,
  from: Float64Array,
  to: Float64Array,
): void {
  to.fill(0)
  const { below, part } = across
  const { width } = fine
  const wide = coarse.width
  for (let i = 0; i < fine.rows; i++) {
    row.fill(0)
    const start = (i + 1) * width
    for (let j = 0; j < width; j++) {
      const c = below[j]!
      const t = part[j]!
      const value = from[start + j]!
      if (t === 0) row[c] = row[c]! + value
      else {
        row[c] = row[c]! + (1 - t) * value
        row[c + 1] = row[c + 1]! + t * value
      }
    }
    const t = along.part[i]!
    const into = (along.below[i]! + 1) * wide
    for (let c = 0; c < wide; c++) to[into + c] = to[into + c]! + (1 - t) * row[c]!
    if (t > 0) for (let c = 0; c < wide; c++) to[into + wide + c] = to[into + wide + c]! + t * row[c]!
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
