import { ticks as roundTicks, scaleLinear } from 'd3'
import { html, svg, type TemplateResult } from 'lit'
import { axisBelow, axisLeft, type PlacedTick, title } from './axis.ts'
import type { Box } from './box.ts'
import { drawLabel } from './drawLabel.ts'
import { type Frame, layoutOf, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import { dot, type Mark } from './marks.ts'
import { placeName } from './placeLabel.ts'
import { spreadOut } from './spreadOut.ts'
import { textWidth } from './textWidth.ts'
import { linearTicksOf, roundNumber } from './ticks.ts'

type Range = readonly [number, number]
/** One set: where it stands along the axis (days since 1970, a part of water, or its place in the order), and its softness. */
export type DrawnSet = {
  readonly name: string
  readonly at: number
  readonly softness: number
  readonly interval: Range | null
}
export type SetsSpec = {
  readonly along: 'set' | 'date' | 'moisture'
  readonly sets: readonly DrawnSet[]
  /** The median of their like, where it lies, and where one more set will lie; null where that is not known. */
  readonly median: number | null
  readonly interval: Range | null
  readonly newSet: Range | null
}
export type SetsWords = {
  readonly title: string
  readonly down: string
  readonly across: string
  readonly median: string
  /** 95 % of the median. */
  readonly interval: string
  readonly oneMore: readonly string[]
  /** A day as an axis says it. */
  readonly day: (day: number) => string
}

const GAP = 14
const PROPORTION = { wide: 0.3, middle: 0.4, narrow: 0.62 }
const AIR = 1.08
/** Intervals may reach without end: the axis follows them so far beyond the values. */
const FAR = 2
const SIDE = 0.06
/** Sets at one place stand side by side, px. */
const APART = 12
const HUNDRED = 100
const NUMBERS_APART = 8
const LEAST = 1e-5

export type SetsLayout = {
  readonly box: Box
  readonly height: number
  readonly deepest: number
  readonly x: (at: number) => number
  readonly y: (softness: number) => number
  readonly ticks: readonly PlacedTick[]
}

/** A range that leaves the figure says nothing that a line in it could: the text beside it has it. */
const inside = (range: Range | null, deepest: number): Range | null =>
  range && range[1] <= deepest ? range : null

const largest = (values: readonly number[]): number =>
  values.filter(Number.isFinite).reduce((a, b) => Math.max(a, b), 0)

/** As many names as stand side by side without touching. */
function setTicks(sets: readonly DrawnSet[], x: (at: number) => number, size: number): readonly PlacedTick[] {
  const room = sets.length > 1 ? x(1) - x(0) - 10 : Number.POSITIVE_INFINITY
  const fit = sets.every(({ name }) => textWidth(name, size) <= room)
  // Numbers, where names have no room: those of the table, as many as there is room for.
  const each = Math.ceil((textWidth(String(sets.length), size) + NUMBERS_APART) / Math.max(1, room + 10))
  return sets.map(({ name, at }, i) => ({
    at: x(at),
    text: fit ? name : i % each === 0 ? String(i + 1) : '',
  }))
}

export function setsLayout(spec: SetsSpec, frame: Frame<SetsWords>): SetsLayout {
  const { sets, along, median, interval, newSet } = spec
  const { width, words } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const values = [...sets.map(({ softness }) => softness), median ?? 0]
  const far = FAR * largest(values)
  const ends = [...sets.map(set => set.interval), interval, newSet].flatMap(range =>
    range ? [range[1]] : [],
  )
  const deepest = AIR * Math.max(largest([...values, ...ends.filter(end => end <= far)]), LEAST)
  const left = Math.ceil(textWidth('10.00', size)) + GAP + 4
  const names = [words.median, words.interval, ...words.oneMore]
  const right = median === null ? 16 : Math.ceil(Math.max(...names.map(text => textWidth(text, size)))) + 18
  const box = {
    x: left,
    y: line + 14,
    width: Math.max(80, width - left - right),
    height: Math.round(width * PROPORTION[layoutOf(frame)]),
  }
  const places = sets.map(({ at }) => at)
  const [low, high] = places.length > 0 ? [Math.min(...places), Math.max(...places)] : [0, 1]
  const air = along === 'set' ? 0.5 : SIDE * (high - low) || 1 / HUNDRED
  const domain = [low - air, high + air] as const
  const x = scaleLinear()
    .domain(domain)
    .range([box.x, box.x + box.width])
  const y = scaleLinear()
    .domain([0, deepest])
    .range([box.y, box.y + box.height])
  const count = Math.max(2, box.width / (size * 7))
  const ticks =
    along === 'set'
      ? setTicks(sets, x, size)
      : roundTicks(domain[0], domain[1], count)
          .filter(at => along !== 'date' || Number.isInteger(at))
          .map(at => ({ at: x(at), text: along === 'date' ? words.day(at) : percentText(at, frame) }))
  return {
    box,
    deepest,
    height: box.y + box.height + GAP + 2 * line + 6,
    x: at => x(at),
    y: softness => y(Math.min(deepest, Math.max(0, softness))),
    ticks,
  }
}

const percentText = (part: number, frame: Frame<SetsWords>): string => {
  const shown = Number((HUNDRED * part).toFixed(1))
  return roundNumber(shown, Number.isInteger(shown) ? 0 : 1, frame)
}

/** The softness of every set with its interval, against the day, the water in the turf, or one beside the other. */
export function setsFigure(spec: SetsSpec, frame: Frame<SetsWords>): TemplateResult {
  const layout = setsLayout(spec, frame)
  const { width, words } = frame
  const { height, y } = layout
  const spots = spotsOf(spec, layout)
  const bars = spots
    .flatMap(({ x, interval }) => (interval ? [`M${px(x)} ${px(y(interval[0]))}V${px(y(interval[1]))}`] : []))
    .join('')
  return html`<svg class="figure sets-figure" width=${width} height=${px(height)} viewBox="0 0 ${width} ${px(height)}" font-size=${textSize(frame)} role="img" aria-label=${words.title}>
    ${drawPopulation(spec, layout, frame)}${drawAxes(layout, frame)}
    <path class="thin" d=${bars} />${spots.map(dot)}
    ${spec.along === 'set' ? svg`` : drawNames(spec, spots, layout, frame)}
  </svg>`
}

type Spot = Point & { readonly name: string; readonly interval: Range | null }

/** Where each set stands on the paper, those of one place side by side. */
function spotsOf({ sets }: SetsSpec, { x, y, box }: SetsLayout): readonly Spot[] {
  const places = spreadOut(
    sets.map(({ at }) => x(at)),
    {
      gap: Math.min(APART, box.width / Math.max(1, sets.length)),
      low: box.x + 6,
      high: box.x + box.width - 6,
    },
  )
  return sets.map(({ name, softness, interval }, i) => ({
    name,
    interval,
    x: places[i] ?? box.x,
    y: y(softness),
  }))
}

function drawAxes({ box, x: _, y, deepest, ticks }: SetsLayout, frame: Frame<SetsWords>): Mark {
  const { words } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const foot = box.y + box.height
  const end = box.x + box.width
  const down = linearTicksOf({
    domain: [0, deepest],
    quantity: 'softness',
    count: Math.max(2, box.height / (line * 3)),
    reader: frame,
  })
  return svg`<path class="axis" d=${`M${px(box.x)} ${px(box.y)}V${px(foot)}H${px(end)}`} />
    ${axisLeft({ ticks: down.map(({ value, text }) => ({ at: y(value), text })), x: box.x, gap: GAP, size })}
    ${axisBelow({ ticks, y: foot, gap: GAP, size })}
    ${title(words.down, { x: 0, y: size })}${title(words.across, { x: end, y: foot + GAP + size * 0.8 + line + 2 }, 'end')}
    <path class="surface" d=${pathOf([
      { x: box.x, y: y(0) },
      { x: end, y: y(0) },
    ])} />`
}

/** The median of their like, the lines it lies between, one more set dotted; named where they end. */
function drawPopulation(spec: SetsSpec, { box, y, deepest }: SetsLayout, frame: Frame<SetsWords>): Mark {
  const { median } = spec
  if (median === null) return svg``
  const [interval, newSet] = [inside(spec.interval, deepest), inside(spec.newSet, deepest)]
  const { words } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const end = box.x + box.width
  const level = (softness: number) => `M${px(box.x)} ${px(y(softness))}H${px(end)}`
  const rows = [
    { text: words.median, y: y(median) },
    ...(interval ? [{ text: words.interval, y: y(interval[1]) }] : []),
    ...(newSet ? words.oneMore.map((text, i) => ({ text, y: y(newSet[1]) + i * line })) : []),
  ]
  const places = spreadOut(
    rows.map(row => row.y),
    { gap: line, low: box.y + size * 0.4, high: box.y + box.height },
  )
  return svg`${interval && svg`<path class="band-edge" d=${level(interval[0]) + level(interval[1])} />`}${newSet && svg`<path class="one-more" d=${level(newSet[0]) + level(newSet[1])} />`}
    <path class="outline" d=${level(median)} />
    ${rows.map(({ text }, i) => svg`<text x=${px(end + 12)} y=${px((places[i] ?? 0) + size * 0.36)}>${text}</text>`)}`
}

/** Sets are named beside their dots, where there is room. */
function drawNames(
  spec: SetsSpec,
  spots: readonly Spot[],
  { box }: SetsLayout,
  frame: Frame<SetsWords>,
): Mark {
  const size = textSize(frame)
  const taken: Box[] = spots.map(({ x, y }) => ({ x: x - 7, y: y - 7, width: 14, height: 14 }))
  const room = { bounds: box, size, lineHeight: lineHeight(frame), taken, avoided: [] }
  return svg`${spots.map(({ x, y, name }) => {
    if (name === '' || spec.sets.length < 2) return svg``
    const label = placeName(
      {
        lines: [{ text: name }],
        places: [
          { x: x + 9, y: y - size * 0.7, anchor: 'start' },
          { x: x - 9, y: y - size * 0.7, anchor: 'end' },
        ],
        target: { x, y },
      },
      room,
    )
    if (!label) return svg``
    taken.push(label.box)
    return drawLabel(label)
  })}`
}
