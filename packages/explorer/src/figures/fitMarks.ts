import { nothing, svg } from 'lit'
import { type Box, grown } from './box.ts'
import { drawLabel } from './drawLabel.ts'
import type { FitLayout, FitReading, FitSpec } from './fitLayout.ts'
import type { FitWords } from './fitWords.ts'
import { type Frame, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import { alongLine } from './leader.ts'
import { crossLine, type Mark, presentRing, readingRing, wedge } from './marks.ts'
import { placeLabel } from './placeLabel.ts'
import { spreadOut } from './spreadOut.ts'
import { textWidth } from './textWidth.ts'

/** Readings alike stand so far apart, px; closer where there are many. */
const SIDE_BY_SIDE = 11
/** However near the next load is, replicates can be told apart. */
const CLOSEST = 4
/** Readings of one load never take more of the axis than this, px. */
const MOST_WIDE = 44
/** Loads nearer than this on the screen are one place. */
const PLACE = 3
/** More rings than this hide each other: they become dots, drawn as one path. */
const MOST_RINGS = 240
const DOT = 1.8

/** Readings under one load, and how far to the side each of them stands. */
export type Replicates = {
  readonly x: number
  readonly width: number
  readonly readings: readonly (FitReading & { readonly at: number })[]
}

/** Readings side by side at their loads, in the order of the table. */
export function replicatesOf(
  readings: readonly FitReading[],
  x: (value: number) => number,
): readonly Replicates[] {
  const places = new Map<number, FitReading[]>()
  for (const reading of readings) {
    const place = Math.round(x(reading.x) / PLACE)
    const alike = places.get(place)
    if (alike) alike.push(reading)
    else places.set(place, [reading])
  }
  const middles = [...places.values()].map(list => x(list[0]?.x ?? 0)).sort((a, b) => a - b)
  return [...places.values()].map(list => {
    const middle = x(list[0]?.x ?? 0)
    const place = middles.indexOf(middle)
    const [before = Number.NEGATIVE_INFINITY, after = Number.POSITIVE_INFINITY] = [
      middles[place - 1],
      middles[place + 1],
    ]
    const room = Math.min(middle - before, after - middle) - SIDE_BY_SIDE
    const gaps = Math.max(1, list.length - 1)
    const step = Math.max(
      Math.min(CLOSEST, MOST_WIDE / gaps),
      Math.min(SIDE_BY_SIDE, room / gaps, MOST_WIDE / gaps),
    )
    const half = ((list.length - 1) * step) / 2
    return {
      x: middle,
      width: 2 * half,
      readings: list.map((reading, i) => ({ ...reading, at: middle - half + i * step })),
    }
  })
}

/** Rings, or dots where rings would cover each other. */
export function drawReadings(places: readonly Point[]): Mark {
  if (places.length <= MOST_RINGS) return svg`${places.map(readingRing)}`
  const d = places
    .map(
      ({ x, y }) =>
        `M${px(x - DOT)} ${px(y)}a${DOT} ${DOT} 0 1 0 ${2 * DOT} 0a${DOT} ${DOT} 0 1 0 ${-2 * DOT} 0`,
    )
    .join('')
  return svg`<path class="measured-fill" d=${d} />`
}

const BAR_OVER = 10

/** A mean needs two. */
function meanBars(all: readonly Replicates[], { y }: FitLayout): string {
  return all
    .filter(({ readings }) => readings.length > 1)
    .map(({ x, width, readings }) => {
      const mean = readings.reduce((sum, { sinkage }) => sum + sinkage, 0) / readings.length
      return `M${px(x - width / 2 - BAR_OVER)} ${px(y(mean))}h${px(width + 2 * BAR_OVER)}`
    })
    .join('')
}

/** Readings, their means, the case in hand, and the names at the ends of the lines. */
export function drawFitMarks(spec: FitSpec, layout: FitLayout, frame: Frame<FitWords>): Mark {
  const all = replicatesOf(spec.readings, layout.x)
  const places = all.flatMap(({ readings }) =>
    readings.map(({ at, sinkage }) => ({ x: at, y: layout.y(sinkage) })),
  )
  return svg`${drawReadings(places)}<path class="measured" d=${meanBars(all, layout)} />${drawNames(spec, layout, frame)}${drawPresent(spec, layout, frame, places)}`
}

type Name = { readonly lines: readonly string[]; readonly y: number; readonly strong: boolean }

/** Every line is named where it ends. */
function drawNames(spec: FitSpec, { box, x, y, depths }: FitLayout, frame: Frame<FitWords>): Mark {
  const { words } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const right = box.x + box.width
  const last = spec.points.at(-1)
  if (!last) return svg``
  const inside = (depth: number) => y(Math.max(depths[0], Math.min(depths[1], depth)))
  const names: readonly Name[] = [
    { lines: [words.fit], y: inside(last.sinkage), strong: true },
    ...(last.curve ? [{ lines: words.curve, y: inside(last.curve[0]), strong: false }] : []),
    ...(last.reading ? [{ lines: words.oneMore, y: inside(last.reading[1]), strong: false }] : []),
    ...spec.others.flatMap(({ name, points }) => {
      const end = points.at(-1)
      return end
        ? [
            {
              lines: [shortened(name, frame.width - right - 12, size)],
              y: inside(end.sinkage),
              strong: false,
            },
          ]
        : []
    }),
  ]
  // A name of two lines takes the room of two; all are placed as lines, and a name stands on its first.
  const rows = names.flatMap(name => name.lines.map((text, i) => ({ name, text, y: name.y + i * line })))
  const places = spreadOut(
    rows.map(row => row.y),
    { gap: line, low: box.y + size * 0.4, high: box.y + box.height },
  )
  return svg`${rows.map(({ name, text }, i) => {
    const at = places[i] ?? 0
    const isFirst = name.lines[0] === text
    const end = { x: x(last.x), y: name.y }
    const leads = isFirst && (Math.abs(at - name.y) > 3 || end.x < right - 2)
    return svg`${
      leads
        ? svg`<path class="hair" d=${pathOf([end, { x: right + 2, y: name.y }, { x: right + 9, y: at }])} />`
        : nothing
    }<text class=${name.strong ? 'strong' : ''} x=${px(right + 12)} y=${px(at + size * 0.36)}>${text}</text>`
  })}`
}

function shortened(text: string, room: number, size: number): string {
  if (textWidth(text, size) <= room) return text
  let end = text.length - 1
  while (end > 1 && textWidth(`${text.slice(0, end)}…`, size) > room) end--
  return `${text.slice(0, end).trimEnd()}…`
}

const RING = 11

/** The load in hand: a wedge on the turf's surface, a line down to the curve, a ring on it. */
function drawPresent(
  { present, quantity, points }: FitSpec,
  layout: FitLayout,
  frame: Frame<FitWords>,
  readings: readonly Point[],
): Mark {
  if (!present) return svg``
  const { box, x, y } = layout
  const { words, format } = frame
  const size = textSize(frame)
  const here = { x: x(present.x), y: y(present.sinkage) }
  const top = { x: here.x, y: y(0) }
  const [first = '', ...rest] = words.here({
    x: format(present.x, quantity),
    sinkage: format(present.sinkage, 'sinkage'),
  })
  const around = ({ x: cx, y: cy }: Point): Box => ({
    x: cx - RING,
    y: cy - RING,
    width: 2 * RING,
    height: 2 * RING,
  })
  const along = points.map(point => ({ x: x(point.x), y: y(point.sinkage) }))
  const label = placeLabel(
    {
      lines: [{ text: first }, ...rest.map(text => ({ text, strong: true }))],
      places: [
        { x: here.x + 10, y: top.y + 8, anchor: 'start' },
        { x: here.x - 10, y: here.y + 14, anchor: 'end' },
        { x: here.x - 10, y: top.y + 8, anchor: 'end' },
      ],
    },
    {
      bounds: grown(box, -4),
      size,
      lineHeight: lineHeight(frame),
      taken: [around(here), ...readings.slice(0, MOST_RINGS).map(around)],
      avoided: [
        ...alongLine(top, here),
        ...along.slice(1).flatMap((point, i) => alongLine(along[i] ?? point, point)),
      ],
    },
  )
  return svg`${crossLine(top, here)}${wedge(top, { size: 11 })}${drawLabel(label)}${presentRing(here)}`
}
