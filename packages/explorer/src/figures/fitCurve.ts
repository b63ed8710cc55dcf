import { html, nothing, svg, type TemplateResult } from 'lit'
import { axisBelow, axisLeft, title } from './axis.ts'
import { type FitLayout, type FitPoint, type FitSpec, fitLayout, NUMBERS_GAP } from './fitLayout.ts'
import { drawFitMarks } from './fitMarks.ts'
import { drawResiduals } from './fitResiduals.ts'
import type { FitWords } from './fitWords.ts'
import { type Frame, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import { stipple } from './stipple.ts'
import { textWidth } from './textWidth.ts'
import { linearTicksOf } from './ticks.ts'

/** What the wedge of the load in hand takes to either side, px. */
const WEDGE = 14

/** A fitted curve with its bands, the readings on it, and below what the fit leaves over of each. */
export function fitCurve(spec: FitSpec, frame: Frame<FitWords>): TemplateResult {
  const layout = fitLayout(spec, frame)
  const { words, width } = frame
  const { height } = layout
  return html`<svg class="figure fit-curve" width=${width} height=${px(height)} viewBox="0 0 ${width} ${px(height)}" font-size=${textSize(frame)} role="img" aria-label=${words.title}>
    ${stipple}${drawUnknown(spec, layout, frame)}${drawAxes(spec, layout, frame)}
    ${drawBands(spec, layout)}${drawSurface(layout)}
    ${spec.others.map(({ points }) => svg`<path class="hair" d=${lineThrough(points, layout)} />`)}
    ${drawCurve(spec, layout)}
    ${spec.readings.length > 0 ? drawResiduals(spec, layout, frame) : nothing}
    ${drawFitMarks(spec, layout, frame)}
  </svg>`
}

/** The stretches of the axis that no reading reaches: from where to where. */
export function unreadStretches({ points, most }: FitSpec): readonly (readonly [number, number])[] {
  const read = points.filter(({ beyond }) => !beyond)
  const [first, last] = [read[0], read.at(-1)]
  if (points.length === 0 || !first || !last) return [[0, most]]
  const before = points[points.indexOf(first) - 1]
  const from = before ? first.x : 0
  return [
    ...(from > 0 ? [[0, from] as const] : []),
    ...(last.x < most && points.at(-1) !== last ? [[last.x, most] as const] : []),
  ]
}

function drawUnknown(spec: FitSpec, { box, x, y }: FitLayout, frame: Frame<FitWords>): Mark {
  const size = textSize(frame)
  const text = frame.words.unknown
  return svg`${unreadStretches(spec).map(([from, to], i) => {
    const [left, right] = [x(from), x(to)]
    const isWide = textWidth(text, size) + 12 < right - left
    // The left one is named low, the right one high: the curve runs from the upper left to the lower right.
    const at = i === 0 && from === 0 ? box.y + box.height - 10 : y(0) + size + 8
    return svg`<rect fill="url(#stipple)" x=${px(left)} y=${px(box.y)} width=${px(right - left)} height=${px(box.height)} />${
      isWide
        ? svg`<text class="on-paper" text-anchor="middle" x=${px((left + right) / 2)} y=${px(at)}>${text}</text>`
        : nothing
    }`
  })}`
}

function drawAxes(spec: FitSpec, layout: FitLayout, frame: Frame<FitWords>): Mark {
  const { words } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const { box, strip, x, y, depths } = layout
  const foot = strip.y + strip.height
  const end = box.x + box.width
  const across = linearTicksOf({
    domain: [0, spec.most > 0 ? spec.most : 1],
    quantity: spec.quantity,
    count: Math.max(2, box.width / (size * 5)),
    reader: frame,
  })
  const down = linearTicksOf({
    domain: depths,
    quantity: 'sinkage',
    count: Math.max(2, box.height / (line * 3)),
    reader: frame,
  })
  const grid = down
    .filter(({ value }) => value !== 0)
    .map(({ value }) => `M${px(box.x)} ${px(y(value))}H${px(end)}`)
    .join('')
  const { present } = spec
  // The wedge of the load in hand stands where the name would.
  const isClear = !present || x(present.x) + WEDGE < end - textWidth(words.turf, size)
  return svg`<path class="grid" d=${grid} />
    <path class="axis" d=${`M${px(box.x)} ${px(box.y)}V${px(box.y + box.height)}M${px(box.x)} ${px(foot)}H${px(end)}`} />
    ${axisBelow({ ticks: across.map(({ value, text }) => ({ at: x(value), text })), y: foot, gap: NUMBERS_GAP, size })}
    ${axisLeft({ ticks: down.map(({ value, text }) => ({ at: y(value), text })), x: box.x, gap: NUMBERS_GAP, size })}
    ${title(words.down, { x: 0, y: size })}${isClear ? title(words.turf, { x: end, y: y(0) - 8 }, 'end') : nothing}
    ${title(words.across, { x: end, y: foot + NUMBERS_GAP + size * 0.8 + line + 4 }, 'end')}`
}

/** Over the bands, which may reach above it. */
const drawSurface = ({ box, y }: FitLayout): Mark =>
  svg`<path class="surface" d=${pathOf([
    { x: box.x, y: y(0) },
    { x: box.x + box.width, y: y(0) },
  ])} />`

/** A depth kept inside the figure: what lies beyond it is on its edge. */
const kept = ({ depths, y }: FitLayout, depth: number): number =>
  y(Math.max(depths[0], Math.min(depths[1], depth)))

const lineThrough = (points: readonly FitPoint[], layout: FitLayout): string =>
  points.length < 2
    ? ''
    : pathOf(points.map(({ x, sinkage }) => ({ x: layout.x(x), y: kept(layout, sinkage) })))

type Side = 'curve' | 'reading'

function edges(points: readonly FitPoint[], side: Side, layout: FitLayout): readonly [Point[], Point[]] {
  const known = points.flatMap(point => {
    const range = point[side]
    return range ? [{ x: layout.x(point.x), low: kept(layout, range[0]), high: kept(layout, range[1]) }] : []
  })
  return [known.map(({ x, low }) => ({ x, y: low })), known.map(({ x, high }) => ({ x, y: high }))]
}

/** 95 % of the curve as a wash with an edge, 95 % of one more reading dotted. */
function drawBands({ points }: FitSpec, layout: FitLayout): Mark {
  const [upper, lower] = edges(points, 'curve', layout)
  const [above, below] = edges(points, 'reading', layout)
  const isThere = (side: readonly Point[]) => side.length > 1
  return svg`${isThere(upper) ? svg`<path class="band" d=${pathOf([...upper, ...lower.toReversed()], true)} /><path class="band-edge" d=${pathOf(upper) + pathOf(lower)} />` : nothing}${
    isThere(above) ? svg`<path class="one-more" d=${pathOf(above) + pathOf(below)} />` : nothing
  }`
}

/** Whole where there are readings, dashed where the law stands alone. */
function drawCurve(spec: FitSpec, layout: FitLayout): Mark {
  const { points } = spec
  const firstRead = points.findIndex(({ beyond }) => !beyond)
  const lastRead = points.findLastIndex(({ beyond }) => !beyond)
  const surface: FitPoint = { x: 0, sinkage: 0, curve: null, reading: null, beyond: true }
  if (firstRead < 0)
    return svg`<path class="outline carried-on" d=${lineThrough(points.length > 0 ? [surface, ...points] : [], layout)} />`
  const before = firstRead > 0 ? [surface, ...points.slice(0, firstRead + 1)] : []
  const known = points.slice(firstRead, lastRead + 1)
  return svg`<path class="outline carried-on" d=${lineThrough(before, layout) + lineThrough(points.slice(lastRead), layout)} />
    <path class="outline" d=${lineThrough(firstRead === 0 ? [surface, ...known] : known, layout)} />`
}
