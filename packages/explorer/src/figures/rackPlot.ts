import { scaleLinear } from 'd3'
import { html, svg, type TemplateResult } from 'lit'
import { axisBelow, title } from './axis.ts'
import { type Frame, lineHeight, pathOf, px, textSize } from './frame.ts'
import { dot, type Mark, wedge } from './marks.ts'
import { stipple } from './stipple.ts'
import { textWidth } from './textWidth.ts'
import { linearTicksOf } from './ticks.ts'

export type RackPlotWords = {
  /** "effective height, mm" */
  readonly axis: string
}
export type RackScale = {
  readonly width: number
  readonly domain: readonly [number, number]
  readonly x: (height: number) => number
  /** Of the fitted roller, or of the height that is wanted; and what counts as the same. */
  readonly fitted: number | null
  readonly tolerance: readonly [number, number] | null
}

/** Half a number's width stands free at either end. */
const SIDE = 20

/** One scale for all rows: every roller and the tolerance round the fitted one are on it. */
export function rackScale(
  q: { heights: readonly (number | null)[]; fitted: number | null; tolerance: number },
  frame: Pick<Frame<unknown>, 'width'>,
): RackScale {
  const tolerance = q.fitted === null ? null : ([q.fitted - q.tolerance, q.fitted + q.tolerance] as const)
  const shown = [...q.heights.filter(height => height !== null), ...(tolerance ?? [])]
  const low = Math.min(...shown)
  const high = Math.max(...shown)
  const air = 0.06 * (high - low || q.tolerance)
  const domain = shown.length > 0 ? ([low - air, high + air] as const) : ([0, q.tolerance] as const)
  const x = scaleLinear()
    .domain(domain)
    .range([SIDE, frame.width - SIDE])
  return { width: frame.width, domain, x: height => x(height), fitted: q.fitted, tolerance }
}

/** The drawing in one row of the table: as tall as its cell, so that the lines of all rows join. */
export function rackRow(
  row: { height: number | null; isFitted: boolean; name: string },
  scale: RackScale,
): TemplateResult {
  const { width, x, fitted } = scale
  return html`<svg class="figure rack-row" width=${width} height="100%" role="img" aria-label=${row.name}>
    ${row.height === null ? svg`${stipple}<rect class="unknown" fill="url(#stipple)" x=${SIDE} y="20%" width=${width - 2 * SIDE} height="60%" />` : drawTolerance(scale)}
    ${row.height === null ? undefined : svg`<svg y="50%" overflow="visible">${drawRow(row.height, row.isFitted, fitted === null ? null : x(fitted), x)}</svg>`}
  </svg>`
}

function drawTolerance({ tolerance, fitted, x }: RackScale): Mark | undefined {
  if (!tolerance || fitted === null) return undefined
  const [low, high] = [px(x(tolerance[0])), px(x(tolerance[1]))]
  return svg`<rect class="tolerance" x=${low} y="0" width=${px(x(tolerance[1]) - x(tolerance[0]))} height="100%" />
    <line class="hidden" x1=${low} x2=${low} y1="0" y2="100%" /><line class="hidden" x1=${high} x2=${high} y1="0" y2="100%" />
    <line class="axis" x1=${px(x(fitted))} x2=${px(x(fitted))} y1="0" y2="100%" />`
}

function drawRow(height: number, isFitted: boolean, from: number | null, x: RackScale['x']): Mark {
  const at = { x: x(height), y: 0 }
  if (isFitted) return wedge({ x: at.x, y: 5 }, { size: 11 })
  const stem = from === null ? undefined : svg`<path class="axis" d=${pathOf([{ x: from, y: 0 }, at])} />`
  return svg`${stem}${dot(at)}`
}

/** The one axis, in the table's foot. */
export function rackAxis(scale: RackScale, frame: Frame<RackPlotWords>): TemplateResult {
  const size = textSize(frame)
  const line = lineHeight(frame)
  const { width, domain, x } = scale
  const needs = textWidth('10.00', size) + 14
  const ticks = linearTicksOf({
    domain,
    quantity: 'height',
    count: Math.max(2, (width - 2 * SIDE) / needs),
    reader: frame,
  })
  const height = 2 * line + 21
  return html`<svg class="figure rack-axis" width=${width} height=${height} font-size=${size} aria-hidden="true">
    ${axisBelow({ ticks: ticks.map(({ value, text }) => ({ at: x(value), text })), y: 0.5, gap: 10, size })}
    ${title(frame.words.axis, { x: width - SIDE + 8, y: 13 + size * 0.8 + line }, 'end')}
  </svg>`
}
