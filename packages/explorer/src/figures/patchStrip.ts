import { svg } from 'lit'
import { axisBelow, axisLeft, title } from './axis.ts'
import { type Frame, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import type { PatchLayout, PatchSpec } from './patchLayout.ts'
import type { PatchWords } from './patchWords.ts'
import { timesText } from './sectionScales.ts'
import { textWidth } from './textWidth.ts'
import { linearTicksOf } from './ticks.ts'

/** From the axis of depths to its numbers. */
const GAP = 12
/** How far the roller is drawn over the ground, px; the title stands above that. */
const ROOF = 18

/** Depth of the turf along the ground, under the land and in mid-groove, and the roller over it. */
export function drawPatchStrip(spec: PatchSpec, layout: PatchLayout, frame: Frame<PatchWords>): Mark {
  const { quarter, grooves } = spec
  const { left, right, ground, bottom } = layout
  const under = surfaceOf(spec, layout, 0)
  const body = pathOf([...under, { x: right, y: bottom }, { x: left, y: bottom }], true)
  const groove = grooves ? pathOf(surfaceOf(spec, layout, quarter.across.length - 1)) : ''
  return svg`<path class="ground" d=${body} /><path class="hidden" d=${groove} />
    <path class="outline" d=${arcOf(spec, layout)} /><path class="surface" d=${pathOf(under)} />
    <path class="hair" d=${`M${px(left)} ${px(ground)}H${px(right)}`} />${drawAxes(spec, layout, frame)}${drawNames(spec, layout, frame)}`
}

/** The surface of the turf along one line, whole. */
function surfaceOf({ quarter }: PatchSpec, { x, down, half }: PatchLayout, across: number): readonly Point[] {
  const { along, depths } = quarter
  const width = quarter.across.length
  const right: Point[] = []
  for (let i = 0; i < along.length; i++) {
    const place = along[i] ?? 0
    if (place > half.along) break
    right.push({ x: place, y: depths[i * width + across] ?? 0 })
  }
  const last = right.at(-1)
  if (last && last.x < half.along) right.push({ x: half.along, y: last.y })
  const left = right
    .slice(1)
    .toReversed()
    .map(point => ({ x: -point.x, y: point.y }))
  return [...left, ...right].map(point => ({ x: x(point.x), y: down(point.y) }))
}

/** The roller, as far up as there is room over the ground. */
function arcOf({ diameter, sinkage }: PatchSpec, { x, down, half, ground }: PatchLayout): string {
  const ceiling = ground - ROOF
  const radius = diameter / 2
  const steps = 80
  const points = Array.from({ length: 2 * steps + 1 }, (_, i) => {
    const place = (half.along * (i - steps)) / steps
    const lift = radius - Math.sqrt(Math.max(0, radius ** 2 - place ** 2))
    return { x: x(place), y: down(sinkage - lift) }
  }).filter(point => point.y >= ceiling)
  return points.length > 1 ? pathOf(points) : ''
}

function drawAxes({ sinkage }: PatchSpec, layout: PatchLayout, frame: Frame<PatchWords>): Mark {
  const size = textSize(frame)
  const line = lineHeight(frame)
  const { left, right, ground, bottom, x, down, half } = layout
  const depths = linearTicksOf({
    domain: [0, sinkage],
    quantity: 'sinkage',
    count: Math.max(2, (bottom - ground) / (line * 1.7)),
    reader: frame,
  })
  const along = linearTicksOf({
    domain: [-half.along, half.along],
    quantity: 'place',
    count: Math.max(3, (right - left) / (size * 5)),
    reader: frame,
  })
  const { words } = frame
  return svg`<path class="axis" d=${`M${px(left)} ${px(ground)}V${px(bottom)}H${px(right)}`} />
    ${axisLeft({ ticks: depths.map(({ value, text }) => ({ at: down(value), text })), x: left, gap: GAP, size })}
    ${axisBelow({ ticks: along.map(({ value, text }) => ({ at: x(value), text })), y: bottom, gap: GAP, size })}
    ${title(words.depth(timesText(layout.times, frame)), { x: 0, y: ground - ROOF - 6 })}
    ${title(words.along, { x: Math.max(right, textWidth(words.along, size)), y: bottom + GAP + size * 0.8 + line + 4 }, 'end')}`
}

function drawNames(
  { grooves, quarter }: PatchSpec,
  layout: PatchLayout,
  frame: Frame<PatchWords>,
): Mark | undefined {
  if (!grooves) return undefined
  const { words } = frame
  const size = textSize(frame)
  const { right, down, x } = layout
  const last = quarter.across.length - 1
  const [land = 0, gap = 0] = [quarter.depths[0], quarter.depths[last]]
  const apart = down(land) - down(gap) > size * 2.2
  const clear =
    right + 8 + Math.max(textWidth(words.underLand, size), textWidth(words.inGroove, size)) < frame.width
  if (!clear)
    return apart
      ? svg`<text class="on-ground" x=${px(x(0))} y=${px(down(gap) + size * 1.1)} text-anchor="middle">${words.inGroove}</text>`
      : undefined
  const place = Math.max(size * 1.2, down(land) - down(gap))
  const from = x(0)
  const foot = down(gap) + place
  return svg`<path class="hair" d=${`M${px(from)} ${px(down(gap))}L${px(right + 4)} ${px(down(gap) - 2)}M${px(from)} ${px(down(land))}L${px(right + 4)} ${px(foot - 2)}`} /><text x=${px(right + 8)} y=${px(down(gap) + size * 0.3)}>${words.inGroove}</text><text x=${px(right + 8)} y=${px(foot + size * 0.3)}>${words.underLand}</text>`
}
