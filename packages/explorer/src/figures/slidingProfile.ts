import { scaleLinear } from 'd3'
import { html, svg, type TemplateResult } from 'lit'
import { axisBelow, axisLeft, title } from './axis.ts'
import { type Frame, layoutOf, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import type { SlidingWords } from './slidingWords.ts'
import { spreadOut } from './spreadOut.ts'
import { textWidth } from './textWidth.ts'
import { linearTicksOf } from './ticks.ts'

/** A roller in free sections on a turn: SI, places from its middle, positive away from the centre of the turn. */
export type SlidingSpec = {
  readonly length: number
  readonly sections: number
  readonly radius: number
  /** Half the distance of two axles that turn about a place between them. */
  readonly offset: number
  /** The lines that slide least, one a section. */
  readonly still: readonly number[]
  readonly mean: number
  readonly rootMeanSquare: number
  /** The line that slides least where the roller were in one piece; null where it is. */
  readonly whole: number | null
}

const PROPORTION = { wide: 0.34, middle: 0.42, narrow: 0.62 }
const GAP = 14
const ROLLER = 30
/** A profile is a curve where two axles slide crossways. */
const STEPS = 24
/** Air over the greatest sliding. */
const AIR = 1.1

export type SlidingLayout = {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly foot: number
  readonly roller: number
  readonly height: number
  readonly most: number
  readonly x: (place: number) => number
  readonly y: (sliding: number) => number
}

/** How far a line at a place slides while its section rolls about another, per length travelled. */
export const slidingAt = (q: { place: number; still: number; offset: number; radius: number }): number =>
  Math.hypot(q.place - q.still, q.offset) / q.radius

type Stretch = { readonly from: number; readonly to: number; readonly still: number }

function stretchesOf({ length, sections, still }: SlidingSpec): readonly Stretch[] {
  const width = length / sections
  return still.map((line, i) => ({
    from: i * width - length / 2,
    to: (i + 1) * width - length / 2,
    still: line,
  }))
}

function profile({ from, to, still }: Stretch, { offset, radius }: SlidingSpec): readonly Point[] {
  const turns = still > from && still < to ? [still] : []
  const even = Array.from({ length: STEPS + 1 }, (_, i) => from + ((to - from) * i) / STEPS)
  return [...even, ...turns]
    .sort((a, b) => a - b)
    .map(place => ({ x: place, y: slidingAt({ place, still, offset, radius }) }))
}

export function slidingLayout(spec: SlidingSpec, frame: Frame<SlidingWords>): SlidingLayout {
  const { words, width, format } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const half = spec.length / 2
  const wholeStretch = spec.whole === null ? [] : [{ from: -half, to: half, still: spec.whole }]
  const most =
    AIR *
    Math.max(...[...stretchesOf(spec), ...wholeStretch].flatMap(one => profile(one, spec).map(({ y }) => y)))
  const numbers = [
    words.mean(format(spec.mean, 'sliding', { unit: false })),
    words.rootMeanSquare(format(spec.rootMeanSquare, 'sliding', { unit: false })),
  ]
  const names = Math.max(
    ...[...numbers, spec.whole === null ? '' : words.whole].map(text => textWidth(text, size)),
  )
  const left = Math.ceil(textWidth('100.0', size)) + GAP + 4
  const right = width - Math.ceil(names) - 16
  const top = line + 14
  const foot = top + Math.round(width * PROPORTION[layoutOf(frame)])
  const x = scaleLinear().domain([-half, half]).range([left, right])
  const y = scaleLinear().domain([0, most]).range([foot, top])
  // The name of the still line stands between the profile and the roller.
  const roller = foot + line + 6
  return {
    left,
    right,
    top,
    foot,
    roller,
    most,
    x: place => x(place),
    y: sliding => y(sliding),
    height: roller + ROLLER + GAP + 3 * line + 14,
  }
}

/** Sliding per length travelled over the width of a roller on a turn, over a drawing of its sections. */
export function slidingProfile(spec: SlidingSpec, frame: Frame<SlidingWords>): TemplateResult {
  const layout = slidingLayout(spec, frame)
  const { width, words } = frame
  const { height, x, y } = layout
  const half = spec.length / 2
  const path = (one: Stretch) => pathOf(profile(one, spec).map(point => ({ x: x(point.x), y: y(point.y) })))
  const whole = spec.whole === null ? undefined : path({ from: -half, to: half, still: spec.whole })
  return html`<svg class="figure sliding-profile" width=${width} height=${px(height)} viewBox="0 0 ${width} ${px(height)}" font-size=${textSize(frame)} role="img" aria-label=${words.title}>
    ${drawAxes(spec, layout, frame)}${drawLevels(spec, layout, frame)}
    ${whole && svg`<path class="hidden" d=${whole} />`}<path class="outline" d=${stretchesOf(spec).map(path).join('')} />
    ${drawRoller(spec, layout, frame)}
  </svg>`
}

function drawAxes(spec: SlidingSpec, layout: SlidingLayout, frame: Frame<SlidingWords>): Mark {
  const { words } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const { left, right, foot, roller, most, x, y } = layout
  const half = spec.length / 2
  const across = linearTicksOf({
    domain: [-half, half],
    quantity: 'place',
    count: Math.max(3, (right - left) / (size * 6)),
    reader: frame,
  })
  const up = linearTicksOf({
    domain: [0, most],
    quantity: 'sliding',
    count: Math.max(2, (foot - layout.top) / (line * 2.6)),
    reader: frame,
  })
  const below = roller + ROLLER + 4
  const names = below + GAP + size * 0.8 + line + 4
  const title3 = names + line
  const isWide = textWidth(words.across, size) + textWidth(words.inner, size) * 2 + 40 < right - left
  return svg`<path class="axis" d=${`M${px(left)} ${px(layout.top)}V${px(foot)}H${px(right)}`} />
    ${axisLeft({ ticks: up.map(({ value, text }) => ({ at: y(value), text })), x: left, gap: GAP, size })}
    <path class="axis" d=${`M${px(left)} ${px(below)}H${px(right)}`} />
    ${axisBelow({ ticks: across.map(({ value, text }) => ({ at: x(value), text })), y: below, gap: GAP, size })}
    ${title(words.up, { x: 0, y: size })}
    ${title(words.inner, { x: left, y: names })}${title(words.outer, { x: right, y: names }, 'end')}
    ${isWide ? svg`<text x=${px((left + right) / 2)} y=${px(names)} text-anchor="middle">${words.across}</text>` : title(words.across, { x: frame.width, y: title3 }, 'end')}`
}

/** Mean and root mean square as level lines, with their numbers at the end; the profile in one piece is named there too. */
function drawLevels(spec: SlidingSpec, layout: SlidingLayout, frame: Frame<SlidingWords>): Mark {
  const { words, format } = frame
  const size = textSize(frame)
  const { left, right, y, top, foot } = layout
  const half = spec.length / 2
  const levels = [
    { at: spec.mean, text: words.mean(format(spec.mean, 'sliding', { unit: false })), kind: 'axis' },
    {
      at: spec.rootMeanSquare,
      text: words.rootMeanSquare(format(spec.rootMeanSquare, 'sliding', { unit: false })),
      kind: 'dotted',
    },
    ...(spec.whole === null
      ? []
      : [
          {
            at: slidingAt({ place: half, still: spec.whole, offset: spec.offset, radius: spec.radius }),
            text: words.whole,
            kind: null,
          },
        ]),
  ]
  const places = spreadOut(
    levels.map(({ at }) => y(at)),
    { gap: lineHeight(frame), low: top + size * 0.4, high: foot },
  )
  return svg`${levels.map(({ at, text, kind }, i) => {
    const level = y(at)
    const name = places[i] ?? level
    return svg`${
      kind &&
      svg`<path class=${kind} d=${pathOf([
        { x: left, y: level },
        { x: right, y: level },
      ])} />`
    }${
      Math.abs(name - level) > 2
        ? svg`<path class="hair" d=${pathOf([
            { x: right, y: level },
            { x: right + 9, y: name },
          ])} />`
        : undefined
    }<text x=${px(right + 12)} y=${px(name + size * 0.36)}>${text}</text>`
  })}`
}

/** The sections under the profile, and the line of each that does not slide. */
function drawRoller(spec: SlidingSpec, layout: SlidingLayout, frame: Frame<SlidingWords>): Mark {
  const { words } = frame
  const size = textSize(frame)
  const { x, y, roller, foot, left, right } = layout
  const stretches = stretchesOf(spec)
  const inset = spec.sections > 1 ? 1.5 : 0
  const boxes = stretches.map(
    ({ from, to }) =>
      svg`<rect class="solid outline" x=${px(x(from) + inset)} y=${px(roller)} width=${px(x(to) - x(from) - 2 * inset)} height=${ROLLER - 6} />`,
  )
  const axis = pathOf([
    { x: left - 10, y: roller + ROLLER / 2 - 3 },
    { x: right + 10, y: roller + ROLLER / 2 - 3 },
  ])
  const lines = stretches
    .filter(({ from, to, still }) => still >= from && still <= to)
    .map(({ still }) => {
      const least = slidingAt({ place: still, still, offset: spec.offset, radius: spec.radius })
      return `M${px(x(still))} ${px(y(least))}V${px(roller + ROLLER - 6)}`
    })
    .join('')
  const [first] = stretches.filter(({ from, to, still }) => still >= from && still <= to)
  const text = spec.offset > 0 ? words.least : words.still
  const isLeft = first !== undefined && x(first.still) + textWidth(text, size) + 10 > right
  const name =
    first &&
    svg`<text class="on-paper" x=${px(x(first.still) + (isLeft ? -8 : 8))} y=${px(foot + size * 0.9 + 2)} text-anchor=${isLeft ? 'end' : 'start'}>${text}</text>`
  return svg`${boxes}<path class="centre" d=${axis} /><path class="hidden" d=${lines} />${name}`
}
