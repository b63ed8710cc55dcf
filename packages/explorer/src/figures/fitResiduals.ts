import { nothing, svg } from 'lit'
import { title } from './axis.ts'
import { type FitLayout, type FitSpec, NUMBERS_GAP } from './fitLayout.ts'
import { drawReadings, replicatesOf } from './fitMarks.ts'
import type { FitWords } from './fitWords.ts'
import { type Frame, lineHeight, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import { spreadOut } from './spreadOut.ts'
import { linearTicksOf } from './ticks.ts'

const PLUS = '+'

/** What the fit leaves over of every reading, deeper further down, between lines of two standard deviations. */
export function drawResiduals(spec: FitSpec, layout: FitLayout, frame: Frame<FitWords>): Mark {
  const { words } = frame
  const { strip, r, x } = layout
  const right = strip.x + strip.width
  const places = replicatesOf(spec.readings, x).flatMap(({ readings }) =>
    readings.map(({ at, residual }) => ({ x: at, y: r(residual) })),
  )
  const level = (value: number) => `M${px(strip.x)} ${px(r(value))}H${px(right)}`
  const scatter = spec.scatter
  return svg`${drawNumbers(layout, frame)}<path class="axis" d=${level(0)} />
    ${scatter === null ? nothing : svg`<path class="hidden" d=${level(-2 * scatter) + level(2 * scatter)} />`}
    ${title(words.residual, { x: 0, y: strip.y - 10 })}${drawReadings(places)}${drawSides(scatter, layout, frame)}`
}

function drawNumbers({ strip, r, residual }: FitLayout, frame: Frame<FitWords>): Mark {
  const size = textSize(frame)
  const count = Math.max(2, strip.height / (lineHeight(frame) * 2))
  const ticks = linearTicksOf({ domain: [-residual, residual], quantity: 'sinkage', count, reader: frame })
  const marks = ticks.map(({ value }) => `M${px(strip.x)} ${px(r(value))}h-7`).join('')
  return svg`<path class="axis" d=${marks} />${ticks.map(
    ({ value, text }) =>
      svg`<text text-anchor="end" x=${px(strip.x - NUMBERS_GAP)} y=${px(r(value) + size * 0.36)}>${value > 0 ? PLUS + text : text}</text>`,
  )}`
}

/** Which side is which, and how far two standard deviations are. */
function drawSides(scatter: number | null, { strip, r }: FitLayout, frame: Frame<FitWords>): Mark {
  const { words, format } = frame
  const size = textSize(frame)
  const foot = strip.y + strip.height
  const texts = [
    { text: words.shallower, y: strip.y + size * 0.4 },
    ...(scatter === null
      ? []
      : [{ text: words.twoS(format(2 * scatter, 'sinkage', { unit: false })), y: r(2 * scatter) }]),
    { text: words.deeper, y: foot },
  ]
  const places = spreadOut(
    texts.map(({ y }) => y),
    { gap: lineHeight(frame), low: strip.y + size * 0.4, high: foot + size },
  )
  return svg`${texts.map(
    ({ text }, i) =>
      svg`<text x=${px(strip.x + strip.width + 12)} y=${px((places[i] ?? 0) + size * 0.36)}>${text}</text>`,
  )}`
}
