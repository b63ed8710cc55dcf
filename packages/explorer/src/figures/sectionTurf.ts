import { svg } from 'lit'
import { uprightDimension } from './dimension.ts'
import { type Frame, lineHeight, type Point, pathOf, px } from './frame.ts'
import type { Mark } from './marks.ts'
import { fitsIn, type MatPoint, type SectionLayout, type SectionSpec } from './sectionLayout.ts'
import { landsOf } from './sectionMetal.ts'
import type { SectionWords } from './sectionWords.ts'

/** The mat of one pitch repeated over the drawing, cut off where that ends. */
export function matOver(spec: SectionSpec, layout: SectionLayout): readonly MatPoint[] {
  const { grooves, sinkage, pressure, track } = spec
  const { start: from, width, along } = layout
  const to = from + width / along
  if (!grooves) return [from, to].map(position => ({ position, sinkage: sinkage - track, pressure }))
  const points = Array.from({ length: layout.pitches + 3 }, (_, i) =>
    grooves.mat.map(point => ({ ...point, position: point.position + (i - 1) * grooves.pitch })),
  ).flat()
  const inside = points.filter(({ position }) => position > from && position < to)
  return [at(points, from), ...inside, at(points, to)]
}

/** The mat at a place between two of its points. */
function at(points: readonly MatPoint[], position: number): MatPoint {
  const next = Math.max(
    1,
    points.findIndex(point => point.position >= position),
  )
  const [before, after] = [points[next - 1], points[next]]
  if (!before || !after) throw new Error('a mat of one point')
  const span = after.position - before.position
  const part = span > 0 ? (position - before.position) / span : 0
  const between = (a: number, b: number) => a + (b - a) * part
  return {
    position,
    sinkage: between(before.sinkage, after.sinkage),
    pressure: between(before.pressure, after.pressure),
  }
}

/** The turf below its surface, with the line of its surface, and where that was before. */
export function drawTurf(spec: SectionSpec, layout: SectionLayout): Mark {
  const { width, base, ground, x, y } = layout
  const surface: readonly Point[] = matOver(spec, layout).map(point => ({
    x: x(point.position),
    y: y(point.sinkage + spec.track),
  }))
  const body = [...surface, { x: width, y: base }, { x: 0, y: base }]
  const before = pathOf([
    { x: 0, y: ground },
    { x: width, y: ground },
  ])
  return svg`<path class="ground" d=${pathOf(body, true)} /><path class="hidden" d=${before} /><path class="surface" d=${pathOf(surface)} />`
}

/** The name of the dashed line, and how far the mat stands up. */
export function drawTurfNames(spec: SectionSpec, layout: SectionLayout, frame: Frame<SectionWords>): Mark {
  const { words, format } = frame
  const { grooves, sinkage } = spec
  const { ground, y } = layout
  if (!grooves) return svg`<text class="on-paper" x="12" y=${px(ground - 7)}>${words.turf}</text>`
  const lands = landsOf(grooves, layout)
  const gaps = lands.slice(1).map(([left], i) => [lands[i]?.[1] ?? 0, left] as const)
  const [from = 0, to = 0] = gaps.at(-1) ?? []
  const name = [words.turf, words.turfShort].find(text => fitsIn(text, to - from - 8, frame))
  const named =
    name && svg`<text class="on-paper" x=${px(to - 8)} y=${px(ground - 7)} text-anchor="end">${name}</text>`
  const [first = [0, 0] as const] = gaps
  const middle = (first[0] + first[1]) / 2
  const top = y(sinkage - grooves.relief)
  const foot = y(sinkage)
  const text = grooves.touching
    ? words.floor(format(sinkage - grooves.relief, 'sinkage'))
    : words.relief(format(grooves.relief, 'relief'))
  const arrowsOutside = foot - top < 24
  const baseline = foot + (arrowsOutside ? 18 : 4) + lineHeight(frame)
  return svg`${named}${
    grooves.relief * layout.down > 1 ? uprightDimension({ x: middle, from: top, to: foot }) : undefined
  }<text class="on-ground" x=${px(middle)} y=${px(Math.min(layout.base - 4, baseline))} text-anchor="middle">${text}</text><path class="dotted" d=${`M${px(first[0])} ${px(foot)}H${px(first[1])}`} />`
}
