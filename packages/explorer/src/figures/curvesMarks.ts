import { svg } from 'lit'
import { type Box, grown } from './box.ts'
import type { CurveData, CurvesLayout, CurvesSpec } from './curvesLayout.ts'
import type { CurvesWords } from './curvesWords.ts'
import { drawLabel } from './drawLabel.ts'
import { type Frame, lineHeight, type Point, pathOf, textSize } from './frame.ts'
import { alongLine } from './leader.ts'
import { crossLine, dot, type Mark, presentRing, readingRing, wedge } from './marks.ts'
import { placeLabel, placeName, type Room } from './placeLabel.ts'

/** Half of what a ring, or a dot, covers, px. */
const RING = 11
const DOT = 7

const boxRound = ({ x, y }: Point, half: number): Box => ({
  x: x - half,
  y: y - half,
  width: 2 * half,
  height: 2 * half,
})

/** The lines that define softness, the others where they stand, readings, and over all the case in hand. */
export function drawCurveMarks(spec: CurvesSpec, layout: CurvesLayout, frame: Frame<CurvesWords>): Mark {
  const { words, format } = frame
  const { box, at } = layout
  const size = textSize(frame)
  const here = at(spec.present)
  const left = { x: box.x, y: here.y }
  const foot = { x: here.x, y: box.y + box.height }
  const others = spec.curves.filter(({ present, own }) => !present && own !== null)
  const dots = others.map(({ own }) => at(own as CurveData)).filter(({ x }) => x <= box.x + box.width)
  const lines = spec.curves.flatMap(({ points }) =>
    points.slice(1).flatMap((point, i) => alongLine(at(points[i] as CurveData), at(point))),
  )
  const taken: Box[] = [
    ...[here, ...spec.readings.map(at)].map(place => boxRound(place, RING)),
    ...dots.map(place => boxRound(place, DOT)),
  ]
  const room: Room = {
    bounds: grown(box, -4),
    size,
    lineHeight: lineHeight(frame),
    taken,
    avoided: [...lines, ...alongLine(here, left), ...alongLine(here, foot)],
  }
  const near = ({ x, y }: Point, dy: number) => [
    { x: x + 12, y: y - dy - size, anchor: 'start' } as const,
    { x: x - 12, y: y + dy / 2, anchor: 'end' } as const,
    { x: x + 12, y: y + dy / 2, anchor: 'start' } as const,
    { x: x - 12, y: y - dy - size, anchor: 'end' } as const,
  ]
  const x = format(spec.present.x, spec.quantity)
  const sinkage = format(spec.present.sinkage, 'sinkage')
  const label = placeLabel(
    { lines: [{ text: words.here({ x, sinkage }), strong: true }], places: near(here, 10) },
    room,
  )
  taken.push(label.box)
  // A mark without a curve of its own has its name beside it, where there is room for one.
  const names = others
    .filter(({ points }) => points.length === 0)
    .flatMap(({ label: text, own }) => {
      const target = at(own as CurveData)
      const placed = placeName({ lines: [{ text }], places: near(target, 4), target }, room)
      if (placed) taken.push(placed.box)
      return placed ? [placed] : []
    })
  return svg`${spec.softness && drawSoftness(spec.softness, layout, frame, room)}${dots.map(dot)}${names.map(name => drawLabel(name))}
    ${spec.readings.map(reading => readingRing(at(reading)))}
    ${crossLine(here, left)}${crossLine(here, foot)}${wedge(left, { size: 10, turned: -90 })}${wedge(foot, { size: 10, turned: 180 })}
    ${presentRing(here)}${drawLabel(label)}`
}

function drawSoftness(
  softness: CurveData,
  { at, box }: CurvesLayout,
  frame: Frame<CurvesWords>,
  room: Room,
): Mark {
  const { words, format } = frame
  const place = at(softness)
  const text = words.softness(format(softness.sinkage, 'softness'))
  const size = textSize(frame)
  const label = placeName(
    {
      lines: [{ text }],
      places: [
        { x: place.x + 8, y: box.y + 6, anchor: 'start' },
        { x: place.x + 8, y: place.y - size * 1.8, anchor: 'start' },
        { x: box.x + 8, y: place.y + 6, anchor: 'start' },
      ],
    },
    room,
  )
  return svg`<path class="hidden" d=${pathOf([{ x: place.x, y: box.y }, place, { x: box.x, y: place.y }])} />${label && drawLabel(label)}`
}
