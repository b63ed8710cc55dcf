import { svg } from 'lit'
import { type Frame, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import { fitsIn, type SectionLayout, type SectionSpec, SHARE_BAR } from './sectionLayout.ts'
import { landsOf } from './sectionMetal.ts'
import { matOver } from './sectionTurf.ts'
import type { SectionWords } from './sectionWords.ts'
import { textWidth } from './textWidth.ts'

/** Upright lines stand so far apart, px. */
const EVERY = 6

/** The name of a strip; the lines that carry the land edges down stop short of it. */
const head = (text: string, y: number): Mark => svg`<text class="on-paper" x="0" y=${px(y)}>${text}</text>`

/** How much the turf carries, place by place: the deeper the line, the more. */
export function drawPressure(spec: SectionSpec, layout: SectionLayout, frame: Frame<SectionWords>): Mark {
  const { words, format } = frame
  const { grooves, pressure } = spec
  const { width, strip, x } = layout
  const depth = (value: number) => strip.zero + (strip.reach * value) / pressure
  const outline: readonly Point[] = matOver(spec, layout).map(point => ({
    x: x(point.position),
    y: depth(point.pressure),
  }))
  const label = (at: number, text: string, strong = false) =>
    svg`<text class=${strong ? 'strong' : ''} x=${px(at)} y=${px(strip.text)} text-anchor="middle">${text}</text>`
  const under = format(pressure, 'pressure')
  const zero = `M0 ${px(strip.zero)}H${width}`
  const base = svg`${head(words.pressure, strip.title)}<path class="hair" d=${uprights(outline, strip.zero, width)} /><path class="axis" d=${zero} /><path class="thin" d=${pathOf(outline)} />`
  if (!grooves) return svg`${base}${label(width / 2, under, true)}`
  const lands = landsOf(grooves, layout)
  const mat = grooves.mat[0]?.pressure ?? 0
  const gaps = lands.slice(1).map(([left], i) => [lands[i]?.[1] ?? 0, left] as const)
  const between = format(mat, 'pressure')
  const edges = words.edges(format(grooves.edgeForce, 'lineLoad'))
  const half = textWidth(edges, textSize(frame)) / 2
  const [left, right] = lands[Math.floor((lands.length - 1) / 2)] ?? [0, 0]
  const middle = Math.min(width - half, Math.max(half, (left + right) / 2))
  const along =
    grooves.edgeForce > 0
      ? svg`<text class="on-paper" x=${px(middle)} y=${px(strip.text + lineHeight(frame))} text-anchor="middle">${edges}</text>`
      : undefined
  return svg`${base}${along}${lands.map(([from, to]) => label((from + to) / 2, under, true))}${gaps.map(
    ([from, to]) => (fitsIn(between, to - from - 40, frame) ? label((from + to) / 2, between) : undefined),
  )}`
}

function uprights(outline: readonly Point[], zero: number, width: number): string {
  let d = ''
  let next = 1
  for (let x = EVERY / 2; x < width; x += EVERY) {
    while (next < outline.length - 1 && (outline[next]?.x ?? 0) < x) next++
    const [a, b] = [outline[next - 1], outline[next]]
    if (!a || !b) continue
    const part = b.x > a.x ? (x - a.x) / (b.x - a.x) : 0
    const foot = a.y + (b.y - a.y) * Math.min(1, Math.max(0, part))
    if (foot - zero > 0.5) d += `M${px(x)} ${px(zero)}V${px(foot)}`
  }
  return d
}

/** Per pitch: the land, what the mat is worth, and what bears nothing. */
export function drawShare(spec: SectionSpec, layout: SectionLayout, frame: Frame<SectionWords>): Mark {
  const { words, format } = frame
  const { grooves } = spec
  const { share, width, x } = layout
  const name = head(words.share, share.title)
  const bar = (from: number, to: number, kind: string) =>
    svg`<rect class=${kind} x=${px(from)} y=${px(share.top)} width=${px(Math.max(0, to - from))} height=${SHARE_BAR} />`
  if (!grooves)
    return svg`${name}${bar(0, width, 'bears')}<text x=${px(width / 2)} y=${px(share.text)} text-anchor="middle">${words.all}</text>`
  const { pitch, land, bearingFraction } = grooves
  const pitches = Array.from({ length: layout.pitches }, (_, i) => i * pitch - land / 2)
  const bars = pitches.map(from => {
    const worth = from + bearingFraction * pitch
    const lines = hatchUpright(x(from + land), x(worth), share.top)
    return svg`${bar(x(from), x(from + land), 'bears')}<path class="hair" d=${lines} />${bar(x(from), x(from + pitch), 'thin')}`
  })
  const text = words.bears(format(bearingFraction, 'ratio'))
  const first = x(-land / 2)
  const centre = first + (pitch * layout.along) / 2
  const half = textWidth(text, textSize(frame)) / 2
  return svg`${name}${bars}<text x=${px(Math.max(half, centre))} y=${px(share.text)} text-anchor="middle">${text}</text>`
}

function hatchUpright(from: number, to: number, top: number): string {
  let d = ''
  for (let x = from + EVERY / 2; x < to; x += EVERY / 2) d += `M${px(x)} ${px(top)}v${SHARE_BAR}`
  return d
}
