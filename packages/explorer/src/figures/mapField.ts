import type { QuantityName, SinkageMap } from '@swardsink/model'
import { contours } from 'd3'
import { type ContourLadder, contourLadder, type Rung } from './contourLadder.ts'
import type { Frame, Point } from './frame.ts'

/** Columns and rows of the map as real numbers: 0 is its first mass or softness. */
export type GridPoint = Point
export type MapContour = {
  readonly rung: Rung
  /** Everything at and above the rung, closed. */
  readonly area: readonly (readonly GridPoint[])[]
  /** The contour itself, open where it leaves the map or meets what is not known. */
  readonly lines: readonly (readonly GridPoint[])[]
}
export type MapField = {
  readonly columns: number
  readonly rows: number
  readonly ladder: ContourLadder
  readonly contours: readonly MapContour[]
  /** Where the model has no answer. */
  readonly unknown: readonly (readonly GridPoint[])[]
}

export const shownQuantity: Record<SinkageMap['quantity'], QuantityName> = {
  sinkage: 'sinkage',
  drop: 'drop',
  effectiveHeight: 'height',
  peakPressure: 'pressure',
}

const known = new WeakMap<SinkageMap, Map<string, MapField>>()

/** Contours of a map, worked out once for each map: the mark moves every frame, the field does not. */
export function mapField(map: SinkageMap, reader: Pick<Frame<unknown>, 'units' | 'locale'>): MapField {
  const key = `${reader.units} ${reader.locale ?? ''}`
  const fields = known.get(map) ?? new Map<string, MapField>()
  known.set(map, fields)
  const found = fields.get(key)
  if (found) return found
  const made = fieldOf(map, reader)
  fields.set(key, made)
  return made
}

function fieldOf(map: SinkageMap, reader: Pick<Frame<unknown>, 'units' | 'locale'>): MapField {
  const columns = map.masses.length
  const rows = map.softnesses.length
  const finite = map.values.filter(Number.isFinite)
  const low = finite.length === 0 ? 0 : finite.reduce((a, b) => Math.min(a, b))
  const high = finite.length === 0 ? 0 : finite.reduce((a, b) => Math.max(a, b))
  const deepIsLow = map.quantity === 'effectiveHeight'
  const ladder = contourLadder({ low, high, quantity: shownQuantity[map.quantity], deepIsLow, reader })
  // Between two grid points a positive quantity runs straighter in its logarithm than in itself.
  const measure = ladder.kind === 'doubling' ? Math.log : (value: number) => value
  const filled = fillUnknown(map.values, columns).map(measure)
  const generator = contours().size([columns, rows])
  const isUnknown = (column: number, row: number) =>
    Number.isNaN(map.values[row * columns + column] ?? Number.NaN)
  const missing = Array.from(map.values, value => (Number.isFinite(value) ? 0 : 1))
  return {
    columns,
    rows,
    ladder,
    contours: ladder.rungs.map(rung => {
      const rings = ringsOf(generator.contour(filled as unknown as number[], measure(rung.value)).coordinates)
      return {
        rung,
        area: rings.map(ring => ring.map(point => onGrid(point, columns, rows))),
        lines: rings.flatMap(ring => openLines(ring, { columns, rows, isUnknown })),
      }
    }),
    unknown: missing.includes(1)
      ? ringsOf(generator.contour(missing, 0.5).coordinates).map(ring =>
          ring.map(point => onGrid(point, columns, rows)),
        )
      : [],
  }
}

type Ring = readonly (readonly number[])[]
const ringsOf = (polygons: readonly (readonly Ring[])[]): readonly (readonly Point[])[] =>
  polygons.flatMap(rings => rings.map(ring => ring.map(([x = 0, y = 0]) => ({ x, y }))))

/** The generator counts from a cell's corner and closes its areas half a cell outside the grid. */
function onGrid({ x, y }: Point, columns: number, rows: number): GridPoint {
  return { x: Math.max(0, Math.min(columns - 1, x - 0.5)), y: Math.max(0, Math.min(rows - 1, y - 0.5)) }
}

/** Cuts a closed ring into the parts that are contour: not the closing along the border, not beside unknown cells. */
function openLines(
  ring: readonly Point[],
  grid: { columns: number; rows: number; isUnknown: (column: number, row: number) => boolean },
): readonly (readonly GridPoint[])[] {
  const { columns, rows, isUnknown } = grid
  const drawn = ({ x, y }: Point): boolean => {
    if (x <= 0 || y <= 0 || x >= columns || y >= rows) return false
    const columnsBeside = [Math.floor(x - 0.5), Math.ceil(x - 0.5)]
    const rowsBeside = [Math.floor(y - 0.5), Math.ceil(y - 0.5)]
    return !columnsBeside.some(column => rowsBeside.some(row => isUnknown(column, row)))
  }
  const start = ring.findIndex(point => !drawn(point))
  // A ring without a gap is a contour that closes inside the map.
  if (start < 0) return [ring.map(point => onGrid(point, columns, rows))]
  const lines: GridPoint[][] = []
  let line: GridPoint[] = []
  for (let i = 1; i <= ring.length; i++) {
    const point = ring[(start + i) % ring.length]
    if (point && drawn(point)) line.push(onGrid(point, columns, rows))
    else {
      if (line.length > 1) lines.push(line)
      line = []
    }
  }
  return lines
}

/** Gives unknown cells the value of the nearest known one in their row, so that contours run on under the stipple. */
function fillUnknown(values: Float64Array, columns: number): Float64Array {
  const filled = Float64Array.from(values)
  const spread = (from: number, to: number, step: number, until: number) => {
    for (let i = from; i !== until; i += step) {
      if (!Number.isFinite(filled[i] ?? Number.NaN)) filled[i] = filled[i + to] ?? Number.NaN
    }
  }
  for (let row = 0; row < filled.length; row += columns) {
    spread(row + 1, -1, 1, row + columns)
    spread(row + columns - 2, 1, -1, row - 1)
  }
  spread(columns, -columns, 1, filled.length)
  spread(filled.length - columns - 1, columns, -1, -1)
  return filled
}
