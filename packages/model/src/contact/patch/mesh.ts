import type { Axis } from './axis.ts'

/**
 * The quarter cell as lines along the rolling direction (rows) and across it. A field is one flat array of rows with a
 * row of zeros before the first and after the last, so that no sweep asks whether a neighbour is there.
 */
export type Mesh = {
  readonly along: Axis
  readonly across: Axis
  readonly rows: number
  /** Nodes of a row. */
  readonly width: number
  readonly size: number
  /** Shear over the cell before and after, by row and by place in the row. */
  readonly west: Float64Array
  readonly east: Float64Array
  readonly south: Float64Array
  readonly north: Float64Array
}

export function meshOf(along: Axis, across: Axis, shear: number): Mesh {
  const rows = along.at.length
  const width = across.at.length
  const times = (links: Float64Array) => links.map(link => shear * link)
  return {
    along,
    across,
    rows,
    width,
    size: (rows + 2) * width,
    west: times(along.before),
    east: times(along.after),
    south: times(across.before),
    north: times(across.after),
  }
}

export const newField = ({ size }: Mesh): Float64Array => new Float64Array(size)
