import type { SinkageMap } from '@swardsink/model'
import { html, svg, type TemplateResult } from 'lit'
import { axisBelow, axisLeft, title } from './axis.ts'
import { type Box, inside, overlaps } from './box.ts'
import { type Frame, layoutOf, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import { type MapDrawing, mapDomain, mapDrawing } from './mapDrawing.ts'
import { shownQuantity } from './mapField.ts'
import { type NamePlate, namePlates } from './mapNames.ts'
import { AXIS_GAP, type MapScales } from './mapScales.ts'
import type { SinkageMapWords } from './mapWords.ts'
import { crossLine, type Mark, presentRing, readingRing, wedge } from './marks.ts'
import { stipple } from './stipple.ts'
import { textWidth } from './textWidth.ts'
import { linearTicksOf, logTicksOf } from './ticks.ts'

export type MapPlace = { readonly mass: number; readonly softness: number }
export type SinkageMapSpec = {
  readonly map: SinkageMap
  /** The present case; its value comes from the model itself, not from the grid, and is null without an answer. */
  readonly mark: MapPlace & { readonly value: number | null }
  readonly readings?: readonly MapPlace[]
}

/** The map of a quantity over roller mass and softness, with the present case. */
export function sinkageMapView(
  { map, mark, readings = [] }: SinkageMapSpec,
  frame: Frame<SinkageMapWords>,
): TemplateResult {
  const drawing = mapDrawing(map, frame)
  const { scales } = drawing
  const size = textSize(frame)
  const { width, words } = frame
  return html`<svg class="figure sinkage-map" width=${width} height=${px(scales.height)} viewBox="0 0 ${width} ${px(scales.height)}" font-size=${size} role="group" aria-label=${words.title}>
    ${stipple}${drawField(drawing)}${drawAxes(map, scales, frame)}${drawNames(drawing, frame)}
    ${readings.map(({ mass, softness }) => readingRing({ x: scales.x(mass), y: scales.y(softness) }))}
    ${drawMark({ map, mark, readings }, drawing, frame)}
  </svg>`
}

function drawField({ scales: { box }, base, areas, lines, unknown }: MapDrawing): Mark {
  return svg`<rect class="sink-${base}" x=${box.x} y=${box.y} width=${box.width} height=${box.height} />
    ${areas.map(({ step, d }) => svg`<path class="sink-${step}" d=${d} />`)}
    ${lines.map(({ ink, d }) => svg`<path class=${ink} d=${d} />`)}
    ${unknown && svg`<path class="solid" d=${unknown} /><path fill="url(#stipple)" d=${unknown} /><path class="hair" d=${unknown} />`}
    <rect class="axis" x=${box.x} y=${box.y} width=${box.width} height=${box.height} />`
}

function drawAxes(map: SinkageMap, { box, x, y }: MapScales, frame: Frame<SinkageMapWords>): Mark {
  const { words } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const domain = mapDomain(map)
  const foot = box.y + box.height
  const masses = linearTicksOf({
    domain: domain.mass,
    quantity: 'mass',
    count: box.width / (size * 4.2),
    reader: frame,
  })
  const softnesses = logTicksOf({
    domain: domain.softness,
    quantity: 'softness',
    length: box.height,
    needs: line * 1.3,
    reader: frame,
  })
  const narrow = layoutOf(frame) === 'narrow'
  const soft: Point = narrow ? { x: 0, y: box.y - 8 } : { x: 0, y: box.y + size * 0.8 }
  const firm: Point = narrow ? { x: 0, y: foot + AXIS_GAP + size * 0.8 + line + 4 } : { x: 0, y: foot }
  return svg`${axisBelow({ ticks: masses.map(({ value, text }) => ({ at: x(value), text })), y: foot, gap: AXIS_GAP, size })}
    ${axisLeft({ ticks: softnesses.map(({ value, text }) => ({ at: y(value), text })), x: box.x, gap: AXIS_GAP, size })}
    ${title(words.softnessAxis, { x: 0, y: size })}
    ${title(words.massAxis, { x: box.x + box.width, y: foot + AXIS_GAP + size * 0.8 + line + 4 }, 'end')}
    ${title(words.soft, soft)}${title(words.firm, firm)}`
}

function drawNames({ names, scales: { box } }: MapDrawing, frame: Frame<SinkageMapWords>): Mark {
  const size = textSize(frame)
  const unitAt = { x: box.x + box.width + 9, y: box.y - 9 }
  return svg`${title(frame.words.contourUnit, unitAt)}${names.map(({ text, from, at, where }) => {
    if (where === 'top') {
      return svg`<path class="hair" d=${pathOf([from, { x: at.x, y: at.y + 2 }])} /><text x=${px(at.x)} y=${px(at.y)} text-anchor="middle">${text}</text>`
    }
    if (where === 'right') {
      return svg`<path class="hair" d=${pathOf([from, { x: at.x - 2, y: at.y }])} /><text x=${px(at.x)} y=${px(at.y + size * 0.36)}>${text}</text>`
    }
    return undefined
  })}`
}

const drawPlate = ({ text, box }: NamePlate, size: number): Mark =>
  svg`<rect class="plate" x=${px(box.x)} y=${px(box.y)} width=${px(box.width)} height=${px(box.height)} /><text x=${px(box.x + box.width / 2)} y=${px(box.y + box.height / 2 + size * 0.36)} text-anchor="middle">${text}</text>`

function drawMark(
  { map, mark, readings = [] }: SinkageMapSpec,
  { scales, names }: MapDrawing,
  frame: Frame<SinkageMapWords>,
): Mark {
  const { box } = scales
  const { words, format } = frame
  const at = { x: scales.x(mark.mass), y: scales.y(mark.softness) }
  const left = { x: box.x, y: at.y }
  const foot = { x: at.x, y: box.y + box.height }
  const value = mark.value === null ? null : format(mark.value, shownQuantity[map.quantity])
  const spoken = words.markText({
    mass: format(mark.mass, 'mass'),
    softness: format(mark.softness, 'softness'),
    value,
  })
  const text = value === null ? words.noAnswer : words.here(value)
  const rings = readings.map(({ mass, softness }) => ringBox({ x: scales.x(mass), y: scales.y(softness) }))
  const plates = namePlates(names, { box, avoided: [...rings, ringBox(at)] }, frame)
  const plate = plateBox({ at, box, text, avoided: [...rings, ...plates.map(other => other.box)] }, frame)
  const [before, after] = value === null ? [text, ''] : (text.split(value) as [string, string])
  return svg`${plates.map(other => drawPlate(other, textSize(frame)))}${crossLine(at, left)}${crossLine(at, foot)}${wedge(left, { size: 10, turned: -90 })}${wedge(foot, { size: 10, turned: 180 })}
    <rect class="plate" x=${px(plate.x)} y=${px(plate.y)} width=${px(plate.width)} height=${px(plate.height)} />
    <text x=${px(plate.x + 8)} y=${px(plate.y + plate.height / 2 + textSize(frame) * 0.36)}>${before}${value && svg`<tspan class="strong">${value}</tspan>`}${after}</text>
    <g data-handle="mark" tabindex="0" role="slider" aria-label=${words.markName} aria-valuenow=${mark.mass} aria-valuetext=${spoken}>${presentRing(at)}<circle class="reach" cx=${px(at.x)} cy=${px(at.y)} r="16" /></g>`
}

const ringBox = ({ x, y }: Point): Box => ({ x: x - 9, y: y - 9, width: 18, height: 18 })

/** The mark's plate stands at the first of four corners that is inside the map and clear of readings. */
export function plateBox(
  q: { at: Point; box: Box; text: string; avoided: readonly Box[] },
  frame: Pick<Frame<unknown>, 'text'>,
): Box {
  const size = textSize(frame)
  const width = textWidth(q.text, size, true) + 16
  const height = lineHeight(frame) + 6
  const gap = 12
  const corners = [
    [gap, -gap - height],
    [-gap - width, -gap - height],
    [gap, gap],
    [-gap - width, gap],
  ].map(([x = 0, y = 0]): Box => ({ x: q.at.x + x, y: q.at.y + y, width, height }))
  const within = corners.filter(corner => inside(corner, q.box))
  return (
    within.find(corner => !q.avoided.some(other => overlaps(corner, other))) ??
    within[0] ?? { ...(corners[0] as Box), x: Math.max(q.box.x, q.box.x + q.box.width - width) }
  )
}
