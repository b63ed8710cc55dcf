import type { SinkageMap } from '@swardsink/model'
import { FIRST_DEEP_CONTOUR } from '../look/index.ts'
import { type Frame, type Point, pathOf } from './frame.ts'
import { type GridPoint, type MapField, mapField } from './mapField.ts'
import { type ContourName, contourNames } from './mapNames.ts'
import { type MapDomain, type MapScales, mapScales } from './mapScales.ts'
import type { SinkageMapWords } from './mapWords.ts'

/** Everything of the map that stays while the mark moves. */
export type MapDrawing = {
  readonly scales: MapScales
  readonly field: MapField
  readonly base: number
  readonly areas: readonly { readonly step: number; readonly d: string }[]
  readonly lines: readonly { readonly ink: 'on-pale' | 'on-deep'; readonly d: string }[]
  readonly unknown: string
  readonly names: readonly ContourName[]
}

export const mapDomain = ({ masses, softnesses }: Pick<SinkageMap, 'masses' | 'softnesses'>): MapDomain => ({
  mass: [masses[0] ?? Number.NaN, masses.at(-1) ?? Number.NaN],
  softness: [softnesses[0] ?? Number.NaN, softnesses.at(-1) ?? Number.NaN],
})

const last = new WeakMap<MapField, { key: string; drawing: MapDrawing }>()

/** Paths of a map at one width, kept until map, width or language change. */
export function mapDrawing(map: SinkageMap, frame: Frame<SinkageMapWords>): MapDrawing {
  const field = mapField(map, frame)
  const key = `${frame.width} ${frame.text ?? ''} ${frame.words.firm} ${frame.words.soft}`
  const kept = last.get(field)
  if (kept?.key === key) return kept.drawing
  const scales = mapScales(mapDomain(map), frame)
  const project = projection(map, scales)
  const closed = (rings: readonly (readonly GridPoint[])[]) =>
    rings.map(ring => pathOf(ring.map(project), true)).join('')
  const drawing: MapDrawing = {
    scales,
    field,
    base: field.ladder.base,
    areas: field.contours.map(({ rung, area }) => ({ step: rung.above, d: closed(area) })),
    lines: field.contours.map(({ rung, lines }) => ({
      ink: Math.min(rung.above, rung.below) < FIRST_DEEP_CONTOUR ? 'on-pale' : 'on-deep',
      d: lines.map(line => pathOf(line.map(project))).join(''),
    })),
    unknown: closed(field.unknown),
    names: contourNames({ field, box: scales.box, project }, frame),
  }
  last.set(field, { key, drawing })
  return drawing
}

/** From columns and rows to px; between two grid lines a point keeps its part of the way. */
function projection(map: SinkageMap, scales: MapScales): (point: GridPoint) => Point {
  const columns = Array.from(map.masses, scales.x)
  const rows = Array.from(map.softnesses, scales.y)
  const between = (places: readonly number[], at: number): number => {
    const below = Math.min(places.length - 1, Math.floor(at))
    const from = places[below] ?? 0
    const to = places[below + 1] ?? from
    return from + (to - from) * (at - below)
  }
  return ({ x, y }) => ({ x: between(columns, x), y: between(rows, y) })
}
