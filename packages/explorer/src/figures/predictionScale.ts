import { html, svg, type TemplateResult } from 'lit'
import { axisLeft, title } from './axis.ts'
import { type Frame, lineHeight, pathOf, px, textSize } from './frame.ts'
import { arrowHead, diamond, dot, type Mark, presentRing, wedge } from './marks.ts'
import { type PredictionLayout, type PredictionSpec, predictionLayout } from './predictionLayout.ts'
import { drawPredictedRoller } from './predictionRoller.ts'
import type { PredictionWords } from './predictionWords.ts'
import { spreadOut } from './spreadOut.ts'
import { textWidth } from './textWidth.ts'

const GAP = 14
/** Between the middles of two guesses. */
const APART = 10

/** One scale: what stands, what was said beforehand, and, once it is revealed, what the model says. */
export function predictionScale(spec: PredictionSpec, frame: Frame<PredictionWords>): TemplateResult {
  const layout = predictionLayout(spec, frame)
  const { width, words } = frame
  const { height } = layout
  const size = textSize(frame)
  return html`<svg class="figure prediction-scale" width=${width} height=${px(height)} viewBox="0 0 ${width} ${px(height)}" font-size=${size} role=${spec.movable ? 'group' : 'img'} aria-label=${words.title}>
    ${drawPredictedRoller(spec, layout, frame)}${drawAxis(layout, frame)}${drawGuesses(spec, layout)}${drawLevels(spec, layout, frame)}${drawError(spec, layout, frame)}
  </svg>`
}

function drawAxis(
  { left, top, foot, y, ticks, axis }: PredictionLayout,
  frame: Frame<PredictionWords>,
): Mark {
  const size = textSize(frame)
  return svg`<path class="axis" d=${`M${px(left)} ${px(top)}V${px(foot)}`} />
    ${axisLeft({ ticks: ticks.map(({ value, text }) => ({ at: y(value), text })), x: left, gap: GAP, size })}${title(axis, { x: 0, y: size })}`
}

/** Guesses that stand on one spot stand side by side. */
function drawGuesses({ guesses }: PredictionSpec, { left, right, y }: PredictionLayout): readonly Mark[] {
  const rows = new Map<number, number>()
  const most = new Map<number, number>()
  const rowOf = (guess: number) => Math.round(y(guess) / APART)
  for (const guess of guesses) most.set(rowOf(guess), (most.get(rowOf(guess)) ?? 0) + 1)
  return [...guesses]
    .sort((a, b) => a - b)
    .map(guess => {
      const row = rowOf(guess)
      const place = rows.get(row) ?? 0
      rows.set(row, place + 1)
      const step = Math.min(APART, (right - left - 2 * APART) / (most.get(row) ?? 1))
      return dot({ x: left + APART + place * step, y: y(guess) })
    })
}

/** A line for each value, named at its end. The marks stand on the lines. */
function drawLevels(spec: PredictionSpec, layout: PredictionLayout, frame: Frame<PredictionWords>): Mark {
  const { words } = frame
  const size = textSize(frame)
  const { left, right, top, foot, y } = layout
  const middle = middleOf(layout)
  const levels = [
    ...(spec.now === null
      ? []
      : [{ value: spec.now, text: words.now(spec.text(spec.now)), kind: 'hair', strong: false }]),
    ...(spec.yours === null
      ? []
      : [{ value: spec.yours, text: words.yours(spec.text(spec.yours)), kind: 'said', strong: true }]),
    ...(spec.model === null
      ? []
      : [
          {
            value: spec.model,
            text: words.model(spec.text(spec.model)),
            kind: 'present-cross',
            strong: true,
          },
        ]),
  ]
  const places = spreadOut(
    levels.map(({ value }) => y(value)),
    { gap: lineHeight(frame), low: top - 4, high: foot },
  )
  const lines = levels.map(({ value, text, kind, strong }, i) => {
    const at = y(value)
    const name = places[i] ?? at
    const line = pathOf([
      { x: left, y: at },
      { x: right - 8, y: at },
      { x: right, y: name },
    ])
    return svg`<path class=${kind === 'said' ? 'outline carried-on' : kind} d=${line} /><text class=${strong ? 'strong' : ''} x=${px(right + 5)} y=${px(name + size * 0.36)}>${text}</text>`
  })
  const modelMark =
    spec.model === null
      ? undefined
      : svg`${wedge({ x: left, y: y(spec.model) }, { size: 10, turned: -90 })}${presentRing({ x: middle, y: y(spec.model) })}`
  return svg`${lines}${modelMark}${drawSaid(spec, layout, frame)}`
}

const middleOf = ({ left, right }: PredictionLayout): number => left + (right - left) * 0.55

/** The diamond; movable until it is locked. */
function drawSaid(
  { yours, model, movable, spoken, domain, deep }: PredictionSpec,
  layout: PredictionLayout,
  frame: Frame<PredictionWords>,
): Mark | undefined {
  if (yours === null) return undefined
  const { words } = frame
  const y = layout.y(yours)
  // Where both marks would stand on one spot they stand side by side.
  const isClose = model !== null && Math.abs(layout.y(model) - y) < 15
  const at = { x: middleOf(layout) - (isClose ? 26 : 0), y }
  if (!movable) return diamond(at, 7)
  const up = { x: at.x - 22, y: at.y - 12 }
  const down = { x: at.x - 22, y: at.y + 12 }
  const arrow = svg`<path class="outline" d=${pathOf([up, down])} />${arrowHead(up, -90, { kind: 'load-head', length: 7 })}${arrowHead(down, 90, { kind: 'load-head', length: 7 })}`
  return svg`${arrow}<g data-handle="prediction" tabindex="0" role="slider" aria-label=${words.handle} aria-orientation="vertical" aria-valuemin=${domain[0]} aria-valuemax=${domain[1]} aria-valuenow=${yours} aria-valuetext=${spoken} data-deep=${deep ? 'yes' : 'no'}>${diamond(at, 7)}<circle class="reach" cx=${px(at.x)} cy=${px(at.y)} r="16" /></g>`
}

const BIG = 1.4

/** From the model to what was said, with its sign. */
function drawError(
  { yours, model, error, guesses }: PredictionSpec,
  layout: PredictionLayout,
  frame: Frame<PredictionWords>,
): Mark | undefined {
  if (yours === null || model === null || error === '') return undefined
  const size = textSize(frame)
  const { left, right, y } = layout
  // Guesses of a room begin at the axis: then the error stands on the other side.
  const x = guesses.length > 0 ? (middleOf(layout) + 2 * right) / 3 - 8 : left + 28
  const [from, to] = [y(model), y(yours)]
  const apart = Math.abs(to - from)
  const head = apart >= 16
  const down = to > from
  const text = (at: number) =>
    svg`<text class="on-ground strong" font-size=${px(size * BIG)} x=${px(x + 10)} y=${px(at)}>${error}</text>`
  // Too short to hold a number beside it: the number stands on the far side of what was said.
  const beside = apart >= size * BIG * 1.3
  const place = beside ? (from + to) / 2 + size * 0.5 : to + (down ? size * BIG + 4 : -8)
  if (!head) return text(place)
  return svg`<path class="load" d=${pathOf([
    { x, y: from },
    { x, y: to + (down ? -9 : 9) },
  ])} />${arrowHead({ x, y: to }, down ? 90 : -90, { kind: 'load-head', length: 11 })}${text(place)}`
}

/** Room that a row of guesses takes for one of a few options, and its marks. */
export function predictionRow(
  q: {
    readonly guesses: number
    readonly most: number
    readonly yours: boolean
    readonly model: boolean
    readonly name: string
  },
  frame: Pick<Frame<unknown>, 'width' | 'text'>,
): TemplateResult {
  const height = 28
  const y = height / 2
  const marks = 44
  const step = Math.min(APART, (frame.width - marks - APART) / Math.max(1, q.most))
  const dots = Array.from({ length: q.guesses }, (_, i) => dot({ x: marks + APART / 2 + i * step, y }))
  const count =
    q.guesses > 0 && frame.width - marks - q.guesses * step > textWidth('60', textSize(frame)) + 12
  return html`<svg class="figure prediction-row" width=${frame.width} height=${height} font-size=${textSize(frame)} role="img" aria-label=${q.name}>
    ${q.model ? presentRing({ x: 12, y }) : undefined}${q.yours ? diamond({ x: 30, y }, 7) : undefined}${dots}
    ${count ? svg`<text x=${px(marks + q.guesses * step + 8)} y=${px(y + textSize(frame) * 0.36)}>${q.guesses}</text>` : undefined}
  </svg>`
}
