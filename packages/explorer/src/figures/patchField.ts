import { contours } from 'd3'
import { type ContourLadder, contourLadder, type Rung } from './contourLadder.ts'
import type { Frame, Point } from './frame.ts'

export type PatchPlace = { readonly along: number; readonly across: number }

/** A quarter of a contact: forwards from the axis, across from the middle of a land to the middle of the groove; SI. */
export type PatchQuarter = {
  readonly along: ArrayLike<number>
  /** One line for a smooth roller, which is the same all over its length. */
  readonly across: ArrayLike<number>
  /** values[i × across.length + j] */
  readonly pressures: ArrayLike<number>
  readonly depths: ArrayLike<number>
  /** Where contact ends: on the land, and on the floor of the groove where that is touched. */
  readonly outline: { readonly land: readonly PatchPlace[]; readonly floor: readonly PatchPlace[] }
  /** Line force on a land edge. */
  readonly edges: { readonly along: readonly number[]; readonly force: readonly number[] }
}

export type PatchBand = {
  readonly rung: Rung
  /** Everything pressed as hard or harder, as closed rings in metres from the middle of the contact. */
  readonly area: readonly (readonly Point[])[]
}

export type PatchField = {
  readonly ladder: ContourLadder
  readonly bands: readonly PatchBand[]
  readonly greatest: number
  /** Where each band ends on the edge of the land (of a smooth roller: anywhere), along, positive; null where it does not. */
  readonly ends: readonly (number | null)[]
}

/** A figure shows no more than so many lines of a quarter: finer ones fall on the same pixels. */
const MOST_LINES = 60
/** The ladder reaches down to this part of the greatest pressure. */
const LEAST_PART = 1 / 16
/** Half the width that is drawn of a roller that has no pitch, against the half length of its contact. */
export const SMOOTH_SPAN = 0.45

const thinned = (count: number, keep: number): readonly number[] => {
  const step = Math.max(1, Math.ceil((count - 1) / MOST_LINES))
  const picked = Array.from({ length: count }, (_, i) => i).filter(i => i % step === 0)
  return [...new Set([...picked, keep, count - 1])].sort((a, b) => a - b)
}

/** Index of the last line on the land. */
export const landEdge = ({ across }: PatchQuarter, land: number): number => {
  let edge = 0
  for (let j = 0; j < across.length; j++) if ((across[j] ?? 0) <= land / 2 + 1e-12) edge = j
  return edge
}

/**
 * Pressures carried on beyond the contact as they end there, so that bands run straight into its outline and not down
 * to zero across one cell: what lies outside is covered when it is drawn.
 */
function carriedOn({ along, across, pressures }: PatchQuarter): Float64Array {
  const [rows, width] = [along.length, across.length]
  const values = Float64Array.from(pressures)
  for (let j = 0; j < width; j++)
    for (let i = 1; i < rows; i++) {
      const [here, before] = [i * width + j, (i - 1) * width + j]
      const further = values[before - width] ?? values[before] ?? 0
      if (!((values[here] ?? 0) > 0) && (values[before] ?? 0) > 0)
        values[here] = Math.max(0, 2 * (values[before] ?? 0) - further)
    }
  for (let i = 0; i < rows; i++)
    for (let j = 1; j < width; j++) {
      const here = i * width + j
      if (!((values[here] ?? 0) > 0)) values[here] = values[here - 1] ?? 0
    }
  return values
}

const known = new WeakMap<ArrayLike<number>, Map<string, PatchField>>()

/** Bands of the pressure over the whole contact, worked out once for each answer. */
export function patchField(
  quarter: PatchQuarter,
  land: number,
  reader: Pick<Frame<unknown>, 'units' | 'locale'>,
): PatchField {
  const key = `${reader.units} ${reader.locale ?? ''} ${land}`
  const fields = known.get(quarter.pressures) ?? new Map<string, PatchField>()
  known.set(quarter.pressures, fields)
  const found = fields.get(key)
  if (found) return found
  const made = fieldOf(quarter, land, reader)
  fields.set(key, made)
  return made
}

function fieldOf(
  quarter: PatchQuarter,
  land: number,
  reader: Pick<Frame<unknown>, 'units' | 'locale'>,
): PatchField {
  const { along, across, pressures } = quarter
  const width = across.length
  const pressed = Array.from(pressures).filter(value => value > 0)
  const greatest = pressed.reduce((a, b) => Math.max(a, b), 0)
  const least = pressed.reduce((a, b) => Math.min(a, b), greatest)
  const ladder = contourLadder({
    low: Math.max(least, greatest * LEAST_PART),
    high: greatest,
    quantity: 'pressure',
    deepIsLow: false,
    reader,
  })
  const values = carriedOn(quarter)
  const edge = landEdge(quarter, land)
  const columns = thinned(along.length, along.length - 1)
  const lines = thinned(width, edge)
  const smooth = width === 1
  const span = smooth ? [-1, 1] : mirrored(lines.map(j => across[j] ?? 0))
  const xs = mirrored(columns.map(i => along[i] ?? 0))
  const pick = smooth ? [0, 0] : mirroredIndices(lines)
  const grid = pick.flatMap(j => mirroredIndices(columns).map(i => values[i * width + j] ?? 0))
  const generator = contours().size([xs.length, pick.length])
  const place = placing(xs, span)
  return {
    ladder,
    greatest,
    bands: ladder.rungs.map(rung => ({
      rung,
      area: generator
        .contour(grid, rung.value)
        .coordinates.flatMap(rings =>
          rings.map(ring => ring.map(([x = 0, y = 0]) => place({ x: x - 0.5, y: y - 0.5 }))),
        ),
    })),
    ends: ladder.rungs.map(({ value }) => crossing(along, i => values[i * width + edge] ?? 0, value)),
  }
}

const mirrored = (half: readonly number[]): readonly number[] => [
  ...half
    .slice(1)
    .toReversed()
    .map(place => -place),
  ...half,
]
const mirroredIndices = (half: readonly number[]): readonly number[] => [
  ...half.slice(1).toReversed(),
  ...half,
]

/** From columns and rows as real numbers to metres. */
function placing(xs: readonly number[], ys: readonly number[]): (point: Point) => Point {
  const between = (places: readonly number[], at: number): number => {
    const kept = Math.min(places.length - 1, Math.max(0, at))
    const below = Math.min(places.length - 2, Math.floor(kept))
    const from = places[below] ?? 0
    return from + ((places[below + 1] ?? from) - from) * (kept - below)
  }
  return ({ x, y }) => ({ x: between(xs, x), y: between(ys, y) })
}

/** Where a pressure that falls away from the axis passes a value. */
function crossing(along: ArrayLike<number>, pressure: (i: number) => number, value: number): number | null {
  for (let i = 1; i < along.length; i++) {
    const [before, here] = [pressure(i - 1), pressure(i)]
    if (before >= value && here < value) {
      const [from, to] = [along[i - 1] ?? 0, along[i] ?? 0]
      return from + ((to - from) * (before - value)) / (before - here)
    }
  }
  return null
}
