import { curveMonotoneY, line as lineOf } from 'd3'
import { html, svg, type TemplateResult } from 'lit'
import { axisBelow, axisLeft, title } from './axis.ts'
import { drawCurveNames } from './curveNames.ts'
import {
  type CurveData,
  type CurvesLayout,
  type CurvesSpec,
  curvesLayout,
  type DrawnCurve,
  NUMBERS_GAP,
} from './curvesLayout.ts'
import { drawCurveMarks } from './curvesMarks.ts'
import type { CurvesWords } from './curvesWords.ts'
import { type Frame, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import { stipple } from './stipple.ts'
import { linearTicksOf } from './ticks.ts'

/** Load or pressure against sinkage for several rollers, turfs or laws, with the case in hand and readings. */
export function sinkageCurves(spec: CurvesSpec, frame: Frame<CurvesWords>): TemplateResult {
  const layout = curvesLayout(spec, frame)
  const { words, width } = frame
  const { height } = layout
  return html`<svg class="figure sinkage-curves" width=${width} height=${px(height)} viewBox="0 0 ${width} ${px(height)}" font-size=${textSize(frame)} role="img" aria-label=${words.title}>
    ${stipple}${drawUnknown(spec, layout)}${drawAxes(spec, layout, frame)}
    ${spec.curves.filter(({ present }) => !present).map(curve => drawCurve(curve, layout))}
    ${spec.curves.filter(({ present }) => present).map(curve => drawCurve(curve, layout))}
    ${drawCurveNames(spec, layout, frame)}${drawCurveMarks(spec, layout, frame)}
  </svg>`
}

/** Where the law of the turf in hand is only carried on. */
function drawUnknown({ curves }: CurvesSpec, { box, x }: CurvesLayout): Mark | undefined {
  const knownTo = curves.find(({ present }) => present)?.knownTo ?? null
  if (knownTo === null) return undefined
  const from = x(knownTo)
  return svg`<rect fill="url(#stipple)" x=${px(from)} y=${px(box.y)} width=${px(box.x + box.width - from)} height=${px(box.height)} />`
}

function drawAxes(spec: CurvesSpec, layout: CurvesLayout, frame: Frame<CurvesWords>): Mark {
  const { words } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const { box, x, y, deepest } = layout
  const foot = box.y + box.height
  const end = box.x + box.width
  const across = linearTicksOf({
    domain: [0, spec.most],
    quantity: spec.quantity,
    count: Math.max(2, box.width / (size * 5)),
    reader: frame,
  })
  const down = linearTicksOf({
    domain: [0, deepest],
    quantity: 'sinkage',
    count: Math.max(2, box.height / (line * 3)),
    reader: frame,
  })
  const grid = down
    .filter(({ value }) => value > 0)
    .map(({ value }) => `M${px(box.x)} ${px(y(value))}H${px(end)}`)
    .join('')
  return svg`<path class="grid" d=${grid} /><path class="axis" d=${`M${px(box.x)} ${px(box.y)}V${px(foot)}H${px(end)}`} />
    ${axisBelow({ ticks: across.map(({ value, text }) => ({ at: x(value), text })), y: foot, gap: NUMBERS_GAP, size })}
    ${axisLeft({ ticks: down.map(({ value, text }) => ({ at: y(value), text })), x: box.x, gap: NUMBERS_GAP, size })}
    ${title(words.down, { x: 0, y: size })}${title(words.turf, { x: end, y: box.y - 8 }, 'end')}
    ${title(words.across, { x: end, y: foot + NUMBERS_GAP + size * 0.8 + line + 4 }, 'end')}
    <path class="surface" d=${pathOf([
      { x: box.x, y: box.y },
      { x: end, y: box.y },
    ])} />`
}

const smooth = lineOf<Point>(
  ({ x }) => x,
  ({ y }) => y,
).curve(curveMonotoneY)

/** Two places nearer than this are one on any screen, and a curve through both could not be told. */
const APART = 0.02

function pathThrough(points: readonly CurveData[], { at }: CurvesLayout): string {
  const places = points.map(at).filter((place, i, all) => i === 0 || place.y - (all[i - 1]?.y ?? 0) > APART)
  return places.length < 2 ? '' : (smooth.digits(2)([...places]) ?? '')
}

/** Whole where the law is known, dashed where it is only carried on. */
function drawCurve({ points, knownTo, present }: DrawnCurve, layout: CurvesLayout): Mark {
  const kind = present ? 'outline' : 'thin'
  if (knownTo === null) return svg`<path class=${kind} d=${pathThrough(points, layout)} />`
  const known = points.filter(({ x }) => x <= knownTo)
  const beyond = points.filter(({ x }) => x >= knownTo)
  return svg`<path class=${kind} d=${pathThrough(known, layout)} /><path class="${kind} carried-on" d=${pathThrough(beyond, layout)} />`
}
