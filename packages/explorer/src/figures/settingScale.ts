import type { QuantityName } from '@swardsink/model'
import { scaleLinear, scaleLog } from 'd3'
import { html, svg, type TemplateResult } from 'lit'
import { axisBelow } from './axis.ts'
import { type Frame, lineHeight, pathOf, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import { textWidth } from './textWidth.ts'
import { linearTicksOf, logTicksOf } from './ticks.ts'

export type SettingScaleSpec = {
  readonly quantity: QuantityName
  /** SI */
  readonly domain: readonly [number, number]
  readonly kind: 'linear' | 'logarithmic'
  /** The range usually met: the thick part of the line. */
  readonly usual?: readonly [number, number]
  /** What a gauge said: the bar under the line. */
  readonly measured?: readonly [number, number]
}

/** A native thumb is 24 px wide, so its middle travels from 12 px to 12 px short of the end. */
const THUMB = 24
const LINE = 1

/** Part of the way along a setting's line, 0 to 1, and back. A range input works in these parts. */
export function settingParts({ domain, kind }: Pick<SettingScaleSpec, 'domain' | 'kind'>) {
  const scale = (kind === 'logarithmic' ? scaleLog() : scaleLinear()).domain(domain).range([0, 1]).clamp(true)
  return {
    partOf: (value: number): number => scale(value),
    valueAt: (part: number): number => scale.invert(part),
  }
}

/** Place of a part of the line under a native range input of this width, px. */
export const underThumb = (part: number, width: number): number => THUMB / 2 + (width - THUMB) * part

/** The graduated line under a native range input; the wedge is the input's own thumb, its tip on the line. */
export function settingScale(spec: SettingScaleSpec, frame: Omit<Frame<unknown>, 'words'>): TemplateResult {
  const { width } = frame
  const size = textSize(frame)
  const { partOf } = settingParts(spec)
  const x = (value: number) => underThumb(partOf(value), width)
  const height = 12 + lineHeight(frame)
  return html`<svg class="figure setting-scale" width=${width} height=${height} font-size=${size} aria-hidden="true">
    <path class="axis" d=${pathOf([
      { x: THUMB / 2, y: LINE },
      { x: width - THUMB / 2, y: LINE },
    ])} />
    ${
      spec.usual &&
      svg`<path class="usual" d=${pathOf([
        { x: x(spec.usual[0]), y: LINE },
        { x: x(spec.usual[1]), y: LINE },
      ])} />`
    }
    ${axisBelow({ ticks: settingTicks(spec, frame).map(({ value, text }) => ({ at: x(value), text })), y: LINE, gap: 10, size })}
    ${spec.measured && bar(x(spec.measured[0]), x(spec.measured[1]))}
  </svg>`
}

const BAR = 4
/** A bar shorter than this is not seen; it then says where, not how far. */
const SHORTEST_BAR = 5

function bar(from: number, to: number): Mark {
  const width = Math.max(SHORTEST_BAR, to - from)
  return svg`<rect class="measured-bar" x=${px((from + to - width) / 2)} y=${LINE + 2} width=${px(width)} height=${BAR} />`
}

export function settingTicks(spec: SettingScaleSpec, frame: Omit<Frame<unknown>, 'words'>) {
  const { domain, quantity, kind } = spec
  const length = frame.width - THUMB
  const needs = textWidth('0.05', textSize(frame)) + 10
  return kind === 'logarithmic' && domain[0] > 0
    ? logTicksOf({ domain, quantity, length, needs, reader: frame })
    : linearTicksOf({
        domain,
        quantity,
        count: Math.max(2, Math.min(8, length / needs / 1.4)),
        reader: frame,
      })
}
