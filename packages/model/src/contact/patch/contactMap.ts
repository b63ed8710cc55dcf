import type { Metres, NewtonsPerMetre, Pascals } from '../../quantities/index.ts'
import type { Mat } from './minimise.ts'
import type { Obstacle } from './obstacle.ts'

type Place = { readonly along: Metres; readonly across: Metres }

/** What the roller feels over a quarter of its contact: forwards from the axis, across from the middle of a land. */
export type ContactMap = {
  /** Line force on a land edge, by distance along; in no pressure of the map. */
  readonly edges: { readonly along: readonly Metres[]; readonly force: readonly NewtonsPerMetre[] }
  readonly pressure: {
    readonly along: readonly Metres[]
    /** One line, at 0, for a smooth roller. */
    readonly across: readonly Metres[]
    /** Pressure on the roller, row by row along: values[i × across.length + j]; 0 where it does not touch. */
    readonly values: readonly Pascals[]
    /** Depth of the mat, in the same order. */
    readonly depths: readonly Metres[]
  }
  /** Where contact ends, across from the middle of the land: on the land, and on the floor where that is touched. */
  readonly outline: { readonly land: readonly Place[]; readonly floor: readonly Place[] }
}

/** h″: how fast the arc bends. The mat bent over it presses with G h″ besides p(u). */
const bend = ({ arc, radius }: Obstacle, x: number): number =>
  arc.name === 'parabola' ? 1 / radius : radius ** 2 / (radius ** 2 - x ** 2) ** 1.5

/** Splits the reactions of the roller into pressures and line forces on the land edge. */
export function contactMap(obstacle: Obstacle, { mesh, depth, reaction }: Mat): ContactMap {
  const { along, across, rows, width } = mesh
  const { curve, shear } = obstacle
  const { keep } = across
  const edge = width > 1 ? keep : -1
  const values = new Array<number>(rows * width)
  const force = new Array<number>(rows).fill(0)
  const ends = new Float64Array(width).fill(Number.NaN)
  for (let i = 0; i < rows; i++) {
    const x = along.at[i]!
    const share = along.share[i]!
    for (let j = 0; j < width; j++) {
      const k = (i + 1) * width + j
      const all = reaction[k]!
      // only the land's half of the cells beside the edge is pressed
      const area = share * (j === edge ? 0.5 / across.before[j]! : across.share[j]!)
      const full = all > 0 ? curve.pressure(depth[k]!) + shear * bend(obstacle, x) : 0
      const pressure = j === edge ? Math.min(all / area, full) : all / area
      values[i * width + j] = pressure
      if (j === edge) force[i] = all / share - (pressure * area) / share
      // the last node in contact carries the part of its cell that contact reaches into
      if (all > 0)
        ends[j] = Math.max(
          0,
          x + (Math.min(pressure / full, 1) - 0.5) / (along.before[i]! || along.after[i]!),
        )
    }
  }
  const places = (from: number, to: number): Place[] => {
    const found: Place[] = []
    for (let j = from; j < to; j++) if (ends[j]! >= 0) found.push({ along: ends[j]!, across: across.at[j]! })
    return found
  }
  return {
    edges: { along: Array.from(along.at), force },
    pressure: {
      along: Array.from(along.at),
      across: Array.from(across.at),
      values,
      depths: Array.from(depth.subarray(width, (rows + 1) * width)),
    },
    outline: { land: places(0, keep + 1), floor: places(keep + 1, width) },
  }
}
