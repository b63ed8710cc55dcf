import { svg } from 'lit'
import { type Box, grown } from './box.ts'
import type { CurveData, CurvesLayout, CurvesSpec } from './curvesLayout.ts'
import type { CurvesWords } from './curvesWords.ts'
import { drawLabel, drawLeader } from './drawLabel.ts'
import { type Frame, lineHeight, type Point, pathOf, textSize } from './frame.ts'
import { alongLine, needsLeader } from './leader.ts'
import { crossLine, dot, type Mark, presentRing, readingRing, wedge } from './marks.ts'
import { type PlacedLabel, placeLabel, placeName, type Room } from './placeLabel.ts'
import { textWidth } from './textWidth.ts'

/** Half of what a ring, or a dot, covers, px. */
const RING = 11
const DOT = 5

const boxRound = ({ x, y }: Point, half: number): Box => ({
  x: x - half,
  y: y - half,
  width: 2 * half,
  height: 2 * half,
})

/** Readings at one load stand side by side, so that each is seen. */
const SIDE_BY_SIDE = 11

function readingPlaces(readings: readonly CurveData[], { at }: CurvesLayout): readonly Point[] {
  const alike = new Map<number, CurveData[]>()
  for (const reading of readings) {
    const column = Math.round(at(reading).x / SIDE_BY_SIDE)
    alike.set(column, [...(alike.get(column) ?? []), reading])
  }
  return [...alike.values()].flatMap(list =>
    list.map((reading, i) => {
      const { x, y } = at(reading)
      return { x: x + (i - (list.length - 1) / 2) * SIDE_BY_SIDE, y }
    }),
  )
}

/** Where a label may stand beside a mark, best first: over the curve, then under it. */
const beside = ({ x, y }: Point, q: { readonly away: number; readonly size: number }) => [
  { x: x + q.away, y: y - q.size * 1.4, anchor: 'start' } as const,
  { x: x - q.away, y: y + q.size * 0.2, anchor: 'end' } as const,
  { x: x + q.away, y: y + q.size * 0.2, anchor: 'start' } as const,
  { x: x - q.away, y: y - q.size * 1.4, anchor: 'end' } as const,
]

type Placed = { readonly label: PlacedLabel; readonly target: Point | null }

/** The lines that define softness, the others where they stand, readings, and over all the case in hand. */
export function drawCurveMarks(spec: CurvesSpec, layout: CurvesLayout, frame: Frame<CurvesWords>): Mark {
  const { words, format } = frame
  const { box, at } = layout
  const size = textSize(frame)
  const here = at(spec.present)
  const left = { x: box.x, y: here.y }
  const foot = { x: here.x, y: box.y + box.height }
  const readings = readingPlaces(spec.readings, layout)
  const others = spec.curves.flatMap(({ present, own, points, label }) =>
    present || own === null || own.x > spec.most
      ? []
      : [{ place: at(own), isBare: points.length === 0, label }],
  )
  const taken: Box[] = [
    ...[here, ...readings].map(place => boxRound(place, RING)),
    ...others.map(({ place }) => boxRound(place, DOT)),
  ]
  const lines = spec.curves.flatMap(({ points }) =>
    points.slice(1).flatMap((point, i) => alongLine(at(points[i] as CurveData), at(point))),
  )
  const crossing = [...alongLine(here, left), ...alongLine(here, foot)]
  const room: Room = {
    bounds: grown(box, -4),
    size,
    lineHeight: lineHeight(frame),
    taken,
    avoided: [...lines, ...crossing],
  }
  const placed: Placed[] = []
  const put = (label: PlacedLabel | undefined, target: Point | null = null): void => {
    if (!label) return
    taken.push(label.box)
    placed.push({ label, target })
  }
  const x = format(spec.present.x, spec.quantity)
  const text = words.here({ x, sinkage: format(spec.present.sinkage, 'sinkage') })
  const wanted = { lines: [{ text, strong: true }], places: beside(here, { away: 14, size }) }
  // A number that would stand far from its mark had better cross a curve.
  put(placeName(wanted, room) ?? placeLabel(wanted, { ...room, avoided: crossing }))
  // A mark without a curve of its own has its name beside it, where there is room for one.
  for (const { place, label, isBare } of others) {
    if (!isBare) continue
    const places = beside(place, { away: 8, size })
    put(placeName({ lines: [{ text: label }], places, target: place }, room), place)
  }
  put(unknownLabel(spec, layout, frame, room))
  const softness = spec.softness && drawSoftness(spec.softness, layout, frame, room)
  const labels = placed.map(({ label, target }) =>
    target && needsLeader(label.box, target)
      ? svg`${drawLeader(label, target)}${drawLabel(label)}`
      : drawLabel(label),
  )
  return svg`${softness}${others.map(({ place }) => dot(place))}${readings.map(readingRing)}
    ${crossLine(here, left)}${crossLine(here, foot)}${wedge(left, { size: 10, turned: -90 })}${wedge(foot, { size: 10, turned: 180 })}
    ${labels}${presentRing(here)}`
}

/** What the stipple says, in one of its corners. */
function unknownLabel(
  { curves }: CurvesSpec,
  { box, x }: CurvesLayout,
  frame: Frame<CurvesWords>,
  room: Room,
): PlacedLabel | undefined {
  const knownTo = curves.find(({ present }) => present)?.knownTo ?? null
  const text = frame.words.unknown
  if (knownTo === null) return undefined
  const from = x(knownTo)
  const right = box.x + box.width
  if (textWidth(text, room.size) + 16 > right - from) return undefined
  const foot = box.y + box.height - room.lineHeight - 8
  return placeName(
    {
      lines: [{ text }],
      places: [
        { x: right - 8, y: box.y + 8, anchor: 'end' },
        { x: from + 8, y: foot, anchor: 'start' },
        { x: right - 8, y: foot, anchor: 'end' },
      ],
    },
    room,
  )
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
