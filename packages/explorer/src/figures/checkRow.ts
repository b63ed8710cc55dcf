import { scaleLinear } from 'd3'
import { html, nothing, svg, type TemplateResult } from 'lit'
import { axisBelow, title } from './axis.ts'
import { type Frame, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import { type Mark, readingRing } from './marks.ts'
import { stipple } from './stipple.ts'
import { textWidth } from './textWidth.ts'
import { linearTicksOf } from './ticks.ts'

/** Heights of one strip: what was measured, and what was expected; null where that is not known. */
export type CheckedRow = {
  readonly name: string
  readonly measured: readonly number[]
  /** null where there is nothing to take it of. */
  readonly mean: number | null
  readonly expected: number | null
  readonly between: readonly [number, number] | null
}
export type CheckWords = { readonly axis: string }
export type CheckScale = {
  readonly width: number
  readonly domain: readonly [number, number]
  readonly x: (height: number) => number
}

const SIDE = 22
const AIR = 0.06
/** A scale round a single height, m. */
const LEAST = 0.2e-3
const BAR = 9
/** Rings nearer than this would cover each other: they stand one over the other, where they were measured, px. */
const APART = 11
const LANE = 9
const LANES = [0, -1, 1]

/** One scale for all rows. */
export function checkScale(rows: readonly CheckedRow[], frame: { readonly width: number }): CheckScale {
  const shown = rows
    .flatMap(({ measured, expected, between }) => [...measured, expected ?? [], ...(between ?? [])].flat())
    .filter(Number.isFinite)
  const [low, high] = shown.length > 0 ? [Math.min(...shown), Math.max(...shown)] : [0, LEAST]
  const air = Math.max(AIR * (high - low), (LEAST - (high - low)) / 2)
  const domain = [low - air, high + air] as const
  const x = scaleLinear()
    .domain(domain)
    .range([SIDE, frame.width - SIDE])
  return { width: frame.width, domain, x: height => x(height) }
}

/** Places beside each other in as many lanes as keep them apart; where three are not enough they overlap. */
function lanesOf(places: readonly number[]): readonly Point[] {
  const last = LANES.map(() => Number.NEGATIVE_INFINITY)
  const order = places.map((x, i) => ({ x, i })).sort((a, b) => a.x - b.x)
  const found: Point[] = new Array(places.length)
  for (const { x, i } of order) {
    const free = last.findIndex(end => x - end >= APART)
    const lane = free >= 0 ? free : last.indexOf(Math.min(...last))
    last[lane] = x
    found[i] = { x, y: LANE * (LANES[lane] ?? 0) }
  }
  return found
}

/** One row: the expected interval as a wash with edges, its middle as a line, every height as a ring, a bar at their mean. */
export function checkRow(row: CheckedRow, scale: CheckScale): TemplateResult {
  const { width, x } = scale
  const { measured, mean, expected, between, name } = row
  const places = lanesOf(measured.map(x))
  return html`<svg class="figure check-row" width=${width} height="100%" role="img" aria-label=${name}>
    ${between === null && expected === null ? unknown(width) : svg``}
    ${between && drawBetween(between, scale)}
    <svg y="50%" overflow="visible">${
      expected === null
        ? nothing
        : svg`<path class="outline" d=${pathOf([
            { x: x(expected), y: -BAR },
            { x: x(expected), y: BAR },
          ])} />`
    }${mean === null || measured.length < 2 ? nothing : svg`<path class="measured" d=${`M${px(x(mean))} -12V12`} />`}${places.map(readingRing)}</svg>
  </svg>`
}

const unknown = (width: number): Mark =>
  svg`${stipple}<rect fill="url(#stipple)" x=${SIDE} y="20%" width=${width - 2 * SIDE} height="60%" />`

function drawBetween([low, high]: readonly [number, number], { x }: CheckScale): Mark {
  const [left, right] = [px(x(low)), px(x(high))]
  return svg`<rect class="band" x=${left} y="22%" width=${px(Math.max(0, x(high) - x(low)))} height="56%" />
    <line class="hidden" x1=${left} x2=${left} y1="10%" y2="90%" /><line class="hidden" x1=${right} x2=${right} y1="10%" y2="90%" />`
}

/** The one axis, in the table's foot. */
export function checkAxis(scale: CheckScale, frame: Frame<CheckWords>): TemplateResult {
  const size = textSize(frame)
  const line = lineHeight(frame)
  const { width, domain, x } = scale
  const ticks = linearTicksOf({
    domain,
    quantity: 'height',
    count: Math.max(2, (width - 2 * SIDE) / (textWidth('10.000', size) + 14)),
    reader: frame,
  })
  return html`<svg class="figure check-axis" width=${width} height=${2 * line + 21} font-size=${size} aria-hidden="true">
    <path class="axis" d=${`M${SIDE} 0.5H${px(width - SIDE)}`} />
    ${axisBelow({ ticks: ticks.map(({ value, text }) => ({ at: x(value), text })), y: 0.5, gap: 10, size })}
    ${title(frame.words.axis, { x: width - SIDE + 8, y: 13 + size * 0.8 + line }, 'end')}
  </svg>`
}
